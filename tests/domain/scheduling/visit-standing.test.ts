import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { countStandings, firstDayOpen, visitStanding, type VisitDates } from "#domain/scheduling/visit-standing";

const day = (text: string) => text as CalendarDate;
const visit = (given: Partial<VisitDates> = {}): VisitDates => ({ opensOn: day("2026-04-10"), closesOn: day("2026-04-20"), state: "planned", stopOn: null, ...given });

test.each([
  ["2026-04-09", "waiting"],
  ["2026-04-10", "open"],
  ["2026-04-20", "open"],
  ["2026-04-21", "past-its-window"],
])("a planned visit on no day is on %s %s: both ends of the window belong to it", (today, standing) => {
  expect(visitStanding(visit(), day(today))).toBe(standing);
});

test.each(["2026-04-01", "2026-04-14", "2026-04-15"])("a visit with a stop is on a day on %s, before its window too", (today) => {
  expect(visitStanding(visit({ stopOn: day("2026-04-15") }), day(today))).toBe("on-a-day");
});

test("a day that passed without a record counts for nothing, and one after the window still counts", () => {
  expect(visitStanding(visit({ stopOn: day("2026-04-15") }), day("2026-04-16"))).toBe("open");
  expect(visitStanding(visit({ stopOn: day("2026-04-15") }), day("2026-04-21"))).toBe("past-its-window");
  expect(visitStanding(visit({ stopOn: day("2026-04-25") }), day("2026-04-21"))).toBe("on-a-day");
});

test.each(["done", "part-done", "not-done"] as const)("what is %s stays so on every day", (state) => {
  for (const today of ["2026-04-01", "2026-04-15", "2027-01-01"]) expect(visitStanding(visit({ state, stopOn: day("2026-04-15") }), day(today))).toBe(state);
});

test.each([
  ["2026-04-09", "2026-04-10"],
  ["2026-04-10", "2026-04-10"],
  ["2026-04-25", "2026-04-25"],
])("the first day on which it may still be, looked at on %s, is %s", (today, first) => {
  expect(firstDayOpen(visit(), day(today))).toBe(first);
});

test("each visit is counted once, and what none stands at is zero", () => {
  const counts = countStandings(["open", "waiting", "open", "done"]);
  expect(counts).toEqual({ "past-its-window": 0, open: 2, "on-a-day": 0, waiting: 1, done: 1, "part-done": 0, "not-done": 0 });
});
