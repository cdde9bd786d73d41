import { accept } from "#domain/foundation/outcome";
import { areaTimesRate } from "#domain/mixing/ticket-working-words";
import { times } from "#domain/quantities/rate";
import { overseedingRate } from "#domain/turf/seed";
import { acreLines, amountBothWays, areaInput, rateBothWays, stepRate, withTyped } from "#domain/worksheets/figure-words";
import { ounceLines } from "#domain/worksheets/nutrient-lines";
import { readAmountField, readChoice, readRateField, readTogether } from "#domain/worksheets/read-fields";
import { HALF_RATE_SOURCE, halvingLines, inTwoDirections, publishedRates, SEED_USES, seedAnswers } from "#domain/worksheets/seed-rates";
import { type Typed, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

/** The fields of the worksheet. */
export type BagSeedField = "rate" | "use" | "area";

const NEBRASKA = "University of Nebraska-Lincoln";

export const BAG_SEED_EXAMPLE: WorksheetExample<BagSeedField> = {
  typed: { rate: "8 lb per 1,000 sq ft", use: "overseeding", area: "6,000 sq ft" },
  from: `${NEBRASKA} (tall fescue at 6 to 8 lb, seed into standing turf at half). The area is made up`,
};

/**
 * The seed from the bag for a rate that counts seed as it comes from the bag: rate times area, and half of it for
 * overseeding. Purity and germination are not asked: such a rate weighs seed as it is. Refused by field: what is missing
 * or can't be read.
 */
export function bagSeedWorksheet(typed: Typed<BagSeedField>): WorksheetOutcome {
  const read = readTogether({
    rate: readRateField({ field: "rate", what: "the rate of seed from the bag", such: "7 lb per 1,000 sq ft" }, typed.rate, { bases: ["seed-mass-per-area"], unitWhenNone: "lb per 1,000 sq ft" }),
    use: readChoice("use", typed.use, SEED_USES),
    area: readAmountField({ field: "area", what: "the area", such: "6,000 sq ft" }, typed.area, { dimension: "area", unitWhenNone: "sq ft" }),
  });
  if (!read.ok) return read;
  const { rate, use, area } = read.value;
  const isHalved = use === "overseeding";
  const bagRate = isHalved ? overseedingRate(rate) : rate;
  const seed = times(bagRate, area);
  return accept({
    answers: seedAnswers(seed, area, bagRate),
    working: {
      title: "Seed from the bag",
      formula: `Seed from the bag = its rate × area.${isHalved ? " Overseeding takes half the rate for bare ground." : ""}`,
      inputs: [
        { name: "Rate of seed from the bag, bare ground", figure: withTyped(stepRate(rate, "lb"), typed.rate) },
        { name: "Use", figure: use },
        { name: "Area", figure: areaInput(area, typed.area) },
      ],
      steps: [
        ...halvingLines(use, rate, bagRate),
        ...acreLines(area, typed.area),
        `Seed from the bag: ${areaTimesRate(area, bagRate, "lb")}.`,
        ...ounceLines("Seed from the bag", seed),
        inTwoDirections(seed, bagRate),
      ],
      result: `${amountBothWays(seed)} of seed from the bag, at ${rateBothWays(bagRate)}.`,
      source: isHalved ? `the rate's own; ${HALF_RATE_SOURCE}` : "the rate's own",
    },
    findings: [],
    tables: [publishedRates("seed from the bag", use)],
  });
}
