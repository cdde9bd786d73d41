import { expect, test } from "vitest";
import { type ContainerOnHand, productsToLoad, weightsAlongRoute } from "#domain/mixing/products-to-load";
import { planTanks } from "#domain/mixing/tank-plan";
import { of } from "#domain/quantities/quantity";
import { FEED, IRON } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

const BAGS: ContainerOnHand = { productId: FEED.productId, container: "bag", size: of("lb", 50n), lotNumber: "L-1" };

test("products are added up over the stops and loaded by whole containers; without one by the amount", () => {
  // 12,000 and 12,000 sq ft at 2.5 lb per 1,000 are 60 lb.
  const stops = [truckStop("a", [FEED], 12_000n), truckStop("b", [FEED], 12_000n)];
  expect(productsToLoad(stops, [BAGS])).toMatchObject([{ needed: of("lb", 60n), words: "2 bags of 50 lb", weight: of("lb", 100n) }]);
  expect(productsToLoad(stops, [{ ...BAGS, size: of("lb", 0n) }])).toMatchObject([{ words: "60 lb", weight: of("lb", 60n) }]);
});

test("where the fills take more than the tickets one by one, that is loaded; where they take less, what the tickets say", () => {
  const most = { ...IRON, rate: IRON.use.rates.high };
  // 367 sq ft take 0.73 fl oz, which a cup of half ounces measures as 0.5; forty of them share a fill with 29.
  const stops = Array.from({ length: 40 }, (_unused, index) => truckStop(`v${String(index)}`, [FEED, most], 367n));
  const neededOf = (route: typeof stops, ...fills: Parameters<typeof productsToLoad>[2] & object) => productsToLoad(route, [], fills).find(({ productId }) => productId === "iron")?.needed;
  expect(neededOf(stops)).toEqual(of("fl oz", 20n));
  expect(neededOf(stops, ...planTanks(tankQuestion(stops)).fills)).toEqual(of("fl oz", 29n));
  expect(neededOf(stops, { products: [{ productId: "iron", productName: "Rustwater Iron", amount: of("fl oz", 3n), toolName: null, marks: null }] })).toEqual(of("fl oz", 20n));
});

test("the load falls by what each stop takes, and what comes back in an open bag stays aboard", () => {
  const stops = [truckStop("a", [FEED], 12_000n), truckStop("b", [FEED], 12_000n)];
  expect(weightsAlongRoute(stops, productsToLoad(stops, [BAGS]))).toEqual([of("lb", 100n), of("lb", 70n)]);
});

test("a liquid weighs by its density, and one without is in no weight", () => {
  const stops = [truckStop("a", [IRON], 20_000n)];
  // 30 fl oz of 11 lb a gallon.
  expect(weightsAlongRoute(stops, productsToLoad(stops, []))).toEqual([of("lb", "2.578125")]);
  const light = [truckStop("a", [{ ...IRON, label: { ...IRON.label, density: "unknown" } }])];
  expect(weightsAlongRoute(light, productsToLoad(light, []))).toEqual([of("lb", 0n)]);
});
