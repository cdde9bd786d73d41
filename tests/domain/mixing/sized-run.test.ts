import { expect, test } from "vitest";
import { type BeforeRun } from "#domain/mixing/begin-of-run";
import { mixOf, sizeRun, strongestOf } from "#domain/mixing/sized-run";
import { toolsOf } from "#domain/mixing/tank-rests";
import { runsOfTanks } from "#domain/mixing/tank-runs";
import { type TankPlanQuestion } from "#domain/mixing/tank-plan-question";
import { of } from "#domain/quantities/quantity";
import { CUP, IRON, IRON_LABEL, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

const CLEAN: BeforeRun = { last: "clean", below: [], made: [], lineHoldsLast: true, isFirst: true, leavesRest: false };
const GALLON = of("gal", 1n).amount;
const { settings } = tankQuestion([]);
const asItIs = { settings: { ...settings, lineAtTheEnd: "left-as-it-is" } } as const;

function sized(gear: Partial<typeof SPRAYER> = {}, before: Partial<BeforeRun> = {}, more: Partial<TankPlanQuestion> = {}) {
  const question = tankQuestion([truckStop("a", [{ ...IRON, gear: { ...SPRAYER, ...gear } }], 20_000n)], more);
  const weights = question.dryWeights.map(({ amount }) => amount);
  const [run] = runsOfTanks(question.stops).get("sprayer") ?? [];
  if (run === undefined) throw new Error("Iron is sprayed.");
  return { ...sizeRun({ question, weights }, run, { ...CLEAN, ...before }), weights, run };
}
const mixed = (run: ReturnType<typeof sized>) => run.fills.map((fill) => Number(fill.mixed) / Number(GALLON));

test("with water behind the mix all of it reaches the lawns, without it the line keeps as much as it holds", () => {
  expect(sized()).toMatchObject({ line: "water", pushOut: 3n * GALLON, inLine: 0n, left: 0n });
  expect(mixed(sized())).toEqual([30]);
  expect(sized({}, {}, asItIs)).toMatchObject({ line: "water", pushOut: 0n, inLine: 3n * GALLON });
  expect(mixed(sized({}, {}, asItIs))).toEqual([33]);
});

test("the mix is pushed out whatever the line held before it", () => {
  const last = mixOf(sized().run, "fill 7");
  expect(sized({}, { last })).toMatchObject({ line: "runs-on", pushOut: 3n * GALLON, inLine: 0n });
  const held = { name: "fill 7", finished: of("gal", 40n), left: of("gal", 10n), isUnderWay: true, isOfThatDay: false, filledOnto: [], products: [{ productId: "iron", productName: "Rustwater Iron", label: IRON_LABEL, amount: of("fl oz", 40n) }] };
  expect(sized({}, { last: held })).toMatchObject({ isSameAsLast: true, line: "holds-this-mix", pushOut: 3n * GALLON, inLine: 0n, already: 10n * GALLON });
  expect(sized({}, { last: held, lineHoldsLast: false })).toMatchObject({ isSameAsLast: true, line: "water", pushOut: 3n * GALLON, already: 10n * GALLON });
});

test("what fills the line is of the first stop's own fill, and of the next one too where one is not enough", () => {
  const fillsOf = (run: ReturnType<typeof sized>) => run.fills.map(({ mixed: all, toLine, parts, isBeforeLeaving }) => [all, toLine, parts.map(({ volume }) => volume), isBeforeLeaving].map((one) => (typeof one === "bigint" ? Number(one) / Number(GALLON) : Array.isArray(one) ? one.map((part) => Number(part) / Number(GALLON)) : one)));
  expect(fillsOf(sized({ capacity: of("gal", 32n) }, {}, { ...asItIs, settings: { ...asItIs.settings, tankLoads: "full-tanks-then-a-short-one" } }))).toEqual([[32, 3, [29], true], [1, 0, [1], false]]);
  expect(fillsOf(sized({ capacity: of("gal", 2n) }, {}, { ...asItIs, settings: { ...asItIs.settings, tankLoads: "full-tanks-then-a-short-one" } })).slice(0, 2)).toEqual([[2, 2, [], true], [2, 1, [1], false]]);
});

test("a line that nobody measured stays unknown and adds nothing", () => {
  const unknown = sized({ holdUp: "unknown" }, {}, asItIs);
  expect(unknown).toMatchObject({ inLine: "unknown", pushOut: 0n });
  expect(mixed(unknown)).toEqual([30]);
});

test("the last mix runs on where it may and the lawn takes all of it; else it is flushed", () => {
  const last = { ...mixOf(sized().run, "fill 7") };
  expect(sized({}, { last })).toMatchObject({ line: "runs-on", change: { mayRunOn: true } });
  expect(sized({ holdUp: of("gal", 31n) }, { last }).line).toBe("flushed");
  expect(sized({ holdUp: "unknown" }, { last }).line).toBe("flushed");
  expect(sized({}, { last, lineHoldsLast: false }).line).toBe("water");
});

test("a clean-out on file settles what the tank held, known or not", () => {
  const cleanOuts = new Map([["sprayer", new Set(["a"])]]);
  expect(sized({}, { last: "unknown" })).toMatchObject({ line: "not-known", isCleanOutOnFile: false });
  expect(sized({}, { last: "unknown" }, { cleanOuts })).toMatchObject({ line: "water", isCleanOutOnFile: true });
  expect(sized({}, { last: "unknown" }, { cleanOuts: new Map([["other", new Set(["a"])]]) }).isCleanOutOnFile).toBe(false);
});

test("the water behind the mix rides along and weighs, unless there is water at the last stop", () => {
  const dry = sized().weights[0] ?? 0n;
  const stop = truckStop("a", [IRON], 20_000n, { water: "yes" });
  expect(Number(dry - (sized({}, {}, { stops: [stop] }).weights[0] ?? 0n)) / Number(of("lb", 1n).amount)).toBeCloseTo(25.04, 2);
});

test("a run's real mix is as strong as its strongest fill, and as what the tank held of it before; as planned without a fill", () => {
  const strengthOf = ({ real }: ReturnType<typeof sized>) => {
    const concentration = real.products[0]?.concentration;
    return concentration === undefined || concentration === "unknown" ? undefined : Number(concentration.amount * GALLON) / Number(concentration.per * of("fl oz", 1n).amount);
  };
  // 30.5 gal with 30.5 fl oz; 30.3 gal with 30.5.
  expect(strengthOf(sized({ holdUp: of("gal", "0.5") }, {}, asItIs))).toBe(1);
  expect(strengthOf(sized({ holdUp: of("gal", "0.3") }, {}, asItIs))).toBeCloseTo(30.5 / 30.3, 12);
  const held = { name: "fill 7", finished: of("gal", 10n), left: of("gal", 1n), isUnderWay: false, isOfThatDay: false, filledOnto: [], products: [{ productId: "iron", productName: "Rustwater Iron", label: IRON_LABEL, amount: of("fl oz", "10.4") }] };
  expect(strengthOf(sized({}, { last: held }))).toBeCloseTo(1.04, 12);
  const full = sized({ holdUp: of("gal", "0.3") }, {}, { ...asItIs, truck: { name: "Truck 1", payload: of("lb", 1n), staysAboard: of("lb", 0n) } });
  expect([full.fills, strengthOf(full)]).toEqual([[], 1]);
});

test("the strongest of several fillings is found product by product", () => {
  const { run } = sized();
  const [product] = mixOf(run, "").products;
  if (product === undefined || product.concentration === "unknown") throw new Error("Iron is in the run.");
  const { concentration } = product;
  const mix = (iron: bigint, kelp: bigint) => ({ name: "", products: [iron, kelp].map((amount, index) => ({ ...product, productId: index === 0 ? "iron" : "kelp", concentration: { ...concentration, amount } })) });
  expect([...strongestOf([mix(1n, 7n), mix(3n, 5n)])].map(([productId, { amount }]) => [productId, amount])).toEqual([["iron", 3n], ["kelp", 7n]]);
  const ofNoKnownStrength = { name: "", products: [{ ...product, concentration: "unknown" as const }] };
  expect(strongestOf([ofNoKnownStrength]).size).toBe(0);
});

test("a run knows its tools and its labels", () => {
  const { run } = sized();
  expect(toolsOf(run)("iron")).toEqual(CUP);
  expect(toolsOf(run)("kelp")).toBeUndefined();
  expect(mixOf(run, "fill A")).toMatchObject({ name: "fill A", products: [{ productId: "iron", label: IRON_LABEL }] });
});
