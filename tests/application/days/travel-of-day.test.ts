import { describe, expect, test } from "vitest";
import { HOUSE_TRAVEL, HOUSE_TRAVEL_WORDS, questionOfDay, type StopOfDay } from "#application/days/travel-of-day";
import { type CalendarDate } from "#domain/foundation/calendar-date";

const HOURS = { date: "2026-04-14" as CalendarDate, startsAtMinute: 480, endsAtMinute: 990 };
const SHOP = { latitudeDegrees: 41.54, longitudeDegrees: -87.06 };
const stop = (more: Partial<StopOfDay> = {}): StopOfDay => ({
  visitId: "a", position: 1, isPinned: false, isPlanned: true, street: "4 Sorrel Lane", place: { latitudeDegrees: 41.54, longitudeDegrees: -87.05 },
  serviceMinutes: 30, window: null, closesOn: "2026-05-30" as CalendarDate, ...more,
});
const question = (stops: readonly StopOfDay[]) => {
  const asked = questionOfDay(SHOP, HOURS, stops);
  if (asked.kind === "missing") throw new Error(asked.sentences.join(" "));
  return asked.question;
};

test("the estimate is 25 miles an hour, and its words say its three numbers", () => {
  expect((HOUSE_TRAVEL.speedMetersPerSecond * 3600) / 1609.344).toBeCloseTo(25, 6);
  for (const figure of [String(HOUSE_TRAVEL.detourFactor), "25 mph", "2 minutes"]) expect(HOUSE_TRAVEL_WORDS).toContain(figure);
});

test("what is missing is said for the shop and for each property", () => {
  const homeless = [stop({ place: null }), stop({ visitId: "b", place: null, street: "5 Sorrel Lane" })];
  expect(questionOfDay(null, HOURS, homeless)).toEqual({
    kind: "missing",
    sentences: ["Where the shop is is not on file.", "Where 4 Sorrel Lane and 5 Sorrel Lane lie is not on file."],
  });
  expect(questionOfDay(SHOP, HOURS, homeless.slice(0, 1))).toMatchObject({ sentences: ["Where 4 Sorrel Lane lies is not on file."] });
});

test("the day is in seconds, from the shop and back, without overtime", () => {
  expect(question([stop()])).toMatchObject({ dayStartSeconds: 28_800, dayEndSeconds: 59_400, longestOvertimeSeconds: 0, startPlaceIndex: 0, endPlaceIndex: 0 });
});

describe("a stop's own", () => {
  test("window ends early enough for the work to be done in it", () => {
    expect(question([stop({ window: { fromMinute: 600, untilMinute: 700 } })]).stops[0]?.windows).toEqual([{ fromMinute: 600, toMinute: 670 }]);
    expect(question([stop({ window: { fromMinute: 600, untilMinute: 610 } })]).stops[0]?.windows).toEqual([{ fromMinute: 600, toMinute: 600 }]);
  });

  test("place is kept where it is pinned, and where somebody has been, whatever its window", () => {
    const stops = [stop(), stop({ visitId: "b", isPinned: true }), stop({ visitId: "c", isPlanned: false, window: { fromMinute: 0, untilMinute: 60 } })];
    const asked = question(stops).stops;
    expect(asked.map(({ pinnedPosition }) => pinnedPosition)).toEqual([undefined, 2, 3]);
    expect(asked[2]?.windows).toEqual([]);
  });

  test.each([["2026-05-30", 1], ["2026-04-28", 1], ["2026-04-27", 2], ["2026-04-14", 15], ["2026-04-13", 16], ["2026-01-01", 16]])("weight, closing on %s, is %d", (closesOn, weight) => {
    expect(question([stop({ closesOn: closesOn as CalendarDate })]).stops[0]?.dueWeight).toBe(weight);
  });
});
