import { expect, test } from "vitest";
import { planTanks } from "#domain/mixing/tank-plan";
import { type TankPlan } from "#domain/mixing/tank-plan-answer";
import { type HeldMix, type TankPlanQuestion, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { percentByWeight } from "#domain/quantities/active-ingredient";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { FEED, IRON, IRON_LABEL, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop, upTo } from "../../support/truck-stops";

// The sprayer of these tests puts out 1.5 gal per 1,000 sq ft: 20,000 sq ft are 30 gal with 30 fl oz of iron. Its pump and
// hose hold 3 gal.
const weaker = { ...IRON, rate: rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft") };
const KELP = { ...IRON, productId: "kelp", label: { ...IRON_LABEL, productName: "Kelp Tonic" } };
const planOf = (stops: readonly TreatedStop[], more: Partial<TankPlanQuestion> = {}) => planTanks(tankQuestion(stops, more));
const briefly = ({ fills }: TankPlan) => fills.map(({ letter, visitIds, finished }) => [letter, visitIds.join(" "), finished]);
const rules = ({ found }: TankPlan) => found.map(({ visitId, finding }) => `${visitId ?? "truck"} ${finding.level} ${finding.rule}`);
const held = (more: Partial<HeldMix> = {}): HeldMix => ({
  name: "fill 7",
  finished: of("gal", 40n),
  left: of("gal", 10n),
  isUnderWay: false,
  isOfThatDay: false,
  filledOnto: [],
  products: [{ productId: "iron", productName: "Rustwater Iron", label: IRON_LABEL, amount: of("fl oz", 40n) }],
  ...more,
});
const holding = (mix: TankPlanQuestion["lastHeld"] extends ReadonlyMap<string, infer Held> ? Held : never) => ({ lastHeld: new Map([[SPRAYER.equipmentId, mix]]) });
const settings = tankQuestion([]).settings;
const stays: Partial<TankPlanQuestion> = { settings: { ...settings, lineAtTheEnd: "left-as-it-is" } };

test("stops with one mix share a fill until the tank is full", () => {
  const plan = planOf([truckStop("a", [IRON], 20_000n), truckStop("b", [IRON], 40_000n), truckStop("c", [IRON], 20_000n)]);
  expect(briefly(plan)).toEqual([["A", "a b", of("gal", 90n)], ["B", "c", of("gal", 30n)]]);
  expect(plan.fills[0]?.products).toMatchObject([{ productId: "iron", amount: of("fl oz", 90n) }]);
  expect(plan.fills[0]?.water).toEqual(of("gal", "89.296875"));
  expect(plan.fills.map(({ place }) => place)).toEqual([{ at: "shop-before-leaving" }, { at: "shop", visitId: "c", isMidway: false }]);
  expect(rules(plan)).toEqual([]);
});

test("the same size every time evens the fills out over whole stops", () => {
  const stops = ["a", "b", "c", "d"].map((name) => truckStop(name, [IRON], 20_000n));
  expect(briefly(planOf(stops, { settings: { ...settings, tankLoads: "same-size-every-time" } }))).toEqual([["A", "a b", of("gal", 60n)], ["B", "c d", of("gal", 60n)]]);
});

test("with water at the stops a fill may begin in the middle of one, which saves a fill", () => {
  const stops = ["a", "b", "c"].map((name) => truckStop(name, [IRON], 40_000n, { water: "yes" }));
  const plan = planOf(stops);
  expect(briefly(plan)).toEqual([["A", "a b", of("gal", 100n)], ["B", "b c", of("gal", 80n)]]);
  expect(plan.fills[1]?.place).toEqual({ at: "stop", visitId: "b", isMidway: true });
  expect(plan.fills[1]?.parts).toEqual([{ visitId: "b", finished: of("gal", 20n) }, { visitId: "c", finished: of("gal", 60n) }]);
});

test("where nobody knows about water the tank is filled at the shop, and the stop says so", () => {
  const plan = planOf([truckStop("a", [IRON], 60_000n), truckStop("b", [IRON], 20_000n, { water: "unknown" })]);
  expect(rules(plan)).toEqual(["b take-care water-at-stop-not-known"]);
});

test("a visit of several loads shares its last one with the next stop", () => {
  const plan = planOf([truckStop("a", [IRON], 80_000n), truckStop("b", [IRON], 20_000n)]);
  expect(briefly(plan)).toEqual([["A", "a", of("gal", 100n)], ["B", "a b", of("gal", 50n)]]);
  expect(plan.fills[1]?.place).toEqual({ at: "shop", visitId: "a", isMidway: true });
});

test("a tank holds one mix: another rate begins a fill, and says that it does", () => {
  const plan = planOf([truckStop("a", [IRON]), truckStop("b", [weaker]), truckStop("c", [IRON])]);
  expect(briefly(plan).map(([letter, visits]) => [letter, visits])).toEqual([["A", "a"], ["B", "b"], ["C", "c"]]);
  expect(rules(plan)).toEqual(["b note other-rates-than-the-fill", "c note other-rates-than-the-fill"]);
  expect(plan.found[0]?.finding.figure).toBe("Rustwater Iron: 0.667 fl oz per gal here, 1 fl oz per gal in the mix before.");
});

test("what is spread asks for no fill and stands in the way of none", () => {
  expect(briefly(planOf([truckStop("a", [IRON]), truckStop("b", [FEED]), truckStop("c", [IRON])])).map(([, visits]) => visits)).toEqual(["a c"]);
  expect(planOf([truckStop("b", [FEED])])).toMatchObject({ fills: [], mixes: [], aboard: [{ share: null, tanks: [] }] });
});

test("stops are added up before the gauge's mark, so that less than one mark is left of the whole run", () => {
  // 3.75 gal each: with a mark of a gallon 16 and not 15 if each were rounded by itself.
  const stops = ["a", "b", "c", "d"].map((name) => truckStop(name, [IRON], 2500n));
  const plan = planOf(stops, { settings: { ...settings, tankMark: exactly("gal", "1") } });
  expect(briefly(plan)).toEqual([["A", "a b c d", of("gal", 15n)]]);
  expect(plan.fills[0]?.parts.map(({ finished }) => finished)).toEqual(stops.map(() => of("gal", "3.75")));
  expect(plan.mixes[0]?.end.left).toEqual(of("gal", 0n));
});

test("a fill has its marks and its order of work, and says where it is under its tool's first mark", () => {
  const plan = planOf([truckStop("a", [IRON], 20_000n), truckStop("b", [weaker], 100n)]);
  expect(plan.fills[0]).toMatchObject({ products: [{ toolName: "half-ounce cup", marks: 60n }], steps: ["Put in about half of this fill's water (14.88 gal) and start the agitation.", "Add Rustwater Iron (soluble liquid); let it mix in before the next.", expect.stringContaining("Fill up")] });
  expect(plan.fills[1]).toMatchObject({ finished: of("gal", "0.2"), products: [{ marks: null }] });
  expect(rules(plan)).toContain("b take-care below-first-mark");
  expect(plan.found.at(-1)?.finding.what).toBe("Rustwater Iron for fill B is less than one mark of the half-ounce cup.");
});

test("no rest is sent where a season has no room for it, though the label's highest rate leaves some", () => {
  const active = { name: "ferrolin", concentration: percentByWeight("10"), modeOfAction: "unknown" } as const;
  const most = (poundsPerAcre: string) => rateOf("active-ingredient-mass-per-area", poundsPerAcre, "lb per acre");
  const limited = (poundsPerAcre: string) => ({
    ...weaker,
    label: { ...IRON_LABEL, activeIngredients: [active] },
    use: { ...IRON.use, seasonLimits: { limits: [{ activeIngredient: "ferrolin", most: most(poundsPerAcre), period: "calendar-year" as const }], basis: "label" as const, source: "label of Rustwater Iron" } },
  });
  const wayWith = (poundsPerAcre: string) => planOf([truckStop("a", [limited(poundsPerAcre)], 20_000n)], stays).mixes[0]?.end.way;
  // 1 fl oz per 1,000 sq ft brings 0.375 lb per acre at 11 lb a gallon; the label's highest, 2 fl oz, twice that.
  expect(wayWith("1")).toEqual({ sites: [{ visitId: "a", mix: of("gal", 3n) }], toShop: of("gal", 0n) });
  expect(wayWith("0.4")).toEqual({ sites: [], toShop: of("gal", 3n) });
});

test("what is left in one tank rides along without taking the room that another's fills were given", () => {
  const backpack = { ...IRON, gear: { ...SPRAYER, equipmentId: "backpack", name: "Backpack", capacity: of("gal", 4n), holdUp: of("gal", "0.1") } };
  const stops = [truckStop("a", [IRON], 500n, { water: "yes" }), truckStop("b", [backpack], 82_667n, { water: "yes" }), truckStop("c", [FEED, IRON], 18_050n, { water: "yes" }), truckStop("d", [IRON], 38_051n, { water: "yes" })];
  const truck = { name: "Truck 1", payload: of("lb", 300n), staysAboard: of("lb", 0n) };
  const plan = planOf(stops, { ...stays, truck, lastHeld: new Map([[SPRAYER.equipmentId, "clean"], ["backpack", "clean"]]), settings: { ...settings, tankLoads: "same-size-every-time", lineAtTheEnd: "left-as-it-is" } });
  expect(rules(plan)).not.toContain("truck hold above-payload");
  expect(plan.mixes.find(({ gear }) => gear.name === "Backpack")?.end.left.amount).toBeGreaterThan(0n);
});

test("the twenty-seventh fill is AA", () => {
  const stops = Array.from({ length: 27 }, (_unused, index) => truckStop(`v${String(index)}`, [index % 2 === 0 ? IRON : weaker]));
  expect(planOf(stops).fills.map(({ letter }) => letter).slice(-2)).toEqual(["Z", "AA"]);
});

test("the tank rides full from the shop, falls from stop to stop and rises where it is filled", () => {
  const stops = [truckStop("feed", [FEED]), truckStop("a", [IRON], 20_000n), truckStop("b", [IRON], 40_000n), truckStop("c", [IRON], 20_000n), truckStop("last", [FEED])];
  const gallons = (arrives: bigint, leaves: bigint) => [{ gearName: "Sprayer", arrives: of("gal", arrives), leaves: of("gal", leaves) }];
  expect(planOf(stops).aboard).toEqual([
    { visitId: "feed", share: 0.9, letters: [], tanks: gallons(90n, 90n) },
    { visitId: "a", share: 0.9, letters: ["A"], tanks: gallons(90n, 60n) },
    { visitId: "b", share: 0.6, letters: [], tanks: gallons(60n, 0n) },
    { visitId: "c", share: 0.3, letters: ["B"], tanks: gallons(30n, 0n) },
    { visitId: "last", share: 0, letters: [], tanks: gallons(0n, 0n) },
  ]);
});

test("what the tank holds of this very mix is used first", () => {
  const plan = planOf([truckStop("a", [IRON], 20_000n)], holding(held()));
  expect(briefly(plan)).toEqual([["A", "a", of("gal", 20n)]]);
  expect(plan.mixes[0]).toMatchObject({ already: of("gal", 10n), begin: { line: "water", cleaning: "none" }, end: { pushOut: of("gal", 3n), inLine: of("gal", 0n) } });
  expect(planOf([truckStop("a", [IRON])], holding(held()))).toMatchObject({ fills: [], mixes: [{ name: "fill 7", end: { left: of("gal", 4n), inLine: of("gal", 3n) } }], aboard: [{ share: 0.1 }] });
});

test("water pushes no mix out of the line while a mark or more of it is in the tank; where the line would take it up it is let out first", () => {
  const endWith = (left: string) => planOf([truckStop("a", [IRON])], holding(held({ left: of("gal", left) }))).mixes[0]?.end;
  expect(endWith("3.09")).toMatchObject({ left: of("gal", "0.09"), pushOut: of("gal", 3n), isLetOutFirst: false, inLine: of("gal", 0n) });
  expect(endWith("6.09")).toMatchObject({ left: of("gal", "3.09"), pushOut: of("gal", 3n), isLetOutFirst: true, inLine: of("gal", 0n) });
  expect(endWith("6.1")).toMatchObject({ left: of("gal", "0.1"), pushOut: of("gal", 0n), isLetOutFirst: false, inLine: of("gal", 3n) });
});

test("a tank with a mark or more of another mix in it is emptied, rinsed and filled at the shop, water at the stop or not, and the rest weighs on the way there", () => {
  const stops = [truckStop("a", [IRON], 10_000n), truckStop("past", [FEED]), truckStop("b", [{ ...KELP, line: 8 }], 40_000n, { water: "yes" })];
  const dry = { dryWeights: stops.map(() => of("lb", 100n)) };
  const plan = planOf(stops, { ...holding(held({ finished: of("gal", 90n), left: of("gal", 80n), products: [{ productId: "iron", productName: "Rustwater Iron", label: IRON_LABEL, amount: of("fl oz", 90n) }] })), ...dry });
  expect(plan.fills).toMatchObject([{ letter: "A", place: { at: "shop", visitId: "b", isMidway: false }, finished: of("gal", 60n) }]);
  const [first, second] = plan.mixes;
  expect(first?.end).toMatchObject({ left: of("gal", 62n), inLine: of("gal", 3n), pushOut: of("gal", 0n) });
  expect(second).toMatchObject({ begin: { cleaning: "rinse", rinsedAt: "shop", line: "flushed" }, end: { rinsateAboard: of("gal", 0n) } });
  const gallons = plan.aboard.map(({ tanks }) => tanks.map(({ arrives, leaves }) => [arrives, leaves]));
  expect(gallons).toEqual([[[of("gal", 80n), of("gal", 62n)]], [[of("gal", 62n), of("gal", 62n)]], [[of("gal", 60n), of("gal", 0n)]]]);
  // Less than a mark is let out at the stop, where the tank is filled.
  const small = planOf(stops, { ...holding(held({ left: of("gal", "15.05") })), ...dry });
  expect(small.fills).toMatchObject([{ place: { at: "stop", visitId: "b" } }]);
});

test("what is left rides to where the tank is filled next and weighs as its own mix, and what a tank holds in the morning is left room for by the tanks before", () => {
  const small = truckStop("b", [KELP], 2000n, { water: "yes" });
  const rest = planOf([truckStop("a", [IRON], 2000n), small], { ...holding(held({ left: of("gal", 90n), finished: of("gal", 90n), products: [{ productId: "iron", productName: "Rustwater Iron", label: IRON_LABEL, amount: of("fl oz", 90n) }] })), dryWeights: [of("lb", 0n), of("lb", 900n)] });
  // 84 gal with 1 fl oz in each are 83.3 gal of water.
  expect(rest.heaviest.visitId).toBe("b");
  expect(Number(rest.heaviest.weight.amount) / Number(of("lb", 1n).amount)).toBeCloseTo(900 + ((84 * 127) / 128) * 8.3454, 0);
  const backpack = { ...IRON, gear: { ...SPRAYER, equipmentId: "other", name: "Other", holdUp: of("gal", 0n) } };
  const two = planOf([truckStop("x", [backpack], 40_000n), truckStop("a", [IRON], 10_000n)], { ...holding(held({ left: of("gal", 40n) })), truck: { name: "Truck 1", payload: of("lb", 700n), staysAboard: of("lb", 0n) }, dryWeights: [of("lb", 10n), of("lb", 10n)] });
  expect(rules(two)).not.toContain("truck hold above-payload");
});

test("what the tank holds is another mix where it is stronger than the next stop's label allows", () => {
  // 2 gal with 1.75 fl oz: half a mark from 1 fl oz per 1,000 sq ft, 1.3125 on the ground.
  const strong = held({ finished: of("gal", 2n), left: of("gal", 1n), products: [{ productId: "iron", productName: "Rustwater Iron", label: IRON_LABEL, amount: of("fl oz", "1.75") }] });
  const planFor = (high: string) => planOf([truckStop("a", [upTo(weaker, high)], 600n)], holding(strong));
  expect(planFor("1.32")).toMatchObject({ fills: [], mixes: [{ name: "fill 7", already: of("gal", 1n) }] });
  expect(rules(planFor("1.32"))).toEqual(["a take-care less-than-the-line-holds"]);
  const other = planFor("1");
  expect(other).toMatchObject({ fills: [{ finished: of("gal", "0.9") }], mixes: [{ already: of("gal", 0n), begin: { leftOfLast: of("gal", 1n) } }] });
  // 0.9 gal take 0.6 fl oz, and the cup gives ½: 0.83 fl oz on 1,000 sq ft.
  expect(rules(other)).toEqual(["a take-care last-mix-left", "a take-care less-than-the-line-holds", "a take-care rounded-below-lowest"]);
});

test("a line holds the mix in the morning where the house leaves it there, where its fill is under way and where nobody measured it", () => {
  const lineOf = (mix: HeldMix, more: Partial<TankPlanQuestion> = {}, gear: Partial<typeof SPRAYER> = {}) => planOf([truckStop("a", [{ ...IRON, gear: { ...SPRAYER, ...gear } }])], { ...holding(mix), ...more }).mixes[0];
  expect(lineOf(held(), stays)).toMatchObject({ begin: { line: "holds-this-mix" }, end: { pushOut: of("gal", 0n), inLine: of("gal", 3n) } });
  expect(lineOf(held({ isUnderWay: true, left: of("gal", 3n) }))).toMatchObject({ begin: { line: "holds-this-mix" }, end: { pushOut: of("gal", 3n), inLine: of("gal", 0n) } });
  expect(lineOf(held(), {}, { holdUp: "unknown" })).toMatchObject({ begin: { line: "holds-this-mix" }, end: { pushOut: of("gal", 0n), inLine: "unknown" } });
});

test("while visits of the last fill are not recorded the plan takes the tank for empty, and says so", () => {
  const plan = planOf([truckStop("a", [IRON], 20_000n)], holding(held({ left: "unknown" })));
  expect(briefly(plan)).toEqual([["A", "a", of("gal", 30n)]]);
  expect(plan.found.map(({ finding }) => finding.what)).toEqual(["What the tank of Sprayer still holds is not known."]);
});

test("a tank that held nobody knows what is a hold", () => {
  expect(rules(planOf([truckStop("a", [IRON])], { lastHeld: new Map() }))).toEqual(["a hold clean-out"]);
});

const WEEDKILLER = { ...IRON_LABEL, productName: "Dockaway", epaRegistrationNumber: { number: "DEMO-0000-4" } };
const weedkiller = held({ products: [{ productId: "dock", productName: "Dockaway", label: WEEDKILLER, amount: of("fl oz", 40n) }] });

test("a pesticide that was in the tank and is not planned here is cleaned out, or it holds", () => {
  const stops = [truckStop("a", [IRON])];
  const plan = planOf(stops, holding(weedkiller));
  expect(rules(plan)).toEqual(["a hold clean-out", "a take-care last-mix-left"]);
  expect(rules(planOf(stops, { ...holding(weedkiller), ...stays }))).toEqual(["a hold clean-out", "a take-care flush-the-line", "a take-care last-mix-left"]);
  expect(plan.found[0]?.finding.figure).toBe("Fill 7: Dockaway is a pesticide that is not planned there.");
  expect(plan.mixes[0]?.begin).toMatchObject({ cleaning: "clean-out", rinse: { times: 3, waterEach: of("gal", 10n), water: of("gal", 30n) }, leftOfLast: of("gal", 10n) });
  const cleaned = planOf(stops, { ...holding(weedkiller), cleanOuts: new Map([[SPRAYER.equipmentId, new Set(["a"])]]) });
  expect(rules(cleaned)).toEqual([]);
  expect(cleaned.mixes[0]?.begin).toMatchObject({ rinse: null, line: "water" });
});

test("between two mixes of a day the line is pushed out with water, and a feed's trace is rinsed out", () => {
  const seaweed = { ...IRON, productId: "kelp", label: { ...IRON_LABEL, productName: "Kelp Tonic" } };
  const plan = planOf([truckStop("a", [IRON]), truckStop("b", [seaweed])]);
  expect(rules(plan)).toEqual([]);
  expect(plan.mixes[0]?.end).toMatchObject({ visitId: "a", pushOut: of("gal", 3n), left: of("gal", 0n), inLine: of("gal", 0n), way: { sites: [], toShop: of("gal", 0n) } });
  expect(plan.mixes[1]?.begin).toMatchObject({ lastName: "fill A", cleaning: "rinse", line: "water", rinse: { times: 1, water: of("gal", 10n) } });
});

test("a line that is left as it is takes its own mix, gives the next lawn the last one first, and keeps the rest", () => {
  const plan = planOf([truckStop("a", [IRON], 20_000n), truckStop("b", [weaker], 20_000n)], stays);
  expect(briefly(plan)).toEqual([["A", "a", of("gal", 33n)], ["B", "b", of("gal", 30n)]]);
  expect(plan.fills[0]?.toLine).toEqual(of("gal", 3n));
  expect(rules(plan)).toContain("b note carry-over");
  expect(plan.mixes[1]?.begin.carryOver).toEqual({
    visitId: "b", mix: of("gal", 3n), ground: of("sq ft", 2000n), products: [{ productId: "iron", productName: "Rustwater Iron", amount: of("fl oz", 3n) }],
  });
  // Planned at 1 of at most 2 fl oz per 1,000 sq ft, b may get as much again.
  expect(plan.mixes[1]?.end).toMatchObject({ inLine: of("gal", 3n), way: { sites: [{ visitId: "b", mix: of("gal", 3n) }], toShop: of("gal", 0n) } });
});

test("what no stop may get any more goes to the shop's rinsate tank", () => {
  const most = { ...IRON, rate: rateOf("product-volume-per-area", "2", "fl oz per 1,000 sq ft") };
  expect(planOf([truckStop("a", [most], 20_000n)], stays).mixes[0]?.end.way).toEqual({ sites: [], toShop: of("gal", 3n) });
});

test.each([
  // 0.4 gal with half a fluid ounce: at most 0.2 fl oz on 100 sq ft, of which 0.15 gal bring 0.1875; 0.01 gal more bring 0.0125.
  [100n, "0.2", "1", "0.01"],
  // 0.4 gal with half a fluid ounce: 0.4 allowed, 0.375 down, 0.02 gal.
  [200n, "0.1", "1", "0.02"],
])("what is left is counted as strong as it was measured out: on %s sq ft with %s gal in the line", (area, holdUp, fluidOunces, room) => {
  const small = { ...IRON, gear: { ...SPRAYER, holdUp: of("gal", holdUp) }, rate: rateOf("product-volume-per-area", fluidOunces, "fl oz per 1,000 sq ft") };
  const plan = planOf([truckStop("a", [small], area)], stays);
  expect(plan.fills[0]).toMatchObject({ finished: of("gal", "0.4"), products: [{ amount: of("fl oz", "0.5") }] });
  const [site] = plan.mixes[0]?.end.way.sites ?? [];
  // Room ends at a whole canonical unit.
  expect([0n, 1n]).toContain(of("gal", room).amount - (site?.mix.amount ?? 0n));
});

test("a last mix that its cup made stronger than the next label's highest rate does not run on, though its plan would", () => {
  const rate = rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft");
  const gear = { ...SPRAYER, holdUp: of("gal", "0.2") };
  const iron = { ...IRON, gear, rate };
  const kelp = { ...iron, line: 9, productId: "kelp", label: { ...IRON_LABEL, productName: "Kelp Tonic" } };
  // Fill A is 0.4 gal with 0.5 fl oz: 1.875 fl oz per 1,000 sq ft, 0.25 fl oz in the line.
  const next = (high: string) => planOf([truckStop("a", [iron], 100n), truckStop("b", [upTo(iron, high), kelp], 20_000n)], stays).mixes[1]?.begin;
  expect(next("1.8")).toMatchObject({ line: "flushed", carryOver: null });
  expect(next("1.9")).toMatchObject({ line: "runs-on", carryOver: { products: [{ productId: "iron", amount: of("fl oz", "0.25") }] } });
});

test("the truck is never loaded past its payload: the fill is split, and where there is no room for any it holds", () => {
  const stops = [truckStop("a", [IRON], 20_000n), truckStop("b", [IRON], 20_000n)];
  const truck = (pounds: bigint) => ({ truck: { name: "Truck 1", payload: of("lb", pounds), staysAboard: of("lb", 0n) } });
  const split = planOf(stops, truck(400n));
  expect(briefly(split)).toEqual([["A", "a", of("gal", 30n)], ["B", "b", of("gal", 30n)]]);
  expect(rules(split)).toEqual(["truck take-care payload-splits-the-fill"]);
  expect(split.heaviest.weight.amount <= of("lb", 400n).amount).toBe(true);
  expect(rules(planOf(stops, truck(25n)))).toContain("a hold no-room-for-spray");
  expect(planOf(stops, { truck: { name: "Truck 1", payload: of("lb", 700n), staysAboard: of("lb", 300n) } }).fills).toHaveLength(2);
});
