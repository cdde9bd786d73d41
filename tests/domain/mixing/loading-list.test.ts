import { expect, test } from "vitest";
import { type LoadedStop, loadingList } from "#domain/mixing/loading-list";
import { type ContainerOnHand, productsToLoad } from "#domain/mixing/products-to-load";
import { planTanks } from "#domain/mixing/tank-plan";
import { compare, of, type Quantity } from "#domain/quantities/quantity";
import { FEED, IRON } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

const truckOf = (payload: Quantity<"mass"> | null) => ({ name: "Truck 1", payload, staysAboard: of("lb", 0n) });
const TRUCK = truckOf(of("lb", 1850n));
const BAGS: ContainerOnHand = { productId: FEED.productId, container: "bag", size: of("lb", 50n), lotNumber: "L-1" };
const list = (stops: readonly LoadedStop[], truck: ReturnType<typeof truckOf> = TRUCK, containers = [BAGS]) =>
  loadingList(stops, productsToLoad(stops, containers), planTanks(tankQuestion(stops, { truck }, containers)));

test("products are added up over the stops and loaded by whole bags; without a container by the amount", () => {
  // 12,000 and 12,000 sq ft at 2.5 lb per 1,000 are 60 lb.
  const stops = [truckStop("a", [FEED], 12_000n), truckStop("b", [FEED], 12_000n)];
  expect(list(stops).products).toEqual([
    { productId: FEED.productId, productName: "Harrowgate 32", needed: of("lb", 60n), words: "2 bags of 50 lb", lotNumber: "L-1", weight: of("lb", 100n) },
  ]);
  expect(list(stops, TRUCK, []).products).toMatchObject([{ words: "60 lb", lotNumber: null, weight: of("lb", 60n) }]);
});

test("exactly whole bags stay as many", () => {
  expect(list([truckStop("a", [FEED], 20_000n)]).products[0]?.words).toBe("1 bag of 50 lb");
});

test("signs and stakes go to the stops that have to be posted, notices to all where something goes down", () => {
  const look = { ...truckStop("c", [FEED]), mixes: [], treatments: [] };
  const loaded = list([{ ...truckStop("a", [FEED]), wantsSign: true }, truckStop("b", [FEED]), look]);
  expect(loaded).toMatchObject({ signs: 1, stakes: 1, notices: 2 });
  expect(loaded.protectiveGear.filter((line) => line.includes("as each label says"))).toHaveLength(3);
});

test("water is that of all fills; the weight counts what is aboard at once, at 8.3454 lb a gallon, and the iron at its density", () => {
  // 90 and 30 gal with 90 and 30 fl oz of iron of 11 lb a gallon.
  const stops = [truckStop("a", [IRON], 60_000n), truckStop("b", [IRON], 20_000n)];
  const { water, cleanWater, weightAboard } = list(stops);
  expect(water).toEqual(of("gal", "119.0625"));
  expect(cleanWater).toEqual(of("gal", 3n));
  // 89.296875 gal of water are 745.22 lb, 120 fl oz of iron 10.31 lb, 3 gal of clean water behind the mix 25.04 lb.
  expect(compare(weightAboard, of("lb", "780.5"))).toBe(1);
  expect(compare(weightAboard, of("lb", "780.6"))).toBe(-1);
});

test("only the clean water that rides is on the list; rinsate that rides weighs from where it came out, and keeps a fill down", () => {
  const dock = { ...IRON, line: 5, productId: "dock", label: { ...IRON.label, productName: "Dockaway", epaRegistrationNumber: { number: "DEMO-0000-4" } } };
  const stops = (water: LoadedStop["water"], ...more: readonly LoadedStop[]) => [truckStop("a", [dock], 20_000n), truckStop("b", [IRON], 20_000n, { water }), ...more];
  const pounds = (loaded: ReturnType<typeof list>) => Number(loaded.weightAboard.amount) / Number(of("lb", 1n).amount);
  // At b 30 gal of rinsate and 30 gal with 30 fl oz of iron: 59.765625 gal of water and 2.58 lb of iron.
  const atStop = list(stops("yes"));
  expect(atStop.cleanWater).toEqual(of("gal", 3n));
  expect(pounds(atStop)).toBeCloseTo(59.765625 * 8.3454 + 2.578, 1);
  expect(list(stops("yes"), truckOf(of("lb", 501n))).findings).toMatchObject([{ rule: "payload-splits-the-fill" }]);
  expect(list(stops("yes"), truckOf(of("lb", 200n))).findings.map(({ level, rule }) => `${level} ${rule}`)).toContain("hold above-payload");
  // Rinsed at the shop nothing of it rides: 30 gal with the mix and 3 gal behind it.
  const atShop = list(stops("no"));
  expect(atShop.cleanWater).toEqual(of("gal", 6n));
  expect(pounds(atShop)).toBeLessThan(281);
  // Back at the shop for c the rinsate is left there: 90 gal with 90 fl oz are the most.
  const back = list(stops("yes", truckStop("c", [dock], 60_000n)));
  expect(pounds(back)).toBeGreaterThan(770);
  expect(pounds(back)).toBeLessThan(790);
});

test("more than the payload is a hold with both figures, as much is none, and no payload on file wants care", () => {
  const stops = [truckStop("a", [FEED], 12_000n)];
  expect(list(stops, truckOf(of("lb", 50n))).findings).toEqual([]);
  expect(list(stops, truckOf(of("lb", 49n))).findings).toMatchObject([
    { level: "hold", rule: "above-payload", figure: "People, fixed gear, products and water weigh 50 lb; the payload is 49 lb.", about: ["Truck 1"] },
  ]);
  expect(list(stops, truckOf(null)).findings).toMatchObject([{ level: "take-care", rule: "payload-not-on-file" }]);
});

test("a liquid whose density nobody entered is not in the weight and says so", () => {
  const light = { ...IRON, label: { ...IRON.label, density: "unknown" as const } };
  expect(list([truckStop("a", [light])]).findings).toMatchObject([{ rule: "density-not-on-file", about: ["Rustwater Iron"] }]);
});

test("a truck without stops takes nothing along", () => {
  expect(list([], truckOf(null))).toEqual({
    products: [], water: of("gal", 0n), cleanWater: of("gal", 0n), signs: 0, stakes: 0, notices: 0, protectiveGear: [], spillKit: [], weightAboard: of("lb", 0n), findings: [],
  });
});
