// The days of the main job, by the company's clock. The work was done yesterday and is entered today, so that no time of
// day at which this test runs has still to come.

export const TIME_ZONE = "America/Chicago";

/** "2026-11-24" of so many days from today. */
function dayFromToday(days: number): string {
  const today = new Intl.DateTimeFormat("en-CA", { timeZone: TIME_ZONE, year: "numeric", month: "2-digit", day: "2-digit" }).format(new Date());
  const date = new Date(`${today}T00:00:00Z`);
  date.setUTCDate(date.getUTCDate() + days);
  return date.toISOString().slice(0, 10);
}

/** The day of the work, and days around it. */
export const DAYS = { work: dayFromToday(-1), measured: dayFromToday(-12), windowEnds: dayFromToday(20), secondLook: dayFromToday(2), farAhead: dayFromToday(700) } as const;

/** "Tuesday, April 14" of a calendar date. */
export function longDayOf(date: string): string {
  return new Intl.DateTimeFormat("en-US", { timeZone: "UTC", weekday: "long", month: "long", day: "numeric" }).format(new Date(`${date}T00:00:00Z`));
}
