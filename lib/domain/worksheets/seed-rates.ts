import { type Rate, rateIn } from "#domain/quantities/rate";
import { overseedingRate, type SeedingRate, seedingRates } from "#domain/turf/seed";
import { numberWords } from "#domain/worksheets/figure-words";
import { type WorksheetTable } from "#domain/worksheets/worksheet";

/** What seed goes into. */
export const SEED_USES = ["bare ground", "overseeding"] as const;
export type SeedUse = (typeof SEED_USES)[number];

/** Whose advice it is that seed into standing turf takes half. */
export const HALF_RATE_SOURCE = "half rate: University of Nebraska-Lincoln";

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
