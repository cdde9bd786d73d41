// Spreaders: rates, courses, swaths and evenness as printed.
import { expect } from "vitest";
import { rectangleArea } from "#domain/equipment/measured-space";
import { effectiveSwath, type PanLine } from "#domain/equipment/pan-line";
import { coefficientOfVariationPercent, judgeVariation, overlappedCatches, searchSwaths, USUAL_VARIATION_LIMIT, variationAtSwath } from "#domain/equipment/spread-pattern";
import { courseFor, rateFromCollected, ratePerPass } from "#domain/equipment/spreader-calibration";
import { judgeRate, SPREADER_TOLERANCE } from "#domain/equipment/target-rate";
import { exactly, measureInUnit } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateIn, rateOf } from "#domain/quantities/rate";
import { rational, toNumber } from "#domain/quantities/rational";
import { valueOf } from "../../support/domain-answers";
import { printedTo, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

const UMASS = "UMass, https://ag.umass.edu/turf/fact-sheets/rotary-spreader-calibration-procedures";
const OHIO = "Ohio State Bulletin 817 p. 13, http://ohioline.osu.edu/b817/b817_13.html";
const ARIZONA = "Kopec, Univ. of Arizona, April 1999, http://turf.arizona.edu/tips499.htm";
const SPREVAL = "catches of spreval (Grabow, NC State), https://glgrabow.github.io/spreval/reference/DU.html";
const COURSE = "the printed course for 1,000 sq ft, 1,000 over the swath";

const perThousand = "lb per 1,000 sq ft";
const target = rateOf("product-mass-per-area", "5", perThousand);
const cans = [47, 42, 45, 24, 13, 26, 33, 34, 27, 30, 40, 44, 32, 12, 12];

/** Vials a foot apart with 4 in in the middle and 2 in at 6 ft on either side; the depths between are made up. */
const vials = [0, 0.5, 1, 2, 2.5, 3, 3.5, 3.8, 4, 4, 4, 3.8, 3.5, 3, 2.5, 2, 1, 0.5, 0];

function swathOfVials(): number {
  const catches = vials.map((inches) => rational(BigInt(Math.round(inches * 10)), 10n));
  return toNumber(measureInUnit(valueOf(effectiveSwath({ spacing: of("ft", 1n), catches, middle: 9 })).swath, "ft"));
}

const rows: readonly PublishedRow[] = [
  { row: ["spreaders.3", "spreaders.6"], inputs: "20-5-10 at 5.00 lb, lb per pass of two", expected: 2.5, tolerance: printedTo(1), source: UMASS, status: "seen", computed: () => toNumber(rateIn(ratePerPass(target, "two-passes-crosswise"), perThousand)), second: 2.5 },
  { row: ["spreaders.2", "spreaders.7"], inputs: "half depth at 6 ft left and right, ft of effective swath", expected: 12, tolerance: printedTo(0), source: OHIO, status: "seen", computed: swathOfVials, second: 12 },
  { row: "spreaders.9", inputs: "a hopper of 30 in over 50 ft, sq ft", expected: 125, tolerance: printedTo(0), source: ARIZONA, status: "calc", computed: () => toNumber(measureInUnit(rectangleArea(of("in", 30n), of("ft", 50n)), "sq ft")), second: 125 },
  { row: "spreaders.1", inputs: "a swath of 12 ft, ft of course for 1,000 sq ft", expected: 83.3, tolerance: printedTo(1), source: COURSE, status: "calc", computed: () => toNumber(measureInUnit(valueOf(courseFor(of("sq ft", 1000n), of("ft", 12n))), "ft")), second: 1000 / 12 },
  { row: ["spreaders.4", "spreaders.11"], inputs: "fifteen cans, coefficient of variation of a sample, %", expected: 38.63, tolerance: printedTo(2), source: SPREVAL, status: "calc", computed: () => coefficientOfVariationPercent(cans), second: (100 * Math.sqrt(cans.reduce((total, value) => total + (value - 461 / 15) ** 2, 0) / 14)) / (461 / 15) },
];

const collectedRow: PublishedRow = {
  row: "spreaders.1",
  inputs: "0.625 lb collected from 125 sq ft, lb per 1,000 sq ft",
  expected: 5, tolerance: 1e-12, source: "the printed rate, pounds over area by 1,000", status: "calc",
  computed: () => toNumber(rateIn(valueOf(rateFromCollected([{ area: of("sq ft", 125n), collected: exactly("lb", "0.625") }])).rate, perThousand)),
  second: (0.625 / 125) * 1000,
};

const ACCU_SPREAD = "Fertilizer Australia, What Do The Accu-Spread Graphs Mean?, https://www.fertilizer.org.au/Fertcare/Accurate-Spreading/What-Do-The-Accu-Spread-Graphs-Mean";

const lineOf = (...grams: number[]): PanLine => ({ spacing: of("ft", 1n), catches: grams.map((value) => rational(BigInt(value))), middle: (grams.length - 1) / 2 });
const flat = lineOf(0, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 0);
/** Falls off on the left only. */
const slanted = lineOf(0, 1, 2, 3, 4, 4, 4, 4, 0);

/** The overlap once more, in plain numbers: whole pans, a swath of whole feet, passes enough to either side. */
function plainOverlap(grams: readonly number[], swath: number, isTurnedEverySecond: boolean): readonly number[] {
  const middle = (grams.length - 1) / 2;
  const lawn = Array.from({ length: isTurnedEverySecond ? 2 * swath : swath }, () => 0);
  for (let pass = -20; pass <= 20; pass += 1) {
    const isTurned = isTurnedEverySecond && pass % 2 !== 0;
    for (const [place, caught] of grams.entries()) {
      const offset = (isTurned ? middle - place : place - middle) + pass * swath;
      const at = lawn[offset];
      if (at !== undefined) lawn[offset] = at + caught;
    }
  }
  return lawn;
}

const plainVariation = (values: readonly number[]) => {
  const mean = values.reduce((total, value) => total + value, 0) / values.length;
  return (100 / mean) * Math.sqrt(values.reduce((total, value) => total + (value - mean) ** 2, 0) / (values.length - 1));
};

const statements: readonly PublishedStatement[] = [
  ...([["4.74", 1], ["4.75", 0], ["5.25", 0], ["5.26", 1]] as const).map(([found, findings]): PublishedStatement => ({
    row: ["spreaders.5", "spreaders.6"],
    says: `20-5-10 at 5.00 lb: ${found} lb has ${String(findings)} findings`,
    source: UMASS,
    status: "seen",
    holds: () => expect(judgeRate("spreader", rateOf("product-mass-per-area", found, perThousand), target, SPREADER_TOLERANCE).findings).toHaveLength(findings),
  })),
  {
    row: "spread-uniformity.3",
    says: "a coefficient of variation of 10 to 15 % shows no stripes, the 30 % of many machines does",
    source: "Irish Independent 11 Feb 2019, https://www.independent.ie/business/farming/machinery/are-sprayer-issues-hitting-your-pocket-37781916.html",
    status: "seen",
    holds: () => expect([10, 15, 30].map((variationPercent) => judgeVariation({ swath: exactly("ft", "40"), variationPercent }, USUAL_VARIATION_LIMIT).map(({ rule }) => rule))).toEqual([[], [], ["spread-uneven"]]),
  },
  { row: "spread-uniformity.1", says: "the benchmark is 15%", source: ACCU_SPREAD, status: "seen", holds: () => expect(USUAL_VARIATION_LIMIT.percent).toBe(15) },
  {
    row: "spread-uniformity.1",
    says: "a machine may pass at two ranges of widths and fail between them",
    source: ACCU_SPREAD,
    status: "seen",
    holds: () => {
      const { accepted } = valueOf(searchSwaths(flat, "round-and-round", USUAL_VARIATION_LIMIT.percent));
      expect(accepted.length).toBeGreaterThan(1);
      for (const [place, { to }] of accepted.entries()) {
        const after = accepted[place + 1];
        if (after !== undefined) expect(toNumber(measureInUnit(after.from, "ft"))).toBeGreaterThan(toNumber(measureInUnit(to, "ft")));
      }
    },
  },
  {
    row: ["spread-uniformity.2", "spreaders.4"],
    says: "round and round right lies on left, back and forth right lies on right",
    source: ACCU_SPREAD,
    status: "seen",
    holds: () => {
      for (const [pattern, isTurned] of [["round-and-round", false], ["back-and-forth", true]] as const) {
        const ours = valueOf(overlappedCatches(slanted, of("ft", 6n), pattern)).map(toNumber);
        const plain = plainOverlap(slanted.catches.map(toNumber), 6, isTurned);
        expect(ours.toSorted()).toEqual(plain.toSorted());
      }
    },
  },
  {
    row: "spread-uniformity.7",
    says: "variation is told for each swath, and a second, plain overlap finds the same",
    source: "Univ. of Illinois (SPAT I), https://experts.illinois.edu/en/publications/spread-pattern-analysis-tool-spat-i-development-and-theoretical-e",
    status: "seen",
    holds: () => {
      for (const swath of [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]) {
        for (const [pattern, isTurned] of [["round-and-round", false], ["back-and-forth", true]] as const) {
          const ours = valueOf(variationAtSwath(flat, of("ft", BigInt(swath)), pattern)).variationPercent;
          expect(ours).toBeCloseTo(plainVariation(plainOverlap(flat.catches.map(toNumber), swath, isTurned)), 9);
        }
      }
    },
  },
];

export const SPREADER_CHECKS: readonly PublishedEntry[] = [...rows, collectedRow, ...statements];
