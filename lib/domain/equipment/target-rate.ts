import { isMoreThanPercent, percentInWords } from "#domain/equipment/repeats";
import { type Finding, type FindingSource, takeCare } from "#domain/foundation/finding";
import { formatRatesApart } from "#domain/quantities/format-rate";
import { type Rate, type RateBasis, ratioOfRates } from "#domain/quantities/rate";
import { decimal, ONE, type Rational, rational, divideRational, reduce, subtractRational } from "#domain/quantities/rational";

/** How near a calibrated rate must come to the wanted one, in percent, and who says so. */
export interface RateTolerance {
  readonly percent: Rational;
  readonly source: FindingSource;
  readonly citation: string;
}

/** For a gun or another sprayer. */
export const SPRAYER_TOLERANCE: RateTolerance = {
  percent: decimal("5"),
  source: "handbook",
  citation: "National Pesticide Stewardship (NC State, Buhler), http://pesticidestewardship.org: within 5 percent of the label rate",
};

/** For a spreader. */
export const SPREADER_TOLERANCE: RateTolerance = {
  percent: decimal("5"),
  source: "handbook",
  citation:
    "UMass Extension, Rotary Spreader Calibration Procedures, https://ag.umass.edu/turf/fact-sheets/rotary-spreader-calibration-procedures: within 5 percent of the target",
};

/** How a calibrated rate stands to the wanted one. */
export interface RateJudgment {
  /** How much the rate found is over the wanted one, as a part of the wanted one; below zero when it is under. */
  readonly overWanted: Rational;
  readonly findings: readonly Finding[];
}

/**
 * Holds a calibrated rate against the wanted one. Farther off than the tolerance is a matter for care: change pressure,
 * tip, setting or pace, and calibrate again. Throws when the wanted rate is zero.
 */
export function judgeRate<B extends RateBasis>(
  equipment: string,
  found: Rate<B>,
  wanted: Rate<NoInfer<B>>,
  tolerance: RateTolerance,
): RateJudgment {
  const overWanted = reduce(subtractRational(ratioOfRates(found, wanted), ONE));
  if (!isMoreThanPercent(overWanted, tolerance.percent)) return { overWanted, findings: [] };
  const allowed = percentInWords(divideRational(tolerance.percent, rational(100n)));
  const [gives, target] = formatRatesApart(found, wanted, "us");
  const finding = takeCare({
    rule: "calibration-off-the-wanted-rate",
    source: tolerance.source,
    what: `${equipment} puts out ${percentInWords(overWanted)} ${overWanted.numerator > 0n ? "more" : "less"} than wanted.`,
    figure: `It gives ${gives}; ${target} is wanted, within ${allowed}.`,
    toDo: "Change the tip, the pressure, the setting or the pace, and calibrate again.",
    citation: tolerance.citation,
    about: [equipment],
  });
  return { overWanted, findings: [finding] };
}
