import { describe, expect, test } from "vitest";
import { refuseImpossibleAftercare } from "#domain/label/aftercare-range";
import { of } from "#domain/quantities/quantity";
import { FEED, hoursAfterEnd, IRON, labelOf, says, untilState } from "../../support/aftercare-builders";

const atOnce = { anchor: "at-once" } as const;
const readDays = (days: number) => ({ anchor: "days", from: "application-start", days }) as const;
const mowings = (count: number) => ({ anchor: "mowings", count }) as const;
const calendarDay = (days: number) => ({ anchor: "calendar-day", days }) as const;
const water = (least: string, most: string) =>
  says("watering-in", { by: "not-stated", depth: { least: of("in", least), most: of("in", most) }, rain: "not-stated" });

describe("labels that can be meant", () => {
  test.each([
    ["iron", IRON],
    ["feed", FEED],
    ["nothing at all", labelOf("Alpha")],
    ["unread", labelOf("Alpha", { "mowing-after": "unknown" })],
    ["months", labelOf("Alpha", says("seeding-after", { intervals: [{ method: "any", until: { anchor: "calendar-month", months: 4 } }] }))],
    ["mowings", labelOf("Alpha", { ...says("seeding-before", { within: mowings(2) }), ...says("seeding-after", { intervals: [{ method: "any", until: mowings(12) }] }) })],
    ["water at once", labelOf("Alpha", says("watering-in", { by: atOnce, depth: "not-stated", rain: "not-stated" }))],
    ["a sign until dry", labelOf("Alpha", says("posting-sign", { upBy: "at-start", mayComeDown: { trigger: "state", state: "dry", orReentryIfLater: false } }))],
    ["a sign without a time", labelOf("Alpha", says("posting-sign", { upBy: "at-start", mayComeDown: { trigger: "no-time-required" } }))],
    ["least and most the same", labelOf("Alpha", water("0.25", "0.25"))],
  ])("%s", (_name, label) => expect(refuseImpossibleAftercare(label)).toBeUndefined());
});

describe("refused by name", () => {
  test.each([
    ["hours below zero", says("mowing-after", { untilLaterOf: [hoursAfterEnd(-1)] }), "Alpha minutes"],
    ["a time nobody knows", says("mowing-after", { untilLaterOf: [hoursAfterEnd(Number.NaN)] }), "Alpha minutes"],
    ["three years", says("seeding-before", { within: calendarDay(1100) }), "Alpha days"],
    ["three years of days", says("seeding-before", { within: readDays(1100) }), "Alpha days"],
    ["part of a day", says("mowing-before", { within: readDays(1.5) }), "Alpha days"],
    ["a year of mowings", says("seeding-before", { within: mowings(13) }), "Alpha mowings"],
    ["part of a mowing", says("seeding-after", { intervals: [{ method: "any", until: mowings(1.5) }] }), "Alpha mowings"],
    ["half a day", says("mowing-before", { within: calendarDay(1.5) }), "Alpha days"],
    ["no end", says("people-and-pets", { untilLaterOf: [] }), "Alpha people-and-pets"],
    ["no interval", says("seeding-after", { intervals: [] }), "Alpha seeding-after"],
    ["watering that waits for water", says("watering-not-before", { untilLaterOf: [untilState("watered-in")] }), "Alpha watering-not-before"],
    ["most under least", water("0.5", "0.25"), "Alpha depth"],
    ["no water", water("0", "0.25"), "Alpha depth"],
    ["no rain that spoils", says("rain-that-spoils", { within: hoursAfterEnd(1), from: of("in", "0") }), "Alpha depth"],
    [
      "a sign for years",
      says("posting-sign", { upBy: "at-start", mayComeDown: { trigger: "day-following", daysFollowing: 900, orReentryIfLater: false } }),
      "Alpha days",
    ],
    [
      "a sign for part of a day",
      says("posting-sign", { upBy: "at-start", mayComeDown: { trigger: "days-after-completion", daysAfter: 1.5, orReentryIfLater: false } }),
      "Alpha days",
    ],
    [
      "a sign for part of a minute",
      says("posting-sign", {
        upBy: "at-start",
        mayComeDown: { trigger: "elapsed", anchor: "posting", durationMinutes: 0.5, orReentryIfLater: false },
      }),
      "Alpha minutes",
    ],
  ])("%s", (_name, facts, field) => {
    expect(refuseImpossibleAftercare(labelOf("Alpha", facts))?.refusal.field).toBe(field);
  });
});
