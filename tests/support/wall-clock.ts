// What a clock and a calendar on the wall show, read from the platform's own time zone data and from nothing of ours: a
// second way for tests that hold the product's reckoning of time against one that knows no spans and no offsets.

export const MINUTE = 60_000;
export const DAY = 86_400_000;
const QUARTER = 15 * MINUTE;

/** A date as the calendar has it, "2026-03-08", and the minute of the day on the clock, 0 to 1,439. */
export interface Shown {
  readonly date: string;
  readonly minute: number;
}

const formats = new Map<string, Intl.DateTimeFormat>();
const quarters = new Map<string, Map<number, Shown>>();

/** What the wall shows at an instant. Read once for each quarter of an hour: nowhere do clocks change within one. */
export function shownAt(zone: string, instant: number): Shown {
  const quarter = Math.floor(instant / QUARTER);
  const own = quarters.get(zone) ?? new Map<number, Shown>();
  quarters.set(zone, own);
  const known = own.get(quarter) ?? readWall(zone, quarter * QUARTER);
  own.set(quarter, known);
  return { date: known.date, minute: known.minute + Math.floor((instant - quarter * QUARTER) / MINUTE) };
}

function readWall(zone: string, instant: number): Shown {
  const format = formats.get(zone) ?? new Intl.DateTimeFormat("en-CA", { timeZone: zone, year: "numeric", month: "2-digit", day: "2-digit", hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
  formats.set(zone, format);
  const part = Object.fromEntries(format.formatToParts(instant).map(({ type, value }) => [type, value]));
  return { date: `${part["year"] ?? ""}-${part["month"] ?? ""}-${part["day"] ?? ""}`, minute: Number(part["hour"]) * 60 + Number(part["minute"]) };
}

export const dateAt = (zone: string, instant: number) => shownAt(zone, instant).date;

/** The date so many days later on the calendar. */
export function dateAfter(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00Z`) + days * DAY).toISOString().slice(0, 10);
}

/** The date so many months later; where that month has no such day, the first of the next. */
export function dateMonthsAfter(date: string, months: number): string {
  const [year = 0, month = 0, day = 0] = date.split("-").map(Number);
  const lastDay = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
  return new Date(day > lastDay ? Date.UTC(year, month + months, 1) : Date.UTC(year, month - 1 + months, day)).toISOString().slice(0, 10);
}

/** 0 for Sunday. */
export const weekdayOn = (date: string) => new Date(`${date}T12:00Z`).getUTCDay();

/** "Saturday, Mar 7, 2026", as the papers write a date. */
export function writtenDate(date: string): string {
  return new Intl.DateTimeFormat("en-US", { timeZone: "UTC", weekday: "long", year: "numeric", month: "short", day: "numeric" }).format(Date.parse(`${date}T00:00Z`));
}

/** Every instant at which the wall shows this: one, two where clocks go back, none where they skip it. */
export function instantsShowing(zone: string, { date, minute }: Shown): readonly number[] {
  const start = Date.parse(`${date}T00:00Z`) - 15 * 60 * MINUTE;
  const found: number[] = [];
  for (let instant = start + (minute % 15) * MINUTE; instant < start + 2 * DAY; instant += QUARTER) {
    const shown = shownAt(zone, instant);
    if (shown.date === date && shown.minute === minute) found.push(instant);
  }
  return found;
}

/** The first minute at which the calendar shows a date or a later one. */
export function firstMinuteOf(zone: string, date: string): number {
  let instant = Date.parse(`${date}T00:00Z`) - 15 * 60 * MINUTE;
  while (dateAt(zone, instant) < date) instant += MINUTE;
  return instant;
}

/** How high the sun's middle stands over the horizon, in degrees, to a hundredth or so: low-precision formulas of the Astronomical Almanac, from memory. */
export function sunElevationDegrees(instant: number, { latitudeDegrees, longitudeDegrees }: { readonly latitudeDegrees: number; readonly longitudeDegrees: number }): number {
  const rad = (degrees: number) => (degrees * Math.PI) / 180;
  const days = instant / DAY + 2_440_587.5 - 2_451_545;
  const anomaly = rad(357.529 + 0.985_600_28 * days);
  const ecliptic = rad(280.459 + 0.985_647_36 * days + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly));
  const tilt = rad(23.439 - 0.000_000_36 * days);
  const declination = Math.asin(Math.sin(tilt) * Math.sin(ecliptic));
  const rightAscension = Math.atan2(Math.cos(tilt) * Math.sin(ecliptic), Math.cos(ecliptic));
  const hourAngle = rad((18.697_374_558 + 24.065_709_824_419_08 * days) * 15 + longitudeDegrees) - rightAscension;
  const latitude = rad(latitudeDegrees);
  return (Math.asin(Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle)) * 180) / Math.PI;
}
