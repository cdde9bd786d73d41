import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { type ExactQuantity, type Measure, multiplyExact } from "#domain/quantities/exact-quantity";
import { deriveRate, type Rate, rateIn, rateOf, scaleRate } from "#domain/quantities/rate";
import {
  addRational,
  compareRational,
  decimal,
  divideRational,
  multiplyRational,
  ONE,
  type Rational,
  toDecimalString,
} from "#domain/quantities/rational";

const HUNDRED_PERCENT = decimal("100");
const HALF: Rational = { numerator: 1n, denominator: 2n };

/**
 * The part of a lot's weight that is pure live seed: purity times germination, both in percent as on the seed tag.
 * Refused at zero and above one hundred (`purity`, `germination`): such a tag was misread. 48 and 80 percent make
 * 0.384. Source: LSU AgCenter, Pure Live Seed Calculation.
 */
export function pureLivePart(purityPercent: Rational, germinationPercent: Rational): Outcome<Rational> {
  for (const [field, percent] of [
    ["purity", purityPercent],
    ["germination", germinationPercent],
  ] as const) {
    if (percent.numerator > 0n && compareRational(percent, HUNDRED_PERCENT) <= 0) continue;
    const found = `${toDecimalString(percent, 2, "nearest")}%`;
    return badInput(field, found, "above 0 and at most 100 percent", `A ${field} of ${found} is not possible.`);
  }
  const product = multiplyRational(purityPercent, germinationPercent);
  return accept({ numerator: product.numerator, denominator: product.denominator * 10_000n });
}

/**
 * The purity of a mixture, from the percents of its kinds as the tag lists them. Refused (`purity`) at nothing and
 * above one hundred. Source: Texas A&M, aggieturf seed sheet.
 */
export function purityOfMixture(percents: readonly Rational[]): Outcome<Rational> {
  let total = decimal("0");
  for (const percent of percents) total = addRational(total, percent);
  if (total.numerator > 0n && compareRational(total, HUNDRED_PERCENT) <= 0) return accept(total);
  const found = `${toDecimalString(total, 2, "nearest")}%`;
  return badInput(
    "purity",
    found,
    "above 0 and at most 100 percent",
    `The kinds of this mixture make ${found} together.`,
  );
}

function requirePart(pureLive: Rational): void {
  invariant(
    pureLive.numerator > 0n && compareRational(pureLive, ONE) <= 0,
    "the pure live part of a seed lot is above 0 and at most 1",
  );
}

/**
 * The seed from the bag that holds so much pure live seed, exactly. Throws unless the pure live part is above 0 and at
 * most 1. Source: LSU AgCenter, Pure Live Seed Calculation.
 */
export function bulkSeedFor(pureLiveSeed: Measure<"mass">, pureLive: Rational): ExactQuantity<"mass"> {
  requirePart(pureLive);
  return multiplyExact(pureLiveSeed, divideRational(ONE, pureLive));
}

/** The pure live seed in so much seed from the bag, exactly. Throws as bulkSeedFor does. */
export function pureLiveSeedIn(bulkSeed: Measure<"mass">, pureLive: Rational): ExactQuantity<"mass"> {
  requirePart(pureLive);
  return multiplyExact(bulkSeed, pureLive);
}

/**
 * The rate from the bag that brings a rate of pure live seed: what the spreader is set to. Exact. Throws as bulkSeedFor
 * does.
 */
export function bulkRateFor(
  pureLiveRate: Rate<"seed-mass-per-area">,
  pureLive: Rational,
): Rate<"product-mass-per-area"> {
  requirePart(pureLive);
  return deriveRate("product-mass-per-area", pureLiveRate, divideRational(ONE, pureLive));
}

/**
 * What a pound of pure live seed costs when a pound from the bag costs so much, in the same money. Throws as
 * bulkSeedFor does. Source: hydroseeding.org, live seeds.
 */
export function pricePerPureLiveSeed(pricePerBulk: Rational, pureLive: Rational): Rational {
  requirePart(pureLive);
  return divideRational(pricePerBulk, pureLive);
}

/** Seeds on a square foot at a rate, exactly. Extension aims at 1,000 to 2,000 viable seeds (Purdue, Bigelow). */
export function seedsPerSquareFoot(rate: Rate<"seed-mass-per-area">, seedsPerPound: bigint): Rational {
  return multiplyRational(rateIn(rate, "lb per sq ft"), { numerator: seedsPerPound, denominator: 1n });
}

/** Half the rate for bare ground, as Nebraska advises for seeding into standing turf. */
export function overseedingRate(bareGroundRate: Rate<"seed-mass-per-area">): Rate<"seed-mass-per-area"> {
  return scaleRate(bareGroundRate, HALF);
}

/** Seeds in a pound, from the Cornell page that the seeding rates below name. */
export const seedsPerPound = { "Kentucky bluegrass": 1_500_000n, "perennial ryegrass": 250_000n } as const;

/** The grasses of the published seeding rates. */
export type SeededGrass =
  | "annual ryegrass"
  | "bahiagrass"
  | "bermudagrass"
  | "carpetgrass"
  | "centipedegrass"
  | "Kentucky bluegrass"
  | "Kentucky bluegrass and perennial ryegrass"
  | "perennial ryegrass"
  | "tall fescue"
  | "zoysiagrass";

const SOURCES = {
  cornell: {
    name: "Cornell University, home gardening pages",
    address: "http://www.gardening.cornell.edu/homegardening/",
  },
  louisiana: {
    name: "LSU AgCenter",
    address:
      "https://www.lsuagcenter.com/topics/lawn_garden/commercial_horticulture/turfgrass/management-practices/calculations/pure-live-seed-calculation",
  },
  nebraska: { name: "University of Nebraska-Lincoln", address: "address not noted" },
  purdue: { name: "Purdue University (Bigelow)", address: "address not noted" },
} as const;

/** One published range of seeding rates. */
export interface SeedingRate {
  readonly grass: SeededGrass;
  readonly use: "bare ground" | "overseeding";
  /** Whether the source counts pure live seed or seed from the bag. Nothing here turns one into the other. */
  readonly counts: "pure live seed" | "seed from the bag";
  readonly lowest: Rate<"seed-mass-per-area">;
  readonly highest: Rate<"seed-mass-per-area">;
  readonly source: { readonly name: string; readonly address: string };
}

type Row = readonly [
  grass: SeededGrass,
  counts: SeedingRate["counts"],
  lowest: string,
  highest: string,
  source: keyof typeof SOURCES,
];

/** In lb per 1,000 sq ft. */
const BARE_GROUND: readonly Row[] = [
  ["Kentucky bluegrass", "seed from the bag", "1", "3", "cornell"],
  ["perennial ryegrass", "seed from the bag", "4", "6", "cornell"],
  ["tall fescue", "seed from the bag", "6", "8", "cornell"],
  ["Kentucky bluegrass and perennial ryegrass", "seed from the bag", "3", "4", "cornell"],
  ["Kentucky bluegrass and perennial ryegrass", "seed from the bag", "3", "5", "cornell"],
  ["annual ryegrass", "pure live seed", "5", "10", "louisiana"],
  ["bahiagrass", "pure live seed", "5", "10", "louisiana"],
  ["bermudagrass", "pure live seed", "0.75", "1", "louisiana"],
  ["carpetgrass", "pure live seed", "1", "1.5", "louisiana"],
  ["centipedegrass", "pure live seed", "0.5", "1", "louisiana"],
  ["perennial ryegrass", "pure live seed", "3.5", "10", "louisiana"],
  ["zoysiagrass", "pure live seed", "1", "2", "louisiana"],
  ["tall fescue", "seed from the bag", "6", "8", "nebraska"],
  ["Kentucky bluegrass", "seed from the bag", "2", "3", "nebraska"],
  ["Kentucky bluegrass", "seed from the bag", "1", "2", "purdue"],
  ["perennial ryegrass", "seed from the bag", "6", "9", "purdue"],
];

function toSeedingRate([grass, counts, lowest, highest, source]: Row): SeedingRate {
  return {
    grass,
    use: "bare ground",
    counts,
    lowest: rateOf("seed-mass-per-area", lowest, "lb per 1,000 sq ft"),
    highest: rateOf("seed-mass-per-area", highest, "lb per 1,000 sq ft"),
    source: SOURCES[source],
  };
}

const bareGroundRates = BARE_GROUND.map(toSeedingRate);

/** The published rates for bare ground, and Nebraska's for overseeding, which are half of its own. */
export const seedingRates: readonly SeedingRate[] = [
  ...bareGroundRates,
  ...bareGroundRates
    .filter((rate) => rate.source === SOURCES.nebraska)
    .map((rate) => ({
      ...rate,
      use: "overseeding" as const,
      lowest: overseedingRate(rate.lowest),
      highest: overseedingRate(rate.highest),
    })),
];

/** The published rates of one grass for one use, which may be none. */
export function seedingRatesOf(grass: SeededGrass, use: SeedingRate["use"]): readonly SeedingRate[] {
  return seedingRates.filter((rate) => rate.grass === grass && rate.use === use);
}
