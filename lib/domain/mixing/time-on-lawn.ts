import { averageOf } from "#domain/equipment/repeats";
import { readAmount, readMinutes, readSpeed, SECONDS_PER_MINUTE, type TypedSpreaderPace } from "#domain/equipment/typed-test";
import { measurePace, minutesFromSeconds, type Pace } from "#domain/equipment/pace";
import { type SprayerTest } from "#domain/equipment/sprayer-calibration";
import { invariant } from "#domain/foundation/invariant";
import { canonicalAmountOf, exactly, fromExactAmount, type Measure, measureInUnit } from "#domain/quantities/exact-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { divideRational, toNumber } from "#domain/quantities/rational";

/** Left out where a calibration found it; nominal where it is how fast somebody means to go. */
interface PaceBasis {
  readonly basis?: "nominal";
}

/** How fast somebody covers ground with a machine, as a calibration found it or as it is meant. */
export type LawnPace =
  | (PaceBasis & { readonly kind: "timed-ground"; readonly groundPerMinute: Measure<"area"> })
  | (PaceBasis & { readonly kind: "swath-and-speed"; readonly swath: Measure<"length">; readonly distancePerMinute: Measure<"length"> })
  | { readonly kind: "not-on-file" };

/** Nobody has timed it. */
export const NO_PACE: LawnPace = { kind: "not-on-file" };

/** The same pace as one that nobody has timed. */
export function asNominal(pace: LawnPace): LawnPace {
  return pace.kind === "not-on-file" ? pace : { ...pace, basis: "nominal" };
}

/**
 * The pace in a sprayer's calibration: a gun's timed coverings with all their steps, a wand's swath and walk, a boom's
 * drive with the swath that is on file for it. A measured area that only says what it took has none.
 */
export function paceOfTest(test: SprayerTest, swathOnFile: Quantity<"length"> | null): LawnPace {
  if (test.method === "small-area") return NO_PACE;
  if (test.method === "gun") {
    const minutesPerArea = test.coverings.map(({ area, seconds }) => divideRational(minutesFromSeconds(seconds), canonicalAmountOf(area)));
    if (minutesPerArea.length === 0) return NO_PACE;
    const { numerator, denominator } = averageOf(minutesPerArea);
    return { kind: "timed-ground", groundPerMinute: fromExactAmount("area", { numerator: denominator, denominator: numerator }) };
  }
  return paceOver(test.method === "backpack" ? test.swath : swathOnFile, test.pace);
}

function paceOver(swath: Measure<"length"> | null, pace: Pace): LawnPace {
  const measured = measurePace(pace);
  return swath === null || !measured.ok ? NO_PACE : { kind: "swath-and-speed", swath, distancePerMinute: measured.value.distancePerMinute };
}

/**
 * The pace in a spreader's calibration: the minutes that 1,000 sq ft take with all their steps, or a speed with the swath
 * of that day, or else the one on file. None where it was not asked or not given.
 */
export function paceOfSpreader({ swath = "", speedMph = "", minutesPerThousand = "" }: TypedSpreaderPace, swathOnFile: Quantity<"length"> | null): LawnPace {
  if (minutesPerThousand !== "") {
    const minutes = readMinutes("minutesPerThousand", minutesPerThousand);
    if (!minutes.ok) return NO_PACE;
    const { numerator, denominator } = minutesFromSeconds(minutes.value * SECONDS_PER_MINUTE);
    return { kind: "timed-ground", groundPerMinute: exactly("sq ft", { numerator: 1000n * denominator, denominator: numerator }) };
  }
  const width = swath === "" ? undefined : readAmount("swath", swath, "length");
  const speed = readSpeed("speedMph", speedMph);
  return speed.ok ? paceOver(width?.ok === true ? width.value : swathOnFile, { kind: "speed", milesPerHour: speed.value }) : NO_PACE;
}

/** What a turn at the end of a lane takes. Common practice, until a crew has timed it. */
export const SECONDS_PER_TURN = 5;

/** The minutes of work on a lawn without parking, filling and walking round. An estimate, and in whose figures. */
export interface TimeOnLawn {
  readonly minutes: number;
  readonly turns: number;
  readonly basis: "calibration" | "nominal" | "house";
}

/** How many lanes of a swath a lawn takes, as if it were a square with such a side, both in feet; one that is not full is walked whole. */
export function lanesAcross(sideFeet: number, swathFeet: number): number {
  return Math.ceil(sideFeet / swathFeet - 1e-9);
}

/**
 * How long one machine takes on some lawns: lanes of a swath at a speed with a turn between two of them, on each lawn
 * as if it were square; or ground that was timed as a whole, turns and all. Without a pace the company's own minutes
 * for 1,000 sq ft stand in, turns and passes included. A lawn on which nothing goes down takes nothing. In minutes.
 * Common practice.
 */
export function timeOnLawns(areas: readonly Quantity<"area">[], pace: LawnPace, passes: 1 | 2, houseMinutesPerThousandSquareFeet: number): TimeOnLawn {
  const squareFeet = areas.map((area) => toNumber(measureInUnit(area, "sq ft"))).filter((feet) => feet > 0);
  const whole = squareFeet.reduce((sum, feet) => sum + feet, 0);
  switch (pace.kind) {
    case "not-on-file":
      return { minutes: (whole * houseMinutesPerThousandSquareFeet) / 1000, turns: 0, basis: "house" };
    case "timed-ground":
      return { minutes: (passes * whole) / toNumber(measureInUnit(pace.groundPerMinute, "sq ft")), turns: 0, basis: pace.basis ?? "calibration" };
    case "swath-and-speed": {
      const swathFeet = toNumber(measureInUnit(pace.swath, "ft"));
      const feetPerMinute = toNumber(measureInUnit(pace.distancePerMinute, "ft"));
      const lanesOf = (feet: number) => lanesAcross(Math.sqrt(feet), swathFeet);
      const turns = passes * squareFeet.reduce((sum, feet) => sum + lanesOf(feet) - 1, 0);
      const straight = passes * squareFeet.reduce((sum, feet) => sum + (lanesOf(feet) * Math.sqrt(feet)) / feetPerMinute, 0);
      return { minutes: straight + (turns * SECONDS_PER_TURN) / SECONDS_PER_MINUTE, turns, basis: pace.basis ?? "calibration" };
    }
  }
}

/**
 * "About 14 min, by the calibration, with 9 turns"; whole minutes, rounded up, at least one where anything is done.
 * Throws for what is no time.
 */
export function timeInWords({ minutes, turns, basis }: TimeOnLawn): string {
  invariant(minutes >= 0 && Number.isFinite(minutes), "time on a lawn is an amount");
  if (minutes === 0) return "none";
  const whole = `About ${String(Math.max(1, Math.ceil(minutes - 1e-9)))} min`;
  if (basis === "house") return `${whole}, by the company’s figure; no pace is on file`;
  const at = basis === "nominal" ? "at the nominal pace, which nobody has timed" : "at the pace of the calibration";
  return turns === 0 ? `${whole}, ${at}` : `${whole}, ${at}, with ${String(turns)} ${turns === 1 ? "turn" : "turns"}`;
}
