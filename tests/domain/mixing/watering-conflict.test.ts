import { describe, expect, test } from "vitest";
import { type DueReach } from "#domain/label/aftercare-constraint";
import { DEFAULT_AFTERCARE_ESTIMATES } from "#domain/mixing/aftercare-instants";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { keptDryForRain, stayingDry, wateringNeeds } from "#domain/mixing/watering-bounds";
import { hoursLeaveNoTime, minutesKeepNoDepth, noCommonTime, timeTooShort } from "#domain/mixing/watering-conflict";
import { type WateringHours } from "#domain/mixing/watering-hours";
import { tightestPair } from "#domain/mixing/watering-pair";
import { of } from "#domain/quantities/quantity";
import { appliedOf, byHouse, byLaw, CHICAGO, daily, earlierOf, END, FEED, hoursAfterEnd, HOUR, IRON, labelOf, onLabel, says, START, untilState } from "../../support/aftercare-builders";

const needsOf = (products: readonly AppliedProduct[]) => wateringNeeds(products, { fromEpochMilliseconds: START, untilEpochMilliseconds: END }, CHICAGO);
const pairOf = (products: readonly AppliedProduct[]) =>
  tightestPair(
    stayingDry(products, { timeZone: CHICAGO, estimates: DEFAULT_AFTERCARE_ESTIMATES }),
    needsOf(products),
  );
const noTime = (products: readonly AppliedProduct[]) => noCommonTime(pairOf(products), needsOf(products), { timeZone: CHICAGO, unitSystem: "us" });
/** Hours of which all are in the way. */
const allOf = (hours: WateringHours) => ({ inTheWay: hours, onFile: hours });
const quick = (hours: number, authority = onLabel) =>
  labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(hours), depth: "not-stated", rain: "counts" }, authority));

test("a dry time that ends as the water is due is at odds with it, and one a moment sooner is not", () => {
  const dry = (minutes: number) => appliedOf(labelOf("Weedaway", says("watering-not-before", { untilLaterOf: [{ anchor: "application-end", durationMinutes: minutes }] })));
  expect(noTime([dry(120), appliedOf(quick(2))]).about).toEqual(["Weedaway", "Grubclear"]);
  expect(noTime([dry(119), appliedOf(quick(2))]).about).toEqual(["Grubclear"]);
});

describe("labels that leave no time", () => {
  test("name both, and nobody may answer", () => {
    expect(noTime([appliedOf(IRON), appliedOf(quick(2))])).toEqual({
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
    expect(noTime([appliedOf(IRON), appliedOf(habit)])).toMatchObject({ answerableBy: "office", source: "handbook" });
  });
  test("one product at odds with itself is named alone", () => {
    const odd = labelOf("Oddball", { ...IRON.facts, ...says("watering-in", { by: hoursAfterEnd(1), depth: "not-stated", rain: "counts" }) });
    expect(noTime([appliedOf(odd)])).toMatchObject({ about: ["Oddball"], what: expect.stringContaining("Oddball can't be watered in") as string });
  });
});

const AT_ONCE: DueReach = { anchor: "at-once" };
const FROM_SIGN: DueReach = { anchor: "posting", durationMinutes: 120 };

describe("times that are estimates", () => {
  const dryOnly = labelOf("DryOnly", says("watering-not-before", { untilLaterOf: [untilState("dry")] }));
  const atOnce = labelOf("Grubclear", says("watering-in", { by: AT_ONCE, depth: "not-stated", rain: "counts" }));
  test("are said to be, and are for the office to answer", () => {
    expect(noTime([appliedOf(dryOnly), appliedOf(atOnce)])).toMatchObject({
      answerableBy: "office",
      source: "common-practice",
      figure: "DryOnly: no water until about Friday, May 1, 2026, 6 pm, an estimate; Grubclear: watered in at once, by about Friday, May 1, 2026, 5 pm, an estimate.",
      citation: "label, directions for use; common practice: a spray on turf dries in about 2 h; common practice: at once is within an hour after the application",
    });
    expect(noTime([appliedOf(dryOnly), appliedOf(quick(1))])).toMatchObject({ answerableBy: "office", source: "common-practice" });
  });
  test("at once is no estimate against another day, by no reading, but is against hours of the same", () => {
    const stated = (hours: number) => appliedOf(labelOf("Ferrox Foliar", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(hours)] })));
    expect(noTime([stated(12), appliedOf(atOnce)])).toMatchObject({ answerableBy: "nobody", source: "label" });
    expect(noTime([stated(8), appliedOf(atOnce)])).toMatchObject({ answerableBy: "nobody", source: "label" });
    expect(noTime([stated(7), appliedOf(atOnce)])).toMatchObject({ answerableBy: "office", source: "common-practice" });
  });
  test("a sign that does not stand yet makes a due time one", () => {
    const fromSign = labelOf("Grubclear", says("watering-in", { by: FROM_SIGN, depth: "not-stated", rain: "counts" }));
    expect(noTime([appliedOf(IRON), appliedOf(fromSign)])).toMatchObject({ answerableBy: "office", figure: expect.stringContaining("Grubclear: watered in by about Friday, May 1, 2026, 5 pm, an estimate.") as string });
  });
});

describe("with what is down by other work", () => {
  const feed = earlierOf(FEED, START - 20 * HOUR);
  const feedName = "Evenfeed 18 (put down Thursday, Apr 30, 2026)";
  const weedoff = earlierOf(labelOf("Weedoff 3", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(30)] })), START - 20 * HOUR);
  const weedName = "Weedoff 3 (put down Thursday, Apr 30, 2026)";
  const hours = { localRules: "none", controller: byHouse(daily(5, 8)) } as const;
  const context = { timeZone: CHICAGO, elapsedMinutes: 800 };
  test("a product of this visit that must stay dry comes after it was watered in", () => {
    expect(noTime([appliedOf(IRON), feed])).toMatchObject({ level: "hold", answerableBy: "nobody", toDo: `Have ${feedName} watered in before this visit and write it down in a look at the lawn, or put Ferrox Foliar down after it has been.` });
  });
  test("a product of this visit that can't wait comes when water may run", () => {
    expect(noTime([weedoff, appliedOf(quick(2))])).toMatchObject({ level: "hold", toDo: "Put Grubclear down after Saturday, May 2, 2026, 1 am." });
  });
  test("alone it holds nothing up: the water waits and is late", () => {
    expect(noTime([weedoff, feed])).toEqual({
      level: "take-care",
      rule: "no-common-watering-time",
      source: "label",
      what: `${weedName} must stay dry longer than ${feedName} can wait for water.`,
      figure: `${weedName}: no water until Saturday, May 2, 2026, 1 am; ${feedName}: watered in by Friday, May 1, 2026, 7 pm.`,
      toDo: `Keep water off until Saturday, May 2, 2026, 1 am. Then have ${feedName} watered in as soon as the other products and the watering hours allow. It will be late.`,
      citation: "label, directions for use",
      about: ["Weedoff 3", "Evenfeed 18"],
    });
    const slow = earlierOf(quick(2), END - HOUR);
    expect(noTime([slow])).toMatchObject({ level: "take-care", toDo: "Have Grubclear (put down Friday, May 1, 2026) watered in as soon as the other products and the watering hours allow. It will be late." });
  });
  test("hours that leave it no time are for the customer: a controller may be left for once, a town's rules may not", () => {
    const late = "as soon as the other products and the watering hours allow. It will be late.";
    expect(hoursLeaveNoTime(pairOf([feed]), allOf(hours), needsOf([feed]), context)).toMatchObject({ level: "take-care", toDo: `Ask the customer to have ${feedName} watered in by hand before this visit. Where that can't be, have it watered in ${late}` });
    expect(hoursLeaveNoTime(pairOf([feed]), allOf({ ...hours, localRules: byLaw(daily(5, 8)) }), needsOf([feed]), context)).toMatchObject({ level: "take-care", toDo: `Have ${feedName} watered in ${late}` });
    const undated = earlierOf(labelOf("Slow", says("watering-in", { by: "not-stated", depth: "not-stated", rain: "counts" })), START - HOUR);
    expect(hoursLeaveNoTime(pairOf([undated]), allOf({ localRules: byLaw(daily(5, 8)), controller: "none" }), needsOf([undated]), context)).toMatchObject({ level: "take-care", toDo: "Have Slow (put down Friday, May 1, 2026) watered in over several goes, or with sprinklers that take less time." });
  });
  test("hours in which this visit's product is in its way hold, and it is watered in first", () => {
    const first = `Have ${feedName} watered in before this visit and write it down in a look at the lawn, or put Ferrox Foliar down after it has been.`;
    expect(hoursLeaveNoTime(pairOf([appliedOf(IRON), feed]), allOf(hours), needsOf([feed]), context)).toMatchObject({ level: "hold", answerableBy: "office", toDo: first });
    expect(hoursLeaveNoTime(pairOf([weedoff, appliedOf(FEED)]), allOf(hours), needsOf([appliedOf(FEED)]), context)).toMatchObject({ level: "hold", toDo: "Put the product down on a day before a watering day, set the controller anew, or split the visit." });
  });
  test("stations that need longer, or miss the depth, hold only with a product of this visit", () => {
    const together = "un stations at the same time where there is water enough.";
    expect(timeTooShort(pairOf([feed]), needsOf([feed]), context)).toMatchObject({ level: "take-care", toDo: expect.stringMatching(`^Ask the customer to r${together} Where there is not, have it watered in as soon`) as string });
    expect(timeTooShort(pairOf([feed]), needsOf([feed, appliedOf(quick(40))]), context)).toMatchObject({ level: "hold", toDo: `R${together} Where there is not: Have ${feedName} watered in before this visit and write it down in a look at the lawn, or put Grubclear down after it has been.` });
    const off = [{ kind: "no-minutes", stationName: "Front", sentence: "" } as const];
    expect(minutesKeepNoDepth(off, needsOf([feed])).map(({ level }) => level)).toEqual(["take-care"]);
    expect(minutesKeepNoDepth(off, needsOf([feed, appliedOf(FEED)])).map(({ level }) => level)).toEqual(["hold"]);
  });
});

describe("a third product that wants so much water that it spoils another", () => {
  const grub = labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(40), depth: { least: of("in", "0.5"), most: "none" }, rain: "counts" }));
  const light = labelOf("Weedaway", {
    ...says("watering-in", { by: hoursAfterEnd(24), depth: { least: of("in", "0.1"), most: "none" }, rain: "counts" }),
    ...says("rain-that-spoils", { within: hoursAfterEnd(24), from: of("in", "0.2") }),
  });
  const spoiled = (products: readonly AppliedProduct[]) =>
    noCommonTime(tightestPair(keptDryForRain(products, of("in", "0.5"), CHICAGO), needsOf(products)), needsOf(products), { timeZone: CHICAGO, unitSystem: "us" });
  const down = earlierOf(light, START - HOUR);
  const downName = "Weedaway (put down Friday, May 1, 2026)";
  test("holds where it is of this visit, though both times are those of what is down already", () => {
    expect(spoiled([appliedOf(grub), down])).toMatchObject({
      level: "hold",
      answerableBy: "nobody",
      source: "label",
      what: `Grubclear wants so much water that it spoils ${downName} until its own time for water is over.`,
      about: ["Grubclear", "Weedaway"],
      toDo: `Have ${downName} watered in before this visit and write it down in a look at the lawn, or put Grubclear down after it has been.`,
    });
  });
  test("holds where it is down already and what it spoils is of this visit, whose times are not at odds by themselves", () => {
    expect(spoiled([earlierOf(grub, START - HOUR), appliedOf(light)])).toMatchObject({
      level: "hold",
      toDo: "Have Grubclear (put down Friday, May 1, 2026) watered in before this visit and write it down in a look at the lawn, or put Weedaway down after it has been.",
    });
  });
  test("is put down on another day where all are of this visit, and wants care where all are down", () => {
    expect(spoiled([appliedOf(grub), appliedOf(light)])).toMatchObject({ level: "hold", toDo: "Split the visit: put Grubclear down on another day." });
    expect(spoiled([earlierOf(grub, START - HOUR), down])).toMatchObject({ level: "take-care", toDo: expect.stringMatching(/^Keep water off until .* Then have Weedaway/u) as string });
  });
  test("waits for what is only down to stay dry", () => {
    const dry = earlierOf(labelOf("Dryfast", says("rain-that-spoils", { within: hoursAfterEnd(30), from: of("in", "0.2") })), START - HOUR);
    expect(spoiled([appliedOf(grub), appliedOf(labelOf("Light", light.facts)), dry])).toMatchObject({ toDo: "Put Grubclear down after Saturday, May 2, 2026, 8 pm." });
  });
});

test("what is down and due before the work of this visit ends is watered in before it", () => {
  const late = appliedOf(quick(30));
  expect(noTime([late, earlierOf(FEED, END - 24 * HOUR + 1)])).toMatchObject({ level: "hold", toDo: expect.stringMatching(/^Have Evenfeed 18 \(.*\) watered in before this visit/u) as string });
});

test("a visit that takes longer than a product can wait is not laid to another one", () => {
  const early = labelOf("Weedaway", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(1)] }));
  expect(noTime([appliedOf(early), appliedOf(quick(2))])).toMatchObject({
    about: ["Grubclear"],
    what: "Grubclear can't be watered in: its time is over before the work ends.",
  });
});

test("labels that leave less than the stations need are for the office", () => {
  expect(timeTooShort(pairOf([appliedOf(IRON), appliedOf(FEED)]), needsOf([appliedOf(FEED)]), { timeZone: CHICAGO, elapsedMinutes: 800 })).toMatchObject({
    answerableBy: "office",
    figure: expect.stringContaining("The stations need 800 min.") as string,
    about: ["Ferrox Foliar", "Evenfeed 18"],
  });
});

describe("rain that spoils keeps water off as a dry time does", () => {
  const spoiled = labelOf("Ferrox Foliar", says("rain-that-spoils", { within: hoursAfterEnd(12), from: "any" }));
  const needs = (label: typeof spoiled) => wateringNeeds([appliedOf(label)], { fromEpochMilliseconds: START, untilEpochMilliseconds: END }, CHICAGO);
  test("both are named, and why", () => {
    expect(noCommonTime(tightestPair(keptDryForRain([appliedOf(spoiled)], "not-known", CHICAGO), needs(quick(2))), needs(quick(2)), { timeZone: CHICAGO, unitSystem: "us" })).toMatchObject({
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
    expect(hoursLeaveNoTime(pair, allOf(law), needs, context)).toMatchObject({ answerableBy: "license-holder", source: "law", about: ["Ferrox Foliar", "Evenfeed 18"] });
    expect(hoursLeaveNoTime(pair, allOf({ ...law, controller: byHouse(daily(1, 2)) }), needs, context)).toMatchObject({ answerableBy: "office", source: "house" });
  });
  test("nobody is told to set a controller anew against a rule, nor beyond what the rule allows", () => {
    const law = { localRules: byLaw(daily(20, 22)), controller: "none" } as const;
    expect(hoursLeaveNoTime(pair, allOf(law), needs, context).toDo).toBe("Put the product down on a day before a watering day, or split the visit.");
    const controller = { localRules: "none", controller: byHouse(daily(1, 2)) } as const;
    expect(hoursLeaveNoTime(pair, { inTheWay: controller, onFile: { ...law, controller: controller.controller } }, needs, context).toDo).toBe(
      "Put the product down on a day before a watering day, set the controller anew within the town's rule, or split the visit.",
    );
    expect(hoursLeaveNoTime(pair, allOf(controller), needs, context).toDo).toBe("Put the product down on a day before a watering day, set the controller anew, or split the visit.");
  });
  test("says how long the stations need, where that is known", () => {
    const hours = { localRules: byLaw(daily(20, 22)), controller: "none" } as const;
    expect(hoursLeaveNoTime(pair, allOf(hours), needs, context).figure).toContain("The stations need 54 min one at a time.");
    expect(hoursLeaveNoTime({ dry: undefined, due: undefined }, allOf(hours), needs, { timeZone: CHICAGO, elapsedMinutes: null }).figure).toBe("Local rules: every day 8 pm to 10 pm.");
  });
});
