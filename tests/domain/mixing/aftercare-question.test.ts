import { describe, expect, test } from "vitest";
import { type AftercareQuestion, refuseImpossibleQuestion } from "#domain/mixing/aftercare-question";
import { aftercareQuestion, appliedOf, byLaw, daily, earlierOf, END, FEED, hoursAfterEnd, HOUR, IRON, labelOf, says, START } from "../../support/aftercare-builders";

const products = [appliedOf(IRON), earlierOf(FEED, START)];
const fieldOf = (change: Partial<AftercareQuestion>) => refuseImpossibleQuestion(aftercareQuestion(products, change))?.refusal.field;
const timed = (startsAtEpochMilliseconds: number, endsAtEpochMilliseconds: number) =>
  ({ startsAtEpochMilliseconds, endsAtEpochMilliseconds, postedAtEpochMilliseconds: "not-posted" }) as const;
const estimate = (durationMinutes: number) => ({ durationMinutes, basis: "house", source: "company settings" }) as const;

test("an ordinary question is fine", () => expect(fieldOf({})).toBeUndefined());

test("what just touches a bound is fine", () => {
  const watered = (wateredInAtEpochMilliseconds: number) => ({ products: [earlierOf(FEED, START, { wateredInAtEpochMilliseconds })] });
  expect([fieldOf(watered(START - HOUR)), fieldOf(watered(END))]).toEqual([undefined, undefined]);
  expect(fieldOf({ visit: { fromEpochMilliseconds: START, untilEpochMilliseconds: START }, products: [appliedOf(IRON, { application: timed(START, START) })] })).toBeUndefined();
  expect([0, 6].map((weekday) => fieldOf({ mowing: { weekday, lastMowedAtEpochMilliseconds: Date.UTC(1900, 0, 1) } }))).toEqual([undefined, undefined]);
  expect(fieldOf({ mowing: { weekday: 0, lastMowedAtEpochMilliseconds: Date.UTC(2200, 0, 1) - 1 } })).toBeUndefined();
  expect(fieldOf({ secondLook: { daysAfter: 0, programName: "Spring" }, estimates: { untilDry: estimate(0), untilDustSettled: "unknown", untilDryAfterWatering: "unknown" } })).toBeUndefined();
});

test("other work may have the visit's hours or cross them", () => {
  expect([END, START + 1, END + HOUR - 1].map((endedAt) => fieldOf({ products: [earlierOf(IRON, endedAt)] }))).toEqual([undefined, undefined, undefined]);
});

describe("refused by name", () => {
  test.each([
    ["no time zone", { timeZone: "Central" }, "timeZone"],
    ["no version of its data", { zoneDataVersion: " " }, "zoneDataVersion"],
    ["a visit that ends before it starts", { visit: { fromEpochMilliseconds: END, untilEpochMilliseconds: START } }, "visit"],
    ["a visit at no time", { visit: { fromEpochMilliseconds: Number.NaN, untilEpochMilliseconds: END } }, "visit"],
    ["work that ends before it starts", { products: [appliedOf(IRON, { application: timed(END, START) })] }, "Ferrox Foliar application"],
    ["work outside the visit", { products: [appliedOf(IRON, { application: timed(START - 1, END) })] }, "Ferrox Foliar application"],
    ["other work that begins as this visit ends", { products: [earlierOf(IRON, END + HOUR)] }, "Ferrox Foliar application"],
    ["watered in before it was put down", { products: [appliedOf(FEED, { wateredInAtEpochMilliseconds: START - HOUR })] }, "Evenfeed 18 wateredIn"],
    ["watered in before an earlier visit", { products: [earlierOf(FEED, START, { wateredInAtEpochMilliseconds: START - 2 * HOUR })] }, "Evenfeed 18 wateredIn"],
    ["watered in after this visit", { products: [earlierOf(FEED, START, { wateredInAtEpochMilliseconds: END + 1 })] }, "Evenfeed 18 wateredIn"],
    ["a mowing day that is none", { mowing: { weekday: 7, lastMowedAtEpochMilliseconds: "unknown" } }, "mowing.weekday"],
    ["a last mowing at no time", { mowing: { weekday: 2, lastMowedAtEpochMilliseconds: Number.NaN } }, "mowing.lastMowedAtEpochMilliseconds"],
    ["a last mowing beyond the calendar", { mowing: { weekday: 2, lastMowedAtEpochMilliseconds: 8e15 } }, "mowing.lastMowedAtEpochMilliseconds"],
    ["a second look in a million years", { secondLook: { daysAfter: 1e9, programName: "Spring" } }, "secondLook.daysAfter"],
    ["a second look after more than a year", { secondLook: { daysAfter: 366, programName: "Spring" } }, "secondLook.daysAfter"],
    ["an estimate of ages", { estimates: { untilDry: estimate(1e12), untilDustSettled: "unknown", untilDryAfterWatering: "unknown" } }, "estimates.untilDry"],
    ["a visit beyond the calendar", { visit: { fromEpochMilliseconds: START, untilEpochMilliseconds: 8e15 } }, "visit"],
    ["a latitude that is none", { place: { latitudeDegrees: 200, longitudeDegrees: -87.6 } }, "latitudeDegrees"],
    ["a longitude that is not known", { place: { latitudeDegrees: 41.9, longitudeDegrees: Number.NaN } }, "longitudeDegrees"],
    ["a mowing day before Sunday", { mowing: { weekday: -1, lastMowedAtEpochMilliseconds: "unknown" } }, "mowing.weekday"],
    ["a last mowing before 1900", { mowing: { weekday: 2, lastMowedAtEpochMilliseconds: Date.UTC(1900, 0, 1) - 1 } }, "mowing.lastMowedAtEpochMilliseconds"],
    ["a last mowing after 2199", { mowing: { weekday: 2, lastMowedAtEpochMilliseconds: Date.UTC(2200, 0, 1) } }, "mowing.lastMowedAtEpochMilliseconds"],
    ["a second look before the visit", { secondLook: { daysAfter: -1, programName: "Spring" } }, "secondLook.daysAfter"],
    ["work that goes on after the visit", { products: [appliedOf(IRON, { application: timed(START, END + 1) })] }, "Ferrox Foliar application"],
    ["a sign put up at no time", { products: [appliedOf(IRON, { application: { ...timed(START, END), postedAtEpochMilliseconds: Number.NaN } })] }, "Ferrox Foliar application"],
    ["half a day", { secondLook: { daysAfter: 1.5, programName: "Spring" } }, "secondLook.daysAfter"],
    ["an estimate below zero", { estimates: { untilDry: estimate(-1), untilDustSettled: "unknown", untilDryAfterWatering: "unknown" } }, "estimates.untilDry"],
    ["hours that end before they begin", { hours: { localRules: byLaw(daily(9, 5)), controller: "none" } }, "localRules"],
    ["a label that can't be meant", { products: [appliedOf(labelOf("Alpha", says("mowing-after", { untilLaterOf: [hoursAfterEnd(-2)] })))] }, "Alpha minutes"],
  ] as const)("%s", (_name, change, field) => expect(fieldOf(change)).toBe(field));
});

test("the longest that is taken is told", () => {
  const refused = (change: Partial<AftercareQuestion>) => refuseImpossibleQuestion(aftercareQuestion(products, change))?.refusal;
  const week = { untilDustSettled: "unknown", untilDryAfterWatering: "unknown" } as const;
  expect(fieldOf({ estimates: { ...week, untilDry: estimate(10_080) }, secondLook: { daysAfter: 365, programName: "Spring" } })).toBeUndefined();
  expect(refused({ estimates: { ...week, untilDry: estimate(10_081) } })).toMatchObject({ found: "10081 min", allowed: "from 0 to 10080 min" });
  expect(refused({ secondLook: { daysAfter: 1e9, programName: "Spring" } })).toMatchObject({ found: "1000000000", allowed: "whole days from 0 to 365" });
  expect(refused({ place: { latitudeDegrees: 200, longitudeDegrees: 0 } })).toMatchObject({ found: "200 °", allowed: "from -90 to 90 °" });
});
