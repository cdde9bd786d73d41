import { expect, test } from "vitest";
import { inTurn } from "#domain/mixing/fills-in-turn";
import { of } from "#domain/quantities/quantity";

const gallons = (...values: readonly string[]) => values.map((value) => of("gal", value));
const had = (...values: readonly string[]) => values.map((value) => of("gal", value).amount);

test("a fill gives what it has before the next one gives any", () => {
  expect(inTurn(of("gal", 150n), had("100", "50"))).toEqual(gallons("100", "50"));
  expect(inTurn(of("gal", 80n), had("100", "50"))).toEqual(gallons("80", "0"));
  expect(inTurn(of("gal", 130n), had("40", "60", "100"))).toEqual(gallons("40", "60", "30"));
});

test("the last one gives the rest also where it has less, and one of which more is gone than went in gives nothing", () => {
  expect(inTurn(of("gal", 160n), had("100", "50"))).toEqual(gallons("100", "60"));
  expect(inTurn(of("gal", 7n), had("5"))).toEqual(gallons("7"));
  expect(inTurn(of("gal", 7n), [-1n, ...had("20")])).toEqual(gallons("0", "7"));
  expect(inTurn(of("gal", 7n), [])).toEqual([]);
});
