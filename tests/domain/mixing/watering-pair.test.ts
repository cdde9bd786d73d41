import { describe, expect, test } from "vitest";
import { type DueReach } from "#domain/label/aftercare-constraint";
import { DEFAULT_AFTERCARE_ESTIMATES } from "#domain/mixing/aftercare-instants";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { keptDryForRain, stayingDry, wateringNeeds } from "#domain/mixing/watering-bounds";
import { authoritiesOf, byWords, membersOf, namedOnce, namesOf, pairFigure, tightestPair, waterInFirst } from "#domain/mixing/watering-pair";
import { appliedOf, CHICAGO, earlierOf, END, FEED, hoursAfterEnd, HOUR, IRON, labelOf, says, START } from "../../support/aftercare-builders";

const needsOf = (products: readonly AppliedProduct[]) => wateringNeeds(products, { fromEpochMilliseconds: START, untilEpochMilliseconds: END }, CHICAGO);
const pairOf = (products: readonly AppliedProduct[]) => tightestPair(stayingDry(products, { timeZone: CHICAGO, estimates: DEFAULT_AFTERCARE_ESTIMATES }), needsOf(products));
const AT_ONCE: DueReach = { anchor: "at-once" };
const quick = labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(2), depth: "not-stated", rain: "counts" }));

describe("the longest dry time and the first due time", () => {
  test("are found among all", () => {
    const { dry, due } = pairOf([appliedOf(FEED), appliedOf(quick), appliedOf(IRON)]);
    expect([dry?.applied.label.productName, dry?.untilEpochMilliseconds]).toEqual(["Ferrox Foliar", END + 12 * HOUR]);
    expect([due?.applied.label.productName, due?.byEpochMilliseconds]).toEqual(["Grubclear", END + 2 * HOUR]);
    expect(pairOf([])).toEqual({ dry: undefined, due: undefined });
  });
  test("of equal ones are the first by name", () => {
    const alike = (productName: string) => appliedOf(labelOf(productName, { ...IRON.facts, "watering-in": quick.facts["watering-in"] }));
    const { dry, due } = pairOf([alike("Beta"), alike("Alpha")]);
    expect([dry?.applied.label.productName, due?.applied.label.productName]).toEqual(["Alpha", "Alpha"]);
  });
});

describe("a pair in words", () => {
  const pair = pairOf([appliedOf(IRON), appliedOf(quick)]);
  test("says both times, or the one that there is, or nothing", () => {
    const dueWords = "Grubclear: watered in by Friday, May 1, 2026, 6 pm.";
    expect(pairFigure(pair, CHICAGO)).toBe(`Ferrox Foliar: no water until Saturday, May 2, 2026, 4 am; ${dueWords}`);
    expect([pairFigure({ ...pair, dry: undefined }, CHICAGO), pairFigure({ dry: undefined, due: undefined }, CHICAGO)]).toEqual([dueWords, ""]);
    const { dry } = tightestPair(keptDryForRain([appliedOf(IRON)], "not-known", CHICAGO), []);
    expect(pairFigure({ dry, due: undefined }, CHICAGO)).toBe("Ferrox Foliar: no water until Saturday, May 2, 2026, 4 am, since rain before then spoils it and so does as much water.");
  });
  test("names each product once", () => {
    const odd = labelOf("Oddball", { ...IRON.facts, "watering-in": quick.facts["watering-in"] });
    expect([namesOf(pair), namesOf(pairOf([appliedOf(odd)]))]).toEqual([["Ferrox Foliar", "Grubclear"], ["Oddball"]]);
    expect([membersOf(pair).length, membersOf({ ...pair, dry: undefined }).length]).toEqual([2, 1]);
    expect(namedOnce([appliedOf(FEED), appliedOf(FEED), appliedOf(IRON)], CHICAGO)).toBe("Evenfeed 18 and Ferrox Foliar");
  });
  test("at once is an estimate, and counts as one on the same day only", () => {
    const atOnce = labelOf("Grubclear", says("watering-in", { by: AT_ONCE, depth: "not-stated", rain: "counts" }));
    const { due } = pairOf([appliedOf(atOnce)]);
    expect(due === undefined ? "" : byWords(due, CHICAGO)).toBe("at once, by about Friday, May 1, 2026, 5 pm, an estimate");
    const basesWith = (hours: number) => authoritiesOf(pairOf([appliedOf(atOnce), appliedOf(labelOf("Dry", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(hours)] })))]), CHICAGO).map(({ basis }) => basis);
    expect([basesWith(7), basesWith(8)]).toEqual([["label", "label", "common-practice"], ["label", "label"]]);
  });
});

test("what wants water and is down is watered in first; where all is of this visit nothing is", () => {
  expect(waterInFirst([appliedOf(FEED)], [earlierOf(IRON, START)], CHICAGO)).toBeUndefined();
  expect(waterInFirst([earlierOf(FEED, START)], [], CHICAGO)).toBe("Have Evenfeed 18 (put down Friday, May 1, 2026) watered in before this visit and write it down in a look at the lawn, or put this visit's products down after it has been.");
});
