import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { dayWords, windowWords } from "#domain/scheduling/window-words";

const words = (opensOn: string, closesOn: string) => windowWords({ opensOn: opensOn as CalendarDate, closesOn: closesOn as CalendarDate });

test("a window is said by its two days, by one where they are the same, and with years where it crosses one", () => {
  expect(words("2026-04-06", "2026-04-24")).toBe("Apr 6 to Apr 24");
  expect(words("2026-04-14", "2026-04-14")).toBe("Apr 14");
  expect(words("2026-12-20", "2027-01-10")).toBe("Dec 20, 2026 to Jan 10, 2027");
  expect(dayWords("2026-10-01" as CalendarDate)).toBe("Oct 1");
});
