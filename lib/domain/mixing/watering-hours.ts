import { type Finding, hold } from "#domain/foundation/finding";
import { type Refused } from "#domain/turf/physical-range";
import { type ClockPeriod, clockSpans, refuseImpossiblePeriods } from "#domain/mixing/clock-periods";
import { intersectSpans } from "#domain/mixing/span-set";
import { type Authority, type OnFile, stated } from "#domain/weather/spray-limits";
import { type Span } from "#domain/weather/local-hours";

/** Hours of the week in which watering may run. */
export interface WateringPeriods {
  readonly periods: readonly ClockPeriod[];
}

/** When a property may be watered: by local rules, and by the days and hours its controller is set to. */
export interface WateringHours {
  readonly localRules: OnFile<WateringPeriods>;
  readonly controller: OnFile<WateringPeriods>;
}

/** Refuses hours that are on no day or end before they begin. */
export function refuseImpossibleHours(hours: WateringHours): Refused | undefined {
  return (
    refuseImpossiblePeriods("localRules", stated(hours.localRules).flatMap(({ periods }) => periods)) ??
    refuseImpossiblePeriods("controller", stated(hours.controller).flatMap(({ periods }) => periods))
  );
}

/** What of a span is within all hours that are on file. Hours that nobody knows leave it as it is; {@link unknownHours} says so. */
export function withinWateringHours(span: Span, hours: WateringHours, timeZone: string): readonly Span[] {
  return [...stated(hours.localRules), ...stated(hours.controller)].reduce<readonly Span[]>(
    (spans, { periods }) => intersectSpans(spans, clockSpans(periods, span, timeZone)),
    intersectSpans([span], [span]),
  );
}

/** The authorities behind the hours that are on file. */
export function authoritiesOfHours(hours: WateringHours): readonly Authority[] {
  return [...stated(hours.localRules), ...stated(hours.controller)].map(({ basis, source }) => ({ basis, source }));
}

/** A hold for each kind of hours that nobody has put on file. */
export function unknownHours(hours: WateringHours): readonly Finding[] {
  const missing = [
    { fact: hours.localRules, words: "the local rules on watering hours", source: "law" },
    { fact: hours.controller, words: "the days and hours of the customer's controller", source: "house" },
  ] as const;
  return missing
    .filter(({ fact }) => fact === "unknown")
    .map(({ words, source }) =>
      hold("office", {
        rule: "watering-hours-missing",
        source,
        what: `It is not on file what ${words} are, so no time for watering in can be given.`,
        toDo: "Put them on file, or put on file that there are none.",
        about: [],
      }),
    );
}
