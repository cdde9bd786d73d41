import { describe, expect, test } from "vitest";
import { parseLength } from "#domain/quantities/parse-length";
import { of } from "#domain/quantities/quantity";
import { rational } from "#domain/quantities/rational";
import { type UnitOf } from "#domain/quantities/units";

describe("what people type", () => {
  const table: readonly (readonly [string, UnitOf<"length">, bigint, bigint])[] = [
    ["12 ft 6 in", "in", 150n, 1n],
    ["12ft6in", "in", 150n, 1n],
    ["12 feet 6 inches", "in", 150n, 1n],
    ["12'6\"", "in", 150n, 1n],
    ["12' 6 1/2\"", "in", 301n, 2n],
    [" 12'  6\" ", "in", 150n, 1n],
    ["12'6", "in", 150n, 1n],
    ["12' 6.5", "in", 301n, 2n],
    ["12\u20196\u201D", "in", 150n, 1n],
    ["12\u20326\u2033", "in", 150n, 1n],
    ["12'", "ft", 12n, 1n],
    ['6"', "in", 6n, 1n],
    ["6''", "in", 6n, 1n],
    ["12.5 ft", "ft", 25n, 2n],
    ["3.2 m", "m", 16n, 5n],
    ["3 m 20 cm", "cm", 320n, 1n],
    ["4 yd", "ft", 12n, 1n],
    ["1,250 ft", "ft", 1250n, 1n],
    ["12\u00BD ft", "ft", 25n, 2n],
    ["12' 6\u00B9\u2044\u2082\"", "in", 301n, 2n],
    ["6\u00B9\u2044\u2082 in", "in", 13n, 2n],
  ];
  test.each(table)("%j", (text, unit, numerator, denominator) => {
    expect(parseLength(text, { field: "side" })).toMatchObject({
      ok: true,
      value: { typed: text, quantity: of(unit, rational(numerator, denominator)) },
    });
  });

  test("a field that shows a unit takes a bare number", () => {
    expect(parseLength("12.5", { field: "side", unitWhenNone: "ft" })).toMatchObject({
      ok: true,
      value: { quantity: of("ft", "12.5"), unit: "ft" },
    });
  });
});

describe("what is refused", () => {
  test.each([
    ["", "nothing"],
    ["12", "12"],
    ["12 sq ft", "12 sq ft"],
    ["12'14\"", "12'14\""],
    ["-3 ft", "-3 ft"],
    ["12,5 m", "12,5 m"],
    ["12 M", "12 M"],
    ["12M", "12M"],
    [" 12 ft 6 ", "12 ft 6"],
    ["12 ft 6", "12 ft 6"],
    ["long", "long"],
  ])("%j", (text, found) => {
    expect(parseLength(text, { field: "side" })).toMatchObject({ ok: false, refusal: { field: "side", found } });
  });

  test("a capital M is not taken for meters", () => {
    expect(parseLength("12 M", { field: "side" })).toMatchObject({
      ok: false,
      refusal: { sentence: 'The M in "12 M" could be a thousand or meters. Write m for meters.' },
    });
  });
});
