import { expect, test } from "vitest";
import { visitOnItsDay } from "#application/days/tank-findings";
import { loadedStopOf, loadFactsOf, tankPlanOfDay } from "#application/days/tank-plan-of-day";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { aCompany } from "../../support/crew";
import { aCrewDay, aRouteDay, aSharedFill, CREW_DAY, inWorkOf } from "../../support/crew-day";
import { day as onDay, valueOf } from "../../support/domain-answers";
import { aVehicle } from "../../support/gear";
import { openHouse } from "../../support/house";
import { BARRIER, FEED, IRON, QUESTION, SPRAYER } from "../../support/ticket";
import { truckStop } from "../../support/truck-stops";

const CLEAN = { containers: [], lastHeld: new Map([[SPRAYER.equipmentId, "clean" as const]]), cleanOuts: new Map(), sprayersOf: new Map(), settings: DEFAULT_HOUSE_SETTINGS };
const stop = (visitId: string, area: bigint) => truckStop(visitId, [FEED, IRON], area, { water: "unknown" });

test("loading list and tank plan are of the same stops and weigh the same", () => {
  const { plan, loading } = tankPlanOfDay([stop("a", 20_000n), stop("b", 20_000n)], { vehicleId: "t", name: "Truck 1", payload: of("lb", 1850n), staysAboard: of("lb", 0n) }, CLEAN);
  expect(plan.fills).toMatchObject([{ letter: "A", visitIds: ["a", "b"], finished: of("gal", 60n) }]);
  expect(loading.weightAboard).toEqual(plan.heaviest.weight);
  expect(loading.water).toEqual(plan.fills[0]?.water);
  expect(loading.cleanWater).toEqual(of("gal", 3n));
});

test("the house's own ways: the same size every time, water behind the mix, and no water known of at a stop", () => {
  const { plan } = tankPlanOfDay([stop("a", 40_000n), stop("b", 20_000n), stop("c", 20_000n)], { vehicleId: "t", name: "Truck 1", payload: null, staysAboard: of("lb", 0n) }, CLEAN);
  expect(plan.fills.map(({ finished, place }) => [finished, place.at])).toEqual([[of("gal", 60n), "shop-before-leaving"], [of("gal", 60n), "shop"]]);
  expect(plan.mixes[0]?.end.pushOut).toEqual(of("gal", 3n));
  expect(plan.found.map(({ visitId, finding }) => [visitId, finding.rule])).toEqual([[null, "payload-not-on-file"], ["b", "water-at-stop-not-known"]]);
});

test("another company's ways: full tanks, a coarser mark, and the mix left in the line", () => {
  const settings = { ...DEFAULT_HOUSE_SETTINGS, tankLoads: "full-tanks-then-a-short-one", tankMark: exactly("gal", "7"), lineAtTheEnd: "left-as-it-is" } as const;
  const { plan } = tankPlanOfDay([stop("a", 40_000n), stop("b", 20_000n), stop("c", 20_000n)], { vehicleId: "t", name: "Truck 1", payload: null, staysAboard: of("lb", 0n) }, { ...CLEAN, settings });
  // 60, 30 and 30 gal of ground and 3 gal in the line.
  expect(plan.fills.map(({ finished }) => finished)).toEqual([of("gal", 98n), of("gal", 28n)]);
  expect(plan.mixes[0]?.end.pushOut).toEqual(of("gal", 0n));
});

test("there is enough aboard for the fills, and its weight is planned with", () => {
  const most = { ...IRON, rate: IRON.use.rates.high };
  const stops = Array.from({ length: 40 }, (_unused, index) => truckStop(`v${String(index)}`, [most], 367n));
  const { plan, loading } = tankPlanOfDay(stops, { vehicleId: "t", name: "Truck 1", payload: null, staysAboard: of("lb", 0n) }, CLEAN);
  expect(plan.fills.flatMap(({ products }) => products.map(({ amount }) => amount))).toEqual([of("fl oz", 29n)]);
  expect(loading.products).toMatchObject([{ needed: of("fl oz", 29n) }]);
  // 29 fl oz of 11 lb a gallon weigh 2.49 lb, 20 would weigh 1.72; 22.1 gal less 29 fl oz of water weigh 182.54 lb, 3 gal behind the mix 25.04.
  expect(Number(plan.heaviest.weight.amount) / Number(of("lb", 1n).amount)).toBeCloseTo(2.492 + 182.54 + 25.036, 1);
});

test("a stop whose season has no room above the plan takes the planned rate for its highest", () => {
  const visit = { visitId: "a", property: { street: "12 Elm St", tankWater: "yes" } } as const;
  // 0.37 % of 3 lb per 1,000 sq ft are 0.4835 lb per acre; the label's highest rate brings more.
  const highestWith = (poundsPerAcre: string) => {
    const limits = [{ activeIngredient: "velodiamine", most: rateOf("active-ingredient-mass-per-area", poundsPerAcre, "lb per acre"), period: "calendar-year" }] as const;
    const treatment = { ...BARRIER, use: { ...BARRIER.use, seasonLimits: { limits, basis: "label", source: "label of Barrier Nine" } } } as const;
    const question = { ...QUESTION, treatments: [treatment] };
    const [asLoaded] = loadedStopOf(visit, { question, ticket: valueOf(makeMixTicket(question)), aftercare: [] }).treatments;
    return asLoaded?.use.rates.high;
  };
  expect(highestWith("0.49")).toEqual(BARRIER.rate);
  expect(highestWith("5")).toEqual(BARRIER.use.rates.high);
  expect(loadedStopOf(visit, null)).toEqual({ visitId: "a", name: "12 Elm St", water: "yes", lawns: [], mixes: [], treatments: [], wantsSign: false });
});

test("a tank of which nothing is on file holds until a clean-out before its first stop is", () => {
  const { plan } = tankPlanOfDay([stop("a", 2000n)], { vehicleId: "t", name: "Truck 1", payload: of("lb", 1850n), staysAboard: of("lb", 0n) }, { ...CLEAN, lastHeld: new Map() });
  expect(plan.found).toMatchObject([{ visitId: "a", finding: { level: "hold", rule: "clean-out" } }]);
  const cleanOuts = new Map([[SPRAYER.equipmentId, new Set(["a"])]]);
  expect(tankPlanOfDay([stop("a", 2000n)], { vehicleId: "t", name: "Truck 1", payload: of("lb", 1850n), staysAboard: of("lb", 0n) }, { ...CLEAN, lastHeld: new Map(), cleanOuts }).plan.found).toEqual([]);
});

test("what a tank held is asked of all trucks of the day, whichever of its visits are worked out", async () => {
  const house = await openHouse();
  const company = await aCompany(house);
  const day = await aCrewDay(house, company, "not-known");
  const { visits } = await aSharedFill(house, company, day);
  const [one, two] = visits;
  const routeDayId = await aRouteDay(house, company, await aVehicle(house, company), CREW_DAY);
  await house.ask("update stop set route_day_id = $1 where visit_id = $2", [routeDayId, two?.visitId]);
  // The fill was made for visits of both trucks, none of them recorded: to the day of both all of it is there, and to no other day.
  const leftOn = (date: string) =>
    inWorkOf(house, company, async (work) => {
      const worked = await visitOnItsDay(work, one?.visitId ?? "");
      if (worked === undefined) throw new Error("The visit is on the day.");
      const held = (await loadFactsOf(work, onDay(date), [worked])).lastHeld.get(day.sprayerId);
      return held === undefined || typeof held === "string" ? held : held.left;
    });
  expect(await leftOn(CREW_DAY)).toEqual(of("gal", 40n));
  expect(await leftOn("2026-04-15")).toBe("unknown");
  await house.close();
});
