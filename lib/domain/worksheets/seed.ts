import { accept } from "#domain/foundation/outcome";
import { areaTimesRate, figure, inUnit, perThousand } from "#domain/mixing/ticket-working-words";
import { times } from "#domain/quantities/rate";
import { type Rational } from "#domain/quantities/rational";
import { bulkRateFor, bulkSeedFor, overseedingRate, pricePerPureLiveSeed, pureLivePart } from "#domain/turf/seed";
import { acreLines, amountBothWays, areaInput, rateBothWays, stepPercent, stepRate, withTyped } from "#domain/worksheets/figure-words";
import { ounceLines } from "#domain/worksheets/nutrient-lines";
import { ifTyped, type NumberRange, readAmountField, readChoice, readNumberField, readRateField, readTogether, refuseOne } from "#domain/worksheets/read-fields";
import { HALF_RATE_SOURCE, halvingLines, inTwoDirections, publishedRates, SEED_USES, seedAnswers } from "#domain/worksheets/seed-rates";
import { type Typed, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

/** The fields of the worksheet. */
export type SeedField = "rate" | "use" | "area" | "purity" | "germination" | "price";

const LOUISIANA = "LSU AgCenter, Pure Live Seed Calculation, https://www.lsuagcenter.com/topics/lawn_garden/commercial_horticulture/turfgrass/management-practices/calculations/pure-live-seed-calculation";

export const SEED_EXAMPLE: WorksheetExample<SeedField> = {
  typed: { rate: "1 lb per 1,000 sq ft", use: "bare ground", area: "20,000 sq ft", purity: "48", germination: "80", price: "" },
  from: `${LOUISIANA}, which rounds to 0.38 first and prints 52.6 lb`,
};

const PERCENT: NumberRange = { lowest: "0", highest: "100", unit: "%" };

/**
 * The seed from the bag for a rate of pure live seed: rate times area, over purity times germination; overseeding takes
 * half the rate for bare ground. Refused by field: what is missing or can't be read, a purity or germination of nothing.
 */
export function seedWorksheet(typed: Typed<SeedField>): WorksheetOutcome {
  const read = readTogether({
    rate: readRateField({ field: "rate", what: "the rate of pure live seed", such: "4 lb per 1,000 sq ft" }, typed.rate, { bases: ["seed-mass-per-area"], unitWhenNone: "lb per 1,000 sq ft" }),
    use: readChoice("use", typed.use, SEED_USES),
    area: readAmountField({ field: "area", what: "the area", such: "6,000 sq ft" }, typed.area, { dimension: "area", unitWhenNone: "sq ft" }),
    purity: readNumberField({ field: "purity", what: "the purity on the seed tag", such: "96" }, typed.purity, PERCENT),
    germination: readNumberField({ field: "germination", what: "the germination on the seed tag", such: "85" }, typed.germination, PERCENT),
    price: ifTyped(typed.price.replace(/^\s*\$/u, ""), (text) => readNumberField({ field: "price", what: "the price of a pound", such: "2.50" }, text, { lowest: "0.01", highest: "1000", unit: "" })),
  });
  if (!read.ok) return read;
  const { rate, use, area, purity, germination, price } = read.value;
  const part = pureLivePart(purity, germination);
  if (!part.ok) return refuseOne(part.refusal);
  const pureRate = use === "overseeding" ? overseedingRate(rate) : rate;
  const pure = times(pureRate, area);
  const bulk = bulkSeedFor(pure, part.value);
  const bulkRate = bulkRateFor(pureRate, part.value);
  const partWords = stepPercent(part.value);
  const priced = price === undefined ? undefined : pricePerPureLiveSeed(price, part.value);
  return accept({
    answers: seedAnswers(bulk, area, bulkRate),
    working: {
      title: "Seed from the bag for pure live seed",
      formula: `Pure live part = purity × germination. Seed from the bag = pure live seed ÷ pure live part.${use === "overseeding" ? " Overseeding takes half the rate for bare ground." : ""}`,
      inputs: [
        { name: "Rate of pure live seed, bare ground", figure: withTyped(stepRate(rate, "lb"), typed.rate) },
        { name: "Use", figure: use },
        { name: "Area", figure: areaInput(area, typed.area) },
        { name: "Purity", figure: `${figure(purity)}%`, from: "the seed tag" },
        { name: "Germination", figure: `${figure(germination)}%`, from: "the seed tag" },
        ...(price === undefined ? [] : [{ name: "Price of a pound from the bag", figure: `$${figure(price)}` }]),
      ],
      steps: [
        ...halvingLines(use, rate, pureRate),
        `Pure live part: ${figure(purity)}% × ${figure(germination)}% = ${partWords}.`,
        ...acreLines(area, typed.area),
        `Pure live seed: ${areaTimesRate(area, pureRate, "lb")}.`,
        `Seed from the bag: ${inUnit(pure, "lb")} ÷ ${partWords} = ${inUnit(bulk, "lb")}.`,
        ...ounceLines("Seed from the bag", bulk),
        `Its rate: ${perThousand(pureRate, "lb")} ÷ ${partWords} = ${stepRate(bulkRate, "lb")}.`,
        inTwoDirections(bulk, bulkRate),
        ...(price === undefined || priced === undefined ? [] : [`A pound of pure live seed costs: $${figure(price)} ÷ ${partWords} = $${figure(priced)}, or ${money(priced)}.`]),
      ],
      result: `${amountBothWays(bulk)} of seed from the bag, at ${rateBothWays(bulkRate)}.`,
      source: use === "overseeding" ? `${LOUISIANA}; ${HALF_RATE_SOURCE}` : LOUISIANA,
    },
    findings: [],
    tables: [publishedRates("pure live seed", use)],
  });
}

function money(dollars: Rational): string {
  const cents = (dollars.numerator * 200n + dollars.denominator) / (dollars.denominator * 2n);
  return `$${String(cents / 100n)}.${String(cents % 100n).padStart(2, "0")}`;
}
