import { type CalendarDate, formatShortDate } from "#domain/foundation/calendar-date";
import { calendarDayOf, dayOf } from "#application/stored-day";
import { type Work } from "#application/use-case";

/** A visit that is open on a day and on no truck. */
export interface OpenVisit {
  readonly visitId: string;
  readonly name: string;
  readonly propertyId: string;
  readonly street: string;
  readonly city: string;
  readonly clientName: string;
  readonly closesOn: CalendarDate;
  readonly isPastItsWindow: boolean;
  /** Why it should not go out that day, as a sentence; null where nothing is known against it. */
  readonly against: string | null;
}

/** The open visits of a day, the first to close first, and how many there are in all. */
export interface OpenVisits {
  readonly visits: readonly OpenVisit[];
  readonly count: number;
}

/** As many as a page lists; the rest are counted. */
const MOST_LISTED = 60;

interface OpenRow {
  visit_id: string;
  name: string;
  property_id: string;
  street: string;
  city: string;
  client_name: string;
  standing: string;
  closes_on: Date;
  lawns: bigint;
  matching: bigint;
}

/** The planned visits whose window is open on the day, or over, and that are on no truck's day: one query. */
export async function openVisitsOn(work: Work, date: CalendarDate): Promise<OpenVisits> {
  const rows = await work.tx.$queryRaw<OpenRow[]>`
    SELECT v.visit_id, v.name, v.property_id, p.street, p.city, c.name AS client_name, c.standing, v.closes_on,
           (SELECT count(*) FROM zone z WHERE z.company_id = v.company_id AND z.property_id = v.property_id AND z.removed_at IS NULL) AS lawns,
           count(*) OVER () AS matching
    FROM visit v
    JOIN property p ON p.company_id = v.company_id AND p.property_id = v.property_id
    JOIN client c ON c.company_id = p.company_id AND c.client_id = p.client_id
    LEFT JOIN stop s ON s.company_id = v.company_id AND s.visit_id = v.visit_id
    WHERE v.company_id = ${work.company.companyId}::uuid AND v.state = 'planned' AND v.opens_on <= ${dayOf(date)}::date AND s.visit_id IS NULL
    ORDER BY v.closes_on, p.city, p.street, v.visit_id
    LIMIT ${MOST_LISTED}`;
  return {
    count: Number(rows[0]?.matching ?? 0n),
    visits: rows.map((row) => {
      const closesOn = calendarDayOf(row.closes_on);
      return {
        visitId: row.visit_id,
        name: row.name,
        propertyId: row.property_id,
        street: row.street,
        city: row.city,
        clientName: row.client_name,
        closesOn,
        isPastItsWindow: closesOn < date,
        against: againstIt(row, closesOn, date),
      };
    }),
  };
}

function againstIt({ standing, lawns }: OpenRow, closesOn: CalendarDate, date: CalendarDate): string | null {
  if (standing === "paused") return "The customer is paused.";
  if (standing === "left") return "The customer has left.";
  if (lawns === 0n) return "No lawn is measured there.";
  return closesOn < date ? `Its window closed on ${formatShortDate(closesOn)}.` : null;
}
