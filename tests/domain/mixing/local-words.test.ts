import { expect, test } from "vitest";
import { dateWords, localWords, weekdayWords } from "#domain/mixing/local-words";
import { day } from "../../support/domain-answers";
import { at, CHICAGO } from "../../support/aftercare-builders";

test.each([
  ["2026-05-01T15:10:00-05:00", "start", "Friday, May 1, 2026, 3:10 pm"],
  ["2026-05-01T15:10:01-05:00", "start", "Friday, May 1, 2026, 3:10 pm"],
  ["2026-05-01T15:10:01-05:00", "due", "Friday, May 1, 2026, 3:10 pm"],
  ["2026-05-01T15:10:01-05:00", "end", "Friday, May 1, 2026, 3:11 pm"],
  ["2026-05-01T12:00:00-05:00", "end", "Friday, May 1, 2026, 12 pm"],
  ["2026-05-02T00:00:00-05:00", "end", "Saturday, May 2, 2026, 12 am"],
  ["2026-05-02T00:00:00-05:00", "due", "the end of Friday, May 1, 2026"],
  ["2026-11-01T01:30:00-05:00", "end", "Sunday, Nov 1, 2026, 1:30 am (before clocks go back)"],
  ["2026-11-01T01:30:00-06:00", "end", "Sunday, Nov 1, 2026, 1:30 am (after clocks go back)"],
  ["2026-11-01T02:00:00-06:00", "end", "Sunday, Nov 1, 2026, 2 am"],
  ["2026-03-08T03:00:00-05:00", "end", "Sunday, Mar 8, 2026, 3 am"],
] as const)("%s as %s: %s", (instant, use, words) => expect(localWords(at(instant), CHICAGO, use)).toBe(words));

test("days by name", () => {
  expect([weekdayWords(0), weekdayWords(6), dateWords(day("2026-05-02"))]).toEqual(["Sunday", "Saturday", "Saturday, May 2, 2026"]);
});
