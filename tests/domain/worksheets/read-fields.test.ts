import { expect, test } from "vitest";
import { accept, badInput } from "#domain/foundation/outcome";
import { exactly } from "#domain/quantities/exact-quantity";
import { rateOf } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";
import { ifTyped, readAmountField, readChoice, readDensityField, readListField, readModelNumber, readNumberField, readRateField, readTogether, refuseEmpty, refuseOne } from "#domain/worksheets/read-fields";
import { saying } from "../../support/said";

const AREA = { field: "area", what: "the area", such: "6,000 sq ft" } as const;
const PERCENT = { lowest: "0", highest: "100", unit: "%" } as const;

test("fields are read together: all values, or all that was refused in order", () => {
  expect(readTogether({ one: accept(1), two: accept("2") })).toEqual(accept({ one: 1, two: "2" }));
  const both = readTogether({ one: badInput("one", "x", "a", "No x."), two: accept(2), three: badInput("three", "y", "b", "No y.") });
  expect(both).toMatchObject({ ok: false, refusal: [{ field: "one" }, { field: "three" }] });
  expect(refuseOne({ kind: "bad-input", field: "one", found: "x", allowed: "a", sentence: "No." })).toMatchObject({ ok: false, refusal: [{ field: "one" }] });
});

test("an empty field is refused with an example, and one that may be empty is not", () => {
  expect(refuseEmpty(AREA, "  ")).toMatchObject({ refusal: { kind: "missing-fact", field: "area", sentence: "Give the area, such as 6,000 sq ft." } });
  expect(refuseEmpty(AREA, "1")).toBeUndefined();
  expect(ifTyped(" ", () => badInput("area", "", "", ""))).toEqual(accept(undefined));
  expect(ifTyped("1", accept)).toEqual(accept("1"));
});

test("amounts are read with their unit, or in the unit that the field shows", () => {
  const acre = readAmountField(AREA, "1/4 acre", { dimension: "area", unitWhenNone: "sq ft" });
  expect(acre).toEqual(accept(exactly("acre", rational(1n, 4n))));
  expect(readAmountField(AREA, "6,000", { dimension: "area", unitWhenNone: "sq ft" })).toMatchObject({ ok: true });
  expect(readAmountField({ ...AREA, field: "length" }, "12'6\"", { dimension: "length" })).toMatchObject({ ok: true });
  expect(readAmountField(AREA, "0 sq ft", { dimension: "area" })).toMatchObject({ refusal: { field: "area", found: "0 sq ft", allowed: "more than nothing" } });
  expect(readAmountField(AREA, "3 lb", { dimension: "area" })).toMatchObject({ refusal: { sentence: saying("an area") } });
  expect(readAmountField({ ...AREA, field: "bag" }, "50 oz", { dimension: "mass" })).toMatchObject({ refusal: { allowed: "fl oz, oz wt" } });
});

test("rates are read with their unit, and an ounce of either kind is asked back", () => {
  const ask = { field: "rate", what: "the rate", such: "2 gal per 1,000 sq ft" } as const;
  const carrier = { bases: ["carrier-volume-per-area"], unitWhenNone: "gal per 1,000 sq ft" } as const;
  expect(readRateField(ask, "1 1/2 gal/1,000", carrier)).toEqual(accept(rateOf("carrier-volume-per-area", "1.5", "gal per 1,000 sq ft")));
  expect(readRateField(ask, "2", carrier)).toEqual(accept(rateOf("carrier-volume-per-area", "2", "gal per 1,000 sq ft")));
  expect(readRateField(ask, "", carrier)).toMatchObject({ refusal: { kind: "missing-fact" } });
  expect(readRateField(ask, "0", carrier)).toMatchObject({ refusal: { allowed: "more than nothing" } });
  expect(readRateField(ask, "32 oz/acre", { bases: ["product-volume-per-area", "product-mass-per-area"] })).toMatchObject({ refusal: { field: "rate", sentence: saying("Write oz wt or fl oz") } });
});

test("numbers lie within their range, whole where they must be, below zero where the range reaches there", () => {
  const ask = { field: "share", what: "the share", such: "50" } as const;
  expect(readNumberField(ask, "48 %", PERCENT)).toMatchObject({ ok: true, value: { numerator: 48n } });
  expect(readNumberField(ask, "101", PERCENT)).toMatchObject({ refusal: { field: "share", found: "101", allowed: "from 0 to 100 %" } });
  expect(readNumberField(ask, "half", PERCENT)).toMatchObject({ refusal: { found: "half", sentence: saying("Here it takes from 0 to 100 %.") } });
  expect(readNumberField(ask, "", PERCENT)).toMatchObject({ refusal: { kind: "missing-fact" } });
  expect(readNumberField(ask, "2.5", { lowest: "1", highest: "9", unit: "", isWhole: true })).toMatchObject({ refusal: { allowed: "whole numbers from 1 to 9" } });
  expect(readModelNumber(ask, "-4", { lowest: "-60", highest: "135", unit: "°F" })).toEqual(accept(-4));
  expect(readModelNumber(ask, "\u22124 °F", { lowest: "-60", highest: "135", unit: "°F" })).toEqual(accept(-4));
  expect(readModelNumber(ask, "-61", { lowest: "-60", highest: "135", unit: "°F" })).toMatchObject({ refusal: { allowed: "from -60 to 135 °F" } });
});

test("units are taken in any letter case, and another one is refused by the one wanted", () => {
  const ask = { field: "minutes", what: "how long the station ran", such: "15" } as const;
  const minutes = { lowest: "1", highest: "240", unit: "min" } as const;
  expect(["15 Min", "15 mins", "15MIN.", "15"].map((text) => readModelNumber(ask, text, minutes))).toEqual([accept(15), accept(15), accept(15), accept(15)]);
  expect(readModelNumber(ask, "3 MPH", { lowest: "0", highest: "60", unit: "mph" })).toEqual(accept(3));
  expect(readModelNumber(ask, "-4 F", { lowest: "-60", highest: "135", unit: "\u00B0F" })).toEqual(accept(-4));
  expect(readNumberField(ask, "90 sec", minutes)).toMatchObject({ refusal: { field: "minutes", sentence: '"90 sec" is in sec; here it takes minutes.' } });
  expect(readNumberField(ask, "15 lb", minutes)).toMatchObject({ refusal: { sentence: '"lb" in "15 lb" is no unit for this; here it takes minutes.' } });
});

test("a percentage under one without its sign may be a part, and is asked about", () => {
  const ask = { field: "purity", what: "the purity on the seed tag", such: "96" } as const;
  for (const text of [".48", "0.48", "12/25"]) expect(readNumberField(ask, text, PERCENT)).toMatchObject({ refusal: { field: "purity", found: text, sentence: `"${text}" may be 0.48% or 48%. Write the one that is meant, with its sign.` } });
  expect(readNumberField(ask, "0.48 %", PERCENT)).toMatchObject({ ok: true });
  expect(readNumberField(ask, "0", PERCENT)).toMatchObject({ ok: true });
  expect(readNumberField(ask, "0.48", { ...PERCENT, unit: "h" })).toMatchObject({ ok: true });
});

test("a choice is one of those offered", () => {
  expect(readChoice("use", "bare", ["bare", "turf"])).toEqual(accept("bare"));
  expect(readChoice("use", "", ["bare", "turf"])).toMatchObject({ refusal: { found: "nothing", allowed: "bare, turf" } });
});

test("a density is a weight in a volume", () => {
  expect(readDensityField("density", " 10.65 lb per gal ", "product")).toMatchObject({ ok: true });
  expect(readDensityField("density", "10.65", "product")).toMatchObject({ refusal: { field: "density", found: "10.65", allowed: "10.65 lb per gal, specific gravity 1.28" } });
  expect(readDensityField("density", "150 lb per cu yd", "product")).toMatchObject({ refusal: { field: "density", found: "150 lb per cu yd" } });
  expect(readDensityField("density", "150 lb per cu yd", "loose-material")).toMatchObject({ ok: true });
  expect(readDensityField("density", "2,700 lb", "loose-material")).toMatchObject({ refusal: { allowed: "2,700 lb per cu yd, 100 lb per cu ft" } });
});

test("lists are read one part at a time, and a list of nothing or of too much is refused", () => {
  const ask = { field: "widths", what: "the widths", such: "32, 50" } as const;
  expect(readListField(ask, ["3", "4"], accept)).toEqual(accept(["3", "4"]));
  expect(readListField(ask, [], accept)).toMatchObject({ refusal: { kind: "missing-fact", field: "widths" } });
  expect(readListField(ask, ["3", "x"], (part) => (part === "x" ? badInput("widths", part, "", "No x.") : accept(part)))).toMatchObject({ refusal: { found: "x" } });
  expect(readListField(ask, Array.from({ length: 201 }, () => "1"), accept)).toMatchObject({ refusal: { found: "201 entries" } });
});
