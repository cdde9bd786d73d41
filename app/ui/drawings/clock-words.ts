const minutesOfDay = 24 * 60;

/** A time of day as it is written here: "7:40 am", "3 pm" on the hour. Minutes count from midnight; whole days drop out. */
export function clockWords(minute: number): string {
  const ofDay = ((minute % minutesOfDay) + minutesOfDay) % minutesOfDay;
  const hour = Math.floor(ofDay / 60);
  const rest = ofDay % 60;
  const written = rest === 0 ? `${hour % 12 || 12}` : `${hour % 12 || 12}:${String(rest).padStart(2, "0")}`;
  return `${written} ${hour < 12 ? "am" : "pm"}`;
}

/** A whole hour on an axis: "midnight", "noon", else as a time of day. */
export function axisClockWords(minute: number): string {
  const ofDay = minute % minutesOfDay;
  if (ofDay === 0) return "midnight";
  return ofDay === 12 * 60 ? "noon" : clockWords(minute);
}

/** A length of time: "45 min", "6 h", "1 h 30 min". */
export function durationWords(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}
