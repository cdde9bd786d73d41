import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { type ExactQuantity, fromExactAmount } from "#domain/quantities/exact-quantity";
import { parseLength } from "#domain/quantities/parse-length";
import { rational, roundQuotient } from "#domain/quantities/rational";
import { isZero, type Quantity } from "#domain/quantities/quantity";

const FEWEST_CANS = 3;
const MOST_MINUTES = 1440;
const MINUTES_AN_HOUR = 60n;

/** What a station put into its catch cans: the average depth, and in how many minutes. */
export interface CatchCanTest {
  readonly averageDepth: Quantity<"length">;
  readonly minutes: number;
  readonly cans: number;
}

/**
 * Reads a catch-can test: the depth in each can, between commas ("0.2, 0.25, 0.2 in"; a number alone is inches), and
 * the minutes that the station ran. The average is rounded once, to the nearest canonical length. Fewer than three cans
 * say nothing of an area and are refused (common practice asks for more), as are cans without any water and minutes
 * that are no whole number from 1 to 1,440.
 */
export function readCatchCans(depths: string, minutes: string): Outcome<CatchCanTest> {
  const parts = depths.split(/[,;\n]/u).map((part) => part.trim()).filter((part) => part !== "");
  if (parts.length < FEWEST_CANS) {
    return badInput("depths", `${String(parts.length)} cans`, `${String(FEWEST_CANS)} cans or more`, "Give the depth in three cans or more, with commas between.");
  }
  let total = 0n;
  for (const part of parts) {
    const read = parseLength(part, { field: "depths", unitWhenNone: "in" });
    if (!read.ok) return read;
    total += read.value.quantity.amount;
  }
  const averageDepth = { dimension: "length", amount: roundQuotient(total, BigInt(parts.length), "nearest") } as const;
  if (isZero(averageDepth)) return badInput("depths", depths, "some water", "No can caught any water: the test says nothing.");
  const typed = minutes.trim();
  const whole = /^\d{1,4}$/u.test(typed) ? Number(typed) : 0;
  if (whole < 1 || whole > MOST_MINUTES) {
    return badInput("minutes", typed === "" ? "nothing" : typed, "whole minutes from 1 to 1,440", "Give how many whole minutes the station ran.");
  }
  return accept({ averageDepth, minutes: whole, cans: parts.length });
}

/** What a station puts down in an hour, exactly, from its test. The minutes of a test are above zero. */
export function depthPerHour(test: Pick<CatchCanTest, "averageDepth" | "minutes">): ExactQuantity<"length"> {
  return fromExactAmount("length", rational(test.averageDepth.amount * MINUTES_AN_HOUR, BigInt(test.minutes)));
}
