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
  mL: [640_000_000n, 1n],
  L: [640_000_000n * 1000n, 1n],
  m3: [640_000_000n * 1_000_000n, 1n],
  gal: [GALLON * 640n, 1n],
  qt: [GALLON * 640n, 4n],
  pt: [GALLON * 640n, 8n],
  cup: [GALLON * 640n, 16n],
  "fl oz": [GALLON * 640n, 128n],
  tbsp: [GALLON * 640n, 256n],
  tsp: [GALLON * 640n, 768n],
  "cu in": [CUBIC_INCH * 640n, 1n],
  "cu ft": [CUBIC_INCH * 640n * 12n ** 3n, 1n],
  "cu yd": [CUBIC_INCH * 640n * 36n ** 3n, 1n],
  g: [160_000_000n, 1n],
  kg: [160_000_000n * 1000n, 1n],
  lb: [POUND * 1600n, 1n],
  "oz wt": [POUND * 1600n, 16n],
  "short ton": [POUND * 1600n * 2000n, 1n],
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

describe("what is read off a scale or a measuring cup is whole", () => {
  const whole: readonly (readonly [Unit, readonly bigint[]])[] = [
    ["lb", [2n, 4n, 8n, 10n, 16n, 64n, 100n]],
    ["oz wt", [2n, 4n, 10n, 100n]],
    ["g", [10_000n]],
    ["tsp", [2n, 4n, 10n]],
    ["tbsp", [2n, 3n, 4n, 10n]],
    ["fl oz", [2n, 3n, 4n, 8n, 10n]],
    ["cup", [2n, 3n, 4n, 8n, 10n]],
    ["pt", [2n, 3n, 4n, 8n, 10n]],
    ["qt", [2n, 3n, 4n, 8n, 10n]],
    ["gal", [2n, 3n, 4n, 8n, 10n, 20n, 128n]],
    ["mL", [10_000n]],
  ];
  test.each(whole)("%s", (unit, parts) => {
    expect(parts.filter((part) => units[unit].canonicalAmount % part !== 0n)).toEqual([]);
  });

  test("hundredths of a gallon are not, but for the twentieths; nor are finer parts of the others", () => {
    const hundredths = Array.from({ length: 100 }, (_, index) => BigInt(index + 1));
    const ofGallon = hundredths.filter((count) => (units.gal.canonicalAmount * count) % 100n === 0n);
    expect(ofGallon).toEqual(hundredths.filter((count) => count % 5n === 0n));
    expect(units["fl oz"].canonicalAmount % 100n).not.toBe(0n);
    expect(units.lb.canonicalAmount % 1000n).not.toBe(0n);
    expect(units["oz wt"].canonicalAmount % 8n).not.toBe(0n);
    expect(units.lb.canonicalAmount % 3n).not.toBe(0n);
    expect(units["short ton"].canonicalAmount % 3n).not.toBe(0n);
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

test("a 64 bit column reaches 3.8 million gallons and 127 million pounds", () => {
  expect(GREATEST_STORED_AMOUNT).toBe(2n ** 63n - 1n);
  expect(GREATEST_STORED_AMOUNT / units.gal.canonicalAmount / 100_000n).toBe(38n);
  expect(GREATEST_STORED_AMOUNT / units.lb.canonicalAmount / 1_000_000n).toBe(127n);
});
