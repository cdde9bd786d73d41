import { expect, test } from "vitest";
import { controllerWords, passesMidnight, type TownRule, townRuleWords, type WateringFact, WHOLE_DAY } from "#domain/properties/watering-fact";

const MORNING = { fromMinute: 240, untilMinute: 540 };
const NIGHT = { fromMinute: 1080, untilMinute: 600 };

const BOTH = [
  ["unknown", "Not on file"],
  [{ days: { weekdays: [1, 3] }, hours: MORNING }, "Monday and Wednesday; 4:00 am to 9:00 am"],
  [{ days: { weekdays: [1, 2, 3, 4, 5, 6, 7] }, hours: { fromMinute: 1080, untilMinute: 1440 } }, "Every day; 6:00 pm to 12:00 am"],
  [{ days: { dates: "odd" }, hours: WHOLE_DAY }, "Odd dates; every hour"],
  [{ days: { dates: "house-number" }, hours: null }, "Even dates, by the house number; hours not on file"],
  [{ days: null, hours: MORNING }, "Days not on file; 4:00 am to 9:00 am"],
] as const satisfies readonly (readonly [WateringFact, string])[];

test.each([
  ...BOTH,
  ["none", "The town has none"],
  [{ days: { weekdays: [1, 4] }, hours: { ...NIGHT, pastMidnight: "same-day" } }, "Monday and Thursday; midnight to 10:00 am and 6:00 pm to midnight"],
  [{ days: { weekdays: [1, 4] }, hours: { ...NIGHT, pastMidnight: "next-morning" } }, "Monday and Thursday; 6:00 pm to 10:00 am of the next day"],
  [{ days: { weekdays: [1, 4] }, hours: NIGHT }, "Monday and Thursday; 6:00 pm to 10:00 am, and not on file of which morning"],
] as const satisfies readonly (readonly [TownRule, string])[])("of the town's rule %j is said as it is", (fact, words) => {
  expect(townRuleWords(fact, "40 Kiln Yard")).toBe(words);
});

test.each([
  ...BOTH,
  ["none", "There is none: water is turned on by hand"],
  [{ days: { dates: "odd" }, hours: NIGHT }, "Odd dates; 6:00 pm to 10:00 am of the next day"],
] as const satisfies readonly (readonly [WateringFact, string])[])("of the controller %j is said as it is", (fact, words) => {
  expect(controllerWords(fact, "40 Kiln Yard")).toBe(words);
});

test("a rule by the house number says where the street has none", () => {
  expect(townRuleWords({ days: { dates: "house-number" }, hours: MORNING }, "Old Mill Road")).toBe("By the house number, which the street does not have; 4:00 am to 9:00 am");
});

test("hours pass midnight where they end before they begin, and not where they end with the day", () => {
  expect([MORNING, WHOLE_DAY, { fromMinute: 1080, untilMinute: 1440 }, NIGHT].map(passesMidnight)).toEqual([false, false, false, true]);
});
