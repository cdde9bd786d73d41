import fc from "fast-check";
import { expect, test } from "vitest";
import { type LoadedStop } from "#domain/mixing/loading-list";
import { planTanks } from "#domain/mixing/tank-plan";
import { checkMix } from "#domain/mixing/tank-plan-checks";
import { sizeRun } from "#domain/mixing/sized-run";
import { runsOfTanks } from "#domain/mixing/tank-runs";
import { type TankPlanQuestion } from "#domain/mixing/tank-plan-question";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { type HeldMix } from "#domain/mixing/tank-plan-question";
import { FEED, IRON, IRON_LABEL, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

/** What is said of the first mix of a route. */
function found(question: TankPlanQuestion) {
  const [run] = runsOfTanks(question.stops).get("sprayer") ?? [];
  const [mix] = planTanks(question).mixes;
  if (run === undefined || mix === undefined) throw new Error("Iron is sprayed.");
  const sized = sizeRun({ question, weights: question.dryWeights.map(({ amount }) => amount) }, run, { last: "clean", below: [], made: [], lineHoldsLast: true, isFirst: true, leavesRest: false });
  return checkMix(question, sized, mix, { last: null, below: [], before: undefined });
}
const loaded = (pounds: bigint, stops = [truckStop("12 Elm St", [IRON], 20_000n), truckStop("14 Elm St", [IRON], 20_000n)]) =>
  tankQuestion(stops, { truck: { name: "Truck 1", payload: of("lb", pounds), staysAboard: of("lb", 0n) } });

test("a truck that can carry full tanks has nothing said about it", () => {
  expect(found(loaded(5000n))).toEqual([]);
});

test("a fill that the payload splits says what there is room for and what it costs", () => {
  expect(found(loaded(400n))).toMatchObject([
    { visitId: null, finding: { level: "take-care", rule: "payload-splits-the-fill", figure: "The payload of 400 lb leaves room for 30 gal: 2 fills instead of 1." } },
  ]);
});

test("a truck without room for a mark holds at every stop of the mix that it can't carry", () => {
  expect(found(loaded(20n))).toMatchObject([
    { visitId: "12 Elm St", finding: { level: "hold", answerableBy: "office", rule: "no-room-for-spray", figure: "On the way to 12 Elm St it already carries all that its payload of 20 lb allows." } },
    { visitId: "14 Elm St", finding: { level: "hold", answerableBy: "office", rule: "no-room-for-spray" } },
  ]);
});

test("a fill that has no room before leaving, but has on the way to its stop, says that it waits", () => {
  const stops = [truckStop("feed", [FEED], 2000n), truckStop("12 Elm St", [IRON], 40_000n)];
  const dryWeights = [of("lb", 400n), of("lb", 10n)];
  const plan = planTanks({ ...loaded(540n, stops), dryWeights });
  expect(plan.fills).toMatchObject([{ finished: of("gal", 60n), place: { at: "shop", visitId: "12 Elm St", isMidway: false } }]);
  expect(plan.found.filter(({ finding }) => finding.source === "house")).toMatchObject([
    { visitId: "12 Elm St", finding: { level: "take-care", rule: "payload-delays-the-fill", figure: "The payload of 540 lb has no room for it on the way to the stops before." } },
  ]);
  expect(plan.aboard.map(({ tanks }) => tanks.map(({ arrives }) => arrives))).toEqual([[of("gal", 0n)], [of("gal", 60n)]]);
});

test("a stop without spray before the first one takes no room away from a plan that works", () => {
  const big = truckStop("12 Elm St", [IRON], 40_000n);
  const rules = (stops: readonly LoadedStop[]) => planTanks({ ...loaded(500n, [...stops]), dryWeights: stops.map(() => of("lb", 10n)) }).found.map(({ finding }) => finding.rule);
  // The second fill is of four gallons, for which half an ounce is a coarse mark.
  expect(rules([big])).toEqual(["payload-splits-the-fill", "rounded-off-plan"]);
  expect(rules([truckStop("feed", [FEED], 2000n), big])).toEqual(["payload-splits-the-fill", "rounded-off-plan"]);
});

test("a tank that holds less than the first mark of its gauge is held, whether the payload is on file or not", () => {
  const small = { ...IRON, gear: { ...SPRAYER, capacity: of("gal", 4n), holdUp: of("gal", 0n) } };
  const settings = { ...tankQuestion([]).settings, tankMark: exactly("gal", "5") };
  const said = [of("lb", 5000n), null].map((payload) => found(tankQuestion([truckStop("12 Elm St", [small])], { settings, truck: { name: "Truck 1", payload, staysAboard: of("lb", 0n) } })));
  for (const one of said) {
    expect(one).toMatchObject([{ visitId: "12 Elm St", finding: { level: "hold", answerableBy: "office", rule: "no-room-for-spray", figure: "Its tank holds 4 gal, and the first mark is at 5 gal." } }]);
  }
});

test("a fill on the road asks for water only where nobody knows about it", () => {
  const stops = (water: "yes" | "no" | "unknown") => [truckStop("12 Elm St", [IRON], 60_000n, { water }), truckStop("14 Elm St", [IRON], 60_000n, { water })];
  expect(found(loaded(5000n, stops("no")))).toEqual([]);
  expect(found(loaded(5000n, stops("yes")))).toEqual([]);
  expect(found(loaded(5000n, stops("unknown")))).toMatchObject([{ visitId: "14 Elm St", finding: { rule: "water-at-stop-not-known" } }]);
});

const DOCK_LABEL = { ...IRON_LABEL, productName: "Dockaway", epaRegistrationNumber: { number: "DEMO-0000-4" } };
const DOCK = { ...IRON, productId: "dock", label: DOCK_LABEL };
const KELP = { ...IRON, productId: "kelp", label: { ...IRON_LABEL, productName: "Kelp Tonic" } };
const mixOf = (name: string, { productId, label }: Pick<typeof IRON, "productId" | "label">) => ({ name, finished: of("gal", 40n), products: [{ productId, productName: label.productName, label, amount: of("fl oz", 40n) }] });
const heldOf = (treatment: Pick<typeof IRON, "productId" | "label">, more: Partial<HeldMix> = {}): HeldMix => ({
  ...mixOf("fill 8", treatment), left: of("gal", 0n), isUnderWay: false, isOfThatDay: false, filledOnto: [], ...more,
});
/** What of cleaning out a route with so much in the tank in the morning says. */
const cleaning = (held: HeldMix | "unknown", stops = [truckStop("a", [IRON]), truckStop("b", [IRON])]) =>
  planTanks(tankQuestion(stops, { lastHeld: new Map([[SPRAYER.equipmentId, held]]) })).found
    .filter(({ finding }) => finding.rule.startsWith("clean-out"))
    .map(({ visitId, finding }) => `${visitId ?? "truck"} ${finding.level} ${finding.rule}`);

test("what an earlier day left uncleaned holds every stop that would get it", () => {
  expect(cleaning(heldOf(DOCK))).toEqual(["a hold clean-out", "b hold clean-out"]);
  expect(cleaning("unknown")).toEqual(["a hold clean-out", "b hold clean-out"]);
});

test("a clean-out between two mixes of the day is what the plan does and holds nothing", () => {
  expect(cleaning(heldOf(IRON), [truckStop("a", [DOCK]), truckStop("b", [IRON]), truckStop("c", [IRON])]).filter((said) => said.startsWith("b") || said.startsWith("c"))).toEqual(["b take-care clean-out-comes-first"]);
  // The fill for the stops before is of this very day: they are done and recorded, and the clean-out is still to come.
  expect(cleaning(heldOf(DOCK, { isOfThatDay: true }))).toEqual(["a take-care clean-out-comes-first"]);
});

test("a tank that was filled onto what had to go holds until a clean-out before it is on file", () => {
  expect(cleaning(heldOf(IRON))).toEqual([]);
  expect(cleaning(heldOf(IRON, { filledOnto: [mixOf("fill 7", DOCK)] }))).toEqual(["a hold clean-out", "b hold clean-out"]);
  expect(cleaning(heldOf(IRON, { filledOnto: [mixOf("fill 7", IRON)] }))).toEqual([]);
  expect(cleaning(heldOf(IRON, { filledOnto: ["unknown"] }))).toEqual(["a hold clean-out", "b hold clean-out"]);
});

test("what was in a tank counts however many mixes followed it, over fills on file and over the mixes of a day", () => {
  const other = { ...IRON, rate: rateOf("product-volume-per-area", "1.2", "fl oz per 1,000 sq ft") };
  const dock = mixOf("fill 7", DOCK);
  const onto = { filledOnto: [dock] };
  // The same mix again is in the tank; another one comes; a fill of the same mix was put on top.
  expect(cleaning(heldOf(IRON, onto))).toEqual(["a hold clean-out", "b hold clean-out"]);
  expect(cleaning(heldOf(IRON, onto), [truckStop("a", [other]), truckStop("b", [other])])).toEqual(["a hold clean-out", "b hold clean-out"]);
  expect(cleaning(heldOf(IRON, { filledOnto: [mixOf("fill 8", KELP), dock] }))).toEqual(["a hold clean-out", "b hold clean-out"]);
  // On the lawn that gets it anyway it does no harm, and on the next one it does.
  const [both, alone] = [truckStop("a", [DOCK, { ...IRON, line: 9, gear: { ...SPRAYER, equipmentId: "backpack", name: "Backpack" } }]), truckStop("b", [other])];
  expect(cleaning(heldOf(DOCK), [both, truckStop("c", [DOCK]), alone]).filter((said) => !said.includes("hold"))).toEqual(["b take-care clean-out-comes-first"]);
});

test("a mix of the day that a second one follows is cleaned out before a third that it must not reach, and is gone then", () => {
  const at = (rate: string) => ({ ...IRON, rate: rateOf("product-volume-per-area", rate, "fl oz per 1,000 sq ft") });
  const dock = { ...DOCK, line: 9 };
  const stops = [oneAfterTheOther(dock, at("1.5")), truckStop("b", [at("1.2")]), truckStop("c", [at("1.4")]), truckStop("d", [at("1.2")])];
  const plan = planTanks(tankQuestion(stops, { lastHeld: new Map([[SPRAYER.equipmentId, "clean"]]) }));
  // Dock and iron go on the same lawn one after the other; the iron that follows at another rate would carry the rest of dock to the next lawn.
  expect(plan.mixes.map(({ begin }) => begin.cleaning)).toEqual(["none", "none", "clean-out", "none", "none"]);
  expect(plan.found.filter(({ finding }) => finding.rule.startsWith("clean-out"))).toMatchObject([
    { visitId: "b", finding: { level: "take-care", rule: "clean-out-comes-first", figure: "Fill A: Dockaway is a pesticide that is not planned there." } },
  ]);
});

test("unknown below known mixes holds as before until a clean-out is on file, and is a step of the day after a mix of that day", () => {
  const other = { ...IRON, rate: rateOf("product-volume-per-area", "1.2", "fl oz per 1,000 sq ft") };
  const held = heldOf(IRON, { filledOnto: [mixOf("fill 7", KELP), "unknown"] });
  const said = planTanks(tankQuestion([truckStop("a", [other])], { lastHeld: new Map([[SPRAYER.equipmentId, held]]) })).found.map(({ finding }) => finding.what);
  expect(said).toContain("What the tank of Sprayer held before fill 7 is not on file.");
  expect(cleaning(held, [truckStop("a", [other]), truckStop("b", [IRON])])).toEqual(["a hold clean-out"]);
  expect(cleaning({ ...held, isOfThatDay: true }, [truckStop("a", [other])])).toEqual(["a take-care clean-out-comes-first"]);
});

/** A stop at which two sprays go on the same lawn out of one tank, one after the other: they put out different volumes. */
function oneAfterTheOther(first: typeof IRON, second: typeof IRON) {
  const gear = { ...SPRAYER, carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", "2", "gal per 1,000 sq ft") } };
  return truckStop("a", [{ ...first, gear }, second]);
}

const PRODUCTS = { iron: IRON, kelp: { ...IRON, productId: "kelp", line: 2, label: { ...IRON_LABEL, productName: "Kelp Tonic" } }, dock: { ...DOCK, line: 3 }, clover: { ...DOCK, productId: "clover", line: 4, label: { ...DOCK_LABEL, productName: "Cloverdown" } } };
type Name = keyof typeof PRODUCTS;
const names = fc.constantFrom<Name>("iron", "kelp", "dock", "clover");

test("over a route of mixes no lawn gets a trace of a pesticide from before that it does not get itself, without a clean-out or a hold that says so", () => {
  fc.assert(
    fc.property(fc.array(names, { minLength: 1, maxLength: 8 }), fc.array(names, { maxLength: 4 }), fc.boolean(), (route, before, isUnknown) => {
      const [last, ...below] = before;
      const filledOnto: HeldMix["filledOnto"] = [...below.map((name, index) => mixOf(`fill ${String(7 - index)}`, PRODUCTS[name])), ...(isUnknown ? (["unknown"] as const) : [])];
      const held = last === undefined ? (isUnknown ? "unknown" : "clean") : heldOf(PRODUCTS[last], { filledOnto });
      const plan = planTanks(tankQuestion(route.map((name, index) => truckStop(`v${String(index)}`, [PRODUCTS[name]])), { lastHeld: new Map([[SPRAYER.equipmentId, held]]) }));
      // By hand: all that is in the tank, emptied only by a clean-out.
      const inTank = new Set<string>([...before, ...(isUnknown ? ["unknown"] : [])]);
      let rest: readonly (typeof plan.mixes)[number][] = plan.mixes;
      for (const [index, name] of route.entries()) {
        const visitId = `v${String(index)}`;
        const [mix, ...others] = rest;
        const isBegin = mix?.visitIds[0] === visitId;
        if (isBegin) rest = others;
        const isUnclean = [...inTank].some((one) => one === "unknown" || (one !== name && (one === "dock" || one === "clover")));
        const isHeld = plan.found.some((one) => one.visitId === visitId && one.finding.level === "hold" && one.finding.rule === "clean-out");
        const isCleanedOut = isBegin && mix.begin.cleaning === "clean-out";
        if (isUnclean) expect(isHeld || isCleanedOut).toBe(true);
        else expect(isCleanedOut || (isHeld && index === 0)).toBe(false);
        if (isCleanedOut) inTank.clear();
        inTank.add(name);
      }
    }),
    { numRuns: 300 },
  );
});
