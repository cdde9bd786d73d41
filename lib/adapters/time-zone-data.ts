/** The edition of the time zone data by which this server reads clocks, such as "2026a"; kept with what was computed. */
export function timeZoneDataVersion(): string {
  return process.versions["tz"] ?? "not known";
}
