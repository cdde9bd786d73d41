import { expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { isSprayed } from "#domain/mixing/ticket-question";
import { type SprayAsked } from "#domain/mixing/ticket-working-load";
import { productInLoadWorking, waterWorking } from "#domain/mixing/ticket-working-mix-in";
import { faultsOf } from "../../support/read-working";
import { CUP, IRON, LAWN, QUESTION, SPRAYER, sprayOf } from "../../support/ticket";

const fluidOunces = (value: string) => rateOf("product-volume-per-area", value, "fl oz per 1,000 sq ft");

function workingsOf(change: Partial<typeof IRON>, squareFeet = 2050n, gallons = 100n) {
  const treatments = [{ ...IRON, gear: { ...SPRAYER, capacity: of("gal", gallons) }, ...change }];
  const question = { ...QUESTION, lawns: [{ ...LAWN, area: of("sq ft", squareFeet) }], treatments };
  const mix = sprayOf(question);
  const [load] = mix?.loads ?? [];
  if (mix === undefined || load === undefined) throw new Error("The iron is sprayed.");
  const asked: SprayAsked = { mix, treatments: treatments.filter(isSprayed), settings: question.settings, area: of("sq ft", squareFeet) };
  const [product] = asked.treatments.flatMap((treatment) => productInLoadWorking(asked, load, treatment));
  const workings = { product: product?.working, water: waterWorking(asked, load) };
  expect([workings.product, workings.water].flatMap((working) => (working === undefined ? ["none"] : faultsOf(working)))).toEqual([]);
  return workings;
}

test("the product of the only load, on all of the ground", () => {
  // By hand: 2.05 × 1.5 fl oz is 3.075 fl oz, to the half ounce 3.
  expect(workingsOf({}).product?.steps).toEqual(["2,050 sq ft ÷ 1,000 sq ft × 1½ fl oz = 3.075 fl oz", "3.075 fl oz ÷ ½ fl oz = 6.15 marks, to the nearest 6", "6 × ½ fl oz = 3 fl oz"]);
});

test("of one of several loads, on its part of the ground", () => {
  expect(workingsOf({}, 3000n, 2n).product?.steps[0]).toBe("3,000 sq ft × 15 ÷ 45 = 1,000 sq ft");
});

test("planned at the label's highest rate it is not rounded above it", () => {
  // 2.4 sq ft thousands at 2 fl oz is 4.8; the nearest half ounce is 5, above it.
  const { product } = workingsOf({ rate: fluidOunces("2") }, 2400n);
  expect(product?.steps[2]).toBe("10 × ½ fl oz = 5 fl oz, which is above the label’s highest rate on this ground, 4.8 fl oz; so 9");
  expect(product?.result).toBe("4½ fl oz");
});

test("where the load is rounded down, the strength of the label's highest rate is the limit", () => {
  // 3.045 gal are mixed as 3 gal: at most 2 fl oz in each 1.5 gal of them is 4 fl oz.
  const { product } = workingsOf({ rate: fluidOunces("2"), tool: "none" }, 2030n);
  expect(product?.steps[1]).toBe("4.06 fl oz is above the strength that the label’s highest rate makes in this load, 4 fl oz.");
  expect(product?.result).toBe("4 fl oz");
});

test("water is what the products leave of the spray, in its own unit", () => {
  expect(workingsOf({}).water).toMatchObject({ steps: ["3 fl oz ÷ 128 fl oz × 1 gal = 0.023438 gal", "3.1 gal − 0.023438 gal = 3.0766 gal"], result: "3.08 gal" });
  expect(workingsOf({ tool: CUP }, 100n).water.steps).toHaveLength(1);
});

test("what leaves no room for water says so", () => {
  const flooded = workingsOf({ rate: rateOf("product-volume-per-area", "2", "gal per 1,000 sq ft") });
  expect(flooded.water).toMatchObject({ steps: ["The liquid products take up all of it: there is no room for water."], result: "0 fl oz" });
});
