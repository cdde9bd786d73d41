import { squareRoot } from "#domain/equipment/nozzle";
import { type Density, densityIn } from "#domain/quantities/density";
import { type Rate, scaleRate } from "#domain/quantities/rate";
import { divideRational, ONE, type Rational, reduce, toNumber } from "#domain/quantities/rational";

/**
 * What a calibration with water is times for a spray of another density: the square root of its specific gravity, to
 * twelve decimal places. 28-0-0 of 10.65 lb/gal has 1.13. Water is taken at 1 kg/L; the extension tables divide by 8.34
 * lb/gal and round to two places, which comes to the same there. Source: University of Nebraska-Lincoln CropWatch 2016,
 * https://cropwatch.unl.edu/2016/setting-sprayer-flow-rate-non-water-solutions
 */
export function densityFactor(spray: Density): Rational {
  return reduce(squareRoot(toNumber(densityIn(spray, "kg per L"))));
}

/**
 * The rate at which a sprayer that puts out so much water puts out a spray of this density: a denser one comes slower.
 * Source: as for {@link densityFactor}.
 */
export function sprayRateFromWater(
  water: Rate<"carrier-volume-per-area">,
  spray: Density,
): Rate<"carrier-volume-per-area"> {
  return scaleRate(water, divideRational(ONE, densityFactor(spray)));
}

/**
 * The rate of water to calibrate to for a wanted rate of the spray: 22.6 gal per acre of water for 20 of 28-0-0
 * (University of Nebraska-Lincoln CropWatch 2016).
 */
export function waterRateForSpray(
  wanted: Rate<"carrier-volume-per-area">,
  spray: Density,
): Rate<"carrier-volume-per-area"> {
  return scaleRate(wanted, densityFactor(spray));
}
