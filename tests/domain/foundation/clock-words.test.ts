import { expect, test } from "vitest";
import { clockWords, clockWordsInFull, durationWords, namedClockWords } from "#domain/foundation/clock-words";

test("times and lengths as they are written", () => {
  expect([0, 460, 720, 780, 1439].map(clockWords)).toEqual(["12 am", "7:40 am", "12 pm", "1 pm", "11:59 pm"]);
  expect([15, 60, 90].map(durationWords)).toEqual(["15 min", "1 h", "1 h 30 min"]);
});

test("whole days drop out", () => {
  expect([1440, 1900, -980].map(clockWords)).toEqual(["12 am", "7:40 am", "7:40 am"]);
});

test.each([[0, "midnight"], [1440, "midnight"], [720, "noon"], [460, "7:40 am"], [1210, "8:10 pm"], [30, "12:30 am"]])("minute %i is read %s", (minute, words) => {
  expect(namedClockWords(minute)).toBe(words);
});

test.each([[0, "12:00 am"], [530, "8:50 am"], [720, "12:00 pm"], [780, "1:00 pm"], [1439, "11:59 pm"]] as const)("minute %i in full is %s", (minute, words) => {
  expect(clockWordsInFull(minute)).toBe(words);
});
