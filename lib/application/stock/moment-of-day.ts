import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { type Work } from "#application/use-case";

/**
 * The moment at which something counts as having happened when only its day is known: now for today, else noon of that
 * day in universal time, which is the same day in every time zone that a company can have.
 */
export function momentOfDay(work: Pick<Work, "company" | "now">, day: CalendarDate): Date {
  const today = calendarDateIn(work.company.timeZone, work.now.getTime());
  return day === today ? work.now : new Date(`${day}T12:00:00Z`);
}
