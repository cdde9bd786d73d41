import { expect, test } from "vitest";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { addRates, compareRates, rateOf, scaleRate } from "#domain/quantities/rate";
import { rational, toNumber } from "#domain/quantities/rational";
import { addNutrients, NO_NUTRIENTS, type NutrientMasses, nutrientRatesOf, nutrientsInProduct, partOfNutrients } from "#domain/mixing/delivered";
import { BARRIER_LABEL, FEED_LABEL, IRON_LABEL } from "../../support/ticket";

function broughtBy(...asked: Parameters<typeof nutrientsInProduct>): NutrientMasses {
  const answer = nutrientsInProduct(...asked);
  if (answer?.ok !== true) throw new Error("The nutrients can be counted.");
  return answer.value;
}
const pounds = (mass: NutrientMasses["nitrogen"] | "not-stated") => (mass === "not-stated" ? mass : toNumber(measureInUnit(mass, "lb")));

test("5 lb of a 32 % feed of which 16 % is slow: 1.6 lb of nitrogen, half of it quick", () => {
  const { nitrogen, quickNitrogen, slowNitrogen, phosphate } = broughtBy(FEED_LABEL, of("lb", 5n));
  expect([nitrogen, quickNitrogen, slowNitrogen, phosphate].map(pounds)).toEqual([1.6, 0.8, 0.8, 0]);
});

test("a liquid is weighed by its density, and without one it is refused by name", () => {
  const { nitrogen, iron } = broughtBy(IRON_LABEL, of("gal", 1n));
  expect([nitrogen, iron].map(pounds)).toEqual([0.66, 1.1]);
  expect(nutrientsInProduct({ ...IRON_LABEL, density: "unknown" }, of("gal", 1n))).toMatchObject({ ok: false, refusal: { kind: "missing-fact", field: "density" } });
});

test("an analysis that nobody read is refused, and a product without one brings none", () => {
  expect(nutrientsInProduct({ ...FEED_LABEL, analysis: "unknown" }, of("lb", 1n))).toMatchObject({ ok: false, refusal: { kind: "missing-fact", field: "analysis" } });
  expect(nutrientsInProduct({ ...FEED_LABEL, analysis: "none" }, of("lb", 1n))).toBeUndefined();
});

test("what one label does not state of its nitrogen is not stated in the sum, and iron is counted where it is stated", () => {
  const feed = broughtBy(FEED_LABEL, of("lb", 5n));
  const sum = addNutrients(addNutrients(NO_NUTRIENTS, feed), broughtBy(BARRIER_LABEL, of("lb", 10n)));
  expect([sum.nitrogen, sum.quickNitrogen, sum.slowNitrogen, sum.potash, sum.iron].map(pounds)).toEqual([3.5, "not-stated", "not-stated", 0.7, "not-stated"]);
  expect(pounds(addNutrients(feed, broughtBy(IRON_LABEL, of("gal", 1n))).iron)).toBe(1.1);
  expect(pounds(addNutrients(broughtBy(IRON_LABEL, of("gal", 1n)), broughtBy(IRON_LABEL, of("gal", 1n))).iron)).toBe(2.2);
});

test("a rate of product puts its nutrients on the ground, by weight or by volume; what is missing is named", () => {
  const perThousand = (pounds: string) => rateOf("nutrient-mass-per-area", pounds, "lb per 1,000 sq ft");
  const feed = nutrientRatesOf(FEED_LABEL, rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft"));
  expect(feed.ok && compareRates(feed.value.nitrogen, perThousand("0.8"))).toBe(0);
  const byVolume = rateOf("product-volume-per-area", "128", "fl oz per 1,000 sq ft");
  const iron = nutrientRatesOf(IRON_LABEL, byVolume);
  expect(iron.ok && iron.value.iron !== "not-stated" && compareRates(iron.value.iron, perThousand("1.1"))).toBe(0);
  expect(nutrientRatesOf({ ...IRON_LABEL, density: "unknown" }, byVolume)).toMatchObject({ refusal: { field: "density", sentence: "The density of Rustwater Iron is not on file; its nutrients are stated by weight." } });
  expect(nutrientRatesOf({ ...IRON_LABEL, analysis: "unknown" }, byVolume)).toMatchObject({ refusal: { field: "analysis" } });
  const none = nutrientRatesOf({ ...IRON_LABEL, analysis: "none" }, byVolume);
  expect(none.ok && [none.value.nitrogen.amount, none.value.iron]).toEqual([0n, "not-stated"]);
});

test("a part of what is brought is that part of each nutrient, and what is not stated stays so", () => {
  const brought = nutrientRatesOf(FEED_LABEL, rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft"));
  if (!brought.ok) throw new Error(brought.refusal.sentence);
  const part = partOfNutrients(brought.value, rational(1n, 20n));
  expect(compareRates(addRates(part.nitrogen, scaleRate(part.nitrogen, rational(19n))), brought.value.nitrogen)).toBe(0);
  expect(part.iron).toBe("not-stated");
});
