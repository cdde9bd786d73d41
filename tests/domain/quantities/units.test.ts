import Qty from "js-quantities";
import { describe, expect, test } from "vitest";
import {
  GREATEST_STORED_AMOUNT,
  LENGTHS_SQUARED_PER_AREA,
  type Unit,
  units,
  VOLUMES_PER_AREA_TIMES_LENGTH,
} from "#domain/quantities/units";

/**
 * The definitions, worked out here from the inch, the pound and the gallon alone: tenths of a micrometer (in = 254,000),
 * so that every product below is whole. The library's table is not used.
 */
const INCH = 254_000n;
const FIFTH_OF_A_MILLIMETER = 2000n;
/** 16.387064 mL, and 231 of them, in millionths of a milliliter. */
const CUBIC_INCH = 16_387_064n;
const GALLON = 231n * CUBIC_INCH;
/** 453.59237 g in hundred-thousandths of a gram. */
const POUND = 45_359_237n;

/** Canonical amounts as [numerator, denominator]; each must divide without a remainder. */
const defined: Readonly<Record<Unit, readonly [bigint, bigint]>> = {
  mL: [32_000_000n, 1n],
  L: [32_000_000n * 1000n, 1n],
  m3: [32_000_000n * 1_000_000n, 1n],
  gal: [GALLON * 32n, 1n],
  qt: [GALLON * 32n, 4n],
  pt: [GALLON * 32n, 8n],
  cup: [GALLON * 32n, 16n],
  "fl oz": [GALLON * 32n, 128n],
  tbsp: [GALLON * 32n, 256n],
  tsp: [GALLON * 32n, 768n],
  "cu in": [CUBIC_INCH * 32n, 1n],
  "cu ft": [CUBIC_INCH * 32n * 12n ** 3n, 1n],
  "cu yd": [CUBIC_INCH * 32n * 36n ** 3n, 1n],
  g: [1_600_000n, 1n],
  kg: [1_600_000n * 1000n, 1n],
  lb: [POUND * 16n, 1n],
  "oz wt": [POUND * 16n, 16n],
  "short ton": [POUND * 16n * 2000n, 1n],
  m2: [25_000_000n, 1n],
  ha: [25_000_000n * 10_000n, 1n],
  "sq ft": [(12n * INCH) ** 2n, FIFTH_OF_A_MILLIMETER ** 2n],
  "sq yd": [(36n * INCH) ** 2n, FIFTH_OF_A_MILLIMETER ** 2n],
  acre: [43_560n * (12n * INCH) ** 2n, FIFTH_OF_A_MILLIMETER ** 2n],
  mm: [8000n, 1n],
  cm: [80_000n, 1n],
  m: [8_000_000n, 1n],
  in: [INCH * 8n, 10n],
  ft: [INCH * 8n * 12n, 10n],
  yd: [INCH * 8n * 36n, 10n],
};

describe("every unit is a whole number of canonical units", () => {
  test.each(Object.entries(defined))("%s", (unit, [numerator, denominator]) => {
    const definition = units[unit as Unit];
    expect(numerator % denominator).toBe(0n);
    expect(definition.canonicalAmount).toBe(numerator / denominator);
  });
});

/** The general-purpose library's names. Its factors are printed to eight or nine figures; its "sqft" is a foot, so ft^2. */
const secondOpinion: readonly (readonly [Unit, string, Unit, string])[] = [
  ["gal", "gal", "mL", "ml"],
  ["qt", "qt", "mL", "ml"],
  ["pt", "pt", "mL", "ml"],
  ["cup", "cup", "mL", "ml"],
  ["fl oz", "floz", "mL", "ml"],
  ["tbsp", "tbsp", "mL", "ml"],
  ["tsp", "tsp", "mL", "ml"],
  ["L", "l", "mL", "ml"],
  ["cu in", "in^3", "mL", "ml"],
  ["cu ft", "ft^3", "mL", "ml"],
  ["cu yd", "yd^3", "mL", "ml"],
  ["m3", "m^3", "mL", "ml"],
  ["oz wt", "oz", "g", "g"],
  ["lb", "lb", "g", "g"],
  ["short ton", "short-ton", "g", "g"],
  ["kg", "kg", "g", "g"],
  ["sq ft", "ft^2", "m2", "m^2"],
  ["sq yd", "yd^2", "m2", "m^2"],
  ["acre", "acre", "m2", "m^2"],
  ["ha", "hectare", "m2", "m^2"],
  ["in", "in", "mm", "mm"],
  ["ft", "ft", "mm", "mm"],
  ["yd", "yd", "mm", "mm"],
  ["cm", "cm", "mm", "mm"],
  ["m", "m", "mm", "mm"],
];

describe("a general-purpose unit library agrees", () => {
  test.each(secondOpinion)("%s", (unit, theirUnit, base, theirBase) => {
    const ours = Number(units[unit].canonicalAmount) / Number(units[base].canonicalAmount);
    const theirs = Qty(`1 ${theirUnit}`).to(theirBase).scalar;
    expect(Math.abs(ours / theirs - 1)).toBeLessThan(2e-8);
  });
});

test("the canonical units of length, area and volume hang together", () => {
  expect(units.ft.canonicalAmount ** 2n % LENGTHS_SQUARED_PER_AREA).toBe(0n);
  expect(units.ft.canonicalAmount ** 2n / LENGTHS_SQUARED_PER_AREA).toBe(units["sq ft"].canonicalAmount);
  expect(units.m.canonicalAmount ** 2n / LENGTHS_SQUARED_PER_AREA).toBe(units.m2.canonicalAmount);
  const { numerator, denominator } = VOLUMES_PER_AREA_TIMES_LENGTH;
  expect((units["sq ft"].canonicalAmount * units.ft.canonicalAmount * numerator) / denominator).toBe(
    units["cu ft"].canonicalAmount,
  );
  expect((units.m2.canonicalAmount * units.m.canonicalAmount * numerator) / denominator).toBe(units.m3.canonicalAmount);
});

test("a 64 bit column reaches 76 million gallons and 12.7 billion pounds", () => {
  expect(GREATEST_STORED_AMOUNT).toBe(2n ** 63n - 1n);
  expect(GREATEST_STORED_AMOUNT / units.gal.canonicalAmount / 1_000_000n).toBe(76n);
  expect(GREATEST_STORED_AMOUNT / units.lb.canonicalAmount / 100_000_000n).toBe(127n);
});
