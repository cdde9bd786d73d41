import { type CalendarDate, formatShortDate } from "#domain/foundation/calendar-date";

// Made once: making a format costs far more than using it.
const DAY = new Intl.DateTimeFormat("en-US", { timeZone: "UTC", month: "short", day: "numeric" });

/** "Apr 14". */
export function dayWords(date: CalendarDate): string {
  return DAY.format(Date.parse(`${date}T00:00:00Z`));
}

/** "Apr 6 to Apr 24", "Apr 14" where it opens and closes on one day, and with the years where they differ. */
export function windowWords({ opensOn, closesOn }: { readonly opensOn: CalendarDate; readonly closesOn: CalendarDate }): string {
  if (opensOn === closesOn) return dayWords(opensOn);
  if (opensOn.slice(0, 4) === closesOn.slice(0, 4)) return `${dayWords(opensOn)} to ${dayWords(closesOn)}`;
  return `${formatShortDate(opensOn)} to ${formatShortDate(closesOn)}`;
}
