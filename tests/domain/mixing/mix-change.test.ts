import { describe, expect, test } from "vitest";
import { type LabelFacts } from "#domain/label/label-facts";
import { changeOfMix, cleanOutComesFirst, cleanOutNotOnFile, filledUncleaned, heldNotKnown, isSameMix, type MixInTank, notCleanedOut, OF_CLEAN_OUTS, OF_CLEAN_OUTS_OF_DAY } from "#domain/mixing/mix-change";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { planTanks } from "#domain/mixing/tank-plan";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { CUP, IRON, IRON_LABEL, LAWN, QUESTION, SPRAYER } from "../../support/ticket";
import { stopOf, tankQuestion, truckStop } from "../../support/truck-stops";

const perGallon = (fluidOunces: string) => rateOf("product-volume-per-spray-volume", fluidOunces, "fl oz per gal");
const PLANNED = [{ productId: "iron", productName: "Rustwater Iron", formulation: IRON_LABEL.formulation, concentration: perGallon("1"), strongest: perGallon("1.3") }];
const next = { stop: truckStop("12 Elm St", [IRON]), treatments: [IRON], gear: SPRAYER };
const mixOf = (productId: string, label: LabelFacts | "unknown", concentration = perGallon("1")): MixInTank => ({
  name: "fill 7",
  products: [{ productId, productName: label === "unknown" ? "Something" : label.productName, label, concentration }],
});
const leftOf = (mix: MixInTank) => [{ mix, unwanted: changeOfMix(mix, next).unwanted }];
const KELP = { ...IRON_LABEL, productName: "Kelp Tonic" };
const DOCK = { ...KELP, productName: "Dockaway", epaRegistrationNumber: { number: "DEMO-0000-4" } };
const forGrasses = (label: LabelFacts, grasses: LabelFacts["uses"][number]["grasses"]): LabelFacts => ({ ...label, uses: label.uses.map((use) => ({ ...use, grasses })) });

const keptFrom = (label: LabelFacts, from: string, apart: "tank" | { readonly days: number } = "tank"): LabelFacts => ({
  ...label,
  uses: label.uses.map((use) => ({ ...use, keptApart: { from: [{ from, apart }], basis: "label", source: "label" } })),
});

test("the same product asks for nothing and may run on up to its label's highest rate", () => {
  expect(changeOfMix(mixOf("iron", IRON_LABEL), next)).toEqual({ cleaning: "none", unwanted: [], mayRunOn: true });
  // 4/3 fl oz a gallon at 1.5 gal are 2 fl oz per 1,000 sq ft, which is the most.
  expect(changeOfMix(mixOf("iron", IRON_LABEL, rateOf("product-volume-per-spray-volume", { numerator: 4n, denominator: 3n }, "fl oz per gal")), next).mayRunOn).toBe(true);
  expect(changeOfMix(mixOf("iron", IRON_LABEL, perGallon("1.34")), next).mayRunOn).toBe(false);
  expect(changeOfMix(mixOf("iron", IRON_LABEL, perGallon("1.34")), next).cleaning).toBe("none");
});

test("a feed that is labeled for the grass there is rinsed out", () => {
  expect(changeOfMix(mixOf("kelp", KELP), next)).toEqual({ cleaning: "rinse", unwanted: [], mayRunOn: false });
  expect(changeOfMix(mixOf("kelp", forGrasses(KELP, "any turfgrass")), next).cleaning).toBe("rinse");
});

test.each([
  ["a label for other grasses", forGrasses(KELP, ["bermudagrass"]), "not-labeled-for-its-turf"],
  ["a label whose grasses nobody entered", forGrasses(KELP, "unknown"), "label-not-known"],
  ["a label that is not on file", "unknown", "label-not-known"],
  ["a registration that nobody looked up", { ...KELP, epaRegistrationNumber: "unknown" }, "label-not-known"],
  ["a pesticide that is not planned", DOCK, "pesticide-not-planned"],
] as const)("%s is cleaned out", (_what, label, why) => {
  const change = changeOfMix(mixOf("other", label), next);
  expect(change).toMatchObject({ cleaning: "clean-out", unwanted: [{ why }], mayRunOn: false });
});

describe("a stop with two mixes out of one gun", () => {
  const front = { ...LAWN, zoneId: "front", name: "Front" };
  const question = { ...QUESTION, lawns: [front, { ...LAWN, zoneId: "back", letter: "B", name: "Back" }] };
  const dock = { ...IRON, line: 3, productId: "dock", label: DOCK, zoneIds: ["front", "back"] };
  const treatments = [dock, IRON];
  const stop = stopOf({ ...question, treatments }, { visitId: "v", name: "12 Elm St" });

  test("a pesticide that is planned on all lawns of the next mix asks for nothing, and does not go on them a second time", () => {
    expect(changeOfMix(mixOf("dock", DOCK), { stop, treatments: [IRON], gear: SPRAYER })).toEqual({ cleaning: "none", unwanted: [], mayRunOn: false });
  });

  test("one that is planned on spots only is cleaned out before anything else, be that on as many spots, and asks for nothing in its own mix", () => {
    const spots = { ...dock, spot: { shareBasisPoints: 500 } };
    const spotted = (...own: readonly TicketTreatment[]) => stopOf({ ...question, treatments: [spots, IRON, ...own] }, { visitId: "v", name: "12 Elm St" });
    const unwanted = [{ productName: "Dockaway", why: "pesticide-not-planned" }];
    expect(changeOfMix(mixOf("dock", DOCK), { stop: spotted(), treatments: [IRON], gear: SPRAYER })).toMatchObject({ cleaning: "clean-out", unwanted });
    const onSpots = { ...IRON, line: 5, spot: { shareBasisPoints: 500 } };
    expect(changeOfMix(mixOf("dock", DOCK), { stop: spotted(onSpots), treatments: [onSpots], gear: SPRAYER })).toMatchObject({ cleaning: "clean-out", unwanted });
    expect(changeOfMix(mixOf("dock", DOCK), { stop: spotted(), treatments: [spots], gear: SPRAYER })).toMatchObject({ cleaning: "none", unwanted: [] });
    const all = { ...spots, spot: { shareBasisPoints: 10_000 } };
    expect(changeOfMix(mixOf("dock", DOCK), { stop: { ...stop, treatments: [all, IRON] }, treatments: [IRON], gear: SPRAYER })).toMatchObject({ cleaning: "none", unwanted: [] });
    const feed = mixOf("dock", { ...KELP, productName: "Dockaway" });
    expect(changeOfMix(feed, { stop: spotted(), treatments: [IRON], gear: SPRAYER })).toMatchObject({ cleaning: "rinse", unwanted: [] });
  });

  test.each([
    ["its own label says so", keptFrom(DOCK, "iron"), IRON],
    ["the other label says so", DOCK, { ...IRON, use: { ...IRON.use, keptApart: { from: [{ from: "Dockaway", apart: "tank" as const }], basis: "label" as const, source: "label" } } }],
    ["what is in the other is not on file", keptFrom({ ...DOCK, activeIngredients: [] }, "triclopyr"), { ...IRON, label: { ...IRON_LABEL, activeIngredients: "unknown" as const } }],
  ])("one that is planned all over, but kept out of a tank with the next one, is cleaned out: %s", (_why, label, iron) => {
    const kept = { ...dock, label };
    const apart = { ...stop, treatments: [kept, iron] };
    expect(changeOfMix(mixOf("dock", label), { stop: apart, treatments: [iron], gear: SPRAYER })).toMatchObject({ cleaning: "clean-out", unwanted: [{ productName: "Dockaway", why: "kept-apart-in-a-tank" }] });
  });

  test("days apart on the ground are no matter of the tank", () => {
    const label = keptFrom(DOCK, "iron", { days: 14 });
    expect(changeOfMix(mixOf("dock", label), { stop, treatments: [IRON], gear: SPRAYER })).toMatchObject({ cleaning: "none", unwanted: [] });
  });

  test("one that is planned on a part of them only is cleaned out", () => {
    expect(changeOfMix(mixOf("iron", DOCK), { stop, treatments: [dock], gear: SPRAYER })).toMatchObject({ cleaning: "clean-out", unwanted: [{ why: "pesticide-not-planned" }] });
  });

  test("the route of such a stop holds nothing", () => {
    expect(planTanks(tankQuestion([stop])).found.filter(({ finding }) => finding.level === "hold")).toEqual([]);
  });
});

test("a lawn whose grass is not on file can't be told to be labeled", () => {
  const stop = { ...next.stop, lawns: [{ ...LAWN, grasses: [] }] };
  expect(changeOfMix(mixOf("kelp", KELP), { ...next, stop }).unwanted).toEqual([{ productName: "Kelp Tonic", why: "label-not-known" }]);
});

test("what a tank held is the same mix within 2 % of the plan or a mark of the cup, but never one that is stronger by more than 2 % than the next stops may get", () => {
  const held = (fluidOunces: string, gallons = "40") => ({
    name: "fill 7", finished: of("gal", gallons), left: of("gal", 2n), isUnderWay: false, isOfThatDay: false, filledOnto: [], products: [{ productId: "iron", productName: "Rustwater Iron", label: IRON_LABEL, amount: of("fl oz", fluidOunces) }],
  });
  const isSame = (fluidOunces: string, gallons?: string, hasCup = true) => isSameMix(held(fluidOunces, gallons), PLANNED, () => (hasCup ? CUP : undefined));
  expect([isSame("40.8"), isSame("39.2"), isSame("40.81"), isSame("39.19")]).toEqual([true, true, false, false]);
  // Half a fluid ounce, which the cup does not show, is more than 2 % of ten.
  expect([isSame("10.49", "10"), isSame("9.51", "10"), isSame("10.5", "10"), isSame("10.49", "10", false)]).toEqual([true, true, false, false]);
  // Meant were 51 gal; the gauge showed a little less.
  expect([isSame("51", "50.93"), isSame("51", "50.93", false), isSame("51", "50", false), isSame("51", "49.9", false)]).toEqual([true, true, true, false]);
  const upTo = (strongest: string, fluidOunces: string, gallons: string) => isSameMix(held(fluidOunces, gallons), PLANNED.map((product) => ({ ...product, strongest: perGallon(strongest) })), () => CUP);
  expect([upTo("1", "51", "50.93"), upTo("1", "40.8", "40"), upTo("1.02", "10.4", "10"), upTo("1.01", "10.4", "10")]).toEqual([true, true, true, false]);
  expect(isSameMix({ ...held("40"), products: [] }, PLANNED, () => CUP)).toBe(false);
  expect(isSameMix(held("40"), PLANNED.map((product) => ({ ...product, productId: "kelp" })), () => CUP)).toBe(false);
});

test("the hold says what was in the tank, why it must not reach the lawn, and that the office changes the plan", () => {
  const last = mixOf("other", DOCK);
  expect(notCleanedOut(leftOf(last), next)).toMatchObject({
    level: "hold",
    answerableBy: "office",
    rule: "clean-out",
    what: "What was in the tank of Sprayer is not cleaned out for the turf at 12 Elm St.",
    figure: "Fill 7: Dockaway is a pesticide that is not planned there.",
  });
  expect(heldNotKnown(next, null)).toMatchObject({ level: "hold", rule: "clean-out", what: "What the tank of Sprayer held last is not on file." });
  expect(heldNotKnown(next, last)).toMatchObject({ level: "hold", rule: "clean-out", what: "What the tank of Sprayer held before fill 7 is not on file." });
  expect(filledUncleaned(leftOf(last), mixOf("kelp", KELP), next)).toMatchObject({ level: "hold", answerableBy: "office", rule: "clean-out", figure: "Fill 7: Dockaway is a pesticide that is not planned there." });
});

test("between two mixes of one day a clean-out is a step that comes first, and wants care", () => {
  const last = mixOf("other", DOCK);
  expect(cleanOutComesFirst(leftOf(last), next)).toMatchObject({
    level: "take-care",
    rule: "clean-out-comes-first",
    what: "Sprayer is cleaned out before it is filled for 12 Elm St.",
    figure: "Fill 7: Dockaway is a pesticide that is not planned there.",
  });
});

test("a clean-out for what nobody knows of says so", () => {
  expect(cleanOutComesFirst([], next)).toMatchObject({ figure: "All that was in the tank since its last clean-out is not on file." });
});

test("a record says of a clean-out that was to come first that none is on file, and leaves any other finding", () => {
  const last = mixOf("other", DOCK);
  const said = cleanOutNotOnFile(cleanOutComesFirst(leftOf(last), next));
  expect(said).toMatchObject({ level: "take-care", rule: "clean-out-not-on-file", what: "No clean-out of Sprayer is on file before the work at 12 Elm St.", figure: "Fill 7: Dockaway is a pesticide that is not planned there." });
  expect(cleanOutNotOnFile(notCleanedOut(leftOf(last), next))).toEqual(notCleanedOut(leftOf(last), next));
  expect([OF_CLEAN_OUTS.has(said.rule), OF_CLEAN_OUTS.has("clean-out-comes-first"), OF_CLEAN_OUTS_OF_DAY.has("clean-out-comes-first"), OF_CLEAN_OUTS_OF_DAY.has(said.rule)]).toEqual([true, false, true, true]);
});
