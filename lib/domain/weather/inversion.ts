import { type Outcome, accept } from "#domain/foundation/outcome";
import { ONE_HOUR_MILLISECONDS } from "#domain/turf/hourly-series";
import { MOST_WIND, amountRange, refuseOutOfRange } from "#domain/turf/physical-range";
import { type Span } from "#domain/weather/local-hours";
import { type SunTimes } from "#domain/weather/sun-times";

/** Where the hours of an inversion are printed, and where the wind below which it is to be expected. */
export const INVERSION_SOURCE =
  "GRDC Spray Application Manual 10.8 (2025): from 1 to 2 h before sunset to about 1 h after sunrise; " +
  "National Pesticide Stewardship: wind under 3 mph";

/** Wind in mph below which air may lie in layers. Source: INVERSION_SOURCE. */
export const INVERSION_BELOW_WIND_MPH = 3;

/** The hours around the night, at the cautious end of INVERSION_SOURCE. */
const HOURS_BEFORE_SUNSET = 2;
const HOURS_AFTER_SUNRISE = 1;

/** Whether the sky lets the ground cool at night. */
export type Sky = "clear" | "cloudy" | "unknown";

/** Whether cold air may lie under warm air and carry fine drops away sideways. */
export type InversionAnswer =
  | { readonly kind: "not-expected" }
  | { readonly kind: "expected" }
  /** The time fits and the named facts, which would decide it, aren't known. */
  | { readonly kind: "cannot-rule-out"; readonly unknown: readonly ("wind" | "sky")[] };

/**
 * Says whether an inversion is to be expected in a span of time (at most a few hours of one local day), from the wind
 * in mph, the sky, and that day's sun. The night part runs from 2 h before sunset to 1 h after sunrise: the cautious
 * end of what the source gives. Where the sun stays down it is always night. Refuses a `windMph` below zero or beyond a
 * hurricane. Source: INVERSION_SOURCE. An unknown wind is left out.
 */
export function judgeInversion(
  span: Span,
  air: { readonly windMph?: number | undefined; readonly sky: Sky },
  sun: SunTimes,
): Outcome<InversionAnswer> {
  const { windMph, sky } = air;
  const refusal =
    windMph === undefined ? undefined : refuseOutOfRange([amountRange("windMph", "The wind", windMph, MOST_WIND.milesPerHour)]);
  if (refusal !== undefined) return refusal;
  const isWindy = windMph !== undefined && windMph >= INVERSION_BELOW_WIND_MPH;
  if (!isNearNight(span, sun) || sky === "cloudy" || isWindy) return accept({ kind: "not-expected" });
  const unknown = [
    ...(windMph === undefined ? (["wind"] as const) : []),
    ...(sky === "unknown" ? (["sky"] as const) : []),
  ];
  return accept(unknown.length === 0 ? { kind: "expected" } : { kind: "cannot-rule-out", unknown });
}

/** Whether a span of a local day touches the time around its night. */
function isNearNight(span: Span, sun: SunTimes): boolean {
  if (sun.kind !== "rises-and-sets") return sun.kind === "always-down";
  const nightEnds = sun.sunriseEpochMilliseconds + HOURS_AFTER_SUNRISE * ONE_HOUR_MILLISECONDS;
  const nightBegins = sun.sunsetEpochMilliseconds - HOURS_BEFORE_SUNSET * ONE_HOUR_MILLISECONDS;
  return span.fromEpochMilliseconds < nightEnds || span.untilEpochMilliseconds > nightBegins;
}
