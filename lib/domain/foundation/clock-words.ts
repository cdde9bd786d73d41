const HOUR_MINUTES = 60;
const DAY_MINUTES = 24 * HOUR_MINUTES;

/** Minutes count from midnight; whole days drop out. */
function onTwelveHours(minute: number): { readonly hour: number; readonly rest: string; readonly half: "am" | "pm" } {
  const ofDay = ((minute % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES;
  const hour = Math.floor(ofDay / HOUR_MINUTES);
  return { hour: hour % 12 || 12, rest: String(ofDay % HOUR_MINUTES).padStart(2, "0"), half: hour < 12 ? "am" : "pm" };
}

/**
 * A time of day as it is written here: "7:40 am", "3 pm" on the hour. Minutes count from midnight; whole days drop out.
 * Noon is "12 pm", midnight "12 am".
 */
export function clockWords(minute: number): string {
  const { hour, rest, half } = onTwelveHours(minute);
  return rest === "00" ? `${hour} ${half}` : `${hour}:${rest} ${half}`;
}

/** A time of day with its minutes on the hour too, for columns and papers: "8:50 am", "12:00 pm". */
export function clockWordsInFull(minute: number): string {
  const { hour, rest, half } = onTwelveHours(minute);
  return `${hour}:${rest} ${half}`;
}

/**
 * A time of day by its name where it has one: "midnight", "noon", else "7:40 am". Minutes count from midnight, from
 * zero up.
 */
export function namedClockWords(minute: number): string {
  const ofDay = minute % DAY_MINUTES;
  if (ofDay === 0) return "midnight";
  return ofDay === DAY_MINUTES / 2 ? "noon" : clockWords(minute);
}

/** A length of time in whole minutes from zero up, as it is written here: "45 min", "6 h", "1 h 30 min". */
export function durationWords(minutes: number): string {
  const hours = Math.floor(minutes / HOUR_MINUTES);
  const rest = minutes % HOUR_MINUTES;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}
