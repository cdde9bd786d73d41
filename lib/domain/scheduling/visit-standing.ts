import { type CalendarDate } from "#domain/foundation/calendar-date";

/** Where a visit stands, in the order in which a list counts them. */
export const VISIT_STANDINGS = ["past-its-window", "open", "on-a-day", "waiting", "done", "part-done", "not-done"] as const;
export type VisitStanding = (typeof VISIT_STANDINGS)[number];

/** What of a visit says where it stands on a day. */
export interface VisitDates {
  readonly opensOn: CalendarDate;
  readonly closesOn: CalendarDate;
  readonly state: "planned" | "done" | "part-done" | "not-done";
  /** The day of the route that the visit is on, or null while it is on none. */
  readonly stopOn: CalendarDate | null;
}

/**
 * Where a visit stands on a day. What was done or called off stays so. A planned visit is on a day as long as that day
 * has not passed, whatever its window says; a day that passed without a record counts for nothing. Both ends of the
 * window belong to it.
 */
export function visitStanding({ opensOn, closesOn, state, stopOn }: VisitDates, today: CalendarDate): VisitStanding {
  if (state !== "planned") return state;
  if (stopOn !== null && stopOn >= today) return "on-a-day";
  if (today < opensOn) return "waiting";
  return today <= closesOn ? "open" : "past-its-window";
}

/** The first day on which a visit may still be: when it opens, or today where it has opened. */
export function firstDayOpen({ opensOn }: Pick<VisitDates, "opensOn">, today: CalendarDate): CalendarDate {
  return opensOn > today ? opensOn : today;
}

/** How many visits stand where. */
export function countStandings(standings: readonly VisitStanding[]): Readonly<Record<VisitStanding, number>> {
  const none = Object.fromEntries(VISIT_STANDINGS.map((standing) => [standing, 0])) as Record<VisitStanding, number>;
  for (const standing of standings) none[standing] += 1;
  return none;
}
