import { describe, expect, test } from "vitest";
import { authoritiesOfHours, refuseImpossibleHours, unknownHours, withinWateringHours } from "#domain/mixing/watering-hours";
import { at, byHouse, byLaw, CHICAGO, daily } from "../../support/aftercare-builders";

const span = { fromEpochMilliseconds: at("2026-05-02T00:00-05:00"), untilEpochMilliseconds: at("2026-05-04T00:00-05:00") };
const within = (hours: Parameters<typeof withinWateringHours>[1]) =>
  withinWateringHours(span, hours, CHICAGO).map((found) => [found.fromEpochMilliseconds, found.untilEpochMilliseconds]);

describe("what both allow", () => {
  test("neither limits: all of it", () => expect(within({ localRules: "none", controller: "none" })).toEqual([[span.fromEpochMilliseconds, span.untilEpochMilliseconds]]));
  test("the rule's hours on the controller's days", () => {
    const hours = { localRules: byLaw([...daily(5, 9), ...daily(19, 22)]), controller: byHouse(daily(0, 8, [0])) };
    expect(within(hours)).toEqual([[at("2026-05-03T05:00-05:00"), at("2026-05-03T08:00-05:00")]]);
  });
  test("none in common", () => expect(within({ localRules: byLaw(daily(5, 9)), controller: byHouse(daily(9, 12)) })).toEqual([]));
  test("an empty or turned span has none", () => {
    expect(withinWateringHours({ fromEpochMilliseconds: 5, untilEpochMilliseconds: 5 }, { localRules: "none", controller: "none" }, CHICAGO)).toEqual([]);
  });
});

test("what nobody knows is a hold for the office, one for each kind", () => {
  expect(unknownHours({ localRules: "unknown", controller: "unknown" })).toMatchObject([
    { level: "hold", answerableBy: "office", source: "law" },
    { level: "hold", answerableBy: "office", source: "house" },
  ]);
  expect(unknownHours({ localRules: "none", controller: byHouse([]) })).toEqual([]);
});

test("authorities are those of the hours on file", () => {
  expect(authoritiesOfHours({ localRules: byLaw(daily(5, 9)), controller: "none" })).toEqual([{ basis: "law", source: "town watering rule" }]);
});

test("impossible hours are refused by name", () => {
  expect(refuseImpossibleHours({ localRules: "none", controller: byHouse(daily(9, 5)) })?.refusal.field).toBe("controller");
  expect(refuseImpossibleHours({ localRules: byLaw(daily(5, 25)), controller: "none" })?.refusal.field).toBe("localRules");
  expect(refuseImpossibleHours({ localRules: byLaw(daily(5, 9)), controller: "unknown" })).toBeUndefined();
});
