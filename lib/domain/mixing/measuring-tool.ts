import { distanceFrom, isMoreThanPercent } from "#domain/equipment/repeats";
import { groupedBy } from "#domain/foundation/grouping";
import { compareToLabel } from "#domain/label/label-rates";
import { canonicalAmountOf, type Measure, multiplyExact } from "#domain/quantities/exact-quantity";
import { type Quantity, sum } from "#domain/quantities/quantity";
import { times } from "#domain/quantities/rate";
import { compareRational, divideRational, rational, roundToWhole } from "#domain/quantities/rational";
import { highestOf, measureOut } from "#domain/mixing/granular-mix";
import { NEAR_ENOUGH_PERCENT } from "#domain/mixing/rounded-rate";
import { rateTimes } from "#domain/mixing/spray-mix";
import { treatmentsForRounding } from "#domain/mixing/rounding-room";
import { shareTreated } from "#domain/mixing/treated-area";
import { isSprayGear, type TicketQuestion, type TicketSpreader, type TicketSprayer, type TicketTool, type TicketTreatment } from "#domain/mixing/ticket-question";

type Planned = Pick<TicketTreatment, "rate" | "use">;

/**
 * The ground that one measured amount of product is for: each lawn of a granular product; of a spray what one load covers,
 * where its loads are of one size. The whole of the lawns: what is kept clear of them is not known before the mix is worked out.
 */
export function groundsMeasured(gear: TicketSprayer | TicketSpreader, areas: readonly Quantity<"area">[]): readonly Measure<"area">[] {
  if (!isSprayGear(gear)) return areas;
  const { carrier, capacity } = gear;
  const whole = sum("area", areas);
  const loads = capacity.amount === 0n ? 0n : roundToWhole(divideRational(canonicalAmountOf(times(carrier.rate, whole)), canonicalAmountOf(capacity)), "up");
  return whole.amount === 0n ? [] : [loads <= 1n ? whole : multiplyExact(whole, rational(1n, loads))];
}

/**
 * The tool that measures a product out: of those that show what its rate counts, the one with the coarsest marks that
 * still keeps every amount within 2 % of the plan and, where the plan is, within the label's range; coarse marks are
 * fewer to count and to miscount. Where none does, the one with the finest marks. Of equal marks the first one.
 */
export function toolFor(tools: readonly TicketTool[], planned: Planned, grounds: readonly Measure<"area">[]): TicketTool | "none" {
  const dimension = planned.rate.basis === "product-mass-per-area" ? "mass" : "volume";
  const fitting = tools.filter(({ mark }) => mark.dimension === dimension).toSorted(coarsestFirst);
  return fitting.find((tool) => grounds.every((ground) => keepsThePlan(tool, planned, ground))) ?? finestOf(fitting) ?? "none";
}

/** The question with the tool that each product is measured with, where rounding may take no more than treatmentsForRounding says. */
export function withTools(question: TicketQuestion, tools: readonly TicketTool[]): TicketQuestion {
  const asRounded = treatmentsForRounding(question);
  const toolOf = (treatment: TicketTreatment, planned: Planned) => {
    const areas = question.lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId)).map(({ area }) => shareTreated(treatment.spot, area).treatedArea);
    return toolFor(tools, planned, groundsMeasured(treatment.gear, areas));
  };
  return { ...question, treatments: question.treatments.map((treatment, index) => ({ ...treatment, tool: toolOf(treatment, asRounded[index] ?? treatment) })) };
}

/** The tool with the finest marks, the first of equals; undefined of none. */
export function finestOf(tools: readonly TicketTool[]): TicketTool | undefined {
  return tools.reduce<TicketTool | undefined>((finest, tool) => (finest === undefined || coarsestFirst(finest, tool) < 0 ? tool : finest), undefined);
}

/** By which tool each product of a fill for several visits is measured: the finest of those that the visits take for it. */
export function finestTools(treatments: readonly Pick<TicketTreatment, "productId" | "tool">[]): (productId: string) => TicketTool | undefined {
  const toolsOf = groupedBy(treatments, ({ productId }) => productId);
  return (productId) => finestOf((toolsOf.get(productId) ?? []).flatMap(({ tool }) => (tool === "none" ? [] : [tool])));
}

function coarsestFirst(one: TicketTool, other: TicketTool): number {
  return compareRational(canonicalAmountOf(other.mark), canonicalAmountOf(one.mark));
}

function keepsThePlan(tool: TicketTool, planned: Planned, ground: Measure<"area">): boolean {
  const { rate, use: { rates } } = planned;
  const wanted = rateTimes(rate, ground);
  if (canonicalAmountOf(wanted).numerator === 0n) return true;
  const { amount, marks } = measureOut<"mass" | "volume">(wanted, rateTimes(highestOf(planned), ground), tool);
  if (marks === null) return false;
  if (isMoreThanPercent(distanceFrom(canonicalAmountOf(wanted), canonicalAmountOf(amount)), NEAR_ENOUGH_PERCENT)) return false;
  const toLow = compareToLabel(rate, rates, "low");
  const isBelowLow = toLow === undefined || toLow < 0;
  return isBelowLow || compareRational(canonicalAmountOf(amount), canonicalAmountOf(rateTimes(rates.low, ground))) >= 0;
}
