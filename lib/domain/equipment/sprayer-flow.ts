import { flowAtPressure, type RatedFlow } from "#domain/equipment/nozzle";
import { judgeSpread, judgeWear, type NozzleFlow, type SpreadLimit } from "#domain/equipment/nozzle-wear";
import { minutesFromSeconds, secondsRange } from "#domain/equipment/pace";
import { densityFactor } from "#domain/equipment/spray-density";
import { averageOf, type Uncertainty, uncertaintyOf } from "#domain/equipment/repeats";
import { type Finding, takeCare } from "#domain/foundation/finding";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { type Density } from "#domain/quantities/density";
import { canonicalAmountOf, type ExactQuantity, fromExactAmount, type Measure, multiplyExact } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { compareRational, divideRational } from "#domain/quantities/rational";
import { refuseOutOfRange } from "#domain/turf/physical-range";

/** What one nozzle, wand or gun gave into a measure by the watch. Several catches of one nozzle are its repeats. */
export interface TimedCatch {
  readonly nozzle: string;
  readonly volume: Measure<"volume">;
  readonly seconds: number;
}

/** What a tip should give at the pressure in use: the fallback, and what a catch is held against for wear. */
export interface NominalFlow {
  readonly rated: RatedFlow;
  readonly pressurePsi: number;
}

/** What is known of a sprayer's flow: catches of water or of the spray itself, the tip's nominal flow, or both. */
export interface FlowTest {
  readonly catches: readonly TimedCatch[];
  readonly nominal?: NominalFlow;
}

/** The flow of one nozzle in a minute, whether it was caught, and how far it may be off. */
export interface SprayerFlow {
  readonly basis: "measured" | "nominal";
  /** The average of the nozzles, a minute. */
  readonly flowPerMinute: ExactQuantity<"volume">;
  readonly uncertainty: Uncertainty;
  readonly findings: readonly Finding[];
}

/**
 * The flow of one nozzle a minute: each one's repeats are averaged, then the nozzles. Each is held against the average,
 * and for wear against the nominal flow at the pressure of the catch: that is of water, so a heavier spray counts as
 * the water that the tip would have given. Without a catch the nominal flow stands in, with a finding. Refused: a
 * `volume` of nothing, `seconds` outside 1 s to 2 h, a pressure outside 1 to 1,000 psi, neither catch nor nominal flow
 * (`catches`).
 * @param caughtDensity of what was caught; left out for water and what is as thin
 */
export function measureFlow(test: FlowTest, spreadLimit: SpreadLimit, caughtDensity?: Density): Outcome<SprayerFlow> {
  return test.catches.length > 0 ? caughtFlow(test, spreadLimit, caughtDensity) : nominalFlow(test);
}

function caughtFlow({ catches, nominal }: FlowTest, spreadLimit: SpreadLimit, caughtDensity: Density | undefined): Outcome<SprayerFlow> {
  if (catches.some(({ volume }) => canonicalAmountOf(volume).numerator === 0n)) {
    return badInput("volume", "0", "more than nothing", "The volume of a catch is zero; catch it again.");
  }
  const refused = refuseOutOfRange(catches.map(({ seconds }) => secondsRange("seconds", "The time of a catch", seconds)));
  if (refused !== undefined) return refused;
  const nozzles = [...new Set(catches.map(({ nozzle }) => nozzle))].map((nozzle) => ({
    nozzle,
    repeats: catches
      .filter((own) => own.nozzle === nozzle)
      .map(({ volume, seconds }) => divideRational(canonicalAmountOf(volume), minutesFromSeconds(seconds))),
  }));
  const flows: NozzleFlow[] = nozzles.map(({ nozzle, repeats }) => ({
    nozzle,
    flowPerMinute: fromExactAmount("volume", averageOf(repeats)),
  }));
  const spread = judgeSpread(flows, spreadLimit);
  if (!spread.ok) return spread;
  const wear = wearOf(flows, nominal, caughtDensity);
  if (!wear.ok) return wear;
  return accept({
    basis: "measured",
    flowPerMinute: spread.value.averagePerMinute,
    uncertainty: widest(nozzles.map(({ repeats }) => uncertaintyOf(repeats))),
    findings: [...spread.value.findings, ...wear.value],
  });
}

function wearOf(flows: readonly NozzleFlow[], nominal: NominalFlow | undefined, caughtDensity: Density | undefined): Outcome<readonly Finding[]> {
  if (nominal === undefined) return accept([]);
  const newFlow = flowAtPressure(nominal.rated, nominal.pressurePsi);
  if (!newFlow.ok) return newFlow;
  const findings: Finding[] = [];
  for (const flow of flows) {
    const wear = judgeWear(asWater(flow, caughtDensity), newFlow.value);
    if (!wear.ok) return wear;
    findings.push(...wear.value.findings);
  }
  return accept(findings);
}

/** What the tip would have given of water: the caught flow times the root of the spray's specific gravity. */
function asWater(flow: NozzleFlow, caughtDensity: Density | undefined): NozzleFlow {
  if (caughtDensity === undefined) return flow;
  return { nozzle: flow.nozzle, flowPerMinute: multiplyExact(flow.flowPerMinute, densityFactor(caughtDensity)), caughtPerMinute: flow.flowPerMinute };
}

/** The widest of the nozzles' own spreads: not given when one of them was caught once. */
function widest(uncertainties: readonly Uncertainty[]): Uncertainty {
  return uncertainties.reduce((wider, next) => {
    if (wider.kind === "not-given") return wider;
    if (next.kind === "not-given") return next;
    const part = compareRational(next.part, wider.part) > 0 ? next.part : wider.part;
    return { kind: "spread-of-repeats", part, repeats: Math.min(wider.repeats, next.repeats) };
  });
}

function nominalFlow({ nominal }: FlowTest): Outcome<SprayerFlow> {
  if (nominal === undefined) {
    const sentence = "Nothing was caught, and the flow of the tip is not on file. Catch it into a measure by the watch.";
    return missingFact("catches", "a timed catch, or the tip's flow and pressure", sentence);
  }
  const flow = flowAtPressure(nominal.rated, nominal.pressurePsi);
  if (!flow.ok) return flow;
  if (flow.value.exactAmount.numerator === 0n) {
    return badInput("nominal", "0", "more than nothing", "The nominal flow of the tip is zero.");
  }
  const finding = takeCare({
    rule: "calibration-nominal-flow",
    source: "house",
    what: "Nothing was caught: the tip's nominal flow stands in for a measured one.",
    figure: `${formatQuantity(flow.value, "us")} a minute at ${nominal.pressurePsi} psi, by ${nominal.rated.statedBy}.`,
    toDo: "Catch the tip into a measure by the watch.",
    about: [nominal.rated.statedBy],
  });
  return accept({ basis: "nominal", flowPerMinute: flow.value, uncertainty: { kind: "not-given" }, findings: [finding] });
}
