import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type RecordContent, type RecordedLicense, type RecordedTreatment } from "#domain/register/record-content";
import { localTimeAt } from "#domain/weather/local-hours";

/** The day on which the work was started, where it was done. */
export function dayOfRecord({ startedAt, timeZone }: Pick<RecordContent, "startedAt" | "timeZone">): CalendarDate {
  return localTimeAt(Date.parse(startedAt), timeZone).date;
}

/** "8.25 lb of Greenmere, 22.5 gal of fill 3". */
export function putDownWords(treatments: readonly RecordedTreatment[]): string {
  return treatments.length === 0 ? "a look" : treatments.map(({ total, productName }) => `${total.words} of ${productName}`).join(", ");
}

/** A license as it stood on the day, or that there was none. */
export function licenseWords(license: RecordedLicense | null): string {
  if (license === null) return "no license on file that stood on that day";
  const kind = license.kind === "certified-applicator" ? "certified applicator" : "registered technician";
  return `${kind}, ${license.state} ${license.number}, ${license.category}`;
}

/** The weather as it was read, or that it was not. */
export function weatherWords({ weather }: RecordContent): string {
  if (weather.kind === "not-taken") return "not taken";
  const wind = weather.windMph === 0 ? "no wind" : `wind ${String(weather.windMph)} mph from ${weather.windFrom}`;
  return `${String(weather.temperatureF)} °F, ${wind}; read from ${weather.instrument}`;
}
