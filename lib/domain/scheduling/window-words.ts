import { type CalendarDate } from "#domain/foundation/calendar-date";

function format(date: CalendarDate, options: Intl.DateTimeFormatOptions): string {
  return new Intl.DateTimeFormat("en-US", { timeZone: "UTC", ...options }).format(Date.parse(`${date}T00:00:00Z`));
}

/** "Apr 14". */
export function dayWords(date: CalendarDate): string {
  return format(date, { month: "short", day: "numeric" });
}

/** "Apr 6 to Apr 24", "Apr 14" where it opens and closes on one day, and with the years where they differ. */
export function windowWords({ opensOn, closesOn }: { readonly opensOn: CalendarDate; readonly closesOn: CalendarDate }): string {
  if (opensOn === closesOn) return dayWords(opensOn);
  if (opensOn.slice(0, 4) === closesOn.slice(0, 4)) return `${dayWords(opensOn)} to ${dayWords(closesOn)}`;
  const withYear = (date: CalendarDate) => format(date, { month: "short", day: "numeric", year: "numeric" });
  return `${withYear(opensOn)} to ${withYear(closesOn)}`;
}
