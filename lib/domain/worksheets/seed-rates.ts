import { inUnit, perThousand } from "#domain/mixing/ticket-working-words";
import { type ExactQuantity, type Measure, multiplyExact } from "#domain/quantities/exact-quantity";
import { writeQuantity } from "#domain/quantities/format-quantity";
import { type Rate, rateIn, scaleRate } from "#domain/quantities/rate";
import { overseedingRate, type SeedingRate, seedingRates } from "#domain/turf/seed";
import { amountWords, numberWords, stepRate } from "#domain/worksheets/figure-words";
import { type WorksheetAnswer, type WorksheetTable } from "#domain/worksheets/worksheet";

/** What seed goes into. */
export const SEED_USES = ["bare ground", "overseeding"] as const;
export type SeedUse = (typeof SEED_USES)[number];

/** Whose advice it is that seed into standing turf takes half. */
export const HALF_RATE_SOURCE = "half rate: University of Nebraska-Lincoln";

/** Seed from the bag is counted as seed, or as a product once it was worked out from pure live seed. */
type BagRate = "seed-mass-per-area" | "product-mass-per-area";

const HALF = { numerator: 1n, denominator: 2n };

/** What the sheet answers: seed from the bag for the area, and the rate of it that the spreader is set to. */
export function seedAnswers(seed: ExactQuantity<"mass">, area: Measure<"area">, rate: Rate<BagRate>): readonly WorksheetAnswer[] {
  return [
    { ...writeQuantity(seed, "us"), of: `seed from the bag on ${amountWords(area)}` },
    { figure: numberWords(rateIn(rate, "lb per 1,000 sq ft")), unit: "lb per 1,000 sq ft", of: "to set the spreader to" },
  ];
}

/** The step that halves a rate for overseeding; none on bare ground. */
export function halvingLines(use: SeedUse, bare: Rate<"seed-mass-per-area">, taken: Rate<"seed-mass-per-area">): readonly string[] {
  return use === "overseeding" ? [`Overseeding: ${perThousand(bare, "lb")} ÷ 2 = ${stepRate(taken, "lb")}.`] : [];
}

/** How the seed is spread in two directions. */
export function inTwoDirections(seed: ExactQuantity<"mass">, rate: Rate<BagRate>): string {
  return `In two directions, half each: ${inUnit(seed, "lb")} ÷ 2 = ${inUnit(multiplyExact(seed, HALF), "lb")}; at half the rate: ${perThousand(rate, "lb")} ÷ 2 = ${stepRate(scaleRate(rate, HALF), "lb")}.`;
}

function rangeWords(lowest: Rate<"seed-mass-per-area">, highest: Rate<"seed-mass-per-area">): string {
  return `${numberWords(rateIn(lowest, "lb per 1,000 sq ft"))} to ${numberWords(rateIn(highest, "lb per 1,000 sq ft"))}`;
}

/**
 * The published rates on bare ground that count as the sheet's own rate does, all of them as its field takes them; for
 * overseeding with what the sheet makes of them beside.
 */
export function publishedRates(counts: SeedingRate["counts"], use: SeedUse): WorksheetTable {
  const rates = seedingRates.filter((one) => one.use === "bare ground" && one.counts === counts);
  const isHalved = use === "overseeding";
  return {
    caption: `Published rates on bare ground, ${counts}${isHalved ? ", and half of them for overseeding" : ""}`,
    columns: [{ head: "Grass", align: "word" }, { head: "lb per 1,000 sq ft", align: "figure" }, ...(isHalved ? [{ head: "Half", align: "figure" } as const] : []), { head: "By", align: "word" }],
    rows: rates.map(({ grass, lowest, highest, source }) => [
      grass,
      rangeWords(lowest, highest),
      ...(isHalved ? [rangeWords(overseedingRate(lowest), overseedingRate(highest))] : []),
      source.name.split(",")[0] ?? source.name,
    ]),
  };
}
