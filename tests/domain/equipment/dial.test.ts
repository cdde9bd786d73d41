import { expect, test } from "vitest";
import { dialInWords, dialOrder, isSameSetting, readDial, settingInWords } from "#domain/equipment/dial";
import { compareRational, decimal, rational } from "#domain/quantities/rational";

test.each([
  ["7", "numbers", "7"],
  [" 7 1/2 ", "numbers", "7.5"],
  ["A", "letters", "1"],
  ["m", "letters", "13"],
  ["M 1/2", "letters", "13.5"],
  ["M½", "letters", "13.5"],
  ["z", "letters", "26"],
] as const)("%s lies among the %s at %s", (setting, marks, place) => {
  const read = readDial(setting);
  expect(read?.marks).toBe(marks);
  expect(read !== undefined && compareRational(read.place, decimal(place))).toBe(0);
});

test.each(["", "two", "M 1", "M 1 1/2", "7 notches", "-", "M or N", "Z 1/2"])("%s is no place on a dial", (setting) => {
  expect(readDial(setting)).toBeUndefined();
});

test("a place is said as it is set", () => {
  expect(dialInWords({ marks: "numbers", place: decimal("7.254") })).toBe("7.25");
  expect(dialInWords({ marks: "numbers", place: rational(10n) })).toBe("10");
  expect(dialInWords({ marks: "letters", place: rational(13n) })).toBe("M");
  expect(dialInWords({ marks: "letters", place: decimal("13.4") })).toBe("0.4 of the way from M to N");
  expect(dialInWords({ marks: "letters", place: decimal("13.999") })).toBe("N");
  expect(dialInWords({ marks: "letters", place: rational(26n) })).toBe("Z");
});

test("settings are listed in the order of the dial, others last", () => {
  expect(["10", "open", "9", "7 1/2", "ajar"].toSorted(dialOrder)).toEqual(["7 1/2", "9", "10", "ajar", "open"]);
});

test.each([
  ["7", "7.0", true],
  ["7", "7.5", false],
  ["M", "m", true],
  ["M", "N", false],
  ["1", "A", false],
  ["half open", "half open", true],
  ["half open", "wide open", false],
  ["half open", "7", false],
])("%s and %s are one setting: %s", (left, right, isSame) => expect(isSameSetting(left, right)).toBe(isSame));

test("a number of a dial is set to a hundredth, without the noughts behind it", () => {
  expect(["7", "7.25", "7.5", "7.006"].map((value) => settingInWords(decimal(value)))).toEqual(["7", "7.25", "7.5", "7.01"]);
});
