import { type Finding, takeCare } from "#domain/foundation/finding";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { averageMeasure } from "#domain/equipment/repeats";
import { measureStation, type StationRate } from "#domain/equipment/catch-can-test";
import { canonicalAmountOf, type ExactQuantity, fromExactAmount } from "#domain/quantities/exact-quantity";
import { lengthParts } from "#domain/quantities/list-of-lengths";
import { bareNumber } from "#domain/quantities/number-with-unit";
import { parseLength } from "#domain/quantities/parse-length";
import { type Quantity, zero } from "#domain/quantities/quantity";
import { multiplyRational, type Rational, rational, roundQuotient, toNumber } from "#domain/quantities/rational";

const MINUTES_AN_HOUR = 60n;

/** A catch-can test of a station as it is stored, with the whole minutes that it ran. */
export interface StationTest {
  /** The depth in each can. Empty for a test of which only the average was kept. */
  readonly cans: readonly Quantity<"length">[];
  /** Rounded once, to the nearest canonical length. */
  readonly averageDepth: Quantity<"length">;
  readonly minutes: number;
  readonly windMph: number | "not-taken";
}

/** A test as it is typed. The wind may be empty: nobody looked. */
export interface TypedStationTest {
  readonly depths: string;
  readonly minutes: string;
  readonly wind: string;
}

/**
 * Reads a catch-can test: the depth in each can, between commas ("5, 6, 5, 6 mm", in the unit of the last; in inches where
 * no unit stands; an empty can is 0), whole minutes that the station ran, and the wind in whole mph. Refused, each at its
 * own field, is what lengthParts refuses, and what measureStation does: under four cans, cans that nobody can have caught,
 * a run outside 1 to 240 min, no possible wind; and another unit than minutes or mph.
 */
export function readStationTest({ depths, minutes, wind }: TypedStationTest): Outcome<StationTest> {
  const parts = lengthParts(depths, { field: "depths", unitWhenNone: "in" });
  if (!parts.ok) return parts;
  const cans: Quantity<"length">[] = [];
  for (const part of parts.value) {
    const read = readCan(part);
    if (!read.ok) return read;
    cans.push(read.value);
  }
  if (cans.length === 0) return badInput("depths", "nothing", "four cans or more", "Give the depth in each can, of four cans or more.");
  const ran = bareNumber("minutes", minutes, "min");
  if (!ran.ok) return ran;
  if (!/^\d{1,4}$/u.test(ran.value)) {
    return badInput("minutes", ran.value === "" ? "nothing" : ran.value, "whole minutes from 1 to 240", "Give how many whole minutes the station ran.");
  }
  const blew = bareNumber("wind", wind, "mph");
  if (!blew.ok) return blew;
  if (!/^\d{0,3}$/u.test(blew.value)) return badInput("wind", blew.value, "whole mph", "Give the wind as a whole number of mph, or leave it empty.");
  const typed = { cans, minutes: Number(ran.value), windMph: blew.value === "" ? ("not-taken" as const) : Number(blew.value) };
  const measured = stationRate("the station", typed);
  if (!measured.ok) return { ok: false, refusal: { ...measured.refusal, field: FIELD_OF[measured.refusal.field] ?? "depths" } };
  const { numerator, denominator } = canonicalAmountOf(averageMeasure("length", cans));
  return accept({ ...typed, averageDepth: { dimension: "length", amount: roundQuotient(numerator, denominator, "nearest") } });
}

/** What the fields of measureStation are called where a test is typed. */
const FIELD_OF: Readonly<Record<string, string>> = { cans: "depths", runMinutes: "minutes", windMph: "wind" };

/** True for what says that a can stayed empty: "0", "0.0 in", "0 mm". Amounts of nothing are refused elsewhere. */
export function isEmptyCan(part: string): boolean {
  return /^0+(?:\.0*)?(?: ?(?:in|mm|cm))?$/u.test(part);
}

function readCan(part: string): Outcome<Quantity<"length">> {
  if (isEmptyCan(part)) return accept(zero("length"));
  const read = parseLength(part, { field: "depths", unitWhenNone: "in" });
  return read.ok ? accept(read.value.quantity) : read;
}

function stationRate(station: string, { cans, minutes, windMph }: Omit<StationTest, "averageDepth">): Outcome<StationRate> {
  return measureStation({ station, runMinutes: minutes, cans: { kind: "depths", depths: cans }, windMph });
}

/**
 * What a station puts down in an hour, exactly, from its average. Throws for a test without minutes, which is not
 * taken.
 */
export function depthPerHour(test: Pick<StationTest, "averageDepth" | "minutes">): ExactQuantity<"length"> {
  return fromExactAmount("length", multiplyRational(canonicalAmountOf(test.averageDepth), rational(MINUTES_AN_HOUR, BigInt(test.minutes))));
}

/** How evenly a station waters, as far as its test tells, and what is to be said of the test. */
export interface StationEvenness {
  /** DU of the lower quarter and Christiansen's CU; null where the cans are not on file or can't be meant. */
  readonly uniformity: Pick<StationRate, "lowerQuarterUniformity" | "christiansenUniformity"> | null;
  readonly findings: readonly Finding[];
}

/**
 * How evenly a station waters by a test on file. A test from before cans were kept, and one that would not be taken today,
 * has no figure and wants care: its rate is an average that nobody can look behind.
 */
export function evennessOf(station: string, test: StationTest): StationEvenness {
  if (test.cans.length > 0) {
    const measured = stationRate(station, test);
    if (measured.ok) {
      const { lowerQuarterUniformity, christiansenUniformity, findings } = measured.value;
      return { uniformity: { lowerQuarterUniformity, christiansenUniformity }, findings };
    }
  }
  return {
    uniformity: null,
    findings: [
      takeCare({
        rule: "can-test-without-cans",
        source: "house",
        what: `How evenly ${station} waters is not known.`,
        figure: "Of its test only the average is on file, not the cans.",
        toDo: "Test it again, with four cans or more.",
        about: [station],
      }),
    ],
  };
}

/** "DU 67%, CU 83%", in whole percent: a test with a few cans tells no more. */
export function evennessWords({ uniformity }: StationEvenness): string {
  if (uniformity === null) return "Not known";
  const percent = (part: Rational) => `${String(Math.round(toNumber(part) * 100))}%`;
  return `DU ${percent(uniformity.lowerQuarterUniformity)}, CU ${percent(uniformity.christiansenUniformity)}`;
}
