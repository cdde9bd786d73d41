import { averageOf, type Uncertainty, uncertaintyOf } from "#domain/equipment/repeats";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import {
  canonicalAmountOf,
  type ExactQuantity,
  exactly,
  fromExactAmount,
  type Measure,
  measureInUnit,
  multiplyExact,
} from "#domain/quantities/exact-quantity";
import { formatFigure, sensibleDecimals } from "#domain/quantities/format-number";
import { formatQuantity, untilApart } from "#domain/quantities/format-quantity";
import { compareRational, divideRational, fromNumber, type Rational, rational, toNumber } from "#domain/quantities/rational";
import { type RangeCheck, refuseOutOfRange } from "#domain/turf/physical-range";

/** How fast somebody goes: read from a speedometer, or timed over a measured course, better several times. */
export type Pace =
  | { readonly kind: "speed"; readonly milesPerHour: number }
  | { readonly kind: "timed-course"; readonly course: Measure<"length">; readonly seconds: readonly number[] };

/** The ground that is gone over in a minute, and how far that may be off. */
export interface MeasuredPace {
  readonly distancePerMinute: ExactQuantity<"length">;
  readonly uncertainty: Uncertainty;
}

/** A walk behind a spreader begins near 1 mph and no turf sprayer works over 15. Common practice, generously. */
const SPEED_MPH = { lowest: 0.2, highest: 20 } as const;
/** Under a second nobody can time, and over two hours nobody did: a unit is wrong. Common practice. */
const TIMED_SECONDS = { lowest: 1, highest: 7200 } as const;

/** Speeds and times are taken to a millionth and a thousandth: finer than any watch. */
const SPEED_DECIMALS = 6;
const SECONDS_DECIMALS = 3;

/** One mile an hour is 88 ft a minute, exactly. */
const FEET_PER_MINUTE_AT_ONE_MPH = rational(88n);

/** Asks for a time by the watch in seconds, from 1 s to 2 h. */
export function secondsRange(field: string, words: string, seconds: number): RangeCheck {
  return { field, words, value: seconds, ...TIMED_SECONDS, unit: "s" };
}

/** Seconds by the watch as a fraction of minutes, to a thousandth of a second. Throws for what is no number. */
export function minutesFromSeconds(seconds: number): Rational {
  return divideRational(fromNumber(seconds, SECONDS_DECIMALS), rational(60n));
}

/**
 * The distance in a minute. The times of a course are averaged, and their spread is kept. Refused: `milesPerHour`
 * outside 0.2 to 20, a `course` without length or gone over at such a speed, `seconds` outside 1 s to 2 h or none at
 * all. One mile an hour is 88 ft a minute.
 */
export function measurePace(pace: Pace): Outcome<MeasuredPace> {
  if (pace.kind === "speed") return measureSpeed(pace.milesPerHour);
  if (canonicalAmountOf(pace.course).numerator === 0n) {
    return badInput("course", "0 ft", "more than nothing", "The course has no length; measure it.");
  }
  if (pace.seconds.length === 0) {
    return missingFact("seconds", "one time or more", "The course has not been timed.");
  }
  const refused = refuseOutOfRange(pace.seconds.map((seconds) => secondsRange("seconds", "The time of the course", seconds)));
  if (refused !== undefined) return refused;
  const minutes = pace.seconds.map(minutesFromSeconds);
  const perMinute = fromExactAmount("length", divideRational(canonicalAmountOf(pace.course), averageOf(minutes)));
  const impossible = refuseSpeedOfCourse(pace.course, perMinute);
  return impossible ?? accept({ distancePerMinute: perMinute, uncertainty: uncertaintyOf(minutes) });
}

/** Refuses at `course` a length and times that come to a speed nobody goes: a figure too many, or the time of a part of it. */
function refuseSpeedOfCourse(course: Measure<"length">, perMinute: Measure<"length">) {
  const speed = divideRational(measureInUnit(perMinute, "ft"), FEET_PER_MINUTE_AT_ONE_MPH);
  const isTooSlow = compareRational(speed, fromNumber(SPEED_MPH.lowest, SPEED_DECIMALS)) < 0;
  if (!isTooSlow && compareRational(speed, fromNumber(SPEED_MPH.highest, SPEED_DECIMALS)) <= 0) return undefined;
  const limit = fromNumber(isTooSlow ? SPEED_MPH.lowest : SPEED_MPH.highest, SPEED_DECIMALS);
  const words = (value: Rational, moreDecimals: number) => formatFigure(value, { decimals: Math.max(sensibleDecimals(value), 2) + moreDecimals, quarters: false });
  const [mph] = untilApart((moreDecimals) => [words(speed, moreDecimals), words(limit, moreDecimals)], false);
  const length = formatQuantity(course, "us");
  const range = `${SPEED_MPH.lowest} to ${SPEED_MPH.highest} mph`;
  const sentence = `${length} in that time are ${mph} mph; nobody goes so ${isTooSlow ? "slowly" : "fast"}. From ${range} can be meant: look at the length of the course and at its time.`;
  return badInput("course", `${length}, ${mph} mph`, range, sentence);
}

function measureSpeed(milesPerHour: number): Outcome<MeasuredPace> {
  const refused = refuseOutOfRange([
    { field: "milesPerHour", words: "The speed", value: milesPerHour, ...SPEED_MPH, unit: "mph" },
  ]);
  if (refused !== undefined) return refused;
  const footPerMinute = exactly("ft", FEET_PER_MINUTE_AT_ONE_MPH);
  const distancePerMinute = multiplyExact(footPerMinute, fromNumber(milesPerHour, SPEED_DECIMALS));
  return accept({ distancePerMinute, uncertainty: { kind: "not-given" } });
}

/** A pace in miles per hour, for a sentence or a model. One is 88 ft a minute, by definition of the mile. */
export function milesPerHourOf(distancePerMinute: Measure<"length">): number {
  return toNumber(divideRational(measureInUnit(distancePerMinute, "ft"), FEET_PER_MINUTE_AT_ONE_MPH));
}
