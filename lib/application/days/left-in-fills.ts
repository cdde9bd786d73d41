import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { leftBy } from "#domain/mixing/tank-books";
import { type RestInTank } from "#domain/mixing/tank-plan-question";
import { type Quantity } from "#domain/quantities/quantity";
import { type FillOfTank } from "#application/fills/fills-in-books";
import { type Work } from "#application/use-case";

/** A fill of which anything may be left, or that a day asks about. */
export interface FillRead {
  readonly fill_id: string;
  readonly is_last: boolean;
  /** Filled for visits of the day. */
  readonly is_of_day: boolean;
  /** Its tank was measured after it was made, and it came into the books later than that. */
  readonly is_beside_reading: boolean;
}

/** A visit that nobody has recorded. */
export interface OpenVisit {
  /** The day whose route it is on; null where it is on none. */
  readonly date: string | null;
}

/**
 * The latest fill of each tank, those for visits of the day, and since the last clean-out before these all from the first one
 * on of which the books have a mark of the gauge or more left: one that is used up still lies between those below and above it.
 * Each tank's in the order in which they were made.
 */
export async function fillsRead(work: Work, visitIdsOfDay: readonly string[], mark: Quantity<"volume">): Promise<readonly FillRead[]> {
  const { companyId } = work.company;
  return work.tx.$queryRaw<FillRead[]>`
    WITH own AS (
        SELECT f.*, f.planned_visit_ids && ${[...visitIdsOfDay]}::uuid[] AS is_of_day, lead(f.fill_id) OVER in_order IS NULL AS is_last
        FROM fill f WHERE f.company_id = ${companyId}::uuid
        WINDOW in_order AS (PARTITION BY f.equipment_id ORDER BY f.filled_at, f.number)),
      asked AS (SELECT equipment_id, min(filled_at) AS first_at FROM own WHERE is_last OR is_of_day GROUP BY equipment_id),
      clean AS (
        SELECT a.equipment_id, max(c.cleaned_at) AS cleaned_at FROM asked a
        JOIN clean_out c ON c.company_id = ${companyId}::uuid AND c.equipment_id = a.equipment_id AND c.cleaned_at <= a.first_at GROUP BY a.equipment_id),
      drawn AS (SELECT fill_id, sum(volume) AS volume FROM fill_draw WHERE company_id = ${companyId}::uuid GROUP BY fill_id),
      rest AS (
        SELECT DISTINCT ON (fill_id) fill_id, remaining FROM fill_rest WHERE company_id = ${companyId}::uuid
        ORDER BY fill_id, settled_at DESC, (clean_out_id IS NOT NULL) DESC),
      lowest AS (
        SELECT DISTINCT ON (o.equipment_id) o.equipment_id, o.filled_at, o.number FROM own o
        LEFT JOIN clean c USING (equipment_id)
        LEFT JOIN drawn d ON d.fill_id = o.fill_id
        LEFT JOIN rest r ON r.fill_id = o.fill_id
        WHERE (c.cleaned_at IS NULL OR o.filled_at >= c.cleaned_at) AND coalesce(r.remaining, o.finished_volume - coalesce(d.volume, 0)) >= ${mark.amount}
        ORDER BY o.equipment_id, o.filled_at, o.number)
    SELECT o.fill_id, o.is_last, o.is_of_day,
      r.fill_id IS NULL AND EXISTS (SELECT FROM tank_reading t WHERE t.company_id = o.company_id AND t.equipment_id = o.equipment_id AND t.read_at > o.filled_at) AS is_beside_reading
    FROM own o
    LEFT JOIN lowest l ON l.equipment_id = o.equipment_id
    LEFT JOIN rest r ON r.fill_id = o.fill_id
    WHERE o.is_last OR o.is_of_day OR (o.filled_at, o.number) >= (l.filled_at, l.number)
    ORDER BY o.equipment_id, o.filled_at, o.number`;
}

/** Those of some visits that nobody has recorded. */
export async function openVisits(work: Work, visitIds: readonly string[]): Promise<ReadonlyMap<string, OpenVisit>> {
  const { companyId } = work.company;
  if (visitIds.length === 0) return new Map();
  const rows = await work.tx.$queryRaw<{ readonly visit_id: string; readonly date: string | null }[]>`
    SELECT v.visit_id, to_char(d.date, 'YYYY-MM-DD') AS date
    FROM visit v
    LEFT JOIN stop s ON s.company_id = v.company_id AND s.visit_id = v.visit_id
    LEFT JOIN route_day d ON d.company_id = s.company_id AND d.route_day_id = s.route_day_id
    WHERE v.company_id = ${companyId}::uuid AND v.visit_id = ANY(${[...visitIds]}::uuid[]) AND v.state = 'planned'`;
  return new Map(rows.map(({ visit_id: visitId, date }) => [visitId, { date }]));
}

/** What is known beside a fill when a day is planned. */
export interface AroundFill {
  readonly timeZone: string;
  readonly day: { readonly date: CalendarDate; readonly visitIds: readonly string[] };
  readonly open: ReadonlyMap<string, OpenVisit>;
  readonly isBesideReading: boolean;
  /** A mark of the gauge. */
  readonly mark: Quantity<"volume">;
}

/**
 * What is left of a fill in its tank by the books when a day begins. Unknown where visits that it was filled for are neither
 * recorded nor of that day or a later one, unless its tank was measured on their day or later: then it is what was found. Unknown
 * too where the tank was measured and nobody knew of the fill. Less than a mark of the gauge is what the books have: whoever took
 * of it, nobody finds more.
 */
export function leftNow(fill: FillOfTank, { timeZone, day: { date: plannedOn, visitIds }, open, isBesideReading, mark }: AroundFill): RestInTank["left"] {
  const left = leftBy(fill, Infinity);
  if (left.amount < mark.amount) return left;
  const ofDay = new Set(visitIds);
  const rest = fill.rests.at(-1);
  const measuredOn = rest === undefined ? null : calendarDateIn(timeZone, rest.settledAt);
  const isOpen = fill.row.plannedVisitIds.some((visitId) => {
    const visit = open.get(visitId);
    if (visit === undefined || ofDay.has(visitId)) return false;
    if (visit.date === null) return measuredOn === null;
    return visit.date <= plannedOn && (measuredOn === null || visit.date > measuredOn);
  });
  return isOpen || isBesideReading ? "unknown" : left;
}
