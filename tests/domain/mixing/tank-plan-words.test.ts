import { expect, test } from "vitest";
import { planTanks } from "#domain/mixing/tank-plan";
import { fillPlaceWords, mixSentences, stopWords } from "#domain/mixing/tank-plan-words";
import { type LastHeld, type TankPlanQuestion, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { IRON, IRON_LABEL, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

const { settings } = tankQuestion([]);
const asItIs: Partial<TankPlanQuestion> = { settings: { ...settings, lineAtTheEnd: "left-as-it-is" } };
const nameOf = (visitId: string) => `stop ${visitId}`;
const planOf = (stops: readonly TreatedStop[], more: Partial<TankPlanQuestion> = {}) => planTanks(tankQuestion(stops, more));
const said = (stops: readonly TreatedStop[], more: Partial<TankPlanQuestion> = {}) => planOf(stops, more).mixes.map((mix) => mixSentences(mix, nameOf));
const held = (productId: string, label: typeof IRON_LABEL): LastHeld => ({
  name: "fill 7", finished: of("gal", 40n), left: of("gal", 2n), isUnderWay: false, isOfThatDay: false, filledOnto: [], products: [{ productId, productName: label.productName, label, amount: of("fl oz", 40n) }],
});
const underWay = (last: LastHeld): LastHeld => (typeof last === "string" ? last : { ...last, isUnderWay: true });
const after = (last: LastHeld, more: Partial<TankPlanQuestion> = {}) => said([truckStop("a", [IRON])], { lastHeld: new Map([[SPRAYER.equipmentId, last]]), ...more })[0];
const DOCK = { ...IRON_LABEL, productName: "Dockaway", epaRegistrationNumber: { number: "DEMO-0000-4" } };

const ELSEWHERE = "Where the labels of all that is in it allow that, it may go onto a site that they name, within their rates; never onto a hard surface or down a drain.";

test("a stop is named by its place on the route and its street", () => {
  expect(stopWords(3, "12 Elm St")).toBe("stop 3 (12 Elm St)");
});

test("where a fill is made", () => {
  const words = (water: TreatedStop["water"], areas: readonly bigint[]) => {
    const { fills } = planOf(areas.map((area, index) => truckStop(String(index + 1), [IRON], area, { water })));
    return fills.map((fill) => fillPlaceWords(fill, nameOf));
  };
  expect(words("no", [60_000n, 60_000n])).toEqual(["at the shop before leaving", "back at the shop on the way to stop 2"]);
  expect(words("no", [80_000n])[1]).toBe("back at the shop in the middle of stop 1");
  expect(words("yes", [80_000n])[1]).toBe("in the middle of stop 1, with water there");
});

test("a mix behind which water goes leaves nothing", () => {
  expect(said([truckStop("a", [IRON])])).toEqual([
    ["Run out 3 gal of water until the mix comes.", "When the tank is empty, put 3 gal of clean water in and spray on at stop a until the water comes.", "Nothing is left in tank and lines."],
  ]);
});

test("a mix that is less than pump and hose hold is followed by a part of the water that pushes it, and is for care", () => {
  const stops = [truckStop("a", [IRON], 1000n)];
  expect(said(stops)).toEqual([
    [
      "Put 1½ gal of clean water into the tank after the mix, which is less than pump and hose hold. Run out 3 gal of water until the mix comes.",
      "When the tank is empty, put the other 1½ gal of clean water in and spray on at stop a until the water comes.",
      "Nothing is left in tank and lines.",
    ],
  ]);
  const rules = (question: Partial<TankPlanQuestion> = {}) => planOf(stops, question).found.filter(({ finding }) => finding.rule === "less-than-the-line-holds");
  expect(rules()).toMatchObject([{ visitId: "a", finding: { level: "take-care", what: "Fill A for a is less than pump and hose of Sprayer hold.", figure: "There are 1½ gal of it, and they hold 3 gal: water stands before and behind all of it, and thins it." } }]);
  // Where the line is filled with it, or holds it already, there is enough.
  expect(rules(asItIs)).toEqual([]);
  expect(rules({ lastHeld: new Map([[SPRAYER.equipmentId, underWay(held("iron", IRON_LABEL))]]) })).toEqual([]);
});

test("what is in the tank is named by its fills, and another mix under it and what the books can't have right are said", () => {
  const own = held("iron", IRON_LABEL);
  if (typeof own === "string") throw new Error("It holds a mix.");
  const [six, other, five] = [{ ...own, name: "fill 6" }, { ...own, name: "fill 5", products: own.products.map((one) => ({ ...one, amount: of("fl oz", 80n) })) }, { ...own, name: "fill 4", left: "unknown" as const }];
  expect(after({ ...own, under: [six, other, five] })?.slice(0, 3)).toEqual([
    "4 gal of fill 7 and fill 6 are in the tank by the books and are used first.",
    "2 gal of fill 5, another mix, are under it by the books.",
    "How much of fill 4, another mix, is under it is not known.",
  ]);
  expect(after({ ...other, under: [six] })?.[0]).toBe("Empty the tank first: 4 gal of fill 5 and fill 6 are in it by the books.");
  expect(after({ ...own, left: of("gal", 60n), under: [{ ...six, left: of("gal", 60n) }] })?.[0]).toBe("What is left of fill 7 and fill 6 is not known; the fills are planned for an empty tank.");
});

test("a rest that the line would take up is let out before water pushes", () => {
  const last = held("iron", IRON_LABEL);
  const more = typeof last === "string" ? last : { ...last, left: of("gal", 5n) };
  expect(after(more)?.slice(1, 4)).toEqual([
    "Run out 3 gal of water until the mix comes.",
    "Let the 2 gal that are left in the tank out into a container, then put 3 gal of clean water in and spray on at stop a until the water comes.",
    "Left in tank and lines: 2 gal in the tank.",
  ]);
});

test("what stays in the line is said, with where it may go", () => {
  expect(said([truckStop("a", [IRON])], asItIs)[0]).toEqual([
    "Run out 3 gal of water until the mix comes.",
    "Left in tank and lines: 3 gal in pump and hose.",
    "With rinse water, which has to be taken along, 1 gal of it may go on at stop a, within the label's rate.",
    "2 gal of it go into the shop's rinsate tank: no stop has room for them within the label's rate.",
  ]);
  expect(said([truckStop("a", [IRON], 2000n, { water: "yes" })], asItIs)[0]?.[2]).toBe("With its rinse water 1 gal of it may go on at stop a, within the label's rate.");
});

test("another mix in the tank is emptied and cleaned out before, and run out where the line holds it", () => {
  expect(after(held("dock", DOCK))?.slice(0, 4)).toEqual([
    "Empty the tank first: 2 gal of fill 7 are in it by the books.",
    "Clean out tank, pump and hose: 3 times with 10 gal of water, or as the label says.",
    `The rinsate goes into the shop's rinsate tank. ${ELSEWHERE}`,
    "Run out 3 gal of water until the mix comes.",
  ]);
  expect(after(underWay(held("dock", DOCK)))?.slice(0, 5)).toEqual([
    "Empty the tank first: 2 gal of fill 7 are in it by the books.",
    "Run 3 gal of fill 7 out of pump and hose into a container for the shop's rinsate tank.",
    "Clean out tank, pump and hose: 3 times with 10 gal of water, or as the label says.",
    `The rinsate goes into the shop's rinsate tank. ${ELSEWHERE}`,
    "Run out 3 gal of water until the mix comes.",
  ]);
  expect(after(held("dock", DOCK), { cleanOuts: new Map([[SPRAYER.equipmentId, new Set(["a"])]]) })?.[0]).toBe("The clean-out before it is on file.");
});

test("what comes out of a tank that is cleaned out at a stop rides along, and the mix's end says so until the truck is back at the shop", () => {
  const dock = { ...IRON, productId: "dock", label: DOCK };
  const route = (...more: readonly TreatedStop[]) => said([truckStop("a", [dock]), truckStop("b", [IRON], 2000n, { water: "yes" }), ...more]);
  const push = (visit: string) => `When the tank is empty, put 3 gal of clean water in and spray on at stop ${visit} until the water comes.`;
  expect(route()[1]).toEqual([
    "Clean out tank, pump and hose: 3 times with 10 gal of water, or as the label says.",
    `The 30 gal of rinsate from stop b ride along to the shop's rinsate tank. ${ELSEWHERE}`,
    "Run out 3 gal of water until the mix comes.",
    push("b"),
    "No mix is left in tank and lines.",
    "30 gal of rinsate are still aboard, for the shop's rinsate tank.",
  ]);
  const kelp = { ...IRON, productId: "kelp", label: { ...IRON_LABEL, productName: "Kelp Tonic" } };
  expect(route(truckStop("c", [kelp]))[2]).toEqual([
    "Rinse tank, pump and hose with 10 gal of water.",
    `The rinsate goes into the shop's rinsate tank. ${ELSEWHERE}`,
    "Run out 3 gal of water until the mix comes.",
    push("c"),
    "Nothing is left in tank and lines.",
  ]);
});

test("in the morning the line holds the water that pushed the last mix out, of the same mix too; while a fill is under way it holds the mix", () => {
  const last = held("iron", IRON_LABEL);
  const push = "When the tank is empty, put 3 gal of clean water in and spray on at stop a until the water comes.";
  expect(after(last)?.slice(1, 3)).toEqual(["Run out 3 gal of water until the mix comes.", push]);
  expect(after(underWay(last))?.[1]).toBe(push);
});

test("the same mix is used first; other rates of it may come out of the hose first", () => {
  expect(after(held("iron", IRON_LABEL))?.[0]).toBe("2 gal of fill 7 are in the tank by the books and are used first.");
  const weaker = { ...IRON, rate: rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft") };
  expect(said([truckStop("a", [IRON]), truckStop("b", [weaker])], asItIs)[1]?.[0]).toBe("3 gal of fill A come out of the hose first, at stop b.");
});

test("a rest that nobody knows is said to be unknown", () => {
  const last = held("iron", IRON_LABEL);
  expect(after(typeof last === "string" ? last : { ...last, left: "unknown" })?.[0]).toBe("What is left of fill 7 is not known; the fills are planned for an empty tank.");
});

test("a rinse between feeds is one, and a line that nobody measured is said to be unknown", () => {
  const gear = { ...SPRAYER, holdUp: "unknown" as const };
  const kelp = { ...IRON, gear, productId: "kelp", label: { ...IRON_LABEL, productName: "Kelp Tonic" } };
  const [first, second] = said([truckStop("a", [{ ...IRON, gear }]), truckStop("b", [kelp])]);
  expect(first).toEqual(["Nothing is left in the tank; what pump and hose keep is not known."]);
  expect(second?.[0]).toBe("Rinse tank, pump and hose with 10 gal of water.");
});
