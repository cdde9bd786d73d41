import { describe, expect, test } from "vitest";
import { type AftercareQuestion, refuseImpossibleQuestion } from "#domain/mixing/aftercare-question";
import { aftercareQuestion, appliedOf, byLaw, daily, earlierOf, END, FEED, hoursAfterEnd, HOUR, IRON, labelOf, says, START } from "../../support/aftercare-builders";

const products = [appliedOf(IRON), earlierOf(FEED, START)];
const fieldOf = (change: Partial<AftercareQuestion>) => refuseImpossibleQuestion(aftercareQuestion(products, change))?.refusal.field;
const timed = (startsAtEpochMilliseconds: number, endsAtEpochMilliseconds: number) =>
  ({ startsAtEpochMilliseconds, endsAtEpochMilliseconds, postedAtEpochMilliseconds: "not-posted" }) as const;
const estimate = (durationMinutes: number) => ({ durationMinutes, basis: "house", source: "company settings" }) as const;

test("an ordinary question is fine", () => expect(fieldOf({})).toBeUndefined());

describe("refused by name", () => {
  test.each([
    ["no time zone", { timeZone: "Central" }, "timeZone"],
    ["no version of its data", { zoneDataVersion: " " }, "zoneDataVersion"],
    ["a visit that ends before it starts", { visit: { fromEpochMilliseconds: END, untilEpochMilliseconds: START } }, "visit"],
    ["a visit at no time", { visit: { fromEpochMilliseconds: Number.NaN, untilEpochMilliseconds: END } }, "visit"],
    ["work that ends before it starts", { products: [appliedOf(IRON, { application: timed(END, START) })] }, "Ferrox Foliar application"],
    ["work outside the visit", { products: [appliedOf(IRON, { application: timed(START - 1, END) })] }, "Ferrox Foliar application"],
    ["an earlier visit that ends later", { products: [earlierOf(IRON, START + 1)] }, "Ferrox Foliar application"],
    ["watered in before it was put down", { products: [appliedOf(FEED, { wateredInAtEpochMilliseconds: START - HOUR })] }, "Evenfeed 18 wateredIn"],
    ["watered in before an earlier visit", { products: [earlierOf(FEED, START, { wateredInAtEpochMilliseconds: START - 2 * HOUR })] }, "Evenfeed 18 wateredIn"],
    ["watered in after this visit", { products: [earlierOf(FEED, START, { wateredInAtEpochMilliseconds: END + 1 })] }, "Evenfeed 18 wateredIn"],
    ["a mowing day that is none", { mowing: { weekday: 7, lastMowedAtEpochMilliseconds: "unknown" } }, "mowing.weekday"],
    ["half a day", { secondLook: { daysAfter: 1.5, programName: "Spring" } }, "secondLook.daysAfter"],
    ["an estimate below zero", { estimates: { untilDry: estimate(-1), untilDustSettled: "unknown", untilDryAfterWatering: "unknown" } }, "estimates.untilDry"],
    ["hours that end before they begin", { hours: { localRules: byLaw(daily(9, 5)), controller: "none" } }, "localRules"],
    ["a label that can't be meant", { products: [appliedOf(labelOf("Alpha", says("mowing-after", { untilLaterOf: [hoursAfterEnd(-2)] })))] }, "Alpha minutes"],
  ] as const)("%s", (_name, change, field) => expect(fieldOf(change)).toBe(field));
});
