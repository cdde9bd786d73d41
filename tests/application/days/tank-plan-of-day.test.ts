import { expect, test } from "vitest";
import { tankPlanOfDay, WATER_AT_STOPS } from "#application/days/tank-plan-of-day";
import { of } from "#domain/quantities/quantity";
import { FEED, IRON, SPRAYER } from "../../support/ticket";
import { truckStop } from "../../support/truck-stops";

const CLEAN = { containers: [], lastHeld: new Map([[SPRAYER.equipmentId, "clean" as const]]), cleanOuts: new Map() };
const stop = (visitId: string, area: bigint) => truckStop(visitId, [FEED, IRON], area, { water: WATER_AT_STOPS });

test("loading list and tank plan are of the same stops and weigh the same", () => {
  const { plan, loading } = tankPlanOfDay([stop("a", 20_000n), stop("b", 20_000n)], { name: "Truck 1", payload: of("lb", 1850n) }, CLEAN);
  expect(plan.fills).toMatchObject([{ letter: "A", visitIds: ["a", "b"], finished: of("gal", 60n) }]);
  expect(loading.weightAboard).toEqual(plan.heaviest.weight);
  expect(loading.water).toEqual(plan.fills[0]?.water);
  expect(loading.cleanWater).toEqual(of("gal", 3n));
});

test("the house's own ways: the same size every time, water behind the mix, and no water known of at a stop", () => {
  const { plan } = tankPlanOfDay([stop("a", 40_000n), stop("b", 20_000n), stop("c", 20_000n)], { name: "Truck 1", payload: null }, CLEAN);
  expect(plan.fills.map(({ finished, place }) => [finished, place.at])).toEqual([[of("gal", 60n), "shop-before-leaving"], [of("gal", 60n), "shop"]]);
  expect(plan.mixes[0]?.end.pushOut).toEqual(of("gal", 3n));
  expect(plan.found.map(({ visitId, finding }) => [visitId, finding.rule])).toEqual([[null, "payload-not-on-file"], ["b", "water-at-stop-not-known"]]);
});

test("a tank of which nothing is on file holds until a clean-out before its first stop is", () => {
  const { plan } = tankPlanOfDay([stop("a", 2000n)], { name: "Truck 1", payload: of("lb", 1850n) }, { containers: [], lastHeld: new Map(), cleanOuts: new Map() });
  expect(plan.found).toMatchObject([{ visitId: "a", finding: { level: "hold", rule: "clean-out" } }]);
  const cleanOuts = new Map([[SPRAYER.equipmentId, new Set(["a"])]]);
  expect(tankPlanOfDay([stop("a", 2000n)], { name: "Truck 1", payload: of("lb", 1850n) }, { containers: [], lastHeld: new Map(), cleanOuts }).plan.found).toEqual([]);
});
