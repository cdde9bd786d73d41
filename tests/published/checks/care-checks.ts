// Seed and topdressing as printed.
import { expect } from "vitest";
import { type Outcome } from "#domain/foundation/outcome";
import { densityOf, massOf, volumeOf } from "#domain/quantities/density";
import { type ExactQuantity, exactly, measureInUnit } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateIn, rateOf, times } from "#domain/quantities/rate";
import { decimal, type Rational, toNumber } from "#domain/quantities/rational";
import {
  bulkSeedFor,
  pricePerPureLiveSeed,
  pureLivePart,
  pureLiveSeedIn,
  purityOfMixture,
  seedingRatesOf,
  type SeededGrass,
  seedsPerPound,
  seedsPerSquareFoot,
} from "#domain/turf/seed";
import { topdressingArea, topdressingDepth, topdressingVolume } from "#domain/turf/topdressing";
import { printedTo, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

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
const DESCHUTES = "Deschutes Recycling, https://deschutesrecycling.com/composting/";
const CUMBERLAND = "Cumberland Co. Soil & Water Conservation District via https://baswg.org/resources/topdressing/";
const SAND = "https://www.waupacasand.com/2011/09/01/sand-math-how-much-sand-do-i-need-for-my-project/";
const WOODS_SAND = "Woods 20 Aug 2017 quoting PACE Turf, micahwoods.github.io 2017-08-20-topdress-and-growth-potential.md";
const WOODS_METRIC = "Woods 3 Sep 2017, micahwoods.github.io 2017-09-03-topdressing-gp-metric.md";
const WOODS_UPDATED = "Woods 3 Aug 2020, micahwoods.github.io 2020-08-03-updated-sand-topdressing-by-gp.md";
const WOODS_115 = "Woods 24 Dec 2020, micahwoods/atcweb3";

const seedRows: readonly PublishedRow[] = [
  { row: "care.7", inputs: "20,000 sq ft at 1 lb pure live seed per 1,000, lb pure live seed", expected: 20, tolerance: printedTo(0), source: LSU, status: "seen", computed: () => toNumber(measureInUnit(times(rateOf("seed-mass-per-area", 1n, perThousand), of("sq ft", 20_000n)), "lb")), second: 20 },
  { row: ["care.6", "care.7"], inputs: "purity 48%, germination 80%, pure live part", expected: 0.38, tolerance: printedTo(2), source: LSU, status: "seen", computed: () => toNumber(livePart("48", "80")), second: 0.48 * 0.8 },
  { row: ["care.6", "care.7"], inputs: "20 lb pure live seed from it, lb (printed 20 / 0.38)", expected: 52.6, tolerance: 52.6 * (0.384 / 0.38 - 1) + 0.05, source: LSU, status: "seen", computed: () => toNumber(measureInUnit(bulkSeedFor(of("lb", 20n), livePart("48", "80")), "lb")), second: 20 / (0.48 * 0.8) },
  { row: "care.7", inputs: "20 lb pure live seed at a part rounded to 0.38, lb", expected: 52.6, tolerance: printedTo(1), source: LSU, status: "seen", computed: () => toNumber(measureInUnit(bulkSeedFor(of("lb", 20n), decimal("0.38")), "lb")), second: 20 / 0.38 },
  { row: "care.8", inputs: "96% x 75%, percent", expected: 72, tolerance: printedTo(0), source: HYDROSEEDING, status: "seen", computed: () => 100 * toNumber(livePart("96", "75")), second: 0.96 * 75 },
  { row: "care.8", inputs: "$2.50 per lb of it, $ per lb pure live seed", expected: 3.47, tolerance: printedTo(2), source: HYDROSEEDING, status: "seen", computed: () => toNumber(pricePerPureLiveSeed(decimal("2.50"), livePart("96", "75"))), second: 2.5 / 0.72 },
  { row: "care.9", inputs: "30 + 32 + 27% fescues, percent", expected: 89, tolerance: printedTo(0), source: TEXAS, status: "seen", computed: () => toNumber(valueOf(purityOfMixture(["30", "32", "27"].map(decimal)))), second: 89 },
  { row: "care.15", inputs: "Kentucky bluegrass, seeds in a pound", expected: 1_500_000, tolerance: 0, source: CORNELL, status: "seen", computed: () => Number(seedsPerPound["Kentucky bluegrass"]), second: 1_500_000 },
  { row: "care.15", inputs: "perennial ryegrass, seeds in a pound", expected: 250_000, tolerance: 0, source: CORNELL, status: "seen", computed: () => Number(seedsPerPound["perennial ryegrass"]), second: 250_000 },
  { row: "care.14", inputs: "1 lb Kentucky bluegrass per 1,000, seeds per sq ft (aim 1,000 to 2,000)", expected: 1500, tolerance: 500, source: CORNELL, status: "seen", computed: () => toNumber(seedsPerSquareFoot(rateOf("seed-mass-per-area", 1n, perThousand), seedsPerPound["Kentucky bluegrass"])), second: 1500 },
];

const topdressingRows: readonly PublishedRow[] = [
  { row: "care.21", inputs: "1/4 in on 2,000 sq ft, cu yd (printed with 0.0031 and taken up)", expected: 1.6, tolerance: 0.06, source: DESCHUTES, status: "seen", computed: () => cubicYards(2000n, "0.25"), second: 2000 * 0.25 / 324 },
  { row: "care.21", inputs: "1/4 in on 2,000 sq ft, cu yd, unrounded", expected: 1.543, tolerance: printedTo(3), source: DESCHUTES, status: "calc", computed: () => cubicYards(2000n, "0.25"), second: 2000 * 0.25 / 324 },
  { row: "care.20", inputs: "cu yd on 1 sq ft, 1 in (printed 0.0031)", expected: 0.0031, tolerance: printedTo(4), source: DESCHUTES, status: "seen", computed: () => cubicYards(1n, "1"), second: 1 / 324 },
  { row: "care.20", inputs: "sq ft that a cu yd covers to 1 in", expected: 324, tolerance: printedTo(0), source: DESCHUTES, status: "seen", computed: () => toNumber(measureInUnit(topdressingArea(of("cu yd", 1n), of("in", 1n)), "sq ft")), second: 324 },
  { row: "care.22", inputs: "1/4 to 3/8 in on 1,000 sq ft, cu yd (printed about 0.75)", expected: 0.75, tolerance: 0.1, source: CUMBERLAND, status: "seen", computed: () => cubicYards(1000n, "0.25"), second: 1000 * 0.25 / 324 },
  { row: "care.23", inputs: "1/8 in on 1,000 sq ft, cu yd", expected: 0.386, tolerance: printedTo(3), source: "324 sq ft to the cubic yard and inch", status: "calc", computed: () => cubicYards(1000n, "0.125"), second: 125 / 324 },
  { row: "care.23", inputs: "1/4 in on 1,000 sq ft, cu yd", expected: 0.772, tolerance: printedTo(3), source: "324 sq ft to the cubic yard and inch", status: "calc", computed: () => cubicYards(1000n, "0.25"), second: 250 / 324 },
  { row: "care.23", inputs: "3/8 in on 1,000 sq ft, cu yd", expected: 1.157, tolerance: printedTo(3), source: "324 sq ft to the cubic yard and inch", status: "calc", computed: () => cubicYards(1000n, "0.375"), second: 375 / 324 },
  { row: "care.24", inputs: "a cu yd of sand at 1.35 short tons, lb", expected: 2700, tolerance: printedTo(0), source: SAND, status: "seen", computed: () => toNumber(measureInUnit(massOf(of("cu yd", 1n), densityOf("1.35", "short ton per cu yd")), "lb")), second: 2700 },
  { row: "sand.1", inputs: "150 lb dry sand at 1.5 g per mL on 1,000 sq ft, mm (printed about 0.5)", expected: 0.5, tolerance: 0.05, source: WOODS_SAND, status: "seen", computed: () => millimeters(volumeOf(of("lb", 150n), densityOf("1.5", "g per mL")), of("sq ft", 1000n)), second: (150 * 453.59237) / 1.5 / (92.90304 * 1000) },
  { row: "sand.1", inputs: "the same, unrounded", expected: 0.488, tolerance: printedTo(3), source: WOODS_SAND, status: "calc", computed: () => millimeters(volumeOf(of("lb", 150n), densityOf("1.5", "g per mL")), of("sq ft", 1000n)), second: (150 * 453.59237) / 1.5 / (92.90304 * 1000) },
  { row: "sand.2", inputs: "1,656 lb in a year of the same, mm", expected: 5.4, tolerance: printedTo(1), source: WOODS_SAND, status: "seen", computed: () => millimeters(volumeOf(of("lb", 1656n), densityOf("1.5", "g per mL")), of("sq ft", 1000n)), second: (1656 * 453.59237) / 1.5 / (92.90304 * 1000) },
  { row: "sand.3", inputs: "75 kg at 1.5 kg per L on 100 m2, mm", expected: 0.5, tolerance: printedTo(2), source: WOODS_METRIC, status: "seen", computed: () => millimeters(volumeOf(of("kg", 75n), densityOf("1.5", "kg per L")), of("m2", 100n)), second: 0.5 },
  { row: "sand.3", inputs: "9 kg at 1.5 kg per L on 1 m2, mm", expected: 6, tolerance: printedTo(0), source: WOODS_METRIC, status: "seen", computed: () => millimeters(volumeOf(of("kg", 9n), densityOf("1.5", "kg per L")), of("m2", 1n)), second: 6 },
  { row: "sand.3", inputs: "1 mm on 1 m2, L", expected: 1, tolerance: printedTo(0), source: WOODS_METRIC, status: "seen", computed: () => toNumber(measureInUnit(topdressingVolume(of("m2", 1n), of("mm", 1n)), "L")), second: 1 },
  { row: "sand.4", inputs: "20.3 cu ft on 1,000 sq ft, mm", expected: 6, tolerance: printedTo(0), source: WOODS_UPDATED, status: "seen", computed: () => cubicFeetAsMillimeters("20.3"), second: 20.3 * 0.3048 },
  { row: "sand.5", inputs: "25 cu ft on 1,000 sq ft, mm", expected: 7.6, tolerance: printedTo(1), source: WOODS_UPDATED, status: "seen", computed: () => cubicFeetAsMillimeters("25"), second: 25 * 0.3048 },
  { row: "sand.5", inputs: "35 cu ft on 1,000 sq ft, mm", expected: 10.7, tolerance: printedTo(1), source: WOODS_UPDATED, status: "seen", computed: () => cubicFeetAsMillimeters("35"), second: 35 * 0.3048 },
  { row: "sand.6", inputs: "115 cu ft on 1,000 sq ft, mm (printed about)", expected: 35, tolerance: printedTo(0), source: WOODS_115, status: "seen", computed: () => cubicFeetAsMillimeters("115"), second: 115 * 0.3048 },
];

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

const ROW_OF_SOURCE: Readonly<Record<string, string>> = { Cornell: "care.10", LSU: "care.11", Nebraska: "care.12", Purdue: "care.13" };

const ofRates = printed.map(([grass, source, use, lowest, highest]): PublishedStatement => ({
  row: ROW_OF_SOURCE[source] ?? "no row",
  says: `${grass}, ${use}: ${String(lowest)} to ${String(highest)} lb per 1,000 sq ft`,
  source,
  status: "seen",
  holds: () => {
    const found = seedingRatesOf(grass, use).filter((rate) => rate.source.name.includes(source));
    expect(found.map((rate) => [toNumber(rateIn(rate.lowest, perThousand)), toNumber(rateIn(rate.highest, perThousand))])).toContainEqual([lowest, highest]);
    // Only Louisiana prints pure live seed.
    expect(found.every((rate) => (rate.counts === "pure live seed") === (source === "LSU"))).toBe(true);
  },
}));

const thereAndBack: readonly PublishedStatement[] = [
  {
    row: "care.6",
    says: "bulk from pure live seed, and pure live seed from bulk, are one formula turned round",
    source: LSU,
    status: "calc",
    holds: () => {
      for (const [purity, germination] of [["48", "80"], ["96", "75"], ["99.5", "92"]] as const) {
        const bulk = bulkSeedFor(of("lb", 20n), livePart(purity, germination));
        expect(toNumber(measureInUnit(pureLiveSeedIn(bulk, livePart(purity, germination)), "lb"))).toBe(20);
      }
    },
  },
  {
    row: "care.20",
    says: "volume, depth and area are one formula turned round",
    source: DESCHUTES,
    status: "calc",
    holds: () => {
      for (const inches of ["0.125", "0.25", "0.375"]) {
        const volume = topdressingVolume(of("sq ft", 2000n), exactly("in", inches));
        expect(toNumber(measureInUnit(topdressingDepth(volume, of("sq ft", 2000n)), "in"))).toBe(Number(inches));
        expect(toNumber(measureInUnit(topdressingArea(volume, exactly("in", inches)), "sq ft"))).toBe(2000);
      }
    },
  },
];

export const SEEDING_RATES_PRINTED = printed.length;
export const CARE_CHECKS: readonly PublishedEntry[] = [...seedRows, ...topdressingRows, ...ofRates, ...thereAndBack];
