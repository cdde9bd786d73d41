import { isMoreThanPercent, percentInWords } from "#domain/equipment/repeats";
import { densityFactor } from "#domain/equipment/spray-density";
import { SPRAYER_TOLERANCE } from "#domain/equipment/target-rate";
import { type Finding, takeCare } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { knownDensity } from "#domain/label/label-facts";
import { type Density, densityIn, WATER } from "#domain/quantities/density";
import { formatRatesApart } from "#domain/quantities/format-rate";
import { scaleRate } from "#domain/quantities/rate";
import { addRational, compareRational, divideRational, multiplyRational, ONE, type Rational, reduce, subtractRational, toDecimalString, ZERO } from "#domain/quantities/rational";
import { type SprayMix, type SprayTreatment } from "#domain/mixing/spray-mix";

function ratioOf({ mass, volume }: Density): Rational {
  return { numerator: mass, denominator: volume };
}

/** What a finished spray weighs, and the products that were taken for water because their density is not on file. */
export interface DensityOfMix {
  readonly density: Density;
  readonly takenForWater: readonly string[];
}

/**
 * What a finished spray weighs: water and products side by side, whose volumes are taken to add up (common practice).
 * Products that leave no room for water, which is held elsewhere, weigh what they weigh themselves. One whose density is
 * not on file, as of much that is dry, is taken for water, so that what the others weigh is still told. Undefined where
 * none has a density.
 */
export function densityOfMix(treatments: readonly SprayTreatment[], { products }: Pick<SprayMix, "products">): DensityOfMix | undefined {
  let [share, mass] = [ZERO, ZERO];
  const takenForWater: string[] = [];
  for (const { line, productName, concentration } of products) {
    const treatment = treatments.find((one) => one.line === line);
    const known = treatment === undefined ? undefined : knownDensity(treatment.label);
    if (known === undefined) takenForWater.push(treatment?.label.productName ?? productName);
    const density = known ?? WATER;
    const found: Rational = { numerator: concentration.amount, denominator: concentration.per };
    const volume = concentration.basis === "product-volume-per-spray-volume" ? found : divideRational(found, ratioOf(density));
    share = addRational(share, volume);
    mass = addRational(mass, multiplyRational(volume, ratioOf(density)));
  }
  if (takenForWater.length === products.length) return undefined;
  const isFull = compareRational(share, ONE) >= 0;
  const water = isFull ? ZERO : multiplyRational(subtractRational(ONE, share), ratioOf(WATER));
  const whole = reduce(divideRational(addRational(water, mass), isFull ? share : ONE));
  return { density: { mass: whole.numerator, volume: whole.denominator }, takenForWater };
}

/** " with Clingwell taken for water, whose density is not on file", or nothing. */
function takenForWaterWords({ takenForWater }: DensityOfMix): string {
  return takenForWater.length === 0 ? "" : ` with ${listWords(takenForWater)} taken for water, whose density is not on file`;
}

function poundsAGallon(density: Density): string {
  return `${toDecimalString(densityIn(density, "lb per gal"), 2, "nearest")} lb a gallon`;
}

/**
 * A spray that is heavier or lighter than what the sprayer was calibrated for comes slower or faster, by the root of the
 * two densities. Where that is farther off than a calibrated rate may be, it wants care.
 */
export function checkDensity(treatments: readonly SprayTreatment[], mix: SprayMix): readonly Finding[] {
  const own = densityOfMix(treatments, mix);
  if (own === undefined) return [];
  const { carrier, gearName } = mix;
  const calibrated = carrier.density ?? WATER;
  const slower = divideRational(densityFactor(calibrated), densityFactor(own.density));
  const overPlanned = reduce(subtractRational(slower, ONE));
  if (!isMoreThanPercent(overPlanned, SPRAYER_TOLERANCE.percent)) return [];
  const [puts, planned] = formatRatesApart(scaleRate(carrier.rate, slower), carrier.rate, "us");
  const isHeavier = overPlanned.numerator < 0n;
  return [
    takeCare({
      rule: "calibration-of-another-density",
      source: SPRAYER_TOLERANCE.source,
      what: `This spray is ${isHeavier ? "heavier" : "lighter"} than what ${gearName} was calibrated for, so it comes ${isHeavier ? "slower" : "faster"}: ${percentInWords(overPlanned)} ${isHeavier ? "less" : "more"}.`,
      figure: `It weighs ${poundsAGallon(own.density)}${takenForWaterWords(own)}, against ${poundsAGallon(calibrated)}; it puts out ${puts}, and the ticket counts with ${planned}.`,
      toDo: "Calibrate with this spray, or with water and this spray’s density, before this visit.",
      citation: "University of Nebraska CropWatch 2016, https://cropwatch.unl.edu/2016/setting-sprayer-flow-rate-non-water-solutions",
      about: [gearName, ...treatments.map(({ label }) => label.productName)],
    }),
  ];
}
