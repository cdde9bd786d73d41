import { describe, expect, test } from "vitest";
import { takeCare } from "#domain/foundation/finding";
import { type WateringDepth } from "#domain/label/aftercare-constraint";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { keptDryForRain, wateringNeeds } from "#domain/mixing/watering-bounds";
import { tightestPair } from "#domain/mixing/watering-pair";
import { compareThirst, thirstInTheWay, tooMuchWater } from "#domain/mixing/watering-thirst";
import { of } from "#domain/quantities/quantity";
import { appliedOf, CHICAGO, earlierOf, END, hoursAfterEnd, HOUR, labelOf, says, START } from "../../support/aftercare-builders";

const inches = (least: string): WateringDepth => ({ least: of("in", least), most: "none" });
const wants = (productName: string, depth: WateringDepth | "not-stated", hours: number | "not-stated" = 24) =>
  labelOf(productName, says("watering-in", { by: hours === "not-stated" ? hours : hoursAfterEnd(hours), depth, rain: "counts" }));
const spoiledFrom = (productName: string, from: string, facts = {}) => labelOf(productName, { ...facts, ...says("rain-that-spoils", { within: hoursAfterEnd(24), from: from === "any" ? from : of("in", from) }) });
const needsOf = (...products: readonly AppliedProduct[]) => wateringNeeds(products, { fromEpochMilliseconds: START, untilEpochMilliseconds: END }, CHICAGO);

test("the thirstiest comes last, and the first is one whose label states no depth", () => {
  const needs = needsOf(appliedOf(wants("Half", inches("0.5"))), appliedOf(wants("Any", "not-stated")), appliedOf(wants("Quarter", inches("0.25"))), appliedOf(wants("Zero", "not-stated")));
  expect(needs.toSorted(compareThirst).map(({ applied: { label } }) => label.productName)).toEqual(["Any", "Zero", "Quarter", "Half"]);
});

describe("whose water spoils what must stay dry", () => {
  const thirstOf = (...products: readonly AppliedProduct[]) =>
    thirstInTheWay(tightestPair(keptDryForRain(products, of("in", "0.5"), CHICAGO), needsOf(...products)), needsOf(...products), { timeZone: CHICAGO, unitSystem: "us" });
  const grub = appliedOf(wants("Grubclear", inches("0.5"), 40));
  test("is that of a third product, in words and figures", () => {
    expect(thirstOf(grub, appliedOf(wants("Evenfeed", inches("0.1"))), appliedOf(spoiledFrom("Weedaway", "0.2")))).toMatchObject({
      thirstiest: { applied: grub },
      what: "Grubclear wants so much water that it spoils Weedaway longer than Evenfeed can wait for water.",
      figure: "Grubclear: at least ½ in, watered in by Sunday, May 3, 2026, 8 am; 0.2 in spoils Weedaway.",
    });
    const own = appliedOf(spoiledFrom("Weedaway", "0.2", wants("", inches("0.1")).facts));
    expect(thirstOf(appliedOf(wants("Grubclear", inches("0.5"), "not-stated")), own)).toMatchObject({
      what: "Grubclear wants so much water that it spoils Weedaway until its own time for water is over.",
      figure: "Grubclear: at least ½ in; 0.2 in spoils Weedaway.",
    });
    expect(thirstOf(grub, appliedOf(wants("Light", "not-stated")), appliedOf(spoiledFrom("Weedaway", "0.2")))?.thirstiest.applied).toBe(grub);
  });
  test("is nobody's where the two are at odds by themselves", () => {
    expect(thirstOf(grub, appliedOf(wants("Evenfeed", inches("0.2"))), appliedOf(spoiledFrom("Weedaway", "0.2")))).toBeUndefined();
    expect(thirstOf(grub, appliedOf(wants("Evenfeed", inches("0.1"))), appliedOf(spoiledFrom("Weedaway", "any")))).toBeUndefined();
    expect(thirstOf(grub, appliedOf(spoiledFrom("Weedaway", "0.2")))).toBeUndefined();
    expect(thirstOf(appliedOf(wants("Light", "not-stated")), appliedOf(spoiledFrom("Weedaway", "any")))).toBeUndefined();
    expect(thirstOf(appliedOf(spoiledFrom("Grubclear", "0.2", wants("", inches("0.5"), 40).facts)), appliedOf(wants("Evenfeed", inches("0.1"))))).toBeUndefined();
    expect(thirstInTheWay({ dry: undefined, due: undefined }, needsOf(grub), { timeZone: CHICAGO, unitSystem: "us" })).toBeUndefined();
  });
});

test("of what is down the rest is watered in first, and the thirstiest after it", () => {
  const [rest, ...thirsty] = needsOf(earlierOf(wants("Evenfeed", inches("0.25")), START - HOUR), earlierOf(wants("Preem", inches("0.5"), 336), START - HOUR), earlierOf(wants("Slow", inches("0.5"), "not-stated"), START - HOUR));
  const ofAll = takeCare({ rule: "watering-hours-leave-no-time", source: "law", what: "All of it.", figure: "75 min.", toDo: "Nothing.", citation: "town", about: ["Evenfeed"] });
  const put = "(put down Friday, May 1, 2026)";
  expect(tooMuchWater(thirsty, rest === undefined ? [] : [rest], ofAll, CHICAGO)).toEqual({
    ...ofAll,
    what: `Enough water for Preem ${put} and Slow ${put} leaves no time to water in Evenfeed ${put}.`,
    toDo: [
      `Have Evenfeed ${put} watered in first, with less.`,
      `Then have Preem ${put} watered in by Friday, May 15, 2026, 2 pm, as the other products and the watering hours allow, over several goes if need be.`,
      `Then have Slow ${put} watered in, as the other products and the watering hours allow, over several goes if need be.`,
    ].join(" "),
    about: ["Preem", "Slow"],
  });
});
