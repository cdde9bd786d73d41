import { describe, expect, test } from "vitest";
import { type SprayRate } from "#domain/label/label-facts";
import { type ProductOfFill } from "#domain/mixing/tank-fill";
import { planTanks } from "#domain/mixing/tank-plan";
import { type HeldMix, type TankPlanQuestion } from "#domain/mixing/tank-plan-question";
import { addWeight, checkPayload, sprayWithin, waterShareOf, waterWeight } from "#domain/mixing/truck-weight";
import { of, type Quantity } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";
import { FEED, IRON, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

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

describe("sprayers that ride along unused", () => {
  const aboard = [{ equipmentId: "backpack", name: "Backpack" }, { equipmentId: SPRAYER.equipmentId, name: SPRAYER.name }];
  const holding = (left: HeldMix["left"]): HeldMix => ({ name: "fill 7", finished: of("gal", 80n), products: [], left, isUnderWay: false, isOfThatDay: false, filledOnto: [] });
  const planned = (left: HeldMix["left"] | "clean", more: Partial<TankPlanQuestion> = {}) =>
    planTanks(tankQuestion([truckStop("a", [FEED], 2000n)], { truck: { name: "Truck 1", payload: of("lb", 600n), staysAboard: of("lb", 0n) }, tanksAboard: aboard, lastHeld: new Map([["backpack", left === "clean" ? "clean" : holding(left)]]), ...more }));
  const said = ({ found }: ReturnType<typeof planTanks>) => found.map(({ finding: { level, rule } }) => `${level} ${rule}`);

  // 80 gal of water are 667.6 lb at 1 kg/L.
  test("weigh what is left in them, all day", () => {
    const without = planned("clean").heaviest.weight.amount;
    expect(planned(of("gal", 80n)).heaviest.weight.amount - without).toBe(waterWeight(of("gal", 80n).amount, rational(1n)));
    expect(said(planned(of("gal", 80n)))).toEqual(["hold above-payload"]);
    expect(said(planned("clean"))).toEqual([]);
  });

  test("of which nobody knows what is left are named, where the truck's load is held against a payload", () => {
    expect(said(planned("unknown"))).toEqual(["take-care rest-not-weighed"]);
    expect(planned("unknown").found[0]).toMatchObject({ visitId: null, finding: { what: "How much is left in Backpack is not known, and it rides along on Truck 1." } });
    expect(said(planned("unknown", { truck: { name: "Truck 1", payload: null, staysAboard: of("lb", 0n) } }))).not.toContain("take-care rest-not-weighed");
    expect(said(planned("unknown", { stops: [], dryWeights: [] }))).toEqual([]);
  });

  test("are those that no stop uses and that are aboard", () => {
    const sprayed = { ...tankQuestion([truckStop("a", [IRON], 2000n)], { tanksAboard: aboard }), lastHeld: new Map([[SPRAYER.equipmentId, holding(of("gal", 80n))]]) };
    const elsewhere = planTanks({ ...sprayed, tanksAboard: [] });
    expect(planTanks(sprayed).heaviest).toEqual(elsewhere.heaviest);
    expect(planned(of("gal", 80n), { tanksAboard: [] }).heaviest).toEqual(planned("clean").heaviest);
  });
});
