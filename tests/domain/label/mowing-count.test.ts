import { expect, test } from "vitest";
import { mowedTimes, readMowingCount, speaksOfMowings, SURELY_MOWED_AFTER_DAYS } from "#domain/label/mowing-count";
import { accept } from "#domain/foundation/outcome";

test.each([
  ["after 2 mowings", 2],
  ["2 mowings", 2],
  ["1 mowing", 1],
  ["until mowed twice", 2],
  ["until after the second mowing", 2],
  ["until it has been mowed 3 times", 3],
  ["after mowing once", 1],
  ["after at least four mowings", 4],
])("%s", (words, count) => expect(readMowingCount(words)).toEqual(accept({ anchor: "mowings", count })));

test.each(["after some mowings", "2 to 3 mowings", "0 mowings", "1.5 mowings", "2 days", "until mowed"])("%s is refused with a way to write it", (words) => {
  expect(readMowingCount(words)).toMatchObject({ ok: false, refusal: expect.stringMatching(/after 2 mowings\.$/u) as unknown });
});

test("words that speak of mowings are told from times", () => {
  expect(speaksOfMowings("until mowed twice")).toBe(true);
  expect(speaksOfMowings("3 months")).toBe(false);
});

test("how often, in words", () => {
  expect([1, 2, 3].map((count) => mowedTimes({ anchor: "mowings", count }))).toEqual(["mowed once", "mowed twice", "mowed 3 times"]);
});

test("a year is long enough for as many mowings as are read", () => expect(SURELY_MOWED_AFTER_DAYS).toBe(365));
