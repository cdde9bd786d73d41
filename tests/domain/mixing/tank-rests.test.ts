import { expect, test } from "vitest";
import { type TankPlan } from "#domain/mixing/tank-plan-answer";
import { type FilledLater, type HeldMix, type LastHeld, type RestInTank, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { planTanks } from "#domain/mixing/tank-plan";
import { allIn, filledAlong, isFor, leftOfAll, morningOf, restsAtBegin } from "#domain/mixing/tank-rests";
import { runsOfTanks } from "#domain/mixing/tank-runs";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { IRON, IRON_LABEL, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

const STRONGER = { ...IRON, rate: rateOf("product-volume-per-area", "2", "fl oz per 1,000 sq ft") };
/** A fill with so many fluid ounces of iron in the gallon, of which so much is left. */
function rest(name: string, left: string, finished = "50", perGallon = 1): RestInTank {
  const gallons = of("gal", finished);
  const iron = { productId: "iron", productName: "Rustwater Iron", label: IRON_LABEL, amount: of("fl oz", BigInt(Number(finished) * perGallon)) };
  return { name, finished: gallons, left: left === "unknown" ? left : of("gal", left), products: [iron] };
}
const held = (top: RestInTank, more: Partial<HeldMix> = {}): HeldMix => ({ ...top, isUnderWay: false, isOfThatDay: true, filledOnto: [], ...more });
const later = (top: RestInTank, visitIds: readonly string[], more: Partial<HeldMix> = {}): FilledLater => ({ ...held(top, more), visitIds });
const runOf = (stops: readonly TreatedStop[], index = 0) => {
  const run = runsOfTanks(stops).get(SPRAYER.equipmentId)?.[index];
  if (run === undefined) throw new Error("Iron is sprayed.");
  return run;
};
const planOf = (stops: readonly TreatedStop[], last: LastHeld) => planTanks(tankQuestion(stops, { lastHeld: new Map([[SPRAYER.equipmentId, last]]) }));
const briefly = ({ fills, mixes }: TankPlan) => ({ fills: fills.map(({ letter, finished }) => [letter, finished]), already: mixes.map((mix) => mix.already) });
const rules = ({ found }: TankPlan) => found.map(({ visitId, finding }) => `${visitId ?? "truck"} ${finding.level} ${finding.rule}`);
const GAUGE = tankQuestion([]).settings;
const TWO = [truckStop("v1", [IRON], 30_000n), truckStop("v2", [IRON], 30_000n)];

test("all fills of a mix that are in the tank are used first, whichever of them is the latest", () => {
  const overnight = held(rest("fill 6", "50"), { under: [rest("fill 5", "40", "100")] });
  const plan = planOf(TWO, overnight);
  expect(briefly(plan)).toEqual({ fills: [], already: [of("gal", 90n)] });
  expect(rules(plan)).toEqual([]);
  expect(plan.mixes[0]?.begin.restName).toBe("fill 6 and fill 5");
  // A used-up fill on top of one that is not.
  expect(briefly(planOf(TWO, held(rest("fill 6", "0"), { under: [rest("fill 5", "40", "100")] })))).toEqual({ fills: [["A", of("gal", 50n)]], already: [of("gal", 40n)] });
});

test("one fill among them of which nobody knows what is left makes all of it unknown", () => {
  const plan = planOf(TWO, held(rest("fill 6", "50"), { under: [rest("fill 5", "unknown", "100")] }));
  expect(briefly(plan)).toEqual({ fills: [["A", of("gal", 90n)]], already: [of("gal", 0n)] });
  expect(rules(plan)).toEqual(["v1 take-care last-mix-left"]);
  expect(leftOfAll([rest("a", "1"), rest("b", "2.5")])).toEqual(of("gal", "3.5"));
  expect(allIn(held(rest("fill 6", "5"), { under: [rest("fill 5", "10", "50", 2)], later: [later(rest("fill 7", "3"), ["v2"])] }), GAUGE)).toEqual(of("gal", 18n));
  expect(allIn(held(rest("fill 6", "5"), { under: [rest("fill 5", "unknown")] }), GAUGE)).toBe("unknown");
  expect(leftOfAll([])).toEqual(of("gal", 0n));
});

test("fills that come to more than tank and line hold are an error of the books and say so", () => {
  // Somebody wrote down what the gauge showed instead of what went in.
  const plan = planOf(TWO, held(rest("fill 6", "90", "90"), { under: [rest("fill 5", "40", "100")] }));
  expect(briefly(plan)).toEqual({ fills: [["A", of("gal", 90n)]], already: [of("gal", 0n)] });
  expect(plan.found).toMatchObject([{ finding: { rule: "last-mix-left", what: "By the books more is in the tank of Sprayer than it holds." } }]);
  const already = (top: RestInTank, gear = SPRAYER, ...under: readonly RestInTank[]) => restsAtBegin(held(top, { under }), [], { ...runOf(TWO), gear }, GAUGE).already;
  // Tank and line hold 103 gal; by 2 % more the gauge may be wrong, or by three of its marks.
  expect(["63", "63.1", "65.05"].map((left) => already(rest("fill 6", left), SPRAYER, rest("fill 5", "40")))).toEqual([of("gal", 103n), of("gal", 103n), of("gal", 103n)]);
  expect(already(rest("fill 6", "65.07"), SPRAYER, rest("fill 5", "40"))).toBe("more-than-it-holds");
  const small = { ...SPRAYER, capacity: of("gal", 4n), holdUp: "unknown" as const };
  expect(["3.3", "3.31"].map((left) => already(rest("fill 6", left), small, rest("fill 5", "1")))).toEqual([of("gal", 4n), "more-than-it-holds"]);
  // One fill alone is what its tank held, whatever that is called.
  expect(already(rest("fill 6", "110", "110"))).toEqual(of("gal", 110n));
});

test("a tank that was filled to the brim onto a little is full, and not empty", () => {
  const stops = [truckStop("v1", [{ ...IRON, gear: { ...SPRAYER, holdUp: "unknown" } }], 60_000n)];
  const plan = planOf(stops, held(rest("fill 6", "99.446", "100"), { under: [rest("fill 5", "0.5544", "100")] }));
  expect(briefly(plan)).toEqual({ fills: [], already: [of("gal", 100n)] });
  expect(rules(plan)).not.toContain("v1 take-care last-mix-left");
});

test("old fills with less than a mark of the gauge left by the books don't add up to anything", () => {
  const under = Array.from({ length: 40 }, (_one, index) => rest(`fill ${String(40 - index)}`, "0.09", "60", index % 2 === 0 ? 2 : 1));
  const others = planOf(TWO, held(rest("fill 41", "0.09", "60", 2), { under }));
  expect(others.mixes[0]?.begin).toMatchObject({ restName: "fill 41", leftOfLast: of("gal", "0.09") });
  const own = held(rest("fill 41", "50"), { under: [rest("fill 40", "0.09"), rest("fill 39", "0.1")] });
  expect(briefly(planOf(TWO, own)).already).toEqual([of("gal", "50.1")]);
  expect(allIn(own, GAUGE)).toEqual(of("gal", "50.1"));
});

test("another mix under the next one is said, from a mark of the gauge on, and nothing under it counts", () => {
  const over = (left: string) => planOf(TWO, held(rest("fill 6", "50"), { under: [rest("fill 5", left, "100", 2), rest("fill 4", "20", "100")] }));
  const plan = over("10");
  expect(briefly(plan)).toEqual({ fills: [["A", of("gal", 40n)]], already: [of("gal", 50n)] });
  expect(plan.found).toMatchObject([{ visitId: "v1", finding: { level: "take-care", rule: "two-mixes-in-the-tank", figure: "Under fill 6 there may be 10 gal of fill 5 and 20 gal of fill 4, which is another mix; the fills are planned without it." } }]);
  expect(over("unknown").found[0]?.finding.figure).toContain("nobody knows how much of fill 5");
  expect(rules(planOf(TWO, held(rest("fill 6", "50"), { under: [rest("fill 5", "0.09", "100", 2)] })))).toEqual([]);
});

test("what is in the tank of other mixes has to go, all of it", () => {
  const plan = planOf(TWO, held(rest("fill 6", "5", "50", 2), { under: [rest("fill 5", "10", "100")] }));
  expect(plan.mixes[0]?.begin).toMatchObject({ restName: "fill 6 and fill 5", leftOfLast: of("gal", 15n) });
});

test("a run takes the fills that the crew made for its visits that day already", () => {
  const stops = [truckStop("v1", [IRON], 20_000n), truckStop("v2", [STRONGER], 20_000n, { water: "yes" })];
  const eight = later(rest("fill 8", "30", "30", 4 / 3), ["v2"], { filledOnto: [rest("fill 7", "30", "30")] });
  const plan = planOf(stops, held(rest("fill 7", "30", "30"), { later: [eight] }));
  expect(briefly(plan)).toEqual({ fills: [], already: [of("gal", 30n), of("gal", 30n)] });
  expect(plan.mixes.map(({ name }) => name)).toEqual(["fill 7", "fill 8"]);
  expect(plan.mixes[1]).toMatchObject({ begin: { restName: "fill 8", cleaning: "none", rinse: null, leftOfLast: of("gal", 0n) } });
  expect(plan.aboard.map(({ tanks }) => tanks.map(({ arrives, leaves }) => [arrives, leaves]))).toEqual([[[of("gal", 30n), of("gal", 0n)]], [[of("gal", 0n), of("gal", 0n)]]]);
});

test("a fill on top for a later stop of the same run counts with the first", () => {
  const three = [...TWO, truckStop("v3", [IRON], 20_000n)];
  const plan = planOf(three, held(rest("fill 7", "70", "100"), { later: [later(rest("fill 8", "20", "20"), ["v3"])] }));
  expect(briefly(plan)).toEqual({ fills: [["A", of("gal", 30n)]], already: [of("gal", 90n)] });
});

test("fills that were made one after the other that day are together more than the tank holds, and right", () => {
  const stops = [...TWO, truckStop("v3", [IRON], 20_000n, { water: "yes" })];
  const plan = planOf(stops, held(rest("fill 7", "100", "100"), { later: [later(rest("fill 8", "20", "20"), ["v3"])] }));
  expect(briefly(plan)).toEqual({ fills: [], already: [of("gal", 120n)] });
  expect(plan.mixes[0]?.name).toBe("fill 8 and fill 7");
  expect(plan.aboard.map(({ tanks: [tank] }) => [tank?.arrives, tank?.leaves])).toEqual([[of("gal", 100n), of("gal", 55n)], [of("gal", 55n), of("gal", 10n)], [of("gal", 10n), of("gal", 0n)]]);
  expect(rules(plan)).toEqual([]);
});

test("a fill goes in where what was in the tank does no more, else at the first of its own stops", () => {
  const run = runOf([...TWO, truckStop("v3", [IRON], 20_000n)]);
  const [own, all] = [later(rest("fill 8", "20"), ["v3"]), later(rest("fill 8", "20"), ["v1", "v2", "v3"])];
  const gallons = (amount: bigint) => of("gal", amount).amount;
  const along = (inMorning: bigint, ...made: readonly FilledLater[]) => filledAlong(run, gallons(inMorning), made).map(({ stopIndex }) => stopIndex);
  // 45, 45 and 30 gal, and 3 gal that pump and hose may take.
  expect([along(200n, own), along(200n, all), along(93n, all), along(92n, all), along(92n, own)]).toEqual([[2], [0], [2], [1], [1]]);
  expect([along(48n, all, all), along(73n, all, all)]).toEqual([[1, 1], [1, 2]]);
  expect(filledAlong({ ...run, gear: { ...run.gear, holdUp: "unknown" } }, gallons(90n), [{ ...all, left: "unknown" }])).toEqual([{ stopIndex: 2, volume: 0n }]);
});

test("a fill that was made for stops of another mix by now has to go before theirs", () => {
  const stops = [truckStop("v1", [IRON], 20_000n), truckStop("v2", [STRONGER], 20_000n, { water: "yes" })];
  const plan = planOf(stops, held(rest("fill 7", "30", "30"), { later: [later(rest("fill 8", "25", "25", 3), ["v2"])] }));
  expect(briefly(plan)).toEqual({ fills: [["A", of("gal", 30n)]], already: [of("gal", 30n), of("gal", 0n)] });
  expect(plan.mixes[1]?.begin).toMatchObject({ restName: "fill 8", leftOfLast: of("gal", 25n) });
  expect(rules(plan)).toContain("v2 take-care last-mix-left");
});

test("a later fill for visits that are not sprayed out of the tank any more is what the tank holds from the beginning", () => {
  const [seven, eight] = [held(rest("fill 7", "30", "30")), later(rest("fill 8", "25", "25"), ["gone"])];
  const runs = [runOf(TWO)];
  expect(morningOf({ ...seven, later: [eight] }, runs)).toEqual({ held: { ...eight, under: [{ ...seven, later: [eight] }] }, later: [] });
  expect(morningOf(seven, runs)).toEqual({ held: seven, later: [] });
  expect(morningOf("clean", runs)).toEqual({ held: "clean", later: [] });
  const own = { ...eight, visitIds: ["v2", "gone"] };
  expect(isFor(own, runOf(TWO))).toBe(true);
  expect(morningOf({ ...seven, later: [own] }, runs).later).toEqual([own]);
});

test("a fill that was made already onto what must not reach its stops holds them", () => {
  const dock = { name: "fill 7", finished: of("gal", 30n), products: [{ productId: "dock", productName: "Dockaway", label: { ...IRON_LABEL, productName: "Dockaway", epaRegistrationNumber: { number: "DEMO-0000-4" } as const }, amount: of("fl oz", 30n) }] };
  const first = held({ ...dock, left: of("gal", 30n) }, { later: [later(rest("fill 8", "30", "30"), ["v2"], { filledOnto: [dock] })] });
  const stops = [truckStop("v1", [{ ...IRON, productId: "dock", label: dock.products[0]?.label ?? IRON_LABEL }], 20_000n), truckStop("v2", [IRON], 20_000n)];
  const plan = planOf(stops, first);
  expect(briefly(plan).fills).toEqual([]);
  expect(plan.found.filter(({ finding }) => finding.rule.startsWith("clean-out"))).toMatchObject([{ visitId: "v2", finding: { level: "hold", rule: "clean-out", what: "Sprayer was filled for the turf at v2 with no clean-out on file before fill 8." } }]);
});
