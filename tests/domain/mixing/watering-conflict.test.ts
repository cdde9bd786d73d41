import { describe, expect, test } from "vitest";
import { DEFAULT_AFTERCARE_ESTIMATES } from "#domain/mixing/aftercare-instants";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { keptDryForRain, stayingDry, wateringNeeds } from "#domain/mixing/watering-bounds";
import { hoursLeaveNoTime, minutesKeepNoDepth, noCommonTime, tightestPair, timeTooShort } from "#domain/mixing/watering-conflict";
import { appliedOf, byHouse, byLaw, CHICAGO, daily, END, FEED, hoursAfterEnd, HOUR, IRON, labelOf, onLabel, says, START } from "../../support/aftercare-builders";

const pairOf = (products: readonly AppliedProduct[]) =>
  tightestPair(
    stayingDry(products, { timeZone: CHICAGO, estimates: DEFAULT_AFTERCARE_ESTIMATES }),
    wateringNeeds(products, { fromEpochMilliseconds: START, untilEpochMilliseconds: END }, CHICAGO),
  );
const quick = (hours: number, authority = onLabel) =>
  labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(hours), depth: "not-stated", rain: "counts" }, authority));

test("the longest dry time and the first due time", () => {
  const { dry, due } = pairOf([appliedOf(FEED), appliedOf(quick(2)), appliedOf(IRON)]);
  expect([dry?.applied.label.productName, dry?.untilEpochMilliseconds]).toEqual(["Ferrox Foliar", END + 12 * HOUR]);
  expect([due?.applied.label.productName, due?.byEpochMilliseconds]).toEqual(["Grubclear", END + 2 * HOUR]);
  expect(pairOf([])).toEqual({ dry: undefined, due: undefined });
});

test("of equal ones the first by name counts", () => {
  const alike = (productName: string) => appliedOf(labelOf(productName, { ...IRON.facts, "watering-in": quick(2).facts["watering-in"] }));
  const { dry, due } = pairOf([alike("Beta"), alike("Alpha")]);
  expect([dry?.applied.label.productName, due?.applied.label.productName]).toEqual(["Alpha", "Alpha"]);
});

test("a dry time that ends as the water is due is at odds with it, and one a moment sooner is not", () => {
  const dry = (minutes: number) => appliedOf(labelOf("Weedaway", says("watering-not-before", { untilLaterOf: [{ anchor: "application-end", durationMinutes: minutes }] })));
  expect(noCommonTime(pairOf([dry(120), appliedOf(quick(2))]), CHICAGO).about).toEqual(["Weedaway", "Grubclear"]);
  expect(noCommonTime(pairOf([dry(119), appliedOf(quick(2))]), CHICAGO).about).toEqual(["Grubclear"]);
});

describe("labels that leave no time", () => {
  test("name both, and nobody may answer", () => {
    expect(noCommonTime(pairOf([appliedOf(IRON), appliedOf(quick(2))]), CHICAGO)).toEqual({
      level: "hold",
      answerableBy: "nobody",
      rule: "no-common-watering-time",
      source: "label",
      what: "Ferrox Foliar must stay dry longer than Grubclear can wait for water.",
      figure: "Ferrox Foliar: no water until Saturday, May 2, 2026, 4 am; Grubclear: watered in by Friday, May 1, 2026, 6 pm.",
      toDo: "Split the visit: put Ferrox Foliar and Grubclear down on different days.",
      citation: "label, directions for use",
      about: ["Ferrox Foliar", "Grubclear"],
    });
  });
  test("the weaker authority says who may answer", () => {
    const habit = quick(2, { basis: "handbook", source: "handbook" } as never);
    expect(noCommonTime(pairOf([appliedOf(IRON), appliedOf(habit)]), CHICAGO)).toMatchObject({ answerableBy: "office", source: "handbook" });
  });
  test("one product at odds with itself is named alone", () => {
    const odd = labelOf("Oddball", { ...IRON.facts, ...says("watering-in", { by: hoursAfterEnd(1), depth: "not-stated", rain: "counts" }) });
    expect(noCommonTime(pairOf([appliedOf(odd)]), CHICAGO)).toMatchObject({ about: ["Oddball"], what: expect.stringContaining("Oddball can't be watered in") as string });
  });
});

test("a visit that takes longer than a product can wait is not laid to another one", () => {
  const early = labelOf("Weedaway", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(1)] }));
  expect(noCommonTime(pairOf([appliedOf(early), appliedOf(quick(2))]), CHICAGO)).toMatchObject({
    about: ["Grubclear"],
    what: "Grubclear can't be watered in: its time is over before the visit ends.",
  });
});

test("labels that leave less than the stations need are for the office", () => {
  expect(timeTooShort(pairOf([appliedOf(IRON), appliedOf(FEED)]), { timeZone: CHICAGO, elapsedMinutes: 800 })).toMatchObject({
    answerableBy: "office",
    figure: expect.stringContaining("The stations need 800 min.") as string,
    about: ["Ferrox Foliar", "Evenfeed 18"],
  });
});

describe("rain that spoils keeps water off as a dry time does", () => {
  const spoiled = labelOf("Ferrox Foliar", says("rain-that-spoils", { within: hoursAfterEnd(12), from: "any" }));
  const needs = (label: typeof spoiled) => wateringNeeds([appliedOf(label)], { fromEpochMilliseconds: START, untilEpochMilliseconds: END }, CHICAGO);
  test("both are named, and why", () => {
    expect(noCommonTime(tightestPair(keptDryForRain([appliedOf(spoiled)], "not-known", CHICAGO), needs(quick(2))), CHICAGO)).toMatchObject({
      answerableBy: "nobody",
      what: "Ferrox Foliar must stay dry longer than Grubclear can wait for water.",
      figure: "Ferrox Foliar: no water until Saturday, May 2, 2026, 4 am, since rain before then spoils it and so does as much water; Grubclear: watered in by Friday, May 1, 2026, 6 pm.",
      about: ["Ferrox Foliar", "Grubclear"],
    });
  });
});

describe("stations whose whole minutes miss the depth", () => {
  const needs = wateringNeeds([appliedOf(FEED), appliedOf(quick(30))], { fromEpochMilliseconds: START, untilEpochMilliseconds: END }, CHICAGO);
  const off = (stationName: string) => ({ kind: "no-minutes", stationName, sentence: `${stationName}: 1 min put down too much.` }) as const;
  test("are named together, with what their minutes put down, for the office", () => {
    expect(minutesKeepNoDepth([off("Front"), { kind: "test-first", stationName: "Side", sentence: "" }, off("Back")], needs)).toEqual([
      {
        level: "hold",
        answerableBy: "office",
        rule: "station-minutes-miss-depth",
        source: "house",
        what: "No whole minutes of Front and Back put down what the labels ask for.",
        figure: "Front: 1 min put down too much. Back: 1 min put down too much.",
        toDo: "Water that part with a slower sprinkler that was tested, or have the station refitted and tested again.",
        citation: "label, directions for use",
        about: ["Evenfeed 18"],
      },
    ]);
  });
  test("none where all have minutes", () => expect(minutesKeepNoDepth([], needs)).toEqual([]));
});

describe("hours that leave no time", () => {
  const needs = wateringNeeds([appliedOf(FEED)], { fromEpochMilliseconds: START, untilEpochMilliseconds: END }, CHICAGO);
  const pair = pairOf([appliedOf(IRON), appliedOf(FEED)]);
  const context = { timeZone: CHICAGO, elapsedMinutes: 54 };
  test("a law may be answered by a license holder, a controller by the office", () => {
    const law = { localRules: byLaw(daily(20, 22)), controller: "none" } as const;
    expect(hoursLeaveNoTime(pair, law, needs, context)).toMatchObject({ answerableBy: "license-holder", source: "law", about: ["Ferrox Foliar", "Evenfeed 18"] });
    expect(hoursLeaveNoTime(pair, { ...law, controller: byHouse(daily(1, 2)) }, needs, context)).toMatchObject({ answerableBy: "office", source: "house" });
  });
  test("nobody is told to set a controller anew against a rule, nor beyond what the rule allows", () => {
    const law = { localRules: byLaw(daily(20, 22)), controller: "none" } as const;
    expect(hoursLeaveNoTime(pair, law, needs, context).toDo).toBe("Put the product down on a day before a watering day, or split the visit.");
    expect(hoursLeaveNoTime(pair, { localRules: "none", controller: byHouse(daily(1, 2)) }, needs, context).toDo).toBe(
      "Put the product down on a day before a watering day, set the controller anew within the town's rule, or split the visit.",
    );
  });
  test("says how long the stations need, where that is known", () => {
    const hours = { localRules: byLaw(daily(20, 22)), controller: "none" } as const;
    expect(hoursLeaveNoTime(pair, hours, needs, context).figure).toContain("The stations need 54 min one at a time.");
    expect(hoursLeaveNoTime({ dry: undefined, due: undefined }, hours, needs, { timeZone: CHICAGO, elapsedMinutes: null }).figure).toBe("Local rules: every day 8 pm to 10 pm.");
  });
});
