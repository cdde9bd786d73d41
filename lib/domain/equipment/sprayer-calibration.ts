import { rectangleArea } from "#domain/equipment/measured-space";
import { type SpreadLimit } from "#domain/equipment/nozzle-wear";
import { measurePace, minutesFromSeconds, type Pace, secondsRange } from "#domain/equipment/pace";
import { averageOf, combinedUncertainty, type Uncertainty, uncertaintyOf } from "#domain/equipment/repeats";
import { densityFactor, sprayRateFromWater } from "#domain/equipment/spray-density";
import { type FlowTest, measureFlow } from "#domain/equipment/sprayer-flow";
import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { type Density } from "#domain/quantities/density";
import { canonicalAmountOf, type ExactQuantity, fromExactAmount, isNothing, type Measure } from "#domain/quantities/exact-quantity";
import { type Rate, rateFromAmounts } from "#domain/quantities/rate";
import { divideRational, multiplyRational, ONE, type Rational } from "#domain/quantities/rational";
import { refuseOutOfRange } from "#domain/turf/physical-range";

/** One timed covering of a measured area at the usual pace, with a gun, in seconds by the watch. */
export interface TimedCovering {
  readonly area: Measure<"area">;
  readonly seconds: number;
}

/** One run over a measured area: what it took, or what was caught in the time that it took. */
export interface SmallAreaRun {
  readonly area: Measure<"area">;
  readonly volume: Measure<"volume">;
}

/**
 * How a sprayer was calibrated, with all that was measured. What one catch of a boom holds belongs to one spacing, and
 * all that a backpack's wand gives to its swath.
 */
export type SprayerTest =
  | (FlowTest & { readonly method: "boom"; readonly nozzleSpacing: Measure<"length">; readonly pace: Pace })
  | (FlowTest & { readonly method: "backpack"; readonly swath: Measure<"length">; readonly pace: Pace })
  | (FlowTest & { readonly method: "gun"; readonly coverings: readonly TimedCovering[] })
  | { readonly method: "small-area"; readonly runs: readonly SmallAreaRun[] };

/**
 * What was caught, and what is to be sprayed. Water that stands for a denser spray is corrected by its density. A nominal
 * flow is always one of water. A spray whose density is left out is as thin as water.
 */
export type CaughtLiquid =
  | { readonly kind: "the-spray-itself"; readonly density?: Density }
  | { readonly kind: "water-for-a-spray"; readonly sprayDensity: Density };

/** What a sprayer puts out, what it was worked out from, and how far it may be off. */
export interface SprayerCalibration {
  /** All that went in. */
  readonly test: SprayerTest;
  readonly liquid: CaughtLiquid;
  readonly basis: "measured" | "nominal";
  /** The average flow of one nozzle, or of the gun, a minute; none by the small-area method. */
  readonly flowPerMinute: ExactQuantity<"volume"> | undefined;
  /** The ground that this flow covers in a minute without turns: a nozzle's share of a boom; none by the small area. */
  readonly areaPerMinute: ExactQuantity<"area"> | undefined;
  /** As it was caught. */
  readonly caughtRate: Rate<"carrier-volume-per-area">;
  /** As the finished spray goes out. */
  readonly carrierRate: Rate<"carrier-volume-per-area">;
  /** The caught rate over the carrier rate: 1 where the spray itself was caught. */
  readonly densityFactor: Rational;
  readonly uncertainty: Uncertainty;
  readonly findings: readonly Finding[];
}

/** How many timed runs a gun takes. Source: National Pesticide Stewardship (NC State, Buhler). */
const FEWEST_GUN_RUNS = 3;

/** What a rate is made of: a flow by the watch, or nothing of the kind, times the minutes that an area takes. */
interface Measured {
  readonly basis: "measured" | "nominal";
  readonly flowPerMinute: ExactQuantity<"volume"> | undefined;
  readonly areaPerMinute: ExactQuantity<"area"> | undefined;
  readonly caughtRate: Rate<"carrier-volume-per-area">;
  readonly uncertainty: Uncertainty;
  readonly findings: readonly Finding[];
}

/**
 * The carrier volume per area of a sprayer, from how it was calibrated. A measured catch overrides the nominal flow,
 * which stands in only where nothing was caught, with a finding. Refused, each at its own field: a width
 * (`nozzleSpacing`, `swath`), `area`, `course` or `volume` of nothing; a time, speed or pressure out of range; no catch
 * and no nominal flow (`catches`); no run (`runs`, `coverings`).
 */
export function calibrateSprayer(
  test: SprayerTest,
  liquid: CaughtLiquid,
  spreadLimit: SpreadLimit,
): Outcome<SprayerCalibration> {
  const measured = test.method === "small-area" ? measureRuns(test.runs) : measureFlowAndTime(test, liquid, spreadLimit);
  if (!measured.ok) return measured;
  const { caughtRate, ...rest } = measured.value;
  const density = densityAfterWater(liquid, rest.basis);
  const corrected =
    density === undefined
      ? { carrierRate: caughtRate, densityFactor: ONE }
      : { carrierRate: sprayRateFromWater(caughtRate, density), densityFactor: densityFactor(density) };
  return accept({ test, liquid, caughtRate, ...corrected, ...rest });
}

/** The density by which a rate of water becomes one of the spray; undefined where the rate is that of the spray already. */
export function densityAfterWater(liquid: CaughtLiquid, basis: SprayerCalibration["basis"]): Density | undefined {
  if (liquid.kind === "water-for-a-spray") return liquid.sprayDensity;
  return basis === "nominal" ? liquid.density : undefined;
}

function carrierRateOf(volumePerArea: Rational): Rate<"carrier-volume-per-area"> {
  return rateFromAmounts("carrier-volume-per-area", volumePerArea.numerator, volumePerArea.denominator);
}

function refuseNothing(field: string, words: string) {
  return badInput(field, "0", "more than nothing", `${words} is zero; measure it again.`);
}

function measureRuns(runs: readonly SmallAreaRun[]): Outcome<Measured> {
  if (runs.length === 0) return missingFact("runs", "one run or more", "No run over the measured area was made.");
  if (runs.some(({ area }) => isNothing(area))) return refuseNothing("area", "The measured area");
  if (runs.some(({ volume }) => isNothing(volume))) return refuseNothing("volume", "The volume of a run");
  const rates = runs.map(({ area, volume }) => divideRational(canonicalAmountOf(volume), canonicalAmountOf(area)));
  return accept({
    basis: "measured",
    flowPerMinute: undefined,
    areaPerMinute: undefined,
    caughtRate: carrierRateOf(averageOf(rates)),
    uncertainty: uncertaintyOf(rates),
    findings: runs.length === 1 ? [oneRunNote()] : [],
  });
}

function measureFlowAndTime(
  test: Exclude<SprayerTest, { method: "small-area" }>,
  liquid: CaughtLiquid,
  spreadLimit: SpreadLimit,
): Outcome<Measured> {
  const time = minutesPerAreaOf(test);
  if (!time.ok) return time;
  const flow = measureFlow(test, spreadLimit, liquid.kind === "the-spray-itself" ? liquid.density : undefined);
  if (!flow.ok) return flow;
  const { basis, flowPerMinute } = flow.value;
  return accept({
    basis,
    flowPerMinute,
    areaPerMinute: fromExactAmount("area", divideRational(ONE, time.value.minutesPerArea)),
    caughtRate: carrierRateOf(multiplyRational(flowPerMinute.exactAmount, time.value.minutesPerArea)),
    uncertainty: combinedUncertainty([flow.value.uncertainty, time.value.uncertainty]),
    findings: [...flow.value.findings, ...time.value.findings],
  });
}

interface AreaTime {
  /** Minutes for one canonical area. */
  readonly minutesPerArea: Rational;
  readonly uncertainty: Uncertainty;
  readonly findings: readonly Finding[];
}

function minutesPerAreaOf(test: Exclude<SprayerTest, { method: "small-area" }>): Outcome<AreaTime> {
  if (test.method === "gun") return minutesOfCoverings(test.coverings);
  const width = test.method === "boom" ? test.nozzleSpacing : test.swath;
  if (isNothing(width)) {
    return test.method === "boom"
      ? refuseNothing("nozzleSpacing", "The spacing of the nozzles")
      : refuseNothing("swath", "The width of the swath");
  }
  const pace = measurePace(test.pace);
  if (!pace.ok) return pace;
  const areaPerMinute = rectangleArea(pace.value.distancePerMinute, width);
  return accept({
    minutesPerArea: divideRational(ONE, areaPerMinute.exactAmount),
    uncertainty: pace.value.uncertainty,
    findings: [],
  });
}

function minutesOfCoverings(coverings: readonly TimedCovering[]): Outcome<AreaTime> {
  if (coverings.length === 0) {
    return missingFact("coverings", "one timed run or more", "How long the gun takes for a measured area has not been timed.");
  }
  if (coverings.some(({ area }) => isNothing(area))) return refuseNothing("area", "The measured area");
  const refused = refuseOutOfRange(
    coverings.map(({ seconds }) => secondsRange("seconds", "The time for the measured area", seconds)),
  );
  if (refused !== undefined) return refused;
  const times = coverings.map(({ area, seconds }) => divideRational(minutesFromSeconds(seconds), canonicalAmountOf(area)));
  const findings = coverings.length < FEWEST_GUN_RUNS ? [fewGunRuns(coverings.length)] : [];
  return accept({ minutesPerArea: averageOf(times), uncertainty: uncertaintyOf(times), findings });
}

/** One run gives a rate and no idea of how far it may be off. */
function oneRunNote(): Finding {
  return note({
    rule: "calibration-of-one-run",
    source: "common-practice",
    what: "The measured area was sprayed once, so nothing is known about the spread.",
    toDo: "Make two more runs when there is time.",
    about: [],
  });
}

function fewGunRuns(runs: number): Finding {
  return takeCare({
    rule: "calibration-of-few-gun-runs",
    source: "handbook",
    what: "The gun was timed too few times to trust its pace.",
    figure: `${runs} timed of at least ${FEWEST_GUN_RUNS}.`,
    toDo: "Time the measured area again and enter all times.",
    citation: "National Pesticide Stewardship (NC State, Buhler), http://pesticidestewardship.org: average of at least 3 timed runs",
    about: [],
  });
}
