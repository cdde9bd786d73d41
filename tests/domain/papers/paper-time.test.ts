import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { clockOnPaper, dateOnPaper, dayOnPaper, momentOnPaper, spanOnPaper } from "#domain/papers/paper-time";

const INDIANAPOLIS = "America/Indiana/Indianapolis";
const MORNING = Date.parse("2026-04-14T12:50:00Z");

test("an instant is said on the clock of its time zone, with ordinary spaces", () => {
  expect(clockOnPaper(MORNING, INDIANAPOLIS)).toBe("8:50 am");
  expect(clockOnPaper(MORNING, "America/Chicago")).toBe("7:50 am");
  expect(momentOnPaper(MORNING, INDIANAPOLIS)).toBe("April 14, 2026, 8:50 am");
  expect(spanOnPaper(MORNING, MORNING + 19 * 60_000, INDIANAPOLIS)).toBe("8:50 am to 9:09 am");
});

test("the day is the local one", () => {
  expect(dayOnPaper(Date.parse("2026-04-15T02:00:00Z"), INDIANAPOLIS)).toBe("Tuesday, April 14, 2026");
  expect(dateOnPaper("2026-04-14" as CalendarDate)).toBe("April 14, 2026");
});
