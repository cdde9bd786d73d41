import { expect, test } from "vitest";
import { mowingColumnsOf, mowingDayOf, mowingDayWords, NO_FIXED_DAY, readMowingDay } from "#domain/properties/mowing-day";
import { refusalOf, valueOf } from "../../support/domain-answers";

test("a day, no fixed day and nobody's answer are three things, and each is stored as such", () => {
  const both = [2, NO_FIXED_DAY, null] as const;
  expect(both.map(mowingColumnsOf)).toEqual([
    { mowingWeekday: 2, mowsOnNoFixedDay: false },
    { mowingWeekday: null, mowsOnNoFixedDay: true },
    { mowingWeekday: null, mowsOnNoFixedDay: false },
  ]);
  expect(both.map((day) => mowingDayOf(mowingColumnsOf(day)))).toEqual(both);
  expect(mowingDayOf({ mowingWeekday: 8, mowsOnNoFixedDay: false })).toBeNull();
});

test("in words", () => expect(([7, NO_FIXED_DAY] as const).map(mowingDayWords)).toEqual(["on Sunday", "on no fixed day"]));

test.each([
  ["Tue", 2],
  ["", null],
  ["varies", NO_FIXED_DAY],
  [" No fixed day. ", NO_FIXED_DAY],
] as const)("a list's %o is read", (text, day) => expect(valueOf(readMowingDay("mowingDay", text))).toBe(day));

test("what is neither a day nor says that none is fixed is refused at its field", () => {
  expect(refusalOf(readMowingDay("mowingDay", "none")).field).toBe("mowingDay");
});
