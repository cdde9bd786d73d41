import { invariant } from "#domain/foundation/invariant";
import { compareRates, type Rate, ratioOfRates, scaleRate } from "#domain/quantities/rate";
import { roundToWhole } from "#domain/quantities/rational";

type NutrientRate = Rate<"nutrient-mass-per-area">;

/**
 * The potash that a laboratory recommends from a soil test, by the table that it uses for its own method. No table of
 * potash is on file, because none was found in print that could be read whole: laboratories extract potassium in
 * different ways, and the figure of one means nothing in another's table.
 */
export interface PotashRecommendation {
  readonly potash: NutrientRate;
  /** The laboratory, its method and its table, as the report names them. */
  readonly table: string;
}

/** The most potash in one application, and who says so: a label, a handbook. */
export interface PotashCap {
  readonly perApplication: NutrientRate;
  readonly statedBy: string;
}

export interface PotashSplit {
  readonly applications: number;
  readonly each: NutrientRate;
}

/** Splits recommended potash into equal applications, as few as the cap allows. Throws at a cap of zero. */
export function splitPotash({ potash }: PotashRecommendation, cap: PotashCap): PotashSplit {
  invariant(cap.perApplication.amount > 0n, "a cap of potash is above zero");
  if (compareRates(potash, cap.perApplication) <= 0) return { applications: 1, each: potash };
  const applications = roundToWhole(ratioOfRates(potash, cap.perApplication), "up");
  return { applications: Number(applications), each: scaleRate(potash, { numerator: 1n, denominator: applications }) };
}
