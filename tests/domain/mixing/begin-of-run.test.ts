import { expect, test } from "vitest";
import { type BeforeRun, beginOfRun, contentsOf } from "#domain/mixing/begin-of-run";
import { mixInTank } from "#domain/mixing/mix-change";
import { type FilledMix, type HeldMix, type TankPlanQuestion } from "#domain/mixing/tank-plan-question";
import { runsOfTanks } from "#domain/mixing/tank-runs";
import { of } from "#domain/quantities/quantity";
import { IRON, IRON_LABEL, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

const stops = [truckStop("a", [IRON], 20_000n)];
const iron: FilledMix["products"][number] = { productId: "iron", productName: "Rustwater Iron", label: IRON_LABEL, amount: of("fl oz", 40n) };
const WEEDKILLER = { ...iron, productId: "dock", productName: "Dockaway", label: { ...IRON_LABEL, productName: "Dockaway", epaRegistrationNumber: { number: "DEMO-0000-4" } } };
const kelp = { ...iron, productId: "kelp", productName: "Kelp Tonic", label: { ...IRON_LABEL, productName: "Kelp Tonic" } };
const held = (more: Partial<HeldMix> = {}): HeldMix => ({ name: "fill 7", finished: of("gal", 40n), left: of("gal", 10n), isUnderWay: false, isOfThatDay: false, filledOnto: [], products: [iron], ...more });
/** Mixed for one visit alone: nobody wrote down in how much spray. */
const alone = (product: typeof iron, more: Partial<HeldMix> = {}) => held({ name: "the mix of 12 Elm St", finished: "unknown", left: of("gal", 0n), products: [product], ...more });

function begin(before: Partial<BeforeRun>, more: Partial<TankPlanQuestion> = {}) {
  const question = tankQuestion(stops, more);
  const run = runsOfTanks(stops).get(SPRAYER.equipmentId)?.[0];
  if (run === undefined) throw new Error("Iron is sprayed.");
  return beginOfRun(question, run, { last: "clean", below: [], made: [], lineHoldsLast: true, isFirst: true, leavesRest: false, ...before });
}

test("a clean tank and one that held nobody knows what begin with nothing on hand", () => {
  expect(begin({})).toMatchObject({ last: "clean", line: "water", onHand: null, already: 0n, restName: null, leftOfLast: of("gal", 0n), under: [] });
  expect(begin({ last: "unknown" })).toMatchObject({ last: "unknown", line: "not-known", onHand: null });
});

test("the same mix in the tank is on hand with what it was filled onto", () => {
  const onto = { ...held({ name: "fill 6", products: [kelp] }) };
  const found = begin({ last: held({ filledOnto: [onto, "unknown"] }) });
  expect(found).toMatchObject({ isSameAsLast: true, line: "holds-this-mix", already: of("gal", 10n).amount, restName: "fill 7", onHand: { fills: [{ name: "fill 7" }] } });
  expect(found.onHand?.onto).toEqual(contentsOf([onto, "unknown"]));
  expect(contentsOf([onto, "unknown"])).toEqual([mixInTank(onto), "unknown"]);
});

test("what was mixed for one visit alone leaves nothing to spray, and whether it may run on out of the line nobody knows", () => {
  expect(begin({ last: alone(iron) })).toMatchObject({ isSameAsLast: false, onHand: null, already: 0n, leftOfLast: of("gal", 0n), line: "not-known", change: { cleaning: "none", mayRunOn: false } });
  expect(begin({ last: alone(kelp) })).toMatchObject({ line: "not-known", change: { cleaning: "rinse" } });
  expect(begin({ last: alone(kelp), lineHoldsLast: false })).toMatchObject({ line: "water" });
});

test("a weedkiller that was mixed for one visit alone has to be cleaned out like any other, on top or below", () => {
  expect(begin({ last: alone(WEEDKILLER) })).toMatchObject({ line: "flushed", change: { cleaning: "clean-out", unwanted: [{ productName: "Dockaway" }] } });
  expect(begin({ last: held({ products: [kelp], filledOnto: [alone(WEEDKILLER)] }) })).toMatchObject({ change: { cleaning: "clean-out" } });
  expect(begin({ last: alone(WEEDKILLER, { isOfThatDay: true }) }).followsMixOfThatDay).toBe(true);
});

test("a run whose fill is made already follows the run before it in the line, and the books in the tank", () => {
  const before = mixInTank(held({ name: "fill A", products: [kelp] }));
  const made = { ...held({ name: "fill 8", left: of("gal", 30n) }), visitIds: ["a"] };
  expect(begin({ last: before, isFirst: false, made: [made] })).toMatchObject({ last: { name: "fill A" }, isSameAsLast: false, line: "flushed", already: of("gal", 30n).amount, restName: "fill 8", onHand: { fills: [{ name: "fill 8" }], onto: [] } });
  expect(begin({ last: before, isFirst: false, made: [{ ...made, products: [kelp] }] })).toMatchObject({ last: { name: "fill 8" }, onHand: null, leftOfLast: of("gal", 30n) });
});
