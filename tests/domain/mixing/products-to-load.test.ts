import { expect, test } from "vitest";
import { type ContainerOnHand, productsToLoad, weightsAlongRoute } from "#domain/mixing/products-to-load";
import { of } from "#domain/quantities/quantity";
import { FEED, IRON } from "../../support/ticket";
import { truckStop } from "../../support/truck-stops";

const BAGS: ContainerOnHand = { productId: FEED.productId, container: "bag", size: of("lb", 50n), lotNumber: "L-1" };

test("products are added up over the stops and loaded by whole containers; without one by the amount", () => {
  // 12,000 and 12,000 sq ft at 2.5 lb per 1,000 are 60 lb.
  const stops = [truckStop("a", [FEED], 12_000n), truckStop("b", [FEED], 12_000n)];
  expect(productsToLoad(stops, [BAGS])).toMatchObject([{ needed: of("lb", 60n), words: "2 bags of 50 lb", weight: of("lb", 100n) }]);
  expect(productsToLoad(stops, [{ ...BAGS, size: of("lb", 0n) }])).toMatchObject([{ words: "60 lb", weight: of("lb", 60n) }]);
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
