import { describe, expect, test } from "vitest";
import { densityIn, densityOf, type DensityUnit } from "#domain/quantities/density";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { inUnit, of, type Quantity } from "#domain/quantities/quantity";
import { rateIn, rateOf, times } from "#domain/quantities/rate";
import { compareRational, decimal, type Rational, toNumber } from "#domain/quantities/rational";
import { topdressingVolume } from "#domain/turf/topdressing";
import { type Dimension, type Unit, units } from "#domain/quantities/units";
import { checkBothWays, printedTo, type PublishedRow } from "../support/published-check";

/*
 * Left out, because no quantity of the product uses them: psi, bar, inches of mercury, miles per hour, gallons per minute, degrees,
 * the mile, the rod, the square inch, the imperial gallon and lb per sq in.
 * Left out, because it is another acre: SP 811's 4046.873 m2 is the acre of the survey foot. The product uses the
 * international one, 4046.856 422 4 m2, which Handbook 44 (2026) prints as exact.
 * Left out, because it is a misprint: "one acre is 4,840 square feet" (square yards).
 */

const SP811 = "NIST SP 811 Appendix B.8, https://www.nist.gov/pml/special-publication-811/nist-guide-si-appendix-b-conversion-factors/nist-guide-si-appendix-b8";
const NISTUNITS = "NIST SP 811 Appendix B as carried by CRAN NISTunits 1.0.1, https://github.com/cran/NISTunits";
const HB44 = "NIST Handbook 44 (2026), Appendix C, in a file that quotes the text";
const FACTBOOK = "World Factbook, appendix G copy, http://cs.fit.edu/~ryan/factbook/";

function oneIn(from: Unit, to: Unit): Rational {
  const quantity: Quantity<Dimension> = of(from, 1n);
  return inUnit<Dimension>(quantity, to);
}

const exact: readonly (readonly [Unit, Unit, string, string, "seen" | "seen-2nd"])[] = [
  ["in", "cm", "2.54", SP811, "seen-2nd"],
  ["ft", "m", "0.3048", SP811, "seen-2nd"],
  ["yd", "m", "0.9144", SP811, "seen-2nd"],
  ["sq ft", "m2", "0.09290304", SP811, "seen-2nd"],
  ["ha", "m2", "10000", SP811, "seen-2nd"],
  ["acre", "m2", "4046.8564224", FACTBOOK, "seen"],
  ["acre", "sq ft", "43560", FACTBOOK, "seen"],
  ["acre", "ha", "0.40468564224", FACTBOOK, "seen"],
  ["sq yd", "m2", "0.83612736", HB44, "seen-2nd"],
  ["gal", "L", "3.785411784", NISTUNITS, "seen-2nd"],
  ["gal", "cu in", "231", HB44, "seen-2nd"],
  ["gal", "fl oz", "128", HB44, "seen-2nd"],
  ["qt", "cu in", "57.75", HB44, "seen-2nd"],
  ["pt", "cu in", "28.875", HB44, "seen-2nd"],
  ["cup", "fl oz", "8", HB44, "seen-2nd"],
  ["fl oz", "mL", "29.5735295625", SP811, "seen-2nd"],
  ["tbsp", "mL", "14.78676478125", SP811, "seen-2nd"],
  ["gal", "qt", "4", NISTUNITS, "seen-2nd"],
  ["gal", "pt", "8", NISTUNITS, "seen-2nd"],
  ["gal", "cup", "16", NISTUNITS, "seen-2nd"],
  ["gal", "tbsp", "256", NISTUNITS, "seen-2nd"],
  ["gal", "tsp", "768", NISTUNITS, "seen-2nd"],
  ["lb", "kg", "0.45359237", SP811, "seen-2nd"],
  ["oz wt", "g", "28.349523125", HB44, "seen-2nd"],
  ["short ton", "kg", "907.18474", HB44, "seen-2nd"],
  ["cu ft", "cu in", "1728", HB44, "seen-2nd"],
];

const printed: readonly (readonly [Unit, Unit, string, string])[] = [
  ["gal", "L", "3.785412", SP811],
  ["qt", "L", "0.9463529", SP811],
  ["pt", "L", "0.4731765", SP811],
  ["cup", "mL", "236.5882", SP811],
  ["tbsp", "mL", "14.78676", NISTUNITS],
  ["tsp", "mL", "4.928922", NISTUNITS],
  ["fl oz", "mL", "29.57353", SP811],
  ["cu in", "m3", "0.00001638706", SP811],
  ["cu ft", "m3", "0.02831685", SP811],
  ["cu yd", "m3", "0.7645549", NISTUNITS],
  ["sq yd", "m2", "0.8361274", SP811],
  ["oz wt", "g", "28.34952", SP811],
  ["lb", "kg", "0.4535924", SP811],
  ["short ton", "kg", "907.1847", SP811],
  ["ha", "acre", "2.471", HB44],
  ["m2", "sq ft", "10.764", HB44],
];

describe("factors that are exact by definition", () => {
  test.each(exact)("one %s in %s is %s exactly (%s, %s)", (from, to, factor) => {
    expect(compareRational(oneIn(from, to), decimal(factor))).toBe(0);
  });
});

describe("factors as printed, to seven figures", () => {
  test.each(printed)("one %s in %s is %s (%s, seen-2nd)", (from, to, factor) => {
    const decimals = factor.split(".")[1]?.length ?? 0;
    expect(Math.abs(toNumber(oneIn(from, to)) - Number(factor))).toBeLessThanOrEqual(printedTo(decimals));
  });
});

function densityFactor(from: DensityUnit, to: DensityUnit): number {
  return toNumber(densityIn(densityOf("1", from), to));
}

const massRate = "product-mass-per-area" as const;
const volumeRate = "product-volume-per-area" as const;
const GERKEN = "Gerken, Oklahoma State Univ.-OKC (2013), https://paperzz.com/doc/9245112/";
const ACRE_INCH = "an irrigation text, docplayer 28210450";
const WOODS = "Woods, micahwoods.github.io, 3 Aug 2018";
const LABEL = "SP 811's lb per sq ft";

const rows: readonly PublishedRow[] = [
  { inputs: "lb per gal in kg per m3", expected: 119.8264, tolerance: printedTo(4), source: NISTUNITS, status: "seen-2nd", computed: () => densityFactor("lb per gal", "kg per m3"), second: 453.59237 / 3.785411784 },
  { inputs: "lb per sq ft in kg per m2", expected: 4.882428, tolerance: printedTo(6), source: NISTUNITS, status: "seen-2nd", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "lb per sq ft"), "kg per m2")), second: 0.45359237 / 0.09290304 },
  { inputs: "oz per sq ft in kg per m2", expected: 0.3051517, tolerance: printedTo(7), source: NISTUNITS, status: "seen-2nd", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "oz wt per sq ft"), "kg per m2")), second: 0.028349523125 / 0.09290304 },
  { inputs: "lb per 1,000 sq ft in g per m2", expected: 4.882428, tolerance: printedTo(6), source: LABEL, status: "calc", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "lb per 1,000 sq ft"), "g per m2")), second: 453.59237 / 92.90304 },
  { inputs: "lb per 1,000 sq ft in kg per ha", expected: 48.82428, tolerance: printedTo(5), source: LABEL, status: "calc", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "lb per 1,000 sq ft"), "kg per ha")), second: 4535.9237 / 92.90304 },
  { inputs: "oz per 1,000 sq ft in g per m2", expected: 0.3051517, tolerance: printedTo(7), source: LABEL, status: "calc", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "oz wt per 1,000 sq ft"), "g per m2")), second: 28.349523125 / 92.90304 },
  { inputs: "1 g per m2 in lb per 1,000 sq ft", expected: 0.2, tolerance: printedTo(1), source: WOODS, status: "seen", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "g per m2"), "lb per 1,000 sq ft")), second: 92.90304 / 453.59237 },
  { inputs: "40 gal per acre in gal per 1,000 sq ft", expected: 0.92, tolerance: printedTo(2), source: GERKEN, status: "seen", computed: () => toNumber(rateIn(rateOf("carrier-volume-per-area", "40", "gal per acre"), "gal per 1,000 sq ft")), second: 40 / 43.56 },
  { inputs: "3.6 pt per acre in fl oz per 1,000 sq ft", expected: 1.3, tolerance: printedTo(1), source: GERKEN, status: "seen", computed: () => toNumber(rateIn(rateOf(volumeRate, "3.6", "pt per acre"), "fl oz per 1,000 sq ft")), second: (3.6 * 16) / 43.56 },
  { inputs: "3.6 pt per acre on 25 acres, gal", expected: 11.25, tolerance: printedTo(2), source: GERKEN, status: "seen", computed: () => toNumber(measureInUnit(times(rateOf(volumeRate, "3.6", "pt per acre"), of("acre", 25n)), "gal")), second: (3.6 * 25) / 8 },
  { inputs: "an inch of water on an acre, gal", expected: 27_154, tolerance: printedTo(0), source: ACRE_INCH, status: "seen", computed: () => toNumber(measureInUnit(topdressingVolume(of("acre", 1n), of("in", 1n)), "gal")), second: (43_560 * 144) / 231 },
  { inputs: "an inch of water on an acre, cu ft", expected: 3630, tolerance: printedTo(0), source: ACRE_INCH, status: "seen", computed: () => toNumber(measureInUnit(topdressingVolume(of("acre", 1n), of("in", 1n)), "cu ft")), second: 43_560 / 12 },
];

describe("factors of rates and densities", () => {
  test.each(rows)("$inputs = $expected ($status; $source)", (row) => checkBothWays(row));
});

test("every unit stands in a row above, but for those that are powers of ten of one that does", () => {
  const powersOfTen: readonly Unit[] = ["mL", "L", "m3", "g", "kg", "m2", "mm", "cm", "m"];
  const covered = new Set<string>([...powersOfTen, ...[...exact, ...printed].map(([unit]) => unit)]);
  expect(Object.keys(units).filter((unit) => !covered.has(unit))).toEqual([]);
});
