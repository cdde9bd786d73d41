// Units, rates and densities as NIST and others print them.
import { expect } from "vitest";
import { measurePace } from "#domain/equipment/pace";
import { PSI_PER_BAR } from "#domain/equipment/nozzle";
import { densityIn, densityOf, type DensityUnit } from "#domain/quantities/density";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { inUnit, of, type Quantity } from "#domain/quantities/quantity";
import { rateIn, rateOf, times } from "#domain/quantities/rate";
import { compareRational, decimal, type Rational, toNumber } from "#domain/quantities/rational";
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from "#domain/turf/temperature-scale";
import { topdressingVolume } from "#domain/turf/topdressing";
import { type Dimension, type Unit } from "#domain/quantities/units";
import { valueOf } from "../../support/domain-answers";
import { printedTo, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

const SP811 = "NIST SP 811 Appendix B.8, https://www.nist.gov/pml/special-publication-811/nist-guide-si-appendix-b-conversion-factors/nist-guide-si-appendix-b8";
const NISTUNITS = "NIST SP 811 Appendix B as carried by CRAN NISTunits 1.0.1, https://github.com/cran/NISTunits";
const HB44 = "NIST Handbook 44 (2026), Appendix C, in a file that quotes the text";
const FACTBOOK = "World Factbook, appendix G copy, http://cs.fit.edu/~ryan/factbook/";

function oneIn(from: Unit, to: Unit): Rational {
  const quantity: Quantity<Dimension> = of(from, 1n);
  return inUnit<Dimension>(quantity, to);
}

const exact: readonly (readonly [PublishedStatement["row"], Unit, Unit, string, string, "seen" | "seen-2nd"])[] = [
  ["units-printed.1", "in", "cm", "2.54", SP811, "seen-2nd"],
  [["units-printed.2", "units.14"], "ft", "m", "0.3048", SP811, "seen-2nd"],
  ["units-printed.3", "yd", "m", "0.9144", SP811, "seen-2nd"],
  [["units-printed.5", "units-printed.26", "units.4"], "sq ft", "m2", "0.09290304", SP811, "seen-2nd"],
  [["units-printed.8", "units.3"], "ha", "m2", "10000", SP811, "seen-2nd"],
  [["units.1", "units-printed.43"], "acre", "m2", "4046.8564224", FACTBOOK, "seen"],
  [["units.2", "units-printed.25"], "acre", "sq ft", "43560", FACTBOOK, "seen"],
  [["units.2", "units-printed.25"], "acre", "ha", "0.40468564224", FACTBOOK, "seen"],
  ["units-printed.27", "sq yd", "m2", "0.83612736", HB44, "seen-2nd"],
  ["units.5", "gal", "L", "3.785411784", NISTUNITS, "seen-2nd"],
  [["units.5", "units-printed.32"], "gal", "cu in", "231", HB44, "seen-2nd"],
  ["units-printed.32", "gal", "fl oz", "128", HB44, "seen-2nd"],
  ["units-printed.33", "qt", "cu in", "57.75", HB44, "seen-2nd"],
  ["units-printed.34", "pt", "cu in", "28.875", HB44, "seen-2nd"],
  ["units-printed.35", "cup", "fl oz", "8", HB44, "seen-2nd"],
  [["units.7", "units-printed.40"], "fl oz", "mL", "29.5735295625", SP811, "seen-2nd"],
  ["units-printed.41", "tbsp", "mL", "14.78676478125", SP811, "seen-2nd"],
  ["units.6", "gal", "qt", "4", NISTUNITS, "seen-2nd"],
  ["units.6", "gal", "pt", "8", NISTUNITS, "seen-2nd"],
  ["units.8", "gal", "cup", "16", NISTUNITS, "seen-2nd"],
  ["units.8", "gal", "tbsp", "256", NISTUNITS, "seen-2nd"],
  ["units.8", "gal", "tsp", "768", NISTUNITS, "seen-2nd"],
  [["units.9", "units-printed.37"], "lb", "kg", "0.45359237", SP811, "seen-2nd"],
  [["units.9", "units-printed.36"], "oz wt", "g", "28.349523125", HB44, "seen-2nd"],
  ["units-printed.38", "short ton", "kg", "907.18474", HB44, "seen-2nd"],
  ["units-printed.39", "cu ft", "cu in", "1728", HB44, "seen-2nd"],
];

const printed: readonly (readonly [PublishedStatement["row"], Unit, Unit, string, string])[] = [
  [["units.5", "units-printed.13"], "gal", "L", "3.785412", SP811],
  [["units.6", "units-printed.14"], "qt", "L", "0.9463529", SP811],
  [["units.6", "units-printed.15"], "pt", "L", "0.4731765", SP811],
  [["units.8", "units-printed.16"], "cup", "mL", "236.5882", SP811],
  ["units.8", "tbsp", "mL", "14.78676", NISTUNITS],
  ["units.8", "tsp", "mL", "4.928922", NISTUNITS],
  [["units.7", "units-printed.17"], "fl oz", "mL", "29.57353", SP811],
  ["units-printed.18", "cu in", "m3", "0.00001638706", SP811],
  [["units.14", "units-printed.19"], "cu ft", "m3", "0.02831685", SP811],
  ["units.14", "cu yd", "m3", "0.7645549", NISTUNITS],
  [["units.4", "units-printed.7"], "sq yd", "m2", "0.8361274", SP811],
  [["units.9", "units-printed.9"], "oz wt", "g", "28.34952", SP811],
  [["units.9", "units-printed.10"], "lb", "kg", "0.4535924", SP811],
  ["units-printed.11", "short ton", "kg", "907.1847", SP811],
  ["units-printed.30", "ha", "acre", "2.471", HB44],
  ["units-printed.31", "m2", "sq ft", "10.764", HB44],
];

const ofDefinition = exact.map(([row, from, to, factor, source, status]): PublishedStatement => ({
  row,
  says: `one ${from} in ${to} is ${factor} exactly`,
  source,
  status,
  holds: () => expect(compareRational(oneIn(from, to), decimal(factor))).toBe(0),
}));

const ofFigures = printed.map(([row, from, to, factor, source]): PublishedStatement => ({
  row,
  says: `one ${from} in ${to} is ${factor}, to the figures printed`,
  source,
  status: "seen-2nd",
  holds: () => expect(Math.abs(toNumber(oneIn(from, to)) - Number(factor))).toBeLessThanOrEqual(printedTo(factor.split(".")[1]?.length ?? 0)),
}));

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
  { row: "units.10", inputs: "lb per gal in kg per m3", expected: 119.8264, tolerance: printedTo(4), source: NISTUNITS, status: "seen-2nd", computed: () => densityFactor("lb per gal", "kg per m3"), second: 453.59237 / 3.785411784 },
  { row: "units.11", inputs: "lb per sq ft in kg per m2", expected: 4.882428, tolerance: printedTo(6), source: NISTUNITS, status: "seen-2nd", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "lb per sq ft"), "kg per m2")), second: 0.45359237 / 0.09290304 },
  { row: "units.12", inputs: "oz per sq ft in kg per m2", expected: 0.3051517, tolerance: printedTo(7), source: NISTUNITS, status: "seen-2nd", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "oz wt per sq ft"), "kg per m2")), second: 0.028349523125 / 0.09290304 },
  { row: "units.11", inputs: "lb per 1,000 sq ft in g per m2", expected: 4.882428, tolerance: printedTo(6), source: LABEL, status: "calc", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "lb per 1,000 sq ft"), "g per m2")), second: 453.59237 / 92.90304 },
  { row: "units.11", inputs: "lb per 1,000 sq ft in kg per ha", expected: 48.82428, tolerance: printedTo(5), source: LABEL, status: "calc", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "lb per 1,000 sq ft"), "kg per ha")), second: 4535.9237 / 92.90304 },
  { row: "units.12", inputs: "oz per 1,000 sq ft in g per m2", expected: 0.3051517, tolerance: printedTo(7), source: LABEL, status: "calc", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "oz wt per 1,000 sq ft"), "g per m2")), second: 28.349523125 / 92.90304 },
  { row: "plant-nutrition.4", inputs: "1 g per m2 in lb per 1,000 sq ft", expected: 0.2, tolerance: printedTo(1), source: WOODS, status: "seen", computed: () => toNumber(rateIn(rateOf(massRate, 1n, "g per m2"), "lb per 1,000 sq ft")), second: 92.90304 / 453.59237 },
  { row: "sprayers.17", inputs: "40 gal per acre in gal per 1,000 sq ft", expected: 0.92, tolerance: printedTo(2), source: GERKEN, status: "seen", computed: () => toNumber(rateIn(rateOf("carrier-volume-per-area", "40", "gal per acre"), "gal per 1,000 sq ft")), second: 40 / 43.56 },
  { row: "sprayers.18", inputs: "3.6 pt per acre in fl oz per 1,000 sq ft", expected: 1.3, tolerance: printedTo(1), source: GERKEN, status: "seen", computed: () => toNumber(rateIn(rateOf(volumeRate, "3.6", "pt per acre"), "fl oz per 1,000 sq ft")), second: (3.6 * 16) / 43.56 },
  { row: "sprayers.19", inputs: "3.6 pt per acre on 25 acres, gal", expected: 11.25, tolerance: printedTo(2), source: GERKEN, status: "seen", computed: () => toNumber(measureInUnit(times(rateOf(volumeRate, "3.6", "pt per acre"), of("acre", 25n)), "gal")), second: (3.6 * 25) / 8 },
  { row: "units.16", inputs: "an inch of water on an acre, gal", expected: 27_154, tolerance: printedTo(0), source: ACRE_INCH, status: "seen", computed: () => toNumber(measureInUnit(topdressingVolume(of("acre", 1n), of("in", 1n)), "gal")), second: (43_560 * 144) / 231 },
  { row: "units.16", inputs: "an inch of water on an acre, cu ft", expected: 3630, tolerance: printedTo(0), source: ACRE_INCH, status: "seen", computed: () => toNumber(measureInUnit(topdressingVolume(of("acre", 1n), of("in", 1n)), "cu ft")), second: 43_560 / 12 },
];

const feetPerMinuteAtOneMph = () => toNumber(measureInUnit(valueOf(measurePace({ kind: "speed", milesPerHour: 1 })).distancePerMinute, "ft"));

/** What is no quantity of the product, but goes into one: pressure, speed, flow and temperature. */
const otherRows: readonly PublishedRow[] = [
  { row: ["units.13", "units-printed.21", "units-printed.22"], inputs: "1 psi in kPa (100 kPa in a bar)", expected: 6.894757, tolerance: printedTo(6), source: SP811, status: "seen-2nd", computed: () => 100 / PSI_PER_BAR, second: (0.45359237 * 9.80665) / 0.0254 ** 2 / 1000 },
  { row: "units-printed.42", inputs: "1 psi in Pa", expected: 6894.757293168, tolerance: printedTo(9), source: SP811, status: "seen-2nd", computed: () => 100_000 / PSI_PER_BAR, second: (0.45359237 * 9.80665) / 0.0254 ** 2 },
  { row: "units.13", inputs: "1 gal a minute in L a second", expected: 0.0630902, tolerance: printedTo(7), source: NISTUNITS, status: "seen-2nd", computed: () => toNumber(oneIn("gal", "L")) / 60, second: 3.785411784 / 60 },
  { row: ["units.13", "units-printed.23"], inputs: "1 mph in m a second", expected: 0.44704, tolerance: 1e-12, source: SP811, status: "seen-2nd", computed: () => (feetPerMinuteAtOneMph() / 60) * toNumber(oneIn("ft", "m")), second: 1609.344 / 3600 },
  { row: ["units.13", "units-printed.4", "units-printed.23"], inputs: "1 mph in km an hour, a mile in km", expected: 1.609344, tolerance: 1e-12, source: SP811, status: "seen-2nd", computed: () => (feetPerMinuteAtOneMph() * 60 * toNumber(oneIn("ft", "m"))) / 1000, second: (5280 * 0.3048) / 1000 },
  { row: ["units.15", "units-printed.12"], inputs: "68 °F in °C", expected: 20, tolerance: 1e-12, source: SP811, status: "seen-2nd", computed: () => celsiusFromFahrenheit(68), second: (68 - 32) / 1.8 },
  { row: ["units.15", "units-printed.12"], inputs: "-40 °C in °F", expected: -40, tolerance: 1e-12, source: SP811, status: "seen-2nd", computed: () => fahrenheitFromCelsius(-40), second: -40 * 1.8 + 32 },
];

const ofTheSurvey: PublishedStatement = {
  row: "units-printed.43",
  says: "the acre is the international one and not that of the survey foot, 4046.873 m2",
  source: HB44,
  status: "seen-2nd",
  holds: () => expect(4046.873 - toNumber(oneIn("acre", "m2"))).toBeGreaterThan(0.016),
};

/** The units of which a factor is printed. */
export const UNITS_PRINTED: readonly Unit[] = [...exact, ...printed].map(([, unit]) => unit);
export const UNIT_CHECKS: readonly PublishedEntry[] = [...ofDefinition, ...ofFigures, ...rows, ...otherRows, ofTheSurvey];
