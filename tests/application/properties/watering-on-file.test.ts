import { expect, test } from "vitest";
import { wateringColumns, wateringOf } from "#application/properties/watering-on-file";
import { type TownRule, WHOLE_DAY, type WateringFact } from "#domain/properties/watering-fact";

const MORNING = { fromMinute: 240, untilMinute: 540 };
const NIGHT = { fromMinute: 1080, untilMinute: 600 };

test.each([
  ["unknown", "none"],
  ["none", "unknown"],
  [{ days: { weekdays: [1, 3] }, hours: MORNING }, { days: { dates: "even" }, hours: null }],
  [{ days: { dates: "house-number" }, hours: WHOLE_DAY }, { days: null, hours: MORNING }],
  [{ days: { weekdays: [1, 4] }, hours: { ...NIGHT, pastMidnight: "same-day" } }, { days: { dates: "odd" }, hours: NIGHT }],
  [{ days: { dates: "odd" }, hours: { ...NIGHT, pastMidnight: "next-morning" } }, "none"],
  [{ days: { dates: "odd" }, hours: NIGHT }, "none"],
] as const satisfies readonly (readonly [TownRule, WateringFact])[])("%j and %j are stored apart and read back as they were", (townRule, controller) => {
  expect(wateringOf(wateringColumns({ townRule, controller }))).toEqual({ townRule, controller });
});

test("each fact has its own columns, and what is not there has none filled", () => {
  expect(wateringColumns({ townRule: { days: { weekdays: [1, 3] }, hours: null }, controller: "none" })).toEqual({
    townRule: "on-file", townRuleFromMinute: null, townRuleUntilMinute: null, townRuleWeekdays: "13", townRuleDates: null, townRulePastMidnight: null,
    controller: "none", controllerFromMinute: null, controllerUntilMinute: null, controllerWeekdays: null, controllerDates: null,
  });
});
