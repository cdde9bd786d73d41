import { rectangleArea } from "#domain/equipment/measured-space";
import { measurePace, milesPerHourOf, type Pace } from "#domain/equipment/pace";
import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { canonicalAmountOf, type ExactQuantity, exactly, type Measure, ratioExact } from "#domain/quantities/exact-quantity";
import { coverage, type Rate, times } from "#domain/quantities/rate";

type CarrierRate = Rate<"carrier-volume-per-area">;

/**
 * The flow a minute that one nozzle (or a wand, over its swath) must give for a carrier rate at a pace, exactly. The
 * printed forms GPA = 5940 gpm / (mph x in), GPA = 495 gpm / (mph x ft) and L/ha = 60,000 L/min / (km/h x cm) are this
 * function turned round. Refused as measurePace refuses. Source of the first: Oklahoma State, Sprayer Calibration; the
 * others are the same in other units.
 */
export function flowForCarrier(carrier: CarrierRate, width: Measure<"length">, pace: Pace): Outcome<ExactQuantity<"volume">> {
  const measured = measurePace(pace);
  if (!measured.ok) return measured;
  return accept(times(carrier, rectangleArea(measured.value.distancePerMinute, width)));
}

/**
 * The speed in miles per hour at which a flow a minute comes to a carrier rate over a width. Refused: a `width` or a
 * `flowPerMinute` of nothing. Throws at a carrier rate of zero. Source: as for {@link flowForCarrier}, turned round.
 */
export function speedForCarrier(
  carrier: CarrierRate,
  width: Measure<"length">,
  flowPerMinute: Measure<"volume">,
): Outcome<number> {
  invariant(carrier.amount > 0n, "a carrier rate is above zero");
  if (canonicalAmountOf(width).numerator === 0n) return badInput("width", "0", "more than nothing", "The width is zero.");
  if (canonicalAmountOf(flowPerMinute).numerator === 0n) {
    return badInput("flowPerMinute", "0", "more than nothing", "The flow is zero.");
  }
  const foot = exactly("ft", 1n);
  const feetPerMinute = ratioExact(coverage(carrier, flowPerMinute), rectangleArea(foot, width));
  return accept(milesPerHourOf(exactly("ft", feetPerMinute)));
}
