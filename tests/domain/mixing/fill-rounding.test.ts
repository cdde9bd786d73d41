import { expect, test } from "vitest";
import { planTanks } from "#domain/mixing/tank-plan";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { IRON, IRON_LABEL, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

const ounces = (value: string) => rateOf("product-volume-per-area", value, "fl oz per 1,000 sq ft");
const RULES = new Set(["rounded-off-plan", "rounded-below-lowest"]);

/** What a day's plan says of its fills for lawns of so many square feet, 1.5 gal on each 1,000, iron planned at so much and measured in whole ounces. */
function saidOf(rate: string, squareFeet: readonly bigint[], held?: { readonly gallons: bigint; readonly fluidOunces: string }) {
  const treatment = { ...IRON, rate: ounces(rate), tool: { name: "1-oz jug", mark: exactly("fl oz", "1") } };
  const stops = squareFeet.map((area, index) => truckStop(String(index), [treatment], area));
  const last = held === undefined
    ? ("clean" as const)
    : {
        ...{ name: "fill 7", finished: of("gal", held.gallons), left: of("gal", held.gallons), isUnderWay: false, isOfThatDay: false, filledOnto: [] },
        products: [{ productId: IRON.productId, productName: IRON_LABEL.productName, label: IRON_LABEL, amount: of("fl oz", held.fluidOunces) }],
      };
  const { found } = planTanks(tankQuestion(stops, { lastHeld: new Map([[SPRAYER.equipmentId, last]]) }));
  return found.filter(({ finding }) => RULES.has(finding.rule)).map(({ visitId, finding }) => `${visitId ?? ""}: ${finding.level} ${finding.rule} ${finding.what} ${finding.figure ?? ""}`);
}

test("what marks make of a fill's products is said of the fill, at its first stop", () => {
  // 1.5 fl oz are a mark and a half, which goes up; the label's highest is 2 fl oz.
  expect(saidOf("1.5", [1000n])).toEqual(["0: take-care rounded-off-plan Measured out for fill A, Rustwater Iron comes to more than planned. It becomes 2 fl oz per 1,000 sq ft, 33.3% more than the 1½ fl oz per 1,000 sq ft that are planned."]);
  expect(saidOf("1.5", [20_000n])).toEqual([]);
});

test("below the label's lowest rate that is said instead", () => {
  // 1,270 sq ft take 1.905 gal; 2 gal are mixed, with 1.47 fl oz at 1.1 a thousand square feet, which is one mark.
  expect(saidOf("1.1", [1270n])).toEqual(["0: take-care rounded-below-lowest Measured to a mark, Rustwater Iron for fill A comes below the label's lowest rate. It becomes ¾ fl oz per 1,000 sq ft; the label's lowest is 1 fl oz per 1,000 sq ft."]);
});

test("a rest of the same mix runs together with the first fill, as strong as it was measured out", () => {
  // 22 gal with 16 fl oz, and a fill of 1.9 gal with 1 fl oz: 17 fl oz in 23.9 gal are 1.067 a thousand square feet.
  expect(saidOf("1.1", [15_900n], { gallons: 22n, fluidOunces: "16" })).toEqual([expect.stringContaining("note rounded-off-plan Measured out for fill A")]);
  // With a little more in the rest, it is as planned.
  expect(saidOf("1.1", [15_900n], { gallons: 22n, fluidOunces: "16.4" })).toEqual([]);
});

test("each use of the label that a fill serves is held against its own lowest rate, at its own stop, whatever their order", () => {
  // 2,200 sq ft take 3.3 gal and 2.2 fl oz, which are 2 marks: 0.909 a thousand square feet, under the lowest of 1 and over that of half an ounce.
  const treatment = (low: string) => {
    const { rates } = IRON.use;
    if (rates.basis !== "product-volume-per-area") throw new Error("Iron is poured.");
    return { ...IRON, rate: ounces("1"), tool: { name: "1-oz jug", mark: exactly("fl oz", "1") }, use: { ...IRON.use, useName: `Lawns from ${low}`, rates: { ...rates, low: ounces(low) } } };
  };
  const said = (...lows: readonly string[]) =>
    planTanks(tankQuestion(lows.map((low) => truckStop(low, [treatment(low)], 1100n)))).found.filter(({ finding }) => RULES.has(finding.rule)).map(({ visitId, finding }) => `${visitId ?? ""} ${finding.level} ${finding.rule}`);
  expect(said("0.5", "1").toSorted()).toEqual(["0.5 note rounded-off-plan", "1 take-care rounded-below-lowest"]);
  expect(said("1", "0.5").toSorted()).toEqual(["0.5 note rounded-off-plan", "1 take-care rounded-below-lowest"]);
  expect(said("0.5")).toEqual(["0.5 take-care rounded-off-plan"]);
});

test("a product without a tool, or that fills no mark, is not said to be rounded", () => {
  const stops = [truckStop("a", [{ ...IRON, rate: ounces("1.5"), tool: "none" }], 1000n)];
  expect(planTanks(tankQuestion(stops)).found.filter(({ finding }) => RULES.has(finding.rule))).toEqual([]);
});

test("each product of a fill is judged by its own marks", () => {
  // On 1,000 sq ft one ounce is a mark, and an ounce and a half is not.
  const jug = { name: "1-oz jug", mark: exactly("fl oz", "1") };
  const other = (rate: string) => ({ ...IRON, productId: "other", line: 9, label: { ...IRON_LABEL, productName: "Otherwater" }, rate: ounces(rate), tool: jug });
  const said = (iron: string, rate: string) =>
    planTanks(tankQuestion([truckStop("a", [{ ...IRON, rate: ounces(iron), tool: jug }, other(rate)], 1000n)])).found.filter(({ finding }) => RULES.has(finding.rule)).map(({ finding }) => finding.about[0]);
  expect([said("1.5", "1"), said("1", "1.5"), said("1", "1")]).toEqual([["Rustwater Iron"], ["Otherwater"], []]);
  expect(said("1.5", "1.5").toSorted()).toEqual(["Otherwater", "Rustwater Iron"]);
});
