import { marksWithin, nearestMarks } from "#domain/quantities/rounding";
import { compareExact, type ExactQuantity, type Measure, settle } from "#domain/quantities/exact-quantity";
import { rational } from "#domain/quantities/rational";
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

type Ceilings = readonly [Ceiling, ...Ceiling[]];

/** What was asked for, what was measured out by which tool, and what kept it from more. */
export interface Rounded {
  readonly wanted: ExactQuantity<Product>;
  readonly amount: Measure<Product>;
  readonly marks: bigint | null;
  readonly tool: TicketTool | undefined;
  readonly unit: Unit;
  /** What the label's highest rate allows. */
  readonly byLabel: Ceilings;
  /** The same of the planned rate: what holds where all products rounded up would pass a limit over several of them. */
  readonly byPlan: Ceilings;
}

/** Why a plan's own rate can be the most: said once, here, for every product. */
export const ROUNDED_UP_TOO_MUCH = "(with every product rounded up, a season’s limit or the law’s nitrogen or phosphate would be passed)";

/** The lines that lead from what a rate asks for to what the ticket has measured out. */
export function roundingSteps(rounded: Rounded): readonly string[] {
  const { wanted, amount, marks, tool, unit } = rounded;
  if (wanted.exactAmount.numerator === 0n) return ["Nothing goes down."];
  const ceiling = decidingCeiling(rounded);
  const most = `${ceiling.words}, ${inUnit(ceiling.most, unit)}`;
  const limit = smallerOf(wanted, ceiling.most) === wanted ? [] : [`${inUnit(wanted, unit)} is above ${most}.`];
  if (tool === undefined) return [...limit, `No tool on file measures it, so it is not rounded: ${inUnit(amount, unit)}.`];
  const nearest = nearestMarks(wanted, tool.mark);
  const count = `${timesIn(wanted, tool.mark, unit)} marks, to the nearest ${figure(rational(nearest))}`;
  if (marks === nearest) return [count, manyTimes(marks, tool.mark, unit)];
  const past = `${manyTimes(nearest, tool.mark, unit)}, which is above ${most}`;
  if (marks !== null) return [count, `${past}; so ${figure(rational(marks))}`, manyTimes(marks, tool.mark, unit)];
  return [count, ...(nearest === 0n ? [] : [past]), ...limit, `Less than one mark can be measured, so it is not rounded: ${inUnit(amount, unit)}.`];
}

function lowest([first, ...others]: Ceilings): Ceiling {
  return others.reduce((least, one) => (compareExact(one.most, least.most) < 0 ? one : least), first);
}

/** The label's limit where it explains what the ticket has; else the plan's. */
function decidingCeiling(rounded: Rounded): Ceiling {
  const label = lowest(rounded.byLabel);
  return explains(rounded, label.most) ? label : lowest(rounded.byPlan);
}

function explains(rounded: Rounded, most: ExactQuantity<Product>): boolean {
  const { wanted, amount, marks, tool } = rounded;
  if (tool === undefined) return compareExact(settle(smallerOf(wanted, most), "down"), amount) === 0;
  const within = marksWithin(most, tool.mark);
  const nearest = nearestMarks(wanted, tool.mark);
  return (marks ?? 0n) === (within < nearest ? within : nearest);
}
