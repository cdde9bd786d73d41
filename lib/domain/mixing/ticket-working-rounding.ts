import { canonicalAmountOf, compareExact, type ExactQuantity, type Measure, multiplyExact } from "#domain/quantities/exact-quantity";
import { divideRational, rational, roundToWhole } from "#domain/quantities/rational";
import { type Unit } from "#domain/quantities/units";
import { smallerOf } from "#domain/mixing/granular-mix";
import { type TicketTool } from "#domain/mixing/ticket-question";
import { figure, inUnit, manyTimes, timesIn } from "#domain/mixing/ticket-working-words";

type Product = "mass" | "volume";

/** A limit that rounding must not pass, in words that follow "above". */
export interface Ceiling {
  readonly words: string;
  readonly most: ExactQuantity<Product>;
}

export interface Rounded {
  readonly wanted: ExactQuantity<Product>;
  readonly amount: Measure<Product>;
  readonly marks: bigint | null;
  readonly tool: TicketTool | undefined;
  readonly unit: Unit;
  readonly ceilings: readonly [Ceiling, ...Ceiling[]];
}

const NOT_ABOVE_PLAN = "what is planned, and with every product rounded up a season’s limit or the law’s nitrogen would be passed";

/** The lines that lead from what a rate asks for to what the ticket has measured out. */
export function roundingSteps(rounded: Rounded): readonly string[] {
  const { wanted, amount, marks, tool, unit } = rounded;
  if (wanted.exactAmount.numerator === 0n) return ["Nothing goes down."];
  if (tool === undefined) return [...atMost(rounded), `No tool on file measures it, so it is not rounded: ${inUnit(amount, unit)}.`];
  const nearest = roundToWhole(divideRational(wanted.exactAmount, canonicalAmountOf(tool.mark)), "nearest");
  const count = `${timesIn(wanted, tool.mark, unit)} marks, to the nearest ${figure(rational(nearest))}`;
  if (marks === nearest) return [count, manyTimes(marks, tool.mark, unit)];
  const past = nearest === 0n ? [] : [`${manyTimes(nearest, tool.mark, unit)}, which is above ${ceilingWords(rounded, tool, nearest)}`];
  if (marks === null) return [count, ...past, `Less than one mark can be measured, so it is not rounded: ${inUnit(amount, unit)}.`];
  return [count, ...past, manyTimes(marks, tool.mark, unit)];
}

function lowestCeiling({ ceilings: [first, ...others] }: Rounded): Ceiling {
  return others.reduce((lowest, one) => (compareExact(one.most, lowest.most) < 0 ? one : lowest), first);
}

function atMost(rounded: Rounded): readonly string[] {
  const { words, most } = lowestCeiling(rounded);
  if (smallerOf(rounded.wanted, most) === rounded.wanted) return [];
  return [`${inUnit(rounded.wanted, rounded.unit)} is above ${words}, ${inUnit(most, rounded.unit)}.`];
}

/** The label's own limit where it is what keeps from the nearest mark; else it is one over several products or a season. */
function ceilingWords(rounded: Rounded, tool: TicketTool, nearest: bigint): string {
  const { words, most } = lowestCeiling(rounded);
  const onMark = multiplyExact<Product>(tool.mark, rational(nearest));
  return compareExact(most, onMark) < 0 ? `${words}, ${inUnit(most, rounded.unit)}` : NOT_ABOVE_PLAN;
}
