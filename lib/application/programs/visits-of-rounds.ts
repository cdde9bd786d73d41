import { calendarDateIn, type CalendarDate } from "#domain/foundation/calendar-date";
import { countStandings, VISIT_STANDINGS, visitStanding, type VisitStanding } from "#domain/scheduling/visit-standing";
import { calendarDayOf, calendarDayOrNone } from "#application/stored-day";
import { type Work } from "#application/use-case";
import { type VisitState } from "#application/visits/visit-rows";

/** How many visits of a round stand where. */
export type VisitCounts = Readonly<Record<VisitStanding, number>>;

export const NO_VISITS: VisitCounts = countStandings([]);

/** Today at the company's place. */
export function todayOf(work: Work): CalendarDate {
  return calendarDateIn(work.company.timeZone, work.now.getTime());
}

interface CountedVisits {
  readonly round_id: string;
  readonly opens_on: Date;
  readonly closes_on: Date;
  readonly state: VisitState;
  readonly stop_on: Date | null;
  readonly visits: number;
}

/** The visits of rounds, counted by where they stand today. Rounds without a visit are left out. */
export async function visitsOfRounds(work: Work, roundIds: readonly string[]): Promise<ReadonlyMap<string, VisitCounts>> {
  const { companyId } = work.company;
  const rows = await work.tx.$queryRaw<CountedVisits[]>`
    SELECT v.round_id, v.opens_on, v.closes_on, v.state, d.date AS stop_on, count(*)::int AS visits
    FROM visit v
    LEFT JOIN stop s ON s.company_id = v.company_id AND s.visit_id = v.visit_id
    LEFT JOIN route_day d ON d.company_id = s.company_id AND d.route_day_id = s.route_day_id
    WHERE v.company_id = ${companyId}::uuid AND v.round_id = ANY(${[...roundIds]}::uuid[])
    GROUP BY v.round_id, v.opens_on, v.closes_on, v.state, d.date`;
  const today = todayOf(work);
  const counts = new Map<string, Record<VisitStanding, number>>();
  for (const row of rows) {
    const own = counts.get(row.round_id) ?? { ...NO_VISITS };
    const dates = { opensOn: calendarDayOf(row.opens_on), closesOn: calendarDayOf(row.closes_on), state: row.state, stopOn: calendarDayOrNone(row.stop_on) };
    own[visitStanding(dates, today)] += row.visits;
    counts.set(row.round_id, own);
  }
  return counts;
}

/** All visits of several rounds together. */
export function sumCounts(counts: readonly VisitCounts[]): VisitCounts {
  const sum = { ...NO_VISITS };
  for (const each of counts) for (const standing of VISIT_STANDINGS) sum[standing] += each[standing];
  return sum;
}
