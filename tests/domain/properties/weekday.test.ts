import { describe, expect, test } from "vitest";
import { isWeekday, readWeekday, WEEKDAY_NAMES, WEEKDAYS, weekdayDigits, weekdaysOf } from "#domain/properties/weekday";
import { refusalOf, valueOf } from "../../support/domain-answers";

test.each(WEEKDAYS.map((weekday) => [WEEKDAY_NAMES[weekday], weekday] as const))("%s is read whole, in plural, and by its first letters", (name, weekday) => {
  for (const text of [name, `${name}s`, name.toUpperCase(), name.slice(0, 2), `${name.slice(0, 3)}.`]) {
    expect(valueOf(readWeekday("mowingDay", text)), text).toBe(weekday);
  }
});

describe("other words", () => {
  test.each([["Tues", 2], ["weds", 3], ["Thur", 4], ["thurs.", 4]] as const)("%s", (text, weekday) => {
    expect(valueOf(readWeekday("mowingDay", text))).toBe(weekday);
  });

  test("nothing is no day", () => expect(valueOf(readWeekday("mowingDay", " "))).toBeNull());

  test.each(["T", "S", "weekly", "Mon/Thu", "8"])("%j is refused", (text) => {
    expect(refusalOf(readWeekday("mowingDay", text))).toMatchObject({ field: "mowingDay", found: text });
  });
});

test("days travel as digits in their order, each once", () => {
  expect(weekdayDigits([5, 1, 3, 1])).toBe("135");
  expect(weekdaysOf("531")).toEqual([1, 3, 5]);
  expect(weekdaysOf("")).toEqual([]);
  expect([0, 1, 7, 8].map(isWeekday)).toEqual([false, true, true, false]);
});
