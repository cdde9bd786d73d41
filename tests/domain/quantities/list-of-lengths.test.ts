import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inOneUnit, lengthParts } from "#domain/quantities/list-of-lengths";
import { accept } from "#domain/foundation/outcome";
import { refusalOf } from "../../support/domain-answers";

const INCHES = { field: "depths", unitWhenNone: "in" } as const;
const FEET = { field: "widths", unitWhenNone: "ft" } as const;

describe("a unit after the last part only is everybody's", () => {
  test.each([
    ["2, 3, 2, 3 mm", ["2 mm", "3 mm", "2 mm", "3 mm"]],
    ["2,3,2,3 mm", ["2 mm", "3 mm", "2 mm", "3 mm"]],
    ["2; 3\n2 1/2; 3 millimeters", ["2 mm", "3 mm", "2 1/2 mm", "3 millimeters"]],
    ["1, 2, 1'", ["1 ft", "2 ft", "1'"]],
    ["0, 3, 2, 3 mm", ["0", "3 mm", "2 mm", "3 mm"]],
    ["2, 3, 2 mm, 0", ["2 mm", "3 mm", "2 mm", "0"]],
    ["2, 3, 0 mm", ["2 mm", "3 mm", "0 mm"]],
  ])("%j", (text, parts) => expect(lengthParts(text, INCHES)).toEqual(accept(parts)));

  test("and a distance to the west or south has it too", () => {
    expect(inOneUnit(["-12", "\u22129", "3 m"], FEET)).toEqual(accept(["-12 m", "\u22129 m", "3 m"]));
  });
});

describe("parts that say enough are left as they were typed", () => {
  test.each([
    ["10, 12, 11, 9"],
    ["10 m, 12 m, 9 m"],
    ["10 m, 12 yd, 9 ft"],
    ["0, 12 m, 9 m, 0"],
    ["10, 12 ft, 11, 9 ft"],
    ["10, 12, 11, 9 ft"],
    ["10, 12'6\", 11, 9 ft 6 in"],
    ["10, wide, 9 m"],
    ["10, 2 gal"],
    ["10, 9 M"],
    ["12 m"],
    ["12"],
  ])("%j", (text) => expect(lengthParts(text, FEET)).toEqual(accept(text.split(", "))));

  test("none is none", () => expect(lengthParts(" ", FEET)).toEqual(accept([])));
});

test.each([
  ["10 m, 12, 11, 9", "10 m", "12"],
  ["10, 12 m, 11, 9", "12 m", "10"],
  ["10, 12 m, 11, 9 m", "12 m", "10"],
  ["10, 12 ft, 11, 9 m", "12 ft", "10"],
  ["10, 12, 9 m 20 cm", "9 m 20 cm", "10"],
  ["-10, 12 m, 9", "12 m", "-10"],
])("%j may be in two units, and is asked about", (text, withUnit, without) => {
  const refusal = refusalOf(lengthParts(text, FEET));
  expect(refusal).toMatchObject({ field: "widths", found: text });
  expect(refusal.sentence).toContain(`"${withUnit}" has a unit and "`);
  expect(refusal.sentence).toContain(`"${without}" has none`);
});

test("however many there are, the last one's unit is that of all", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 999 }), { minLength: 1, maxLength: 12 }), fc.constantFrom("mm", "cm", "m", "yd", "in"), (numbers, unit) => {
      expect(lengthParts(`${numbers.join(", ")} ${unit}`, FEET)).toEqual(accept(numbers.map((number) => `${String(number)} ${unit}`)));
    }),
  );
});
