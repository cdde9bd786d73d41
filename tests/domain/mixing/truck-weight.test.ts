import { expect, test } from "vitest";
import { type SprayRate } from "#domain/label/label-facts";
import { type ProductOfFill } from "#domain/mixing/tank-fill";
import { addWeight, checkPayload, sprayWithin, waterShareOf, waterWeight } from "#domain/mixing/truck-weight";
import { of, type Quantity } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";

const truck = (payload: Quantity<"mass"> | null, staysAboard: Quantity<"mass"> | "unknown" = of("lb", 0n)) => ({ name: "Truck 1", payload, staysAboard });
const made = (productName: string, concentration: SprayRate): ProductOfFill => ({ productId: productName, productName, formulation: "soluble liquid", concentration, strongest: concentration });
const iron = (perGallon: string) => made("Iron", rateOf("product-volume-per-spray-volume", perGallon, "fl oz per gal"));

test("water is what the liquid products leave of the spray; what is weighed takes no room in it", () => {
  expect(waterShareOf([iron("1")])).toEqual(rational(127n, 128n));
  expect(waterShareOf([iron("1"), made("Dust", rateOf("product-mass-per-spray-volume", "1", "lb per gal"))])).toEqual(rational(127n, 128n));
  expect(waterShareOf([iron("200")])).toEqual(rational(0n));
});

test("a gallon of water is 8.3454 lb, and what a weight has room for weighs no more", () => {
  expect(Number(waterWeight(of("gal", 100n).amount, rational(1n))) / Number(of("lb", 1n).amount)).toBeCloseTo(834.54, 2);
  const spray = sprayWithin(of("lb", 500n).amount, rational(127n, 128n));
  expect(spray !== undefined && waterWeight(spray, rational(127n, 128n)) <= of("lb", 500n).amount + 1n).toBe(true);
  expect(sprayWithin(-5n, rational(1n))).toBe(0n);
  expect(sprayWithin(of("lb", 500n).amount, rational(0n))).toBeUndefined();
});

test("a weight rides from a stop on until before another, and comes off again from where it is taken off", () => {
  const weights = [1n, 1n, 1n];
  const gallon = waterWeight(of("gal", 1n).amount, rational(1n));
  addWeight(weights, gallon, 1, weights.length);
  expect(weights[0]).toBe(1n);
  expect(Number((weights[2] ?? 0n) - 1n) / Number(of("lb", 1n).amount)).toBeCloseTo(8.3454, 4);
  addWeight(weights, -gallon, 2, weights.length);
  expect([weights[1] === 1n, weights[2]]).toEqual([false, 1n]);
  addWeight(weights, 0n, 0, weights.length);
  expect(weights[0]).toBe(1n);
  addWeight(weights, 5n, 0, 2);
  expect([weights[0], weights[2]]).toEqual([6n, 1n]);
});

test("more than the payload is a hold with both figures, as much is none, and no payload on file wants care", () => {
  const heaviest = { weight: of("lb", 50n), visitId: "a" };
  expect(checkPayload(heaviest, truck(of("lb", 50n)))).toEqual([]);
  expect(checkPayload(heaviest, truck(of("lb", 49n)))).toMatchObject([{ level: "hold", rule: "above-payload", figure: "People, fixed gear, products and water weigh 50 lb; the payload is 49 lb." }]);
  expect(checkPayload(heaviest, truck(null))).toMatchObject([{ level: "take-care", rule: "payload-not-on-file" }]);
  expect(checkPayload({ weight: of("lb", 0n), visitId: null }, truck(null))).toEqual([]);
});

test("what rides along every day comes off the payload, and wants care where nobody has weighed it", () => {
  const heaviest = { weight: of("lb", 50n), visitId: "a" };
  expect(checkPayload(heaviest, truck(of("lb", 650n), of("lb", 600n)))).toEqual([]);
  expect(checkPayload(heaviest, truck(of("lb", 650n), of("lb", 601n)))).toMatchObject([{ level: "hold", rule: "above-payload", figure: "People, fixed gear, products and water weigh 651 lb; the payload is 650 lb." }]);
  expect(checkPayload(heaviest, truck(of("lb", 650n), "unknown"))).toMatchObject([{ level: "take-care", rule: "stays-aboard-not-on-file", figure: "Products and water weigh 50 lb; the payload of 650 lb is for all of it together." }]);
  expect(checkPayload(heaviest, truck(of("lb", 49n), "unknown"))).toMatchObject([{ rule: "stays-aboard-not-on-file" }, { rule: "above-payload", figure: "Products and water weigh 50 lb; the payload is 49 lb." }]);
  expect(checkPayload({ weight: of("lb", 0n), visitId: null }, truck(of("lb", 10n), of("lb", 20n)))).toEqual([]);
});
