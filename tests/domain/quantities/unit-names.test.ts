import { describe, expect, test } from "vitest";
import { dimensionInWords, isUsCustomary, offeredUnits, readUnit, writtenUnit } from "#domain/quantities/unit-names";
import { type Unit, units } from "#domain/quantities/units";

const everyUnit = Object.keys(units) as Unit[];

test.each(everyUnit)("%s is read as it is named and as it is written", (unit) => {
  for (const text of [unit, writtenUnit(unit, "one"), writtenUnit(unit, "many")]) {
    expect(readUnit(text.normalize("NFKC"))).toEqual({ kind: "unit", unit });
  }
});

describe("spellings", () => {
  test.each([
    ["Lbs.", "lb"],
    ["pounds", "lb"],
    ["#", "lb"],
    ["FL. OZ.", "fl oz"],
    ["fluid ounces", "fl oz"],
    ["oz fl", "fl oz"],
    ["wt. oz", "oz wt"],
    ["Ounces by weight", undefined],
    ["square feet", "sq ft"],
    ["Sq. Ft.", "sq ft"],
    ["ft2", "sq ft"],
    ["square yards", "sq yd"],
    ["cubic yards", "cu yd"],
    ["acres", "acre"],
    ["m^2", "m2"],
    ["square meters", "m2"],
    ["Gallons", "gal"],
    ["ML", "mL"],
    ["cc", "mL"],
    ["tons", "short ton"],
    ["inches", "in"],
    ["foot", "ft"],
    ["bushel", undefined],
    ["", undefined],
    ["constructor", undefined],
  ])("%j", (text, unit) => {
    expect(readUnit(text)).toEqual(unit === undefined ? { kind: "unknown" } : { kind: "unit", unit });
  });

  test.each(["oz", "oz.", "OZ", "ounce", "ounces"])("%j could be either ounce", (text) => {
    expect(readUnit(text)).toEqual({ kind: "ounce-of-which-kind" });
  });

  test("a capital M could be anything, a small one is a meter", () => {
    expect(readUnit("M")).toEqual({ kind: "capital-m" });
    expect(readUnit("m")).toEqual({ kind: "unit", unit: "m" });
  });
});

test("units are US customary or metric, and offered under their own dimension", () => {
  expect(everyUnit.filter((unit) => !isUsCustomary(unit))).toEqual([
    "mL",
    "L",
    "m3",
    "g",
    "kg",
    "m2",
    "ha",
    "mm",
    "cm",
    "m",
  ]);
  for (const [dimension, offered] of Object.entries(offeredUnits)) {
    for (const unit of offered) expect(units[unit].dimension).toBe(dimension);
  }
  expect(Object.keys(dimensionInWords).toSorted()).toEqual(["area", "length", "mass", "volume"]);
});
