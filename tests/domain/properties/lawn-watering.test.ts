import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { WATER_TOLD_BY, WATERED_BY, wateringWords } from "#domain/properties/lawn-watering";
import { of } from "#domain/quantities/quantity";

const WHEN = { wateredOn: "2026-04-14" as CalendarDate, minuteOfDay: 18 * 60 };

test("a watering is said with what it was, when, how much where that is known, and whose word it is", () => {
  expect(wateringWords({ ...WHEN, wateredBy: "sprinklers", depth: of("in", "0.25"), toldBy: "customer" })).toBe("Watered in by sprinklers on Apr 14, 2026, 6 pm, with ¼ in, as the customer told.");
  expect(wateringWords({ ...WHEN, wateredBy: "rain", depth: "not-stated", toldBy: "crew" })).toBe("Watered in by rain on Apr 14, 2026, 6 pm.");
  expect([...WATERED_BY, ...WATER_TOLD_BY]).toEqual(["sprinklers", "rain", "crew", "customer"]);
});
