import fc from "fast-check";
import { expect, test } from "vitest";
import { bareNumber, type NumberUnit, readNumberWithUnit, withoutUnit } from "#domain/quantities/number-with-unit";
import { accept } from "#domain/foundation/outcome";
import { compareRational, decimal, rational } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";

const WRITTEN: readonly (readonly [NumberUnit, readonly string[]])[] = [
  ["s", ["45", "45 s", "45s", "45 sec", "45 secs", "45 Sec.", "45 SECONDS", " 45  second "]],
  ["min", ["45", "45 min", "45m", "45 mins", "45 Min", "45 MINUTES", "45 min."]],
  ["h", ["45", "45 h", "45 hrs", "45 Hours", "45 HR"]],
  ["psi", ["45", "45 psi", "45PSI", "45 lb/in\u00B2", "45 lb per sq in"]],
  ["mph", ["45", "45 mph", "45 MPH", "45mi/h", "45 Miles per hour"]],
  ["%", ["45", "45%", "45 %", "45 Percent", "45 pct"]],
  ["\u00B0F", ["45", "45 \u00B0F", "45\u00B0F", "45 F", "45f", "45\u00B0", "45 \u00BAF", "45 \u2109", "45 degrees F", "45 deg"]],
  ["\u00B0C", ["45", "45 \u00B0C", "45 c", "45 \u2103"]],
  ["in", ["45", "45 in", "45 in.", "45\"", "45 Inches"]],
  ["meq", ["45", "45 meq", "45 MEQ/100 g"]],
];

test.each(WRITTEN)("a number of %s has its unit behind it or none, in any letter case: %j", (unit, texts) => {
  for (const text of texts) {
    expect(compareRational(valueOf(readNumberWithUnit("figure", text, unit)), rational(45n)), text).toBe(0);
    expect(withoutUnit(text, unit)).toBe("45");
  }
});

test.each<readonly [NumberUnit, string, string]>([
  ["psi", "3 bar", '"3 bar" is in bar; here it takes psi.'],
  ["psi", "300 kPa", '"300 kPa" is in kPa; here it takes psi.'],
  ["s", "1 min", '"1 min" is in min; here it takes seconds.'],
  ["min", "90 s", '"90 s" is in s; here it takes minutes.'],
  ["h", "30 Mins", '"30 Mins" is in Mins; here it takes hours.'],
  ["mph", "5 km/h", '"5 km/h" is in km/h; here it takes mph.'],
  ["\u00B0F", "20 \u00B0C", '"20 \u00B0C" is in \u00B0C; here it takes \u00B0F.'],
  ["in", "6 mm", '"6 mm" is in mm; here it takes inches.'],
  ["s", "45 gal", '"gal" in "45 gal" is no unit for this; here it takes seconds.'],
  ["min", "3 M", '"M" in "3 M" is no unit for this; here it takes minutes.'],
  ["s", "1 min 30 s", '"min 30 s" in "1 min 30 s" is no unit for this; here it takes seconds.'],
])("in %s, %j is refused by the unit that is wanted", (unit, text, sentence) => {
  expect(refusalOf(readNumberWithUnit("figure", text, unit))).toMatchObject({ field: "figure", found: text, sentence });
});

test.each(["", "low", "a minute", "min", "1,5 min", "-3 min", "11/2 min"])("%j is no number, whatever the unit", (text) => {
  expect(refusalOf(readNumberWithUnit("figure", text, "min"))).toMatchObject({ field: "figure" });
});

test("fractions keep their unit apart", () => {
  expect(["1 1/2 min", "1\u00BDmin", "1.5 min"].map((text) => compareRational(valueOf(readNumberWithUnit("figure", text, "min")), decimal("1.5")))).toEqual([0, 0, 0]);
});

test("what can't be read stays as it was typed", () => {
  expect([withoutUnit(" 3 bar ", "psi"), withoutUnit("", "psi")]).toEqual(["3 bar", ""]);
  expect(bareNumber("figure", " high ", "psi")).toEqual(accept("high"));
});

test("any text gets an answer", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 40 }), (text) => {
      const read = readNumberWithUnit("figure", text, "psi");
      if (!read.ok) expect(read.refusal.sentence).not.toBe("");
    }),
  );
});
