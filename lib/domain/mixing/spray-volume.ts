import { distanceFrom, isMoreThanPercent } from "#domain/equipment/repeats";
import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { canonicalAmountOf, type ExactQuantity, type Measure, multiplyExact, settle } from "#domain/quantities/exact-quantity";
import { formatQuantitiesApart } from "#domain/quantities/format-quantity";
import { formatRatesApart } from "#domain/quantities/format-rate";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { compareRates, type Rate, rateFrom, times } from "#domain/quantities/rate";
import { compareRational, rational, subtractRational } from "#domain/quantities/rational";
import { nearestMarks } from "#domain/quantities/rounding";
import { CARE_ABOVE_PERCENT, NEAR_ENOUGH_PERCENT } from "#domain/mixing/rounded-rate";
import { type TicketSprayer, type TicketTreatment } from "#domain/mixing/ticket-question";

/**
 * Ground and spray are kept in whole canonical units, so that a volume is off by a few of them. A hundred, 0.16 nanoliters,
 * are less than any gauge shows: nothing is left over, or short of a label, by less.
 */
const ROOM_OF_UNITS = rational(100n);

function isAbove(one: Measure<"volume">, other: Measure<"volume">): boolean {
  return compareRational(subtractRational(canonicalAmountOf(one), canonicalAmountOf(other)), ROOM_OF_UNITS) > 0;
}

type OfLabel = Pick<TicketTreatment, "label" | "use">;
type Carrier = Rate<"carrier-volume-per-area">;

function carriersIn(tank: readonly OfLabel[]) {
  return tank.flatMap(({ label: { productName }, use: { carrier } }) => (typeof carrier === "string" ? [] : [{ productName, low: carrier.low, high: carrier.high }]));
}

/**
 * The least finished spray that the labels in a tank want on this ground; undefined where none says. One that wants more
 * than the sprayer puts out is held for that, and no mark of a gauge mends it.
 */
export function leastSpray(tank: readonly OfLabel[], puts: Carrier, area: Quantity<"area">): ExactQuantity<"volume"> | undefined {
  const [first, ...others] = carriersIn(tank).flatMap(({ low }) => (compareRates(low, puts) <= 0 ? [low] : []));
  return first === undefined ? undefined : times(others.reduce((most, low) => (compareRates(low, most) > 0 ? low : most), first), area);
}

/** The label in a tank that wants less finished spray on this ground than all that is mixed; of several the one that wants least. */
export function passedLabel(tank: readonly OfLabel[], finished: Quantity<"volume">, area: Quantity<"area">): { readonly productName: string; readonly high: Carrier } | undefined {
  const [first, ...others] = carriersIn(tank).filter(({ high }) => isAbove(finished, times(high, area)));
  return others.reduce((least, one) => (least !== undefined && compareRates(one.high, least.high) < 0 ? one : least), first);
}

/**
 * The marks that so much spray is mixed to: the nearest, and the next one up where that would leave the ground more than
 * 2 % short of what the sprayer puts out, a house rule, or short of the least that a label wants. Throws for no spray.
 */
export function marksFor(taken: ExactQuantity<"volume">, tankMark: Measure<"volume">, least?: ExactQuantity<"volume">): bigint {
  const marks = nearestMarks(taken, tankMark);
  const mixed = multiplyExact(tankMark, rational(marks));
  return isTooLittle(mixed, taken) || (least !== undefined && isAbove(least, mixed)) ? marks + 1n : marks;
}

/** Whether so much spray is more than 2 % short of what the ground takes. */
export function isTooLittle(mixed: Measure<"volume">, taken: ExactQuantity<"volume">): boolean {
  const off = distanceFrom(taken.exactAmount, canonicalAmountOf(mixed));
  return off.numerator < 0n && isMoreThanPercent(off, NEAR_ENOUGH_PERCENT);
}

/** What is left of a tank when its ground has what it takes. */
export function leftOver(finished: Quantity<"volume">, taken: Quantity<"volume">): Quantity<"volume"> {
  return fromAmount("volume", isAbove(finished, taken) ? finished.amount - taken.amount : 0n);
}

/** A tank as it is mixed for its ground. */
interface MixedTank {
  readonly gear: TicketSprayer;
  readonly products: readonly OfLabel[];
  readonly finished: Quantity<"volume">;
  readonly area: Quantity<"area">;
  /** Whether each product is measured for the spray that it is in, and the rest is left; else for the ground. */
  readonly isAtStrength: boolean;
}

/**
 * Says so where the marks of the gauge make more than 2 % more spray than the ground takes, and with care above 10 %; and
 * by however little they do, where all of it on the ground would be more than a label wants there.
 */
export function moreThanTaken({ gear: { name, carrier }, products, finished, area, isAtStrength }: MixedTank): readonly Finding[] {
  const taken = times(carrier.rate, area);
  const off = distanceFrom(taken.exactAmount, rational(finished.amount));
  const passed = passedLabel(products, finished, area);
  if (off.numerator <= 0n || (!isMoreThanPercent(off, NEAR_ENOUGH_PERCENT) && passed === undefined)) return [];
  const [mixed, needed] = formatQuantitiesApart(finished, settle(taken, "nearest"), "us");
  const spread = rateFrom("carrier-volume-per-area", finished, area);
  const words = {
    rule: "spray-more-than-taken",
    source: "house",
    what: `Mixed for this visit alone, the marks of the gauge of ${name} make more spray than its ground takes.`,
    figure: `They make ${mixed} where ${needed} are taken. ${isAtStrength ? leftWords(spread, passed) : spreadWords(spread, carrier.rate)}`,
    toDo: isAtStrength ? "Take a smaller sprayer with finer marks, or use the rest where it is labeled." : "Spray all of it evenly on this ground, or take a smaller sprayer with finer marks.",
    about: [name],
  } as const;
  return [isMoreThanPercent(off, CARE_ABOVE_PERCENT) ? takeCare(words) : note(words)];
}

function spreadWords(spread: Carrier, puts: Carrier): string {
  const [becomes, asMeasured] = formatRatesApart(spread, puts, "us");
  return `The product for this ground is in all of it: spread evenly, that is ${becomes} in place of ${asMeasured}.`;
}

function leftWords(spread: Carrier, passed: ReturnType<typeof passedLabel>): string {
  const left = "It is mixed at its strength, and the rest is left.";
  if (passed === undefined) return left;
  const [becomes, most] = formatRatesApart(spread, passed.high, "us");
  return `${left} All of it on this ground would be ${becomes}; the label of ${passed.productName} wants ${most} at most.`;
}
