import { describe, expect, test } from "vitest";
import { appliedOf, earlierOf, FEED, HOUR, IRON, labelOf, says, START, untilState } from "../../support/aftercare-builders";
import { IRON_AND_FEED, rulesOf, windowsOf } from "../../support/judged-watering";

describe("undecided", () => {
  test.each([
    ["unread: dry time", [appliedOf(FEED), appliedOf(labelOf("Alpha", { "watering-not-before": "unknown" }))], {}, []],
    ["unread: watering in", [appliedOf(FEED), appliedOf(labelOf("Alpha", { "watering-in": "unknown" }))], {}, []],
    ["unread: rain that spoils, where anything wants water", [appliedOf(FEED), appliedOf(labelOf("Alpha", { "rain-that-spoils": "unknown" }))], {}, []],
    ["hours", IRON_AND_FEED, { hours: { localRules: "unknown", controller: "none" } }, ["hold watering-hours-missing"]],
    ["whether an earlier feed was watered in", [earlierOf(FEED, START - HOUR, { wateredInAtEpochMilliseconds: "unknown" })], {}, ["hold watered-in-not-known"]],
    [
      "when it is dry",
      [appliedOf(FEED), appliedOf(labelOf("Alpha", says("watering-not-before", { untilLaterOf: [untilState("dry")] })))],
      { estimates: { untilDry: "unknown", untilDustSettled: "unknown", untilDryAfterWatering: "unknown" } },
      ["hold drying-estimate-missing"],
    ],
  ] as const)("%s", (_name, products, change, rules) => {
    expect(windowsOf(products, change)).toBe("undecided");
    expect(rulesOf(products, change)).toEqual(rules);
  });
  test("rain that nobody has read up on does not matter where nothing is watered in", () => {
    expect(windowsOf([appliedOf(labelOf("Alpha", { "rain-that-spoils": "unknown" }))])).toBe("none-needed");
  });
  test("hours that nobody knows do not matter where nothing is watered in", () => {
    expect(windowsOf([appliedOf(IRON)], { hours: { localRules: "unknown", controller: "unknown" } })).toBe("none-needed");
  });
});
