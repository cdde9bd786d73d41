import { describe, expect, test } from "vitest";
import { type Outcome } from "#domain/foundation/outcome";
import { densityOf, massOf, volumeOf } from "#domain/quantities/density";
import { type ExactQuantity, exactly, measureInUnit } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateIn, rateOf, times } from "#domain/quantities/rate";
import { decimal, fromNumber, type Rational, toNumber } from "#domain/quantities/rational";
import { limingMaterialFor, publishedLimeCaps, recommendLime, splitLime } from "#domain/turf/lime";
import {
  bulkSeedFor,
  pricePerPureLiveSeed,
  pureLivePart,
  purityOfMixture,
  seedingRatesOf,
  type SeededGrass,
  seedingRates,
  seedsPerPound,
  seedsPerSquareFoot,
} from "#domain/turf/seed";
import { topdressingArea, topdressingDepth, topdressingVolume } from "#domain/turf/topdressing";
import { checkBothWays, printedTo, type PublishedRow } from "../support/published-check";

/*
 * Left out, because no code of this part computes them: mowing heights, aeration holes, gypsum, soil tests for
 * potassium, and sand by growth potential.
 */

const perThousand = "lb per 1,000 sq ft";

function valueOf<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  return outcome.value;
}

function livePart(purity: string, germination: string): Rational {
  return valueOf(pureLivePart(decimal(purity), decimal(germination)));
}

function cubicYards(squareFeet: bigint, inches: string): number {
  return toNumber(measureInUnit(topdressingVolume(of("sq ft", squareFeet), exactly("in", inches)), "cu yd"));
}

function millimeters(volume: ExactQuantity<"volume">, area: Parameters<typeof topdressingDepth>[1]): number {
  return toNumber(measureInUnit(topdressingDepth(volume, area), "mm"));
}

function cubicFeetAsMillimeters(cubicFeet: string): number {
  return millimeters(exactly("cu ft", cubicFeet), of("sq ft", 1000n));
}

const LSU = "LSU AgCenter, https://www.lsuagcenter.com/topics/lawn_garden/commercial_horticulture/turfgrass/management-practices/calculations/pure-live-seed-calculation";
const HYDROSEEDING = "https://hydroseeding.org/live-seeds/";
const TEXAS = "Texas A&M, https://aggieturf.tamu.edu/aggieturf2/calculators/seedsheet.html";
const CORNELL = "Cornell University, home gardening pages";
const LIME_TABLE = "Penn State AASL, https://agsci.psu.edu/aasl/soil-testing/fertility/handbooks/turf/tables/lime-recommendations-turf";
const LIME_CAPS = "the caps of Penn State AASL (seen) and an NC State agent (seen-2nd)";
const DESCHUTES = "Deschutes Recycling, https://deschutesrecycling.com/composting/";
const CUMBERLAND = "Cumberland Co. Soil & Water Conservation District via https://baswg.org/resources/topdressing/";
const SAND = "https://www.waupacasand.com/2011/09/01/sand-math-how-much-sand-do-i-need-for-my-project/";
const WOODS_SAND = "Woods 20 Aug 2017 quoting PACE Turf, micahwoods.github.io 2017-08-20-topdress-and-growth-potential.md";
const WOODS_METRIC = "Woods 3 Sep 2017, micahwoods.github.io 2017-09-03-topdressing-gp-metric.md";
const WOODS_UPDATED = "Woods 3 Aug 2020, micahwoods.github.io 2020-08-03-updated-sand-topdressing-by-gp.md";
const WOODS_115 = "Woods 24 Dec 2020, micahwoods/atcweb3";

const seedRows: readonly PublishedRow[] = [
  { inputs: "20,000 sq ft at 1 lb pure live seed per 1,000, lb pure live seed", expected: 20, tolerance: printedTo(0), source: LSU, status: "seen", computed: () => toNumber(measureInUnit(times(rateOf("seed-mass-per-area", 1n, perThousand), of("sq ft", 20_000n)), "lb")), second: 20 },
  { inputs: "purity 48%, germination 80%, pure live part", expected: 0.38, tolerance: printedTo(2), source: LSU, status: "seen", computed: () => toNumber(livePart("48", "80")), second: 0.48 * 0.8 },
  { inputs: "20 lb pure live seed from it, lb (printed 20 / 0.38)", expected: 52.6, tolerance: 52.6 * (0.384 / 0.38 - 1) + 0.05, source: LSU, status: "seen", computed: () => toNumber(measureInUnit(bulkSeedFor(of("lb", 20n), livePart("48", "80")), "lb")), second: 20 / (0.48 * 0.8) },
  { inputs: "20 lb pure live seed at a part rounded to 0.38, lb", expected: 52.6, tolerance: printedTo(1), source: LSU, status: "seen", computed: () => toNumber(measureInUnit(bulkSeedFor(of("lb", 20n), decimal("0.38")), "lb")), second: 20 / 0.38 },
  { inputs: "96% x 75%, percent", expected: 72, tolerance: printedTo(0), source: HYDROSEEDING, status: "seen", computed: () => 100 * toNumber(livePart("96", "75")), second: 0.96 * 75 },
  { inputs: "$2.50 per lb of it, $ per lb pure live seed", expected: 3.47, tolerance: printedTo(2), source: HYDROSEEDING, status: "seen", computed: () => toNumber(pricePerPureLiveSeed(decimal("2.50"), livePart("96", "75"))), second: 2.5 / 0.72 },
  { inputs: "30 + 32 + 27% fescues, percent", expected: 89, tolerance: printedTo(0), source: TEXAS, status: "seen", computed: () => toNumber(valueOf(purityOfMixture(["30", "32", "27"].map(decimal)))), second: 89 },
  { inputs: "Kentucky bluegrass, seeds in a pound", expected: 1_500_000, tolerance: 0, source: CORNELL, status: "seen", computed: () => Number(seedsPerPound["Kentucky bluegrass"]), second: 1_500_000 },
  { inputs: "perennial ryegrass, seeds in a pound", expected: 250_000, tolerance: 0, source: CORNELL, status: "seen", computed: () => Number(seedsPerPound["perennial ryegrass"]), second: 250_000 },
  { inputs: "1 lb Kentucky bluegrass per 1,000, seeds per sq ft (aim 1,000 to 2,000)", expected: 1500, tolerance: 500, source: CORNELL, status: "seen", computed: () => toNumber(seedsPerSquareFoot(rateOf("seed-mass-per-area", 1n, perThousand), seedsPerPound["Kentucky bluegrass"])), second: 1500 },
];

const topdressingRows: readonly PublishedRow[] = [
  { inputs: "1/4 in on 2,000 sq ft, cu yd (printed with 0.0031 and taken up)", expected: 1.6, tolerance: 0.06, source: DESCHUTES, status: "seen", computed: () => cubicYards(2000n, "0.25"), second: 2000 * 0.25 / 324 },
  { inputs: "1/4 in on 2,000 sq ft, cu yd, unrounded", expected: 1.543, tolerance: printedTo(3), source: DESCHUTES, status: "calc", computed: () => cubicYards(2000n, "0.25"), second: 2000 * 0.25 / 324 },
  { inputs: "cu yd on 1 sq ft, 1 in (printed 0.0031)", expected: 0.0031, tolerance: printedTo(4), source: DESCHUTES, status: "seen", computed: () => cubicYards(1n, "1"), second: 1 / 324 },
  { inputs: "sq ft that a cu yd covers to 1 in", expected: 324, tolerance: printedTo(0), source: DESCHUTES, status: "seen", computed: () => toNumber(measureInUnit(topdressingArea(of("cu yd", 1n), of("in", 1n)), "sq ft")), second: 324 },
  { inputs: "1/4 to 3/8 in on 1,000 sq ft, cu yd (printed about 0.75)", expected: 0.75, tolerance: 0.1, source: CUMBERLAND, status: "seen", computed: () => cubicYards(1000n, "0.25"), second: 1000 * 0.25 / 324 },
  { inputs: "1/8 in on 1,000 sq ft, cu yd", expected: 0.386, tolerance: printedTo(3), source: "324 sq ft to the cubic yard and inch", status: "calc", computed: () => cubicYards(1000n, "0.125"), second: 125 / 324 },
  { inputs: "1/4 in on 1,000 sq ft, cu yd", expected: 0.772, tolerance: printedTo(3), source: "324 sq ft to the cubic yard and inch", status: "calc", computed: () => cubicYards(1000n, "0.25"), second: 250 / 324 },
  { inputs: "3/8 in on 1,000 sq ft, cu yd", expected: 1.157, tolerance: printedTo(3), source: "324 sq ft to the cubic yard and inch", status: "calc", computed: () => cubicYards(1000n, "0.375"), second: 375 / 324 },
  { inputs: "a cu yd of sand at 1.35 short tons, lb", expected: 2700, tolerance: printedTo(0), source: SAND, status: "seen", computed: () => toNumber(measureInUnit(massOf(of("cu yd", 1n), densityOf("1.35", "short ton per cu yd")), "lb")), second: 2700 },
  { inputs: "150 lb dry sand at 1.5 g per mL on 1,000 sq ft, mm (printed about 0.5)", expected: 0.5, tolerance: 0.05, source: WOODS_SAND, status: "seen", computed: () => millimeters(volumeOf(of("lb", 150n), densityOf("1.5", "g per mL")), of("sq ft", 1000n)), second: (150 * 453.59237) / 1.5 / (92.90304 * 1000) },
  { inputs: "the same, unrounded", expected: 0.488, tolerance: printedTo(3), source: WOODS_SAND, status: "calc", computed: () => millimeters(volumeOf(of("lb", 150n), densityOf("1.5", "g per mL")), of("sq ft", 1000n)), second: (150 * 453.59237) / 1.5 / (92.90304 * 1000) },
  { inputs: "1,656 lb in a year of the same, mm", expected: 5.4, tolerance: printedTo(1), source: WOODS_SAND, status: "seen", computed: () => millimeters(volumeOf(of("lb", 1656n), densityOf("1.5", "g per mL")), of("sq ft", 1000n)), second: (1656 * 453.59237) / 1.5 / (92.90304 * 1000) },
  { inputs: "75 kg at 1.5 kg per L on 100 m2, mm", expected: 0.5, tolerance: printedTo(2), source: WOODS_METRIC, status: "seen", computed: () => millimeters(volumeOf(of("kg", 75n), densityOf("1.5", "kg per L")), of("m2", 100n)), second: 0.5 },
  { inputs: "9 kg at 1.5 kg per L on 1 m2, mm", expected: 6, tolerance: printedTo(0), source: WOODS_METRIC, status: "seen", computed: () => millimeters(volumeOf(of("kg", 9n), densityOf("1.5", "kg per L")), of("m2", 1n)), second: 6 },
  { inputs: "1 mm on 1 m2, L", expected: 1, tolerance: printedTo(0), source: WOODS_METRIC, status: "seen", computed: () => toNumber(measureInUnit(topdressingVolume(of("m2", 1n), of("mm", 1n)), "L")), second: 1 },
  { inputs: "20.3 cu ft on 1,000 sq ft, mm", expected: 6, tolerance: printedTo(0), source: WOODS_UPDATED, status: "seen", computed: () => cubicFeetAsMillimeters("20.3"), second: 20.3 * 0.3048 },
  { inputs: "25 cu ft on 1,000 sq ft, mm", expected: 7.6, tolerance: printedTo(1), source: WOODS_UPDATED, status: "seen", computed: () => cubicFeetAsMillimeters("25"), second: 25 * 0.3048 },
  { inputs: "35 cu ft on 1,000 sq ft, mm", expected: 10.7, tolerance: printedTo(1), source: WOODS_UPDATED, status: "seen", computed: () => cubicFeetAsMillimeters("35"), second: 35 * 0.3048 },
  { inputs: "115 cu ft on 1,000 sq ft, mm (printed about)", expected: 35, tolerance: printedTo(0), source: WOODS_115, status: "seen", computed: () => cubicFeetAsMillimeters("115"), second: 115 * 0.3048 },
];

function split(total: string, capIndex: number): { readonly applications: number; readonly pounds: number } {
  const cap = publishedLimeCaps[capIndex];
  if (cap === undefined) throw new Error("there are two published caps");
  const result = splitLime(rateOf("product-mass-per-area", total, perThousand), cap);
  return { applications: result.applications, pounds: toNumber(rateIn(result.each, perThousand)) };
}

function capPounds(index: number): number {
  const cap = publishedLimeCaps[index];
  if (cap === undefined) throw new Error("there are two published caps");
  return toNumber(rateIn(cap.perApplication, perThousand));
}

const limeRows: readonly PublishedRow[] = [
  { inputs: "Penn State cap, lb per 1,000", expected: 100, tolerance: 0, source: "Penn State AASL, Home Lawn - Maintain, https://agsci.psu.edu/aasl/online-report/home-lawn-maintain", status: "seen", computed: () => capPounds(0), second: 100 },
  { inputs: "NC State agent's cap, lb per 1,000", expected: 50, tolerance: 0, source: "NC State Lee Co. agent (Gaster), https://www.jackjeffcoat.com/1182.news", status: "seen-2nd", computed: () => capPounds(1), second: 50 },
  { inputs: "180 lb at the cap of 100, applications", expected: 2, tolerance: 0, source: LIME_CAPS, status: "calc", computed: () => split("180", 0).applications, second: Math.ceil(180 / 100) },
  { inputs: "180 lb at the cap of 100, lb each", expected: 90, tolerance: 0, source: LIME_CAPS, status: "calc", computed: () => split("180", 0).pounds, second: 90 },
  { inputs: "180 lb at the cap of 50, applications", expected: 4, tolerance: 0, source: LIME_CAPS, status: "calc", computed: () => split("180", 1).applications, second: Math.ceil(180 / 50) },
  { inputs: "180 lb at the cap of 50, lb each", expected: 45, tolerance: 0, source: LIME_CAPS, status: "calc", computed: () => split("180", 1).pounds, second: 45 },
  { inputs: "100 lb of a material of 80%, lb (divided by 0.80)", expected: 125, tolerance: 0, source: LIME_TABLE, status: "calc", computed: () => toNumber(rateIn(valueOf(limingMaterialFor(rateOf("product-mass-per-area", "100", perThousand), "80")), perThousand)), second: 100 / 0.8 },
];

describe("published answers", () => {
  test.each([...seedRows, ...topdressingRows, ...limeRows])("$inputs = $expected ($status; $source)", (row) => checkBothWays(row));
});

/** Exchangeable acidity, then lb of calcium carbonate equivalent per 1,000 sq ft to pH 7.0, 6.5 and 6.0. */
const limeTable: readonly (readonly [number, number, number, number])[] = [
  [2.0, 50, 50, 50],
  [2.6, 70, 50, 50],
  [3.3, 70, 50, 50],
  [3.9, 90, 70, 50],
  [4.6, 110, 70, 50],
  [5.2, 110, 90, 50],
  [5.8, 140, 90, 50],
  [6.5, 160, 110, 70],
  [7.1, 160, 110, 90],
  [7.8, 180, 140, 90],
  [8.4, 180, 140, 110],
  [9.0, 210, 160, 110],
  [9.7, 230, 180, 140],
  [10.3, 230, 180, 140],
  [11.0, 250, 210, 160],
  [11.6, 280, 210, 160],
  [12.3, 280, 230, 180],
  [12.9, 300, 250, 180],
  [13.5, 320, 250, 210],
  [14.2, 320, 280, 210],
  [14.8, 340, 280, 230],
  [15.5, 370, 300, 230],
  [16.1, 370, 320, 250],
  [16.8, 390, 320, 250],
  [17.4, 390, 340, 280],
  [18.0, 410, 340, 280],
  [18.7, 440, 370, 300],
  [19.3, 440, 390, 300],
  [20.0, 460, 390, 320],
  [20.6, 480, 410, 320],
  [21.2, 480, 410, 340],
  [21.9, 510, 460, 340],
  [22.5, 530, 460, 370],
  [23.2, 530, 460, 370],
  [23.8, 550, 480, 390],
  [24.5, 570, 480, 390],
  [25.1, 570, 510, 410],
  [25.7, 600, 530, 410],
];

describe(`lime (seen; ${LIME_TABLE})`, () => {
  test.each(limeTable)("acidity %d: %d, %d, %d", (acidity, to7, to65, to6) => {
    const exchangeableAcidity = fromNumber(acidity, 1);
    const pounds = (["7.0", "6.5", "6.0"] as const).map((target) => {
      const test = { method: "Mehlich buffer, exchangeable acidity", exchangeableAcidity } as const;
      return toNumber(rateIn(valueOf(recommendLime(test, target)).calciumCarbonateEquivalent, perThousand));
    });
    expect(pounds).toEqual([to7, to65, to6]);
  });
});

describe("seeding rates, lb per 1,000 sq ft, as printed (all seen)", () => {
  const printed: readonly (readonly [SeededGrass, string, "bare ground" | "overseeding", number, number])[] = [
    ["Kentucky bluegrass", "Cornell", "bare ground", 1, 3],
    ["perennial ryegrass", "Cornell", "bare ground", 4, 6],
    ["tall fescue", "Cornell", "bare ground", 6, 8],
    ["Kentucky bluegrass and perennial ryegrass", "Cornell", "bare ground", 3, 4],
    ["Kentucky bluegrass and perennial ryegrass", "Cornell", "bare ground", 3, 5],
    ["annual ryegrass", "LSU", "bare ground", 5, 10],
    ["bahiagrass", "LSU", "bare ground", 5, 10],
    ["bermudagrass", "LSU", "bare ground", 0.75, 1],
    ["carpetgrass", "LSU", "bare ground", 1, 1.5],
    ["centipedegrass", "LSU", "bare ground", 0.5, 1],
    ["perennial ryegrass", "LSU", "bare ground", 3.5, 10],
    ["zoysiagrass", "LSU", "bare ground", 1, 2],
    ["tall fescue", "Nebraska", "bare ground", 6, 8],
    ["Kentucky bluegrass", "Nebraska", "bare ground", 2, 3],
    ["tall fescue", "Nebraska", "overseeding", 3, 4],
    ["Kentucky bluegrass", "Nebraska", "overseeding", 1, 1.5],
    ["Kentucky bluegrass", "Purdue", "bare ground", 1, 2],
    ["perennial ryegrass", "Purdue", "bare ground", 6, 9],
  ];
  test.each(printed)("%s (%s), %s: %d to %d", (grass, source, use, lowest, highest) => {
    const ranges = seedingRatesOf(grass, use)
      .filter((rate) => rate.source.name.includes(source))
      .map((rate) => [toNumber(rateIn(rate.lowest, perThousand)), toNumber(rateIn(rate.highest, perThousand))]);
    expect(ranges).toContainEqual([lowest, highest]);
  });

  test("only Louisiana counts pure live seed, and nothing stands in the product's table that is not printed above", () => {
    expect(seedingRates).toHaveLength(printed.length);
    for (const rate of seedingRates) {
      expect(rate.counts === "pure live seed").toBe(rate.source.name.includes("LSU"));
    }
  });
});
