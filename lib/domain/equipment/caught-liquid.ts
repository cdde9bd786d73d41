import { type CaughtLiquid } from "#domain/equipment/sprayer-calibration";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { readDensity } from "#domain/label/label-general";
import { type Density } from "#domain/quantities/density";

/** What may be caught: water or a spray as thin as it; water that stands for a heavier spray; that spray itself. */
export const CAUGHT_LIQUIDS = ["as-water", "water-for-heavier", "heavier-itself"] as const;
/** One of them. */
export type CaughtLiquidKind = (typeof CAUGHT_LIQUIDS)[number];

/** What was caught, as it was typed; calibrations of before it was asked have neither, and are of water. */
export interface TypedLiquid {
  readonly liquid?: CaughtLiquidKind | undefined;
  /** Of the heavier spray: "10.65 lb per gal", "specific gravity 1.28"; empty where it is as thin as water. */
  readonly sprayDensity?: string | undefined;
}

/**
 * What was caught. Refused at `sprayDensity`: a heavier spray without its density, a density where nothing heavier is meant, a density that
 * can't be read or that no spray has.
 */
export function readCaughtLiquid({ liquid = "as-water", sprayDensity = "" }: TypedLiquid): Outcome<CaughtLiquid> {
  if (liquid === "as-water") {
    if (sprayDensity === "") return accept({ kind: "the-spray-itself" });
    return badInput("sprayDensity", sprayDensity, "nothing", "Say above that a heavier spray is meant, or leave the density empty.");
  }
  if (sprayDensity === "") return missingFact("sprayDensity", "a density", "Give the density of the spray, as in 10.65 lb per gal; its label or a weighing has it.");
  const density = readDensity(sprayDensity, "product");
  if (!density.ok) return badInput("sprayDensity", sprayDensity, "a density", density.refusal);
  return accept(liquid === "water-for-heavier" ? { kind: "water-for-a-spray", sprayDensity: density.value } : { kind: "the-spray-itself", density: density.value });
}

/** The density of the spray of which a calibration's rate is: water, where nothing else was said. */
export function densityOfRate(liquid: CaughtLiquid): Density | "water" {
  return (liquid.kind === "water-for-a-spray" ? liquid.sprayDensity : liquid.density) ?? "water";
}
