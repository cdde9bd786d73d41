import { describe, expect, test } from "vitest";
import { settingAmongTests } from "#domain/equipment/tested-settings";
import { rateOf } from "#domain/quantities/rate";
import { saying } from "../../support/said";

const pounds = (rate: string) => rateOf("product-mass-per-area", rate, "lb per 1,000 sq ft");
const tested = (setting: string, rate: string) => ({ setting, rate: pounds(rate) });
const among = (wanted: string, ...tests: readonly ReturnType<typeof tested>[]) => settingAmongTests(tests, "Meadow", pounds(wanted));

describe("between two tested settings", () => {
  test("the setting lies on the straight line", () => {
    expect(among("2.5", tested("6", "2"), tested("8", "3"))).toEqual({
      kind: "between", setting: "7", rate: pounds("2.5"), words: "between 6 (2 lb per 1,000 sq ft) and 8 (3 lb per 1,000 sq ft)",
    });
    expect(among("2.2", tested("H", "2"), tested("J", "3"))).toMatchObject({ setting: "0.4 of the way from H to I" });
  });

  test("at a tested rate it is the tested one", () => {
    expect(among("3", tested("6", "2"), tested("8", "3"), tested("9", "4"))).toMatchObject({ kind: "between", setting: "8", words: "tested at 8 (3 lb per 1,000 sq ft)" });
  });

  test("of one setting the latest test counts, and of two kinds of dial the one tested last", () => {
    expect(among("2.5", tested("6", "1"), tested("8", "3"), tested("6", "2"))).toMatchObject({ setting: "7" });
    expect(among("2.5", tested("B", "1"), tested("6", "2"), tested("8", "3"))).toMatchObject({ setting: "7" });
  });
});

test("beyond the tests nothing is guessed: the nearest of them, and what they reach", () => {
  expect(among("1.5", tested("6", "2"), tested("8", "3"))).toEqual({ kind: "beyond", nearest: tested("6", "2"), sentence: saying("from 2 lb per 1,000 sq ft to 3 lb per 1,000 sq ft only") });
  expect(among("3.5", tested("8", "3"), tested("6", "2"))).toMatchObject({ kind: "beyond", nearest: tested("8", "3") });
});

test("tests that contradict one another say so", () => {
  expect(among("2.5", tested("M", "2"), tested("H", "3"), tested("B", "1"))).toEqual({
    kind: "contradictory", sentence: "Setting M gave 2 lb per 1,000 sq ft, no more than H with 3 lb per 1,000 sq ft. Test both again.",
  });
});

test.each([
  ["none", []],
  ["one", [tested("6", "2")]],
  ["one setting twice", [tested("6", "2"), tested("6", "3")]],
  ["one on each kind of dial", [tested("6", "2"), tested("H", "3")]],
  ["words", [tested("wide open", "2"), tested("half open", "1")]],
] as const)("%s is too few", (_what, tests) => {
  expect(among("2.5", ...tests)).toEqual({ kind: "too-few" });
});
