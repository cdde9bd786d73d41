import { averageOf, distanceFrom, isMoreThanPercent, percentInWords } from "#domain/equipment/repeats";
import { type Finding, type FindingSource, takeCare } from "#domain/foundation/finding";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { canonicalAmountOf, compareExact, type ExactQuantity, fromExactAmount, type Measure } from "#domain/quantities/exact-quantity";
import { formatQuantity, formatQuantityIn } from "#domain/quantities/format-quantity";
import { of } from "#domain/quantities/quantity";
import { decimal, type Rational } from "#domain/quantities/rational";

/** From what on a tip is worn out: more than so much over a new one, in percent. Common practice. */
const WORN_ABOVE_PERCENT: Rational = decimal("10");

/** How far one nozzle of a boom may be from their average, and who says so. */
export interface SpreadLimit {
  readonly percent: Rational;
  readonly source: FindingSource;
  readonly citation?: string;
}

/** The limit where a company has set none of its own. */
export const USUAL_SPREAD_LIMIT: SpreadLimit = {
  percent: decimal("10"),
  source: "handbook",
  citation:
    "Ohio State University Extension (Ozkan), 7 steps for easy sprayer calibration, Farm and Dairy: replace nozzles with output errors of more than 10 percent",
};

/** One nozzle's flow per minute, as it was caught or as water where a heavier spray was. */
export interface NozzleFlow {
  readonly nozzle: string;
  readonly flowPerMinute: Measure<"volume">;
  /** Of the heavier spray, where one was caught. */
  readonly caughtPerMinute?: Measure<"volume">;
}

/** How a nozzle stands to a new tip. */
export interface WearJudgment {
  /** How much more than a new tip it gives, as a part of the new one's flow; below zero when it gives less. */
  readonly overNew: Rational;
  readonly findings: readonly Finding[];
}

function refuseNoFlow(field: string, words: string) {
  return badInput(field, "0", "more than nothing", `${words} is zero; catch it again.`);
}

/**
 * Holds a nozzle's flow of water against that of a new tip at the same pressure. More than 10 % over new is worn out
 * and is to be replaced; more than 10 % under is no wear but a plugged screen or a wrong pressure (common practice).
 * Refused: a flow of zero, at `newFlowPerMinute` or `flowPerMinute`.
 */
export function judgeWear(measured: NozzleFlow, newFlowPerMinute: Measure<"volume">): Outcome<WearJudgment> {
  const newFlow = canonicalAmountOf(newFlowPerMinute);
  const flow = canonicalAmountOf(measured.flowPerMinute);
  if (newFlow.numerator === 0n) return refuseNoFlow("newFlowPerMinute", "The flow of a new tip");
  if (flow.numerator === 0n) return refuseNoFlow("flowPerMinute", `The flow of ${measured.nozzle}`);
  const overNew = distanceFrom(newFlow, flow);
  if (!isMoreThanPercent(overNew, WORN_ABOVE_PERCENT)) return accept({ overNew, findings: [] });
  const isWorn = overNew.numerator > 0n;
  const flows = measured.caughtPerMinute === undefined ? [measured.flowPerMinute, newFlowPerMinute] : [measured.flowPerMinute, newFlowPerMinute, measured.caughtPerMinute];
  const [found = "", fresh = "", caught] = inOneUnit(flows);
  const water = caught === undefined ? "" : ` of water, as ${caught} of the spray come to,`;
  const figures = `${found} a minute${water} against ${fresh} new`;
  const finding = takeCare({
    rule: isWorn ? "nozzle-worn" : "nozzle-gives-too-little",
    source: "common-practice",
    what: `${measured.nozzle} gives ${percentInWords(overNew)} ${isWorn ? "more" : "less"} than a new tip.`,
    figure: `${figures}; up to 10% is usual.`,
    toDo: isWorn ? "Replace the tip and calibrate again." : "Clean tip and screen, check the pressure and catch it again.",
    about: [measured.nozzle],
  });
  return accept({ overNew, findings: [finding] });
}

/** Volumes that are held against one another, in one unit: gallons where each is at least one, else fluid ounces. */
function inOneUnit(volumes: readonly Measure<"volume">[]): readonly string[] {
  const isInGallons = volumes.every((volume) => compareExact(volume, of("gal", 1n)) >= 0);
  return volumes.map((volume) => formatQuantityIn(volume, isInGallons ? "gal" : "fl oz"));
}

/** How the nozzles of a boom stand to their average. */
export interface NozzleSpread {
  readonly averagePerMinute: ExactQuantity<"volume">;
  /** Each nozzle's distance from the average, as a part of it, in the order given. */
  readonly nozzles: readonly { readonly nozzle: string; readonly fromAverage: Rational }[];
  readonly findings: readonly Finding[];
}

/**
 * Holds the nozzles of one boom against their average. One that is farther off than the limit gets a finding, since it
 * paints a stripe. Refused at `nozzles`: no nozzle, or none that gives anything.
 */
export function judgeSpread(flows: readonly NozzleFlow[], limit: SpreadLimit): Outcome<NozzleSpread> {
  if (flows.length === 0) return badInput("nozzles", "none", "one or more", "No nozzle was caught.");
  const amounts = flows.map(({ flowPerMinute }) => canonicalAmountOf(flowPerMinute));
  const average = averageOf(amounts);
  if (average.numerator === 0n) return refuseNoFlow("nozzles", "The flow of every nozzle");
  const averagePerMinute = fromExactAmount("volume", average);
  const nozzles = flows.map(({ nozzle, flowPerMinute }) => ({
    nozzle,
    fromAverage: distanceFrom(average, canonicalAmountOf(flowPerMinute)),
  }));
  const findings = nozzles
    .filter(({ fromAverage }) => isMoreThanPercent(fromAverage, limit.percent))
    .map(({ nozzle, fromAverage }) =>
      takeCare({
        rule: "nozzle-off-the-average",
        source: limit.source,
        what: `${nozzle} gives ${percentInWords(fromAverage)} ${fromAverage.numerator > 0n ? "more" : "less"} than the average of the boom.`,
        figure: `The average is ${formatQuantity(averagePerMinute, "us")} a minute; up to ${limitInWords(limit.percent)} from it is allowed.`,
        toDo: "Clean or replace the tip and catch the boom again.",
        ...(limit.citation === undefined ? {} : { citation: limit.citation }),
        about: [nozzle],
      }),
    );
  return accept({ averagePerMinute, nozzles, findings });
}

function limitInWords({ numerator, denominator }: Rational): string {
  return percentInWords({ numerator, denominator: denominator * 100n });
}
