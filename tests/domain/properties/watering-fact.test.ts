import { expect, test } from "vitest";
import { type WateringFact, wateringFactWords, WHOLE_DAY } from "#domain/properties/watering-fact";

const MORNING = { fromMinute: 240, untilMinute: 540 };

test.each([
  ["unknown", "Not on file"],
  ["none", "The town has none"],
  [{ days: { weekdays: [1, 3] }, hours: MORNING }, "Monday and Wednesday; 4:00 am to 9:00 am"],
  [{ days: { weekdays: [1, 2, 3, 4, 5, 6, 7] }, hours: { fromMinute: 1080, untilMinute: 1440 } }, "Every day; 6:00 pm to 12:00 am"],
  [{ days: { dates: "odd" }, hours: WHOLE_DAY }, "Odd dates; every hour"],
  [{ days: { dates: "house-number" }, hours: null }, "Even dates, by the house number; hours not on file"],
  [{ days: null, hours: MORNING }, "Days not on file; 4:00 am to 9:00 am"],
] as const satisfies readonly (readonly [WateringFact, string])[])("%j is said as it is", (fact, words) => {
  expect(wateringFactWords(fact, "40 Kiln Yard", "The town has none")).toBe(words);
});

test("a rule by the house number says where the street has none", () => {
  expect(wateringFactWords({ days: { dates: "house-number" }, hours: MORNING }, "Old Mill Road", "")).toBe("By the house number, which the street does not have; 4:00 am to 9:00 am");
});
