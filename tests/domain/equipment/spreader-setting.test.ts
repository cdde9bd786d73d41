import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rateAtSetting, settingForRate, type SettingTest } from "#domain/equipment/spreader-setting";
import { compareRates, rateOf } from "#domain/quantities/rate";
import { compareRational, decimal, rational } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { saying } from "../../support/said";

const feed = "Demofeed 24-0-11";
const pounds = (value: string) => rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");
const tested = (setting: string, rate: string, product = feed): SettingTest => ({ product, setting: decimal(setting), rate: pounds(rate) });
const tests = [tested("16", "4.5"), tested("12", "2.5"), tested("14", "3.5"), tested("10", "9", "Demolime"), tested("20", "9.5", "Demolime")];

describe("a setting", () => {
  test("between two tested ones lies on the line between them", () => {
    const found = valueOf(settingForRate(tests, feed, pounds("3")));
    expect(compareRational(found.setting, decimal("13"))).toBe(0);
    expect(found.between.map(({ setting }) => setting)).toEqual([decimal("12"), decimal("14")]);
  });

  test("that was tested itself is that test's", () => {
    const found = valueOf(settingForRate(tests, feed, pounds("3.5")));
    expect(compareRational(found.setting, decimal("14"))).toBe(0);
    expect(found.between[0]).toBe(found.between[1]);
    expect(valueOf(settingForRate([tested("12", "2.5")], feed, pounds("2.5"))).setting).toEqual(rational(12n));
  });

  test.each(["2.49", "4.51", "0"])("for %s lb lies beyond the tested ones and is refused", (rate) => {
    expect(refusalOf(settingForRate(tests, feed, pounds(rate)))).toMatchObject({ kind: "bad-input", field: "rate", allowed: saying("from 2½ lb per 1,000 sq ft to 4½ lb per 1,000 sq ft") });
  });

  test("of another product says nothing", () => {
    expect(refusalOf(settingForRate(tests, "Demoseed", pounds("3")))).toMatchObject({ kind: "missing-fact", field: "tests", sentence: saying("Demoseed") });
    expect(compareRational(valueOf(settingForRate(tests, "Demolime", pounds("9.25"))).setting, decimal("15"))).toBe(0);
  });

  test.each([
    ["that gave no more from a wider setting", tested("15", "3.5"), saying("gave no more than 14")],
    ["that were tested twice", tested("14", "3.6"), saying("setting 14 was tested twice")],
  ])("from tests %s is refused", (_, contradicting, sentence) => {
    expect(refusalOf(settingForRate([...tests, contradicting], feed, pounds("3")))).toMatchObject({ kind: "bad-input", field: "tests", sentence });
  });
});

describe("the rate at a setting", () => {
  test("lies on the same line, and is refused beyond it", () => {
    expect(valueOf(rateAtSetting(tests, feed, decimal("13"))).rate).toEqual(pounds("3"));
    expect(refusalOf(rateAtSetting(tests, feed, decimal("11.5")))).toMatchObject({ field: "setting", found: "11.5", allowed: "from 12 to 16" });
    expect(refusalOf(rateAtSetting(tests, "Demoseed", decimal("13"))).kind).toBe("missing-fact");
  });

  test("leads back to the setting exactly, and never beyond its two tests, for any", () => {
    const between = fc.bigInt({ min: 12_000n, max: 16_000n }).map((thousandths) => rational(thousandths, 1000n));
    fc.assert(
      fc.property(between, (setting) => {
        const found = valueOf(rateAtSetting(tests, feed, setting));
        expect(compareRational(valueOf(settingForRate(tests, feed, found.rate)).setting, setting)).toBe(0);
        expect(compareRates(found.between[0].rate, found.rate)).toBeLessThanOrEqual(0);
        expect(compareRates(found.rate, found.between[1].rate)).toBeLessThanOrEqual(0);
      }),
    );
  });
});
