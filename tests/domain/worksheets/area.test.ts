import { describe, expect, test } from "vitest";
import { AVERAGE_RADIUS_EXAMPLE, averageRadiusWorksheet, CIRCLE_EXAMPLE, circleWorksheet, OFFSETS_EXAMPLE, offsetsWorksheet, RECTANGLE_EXAMPLE, rectangleWorksheet, TRAPEZOID_EXAMPLE, trapezoidWorksheet, TRIANGLE_EXAMPLE, triangleWorksheet } from "#domain/worksheets/area";
import { answersOf, firstSentence, refusedFields, stepsOf, worked } from "../../support/worked";

describe("each shape comes out, step by step", () => {
  test.each([
    ["a rectangle", rectangleWorksheet(RECTANGLE_EXAMPLE.typed), "4,500 sq ft", ["90 ft × 50 ft = 4,500 sq ft."]],
    ["a triangle", triangleWorksheet(TRIANGLE_EXAMPLE.typed), "4,687½ sq ft", ["125 ft × 75 ft = 9,375 sq ft.", "Half of it: 9,375 sq ft ÷ 2 = 4,687½ sq ft."]],
    ["a trapezoid", trapezoidWorksheet(TRAPEZOID_EXAMPLE.typed), "1,800 sq ft", ["50 ft + 70 ft = 120 ft.", "Half of it: 120 ft ÷ 2 = 60 ft.", "60 ft × 30 ft = 1,800 sq ft."]],
    ["a circle", circleWorksheet(CIRCLE_EXAMPLE.typed), "2,827 sq ft", ["30 ft × 30 ft = 900 sq ft.", "900 sq ft × 3.1415927 = 2,827.43 sq ft."]],
    ["widths with pointed ends", offsetsWorksheet(OFFSETS_EXAMPLE.typed), "1,440 sq ft", ["32 ft + 50 ft + 45 ft + 17 ft = 144 ft.", "144 ft × 10 ft = 1,440 sq ft."]],
    ["widths with blunt ends", offsetsWorksheet({ ...OFFSETS_EXAMPLE.typed, ends: "widths", line: "middle" }), "1,195 sq ft", ["32 ft ÷ 2 + 50 ft + 45 ft + 17 ft ÷ 2 = 119½ ft.", "119½ ft × 10 ft = 1,195 sq ft."]],
    ["an average radius", averageRadiusWorksheet(AVERAGE_RADIUS_EXAMPLE.typed), "3,578 sq ft", ["All together: 32 ft + 36 ft + 41 ft + 38 ft + 33 ft + 30 ft + 29 ft + 31 ft = 270 ft.", "Average of the 8 distances: 270 ft ÷ 8 = 33¾ ft.", "33¾ ft × 33¾ ft = 1,139.06 sq ft."]],
  ])("%s", (_shape, outcome, answer, steps) => {
    expect(answersOf(outcome)).toEqual([answer]);
    expect(stepsOf(outcome).slice(0, steps.length)).toEqual(steps);
    expect(worked(outcome).drawn.outline.length).toBeGreaterThan(2);
  });
});

test("feet and inches are lengths, and the acres stand beside", () => {
  const outcome = rectangleWorksheet({ length: "43 ft 6 in", width: "10'" });
  expect(answersOf(outcome)).toEqual(["435 sq ft"]);
  expect(stepsOf(outcome).at(-1)).toBe("In acres: 435 sq ft ÷ 43,560 sq ft = 0.0099862 acre.");
});

test("however large it is, an area is worked out in square feet, from lengths to a thousandth of a foot", () => {
  const circle = circleWorksheet({ radius: "300 ft" });
  expect(stepsOf(circle)).toEqual(["300 ft × 300 ft = 90,000 sq ft.", "90,000 sq ft × 3.1415927 = 282,743.34 sq ft.", "In acres: 282,743.34 sq ft ÷ 43,560 sq ft = 6.4909 acres."]);
  expect(worked(circle).working.result).toBe("282,743 sq ft (6.491 acres, 2.63 ha).");
  const inches = rectangleWorksheet({ length: "37 ft 5 in", width: "101 ft 8 in" });
  expect(worked(inches).working.inputs.map(({ figure }) => figure)).toEqual(["37.4167 ft (37 ft 5 in)", "101.667 ft (101 ft 8 in)"]);
  expect(stepsOf(inches)[0]).toBe("37.4167 ft × 101.667 ft = 3,804.03 sq ft.");
});

test("refused by field: what is missing, what is no length, too few distances", () => {
  expect(refusedFields(rectangleWorksheet({ length: "", width: "0 ft" }))).toEqual(["length", "width"]);
  expect(refusedFields(triangleWorksheet({ base: "x", height: "3 lb" }))).toEqual(["base", "height"]);
  expect(refusedFields(trapezoidWorksheet({ side: "", otherSide: "", height: "" }))).toEqual(["side", "otherSide", "height"]);
  expect(refusedFields(circleWorksheet({ radius: "-3 ft" }))).toEqual(["radius"]);
  expect(refusedFields(offsetsWorksheet({ step: "", widths: "", ends: "", line: "" }))).toEqual(["step", "widths", "ends", "line"]);
  expect(refusedFields(offsetsWorksheet({ ...OFFSETS_EXAMPLE.typed, widths: "32" }))).toEqual(["widths"]);
  expect(firstSentence(averageRadiusWorksheet({ radii: "32, 36, 41" }))).toContain("measure at least 4");
});

test("a unit after the last side is that of all, is told beside each, and is asked about where others have none", () => {
  const meters = offsetsWorksheet({ ...OFFSETS_EXAMPLE.typed, ends: "widths", step: "3 m", widths: "10, 12, 11, 9 m" });
  expect(answersOf(meters)).toEqual(answersOf(offsetsWorksheet({ ...OFFSETS_EXAMPLE.typed, ends: "widths", step: "3 m", widths: "10 m, 12 m, 11 m, 9 m" })));
  expect(worked(meters).working.inputs[1]?.figure).toBe("32.8084 ft (10 m), 39.3701 ft (12 m), 36.0892 ft (11 m), 29.5276 ft (9 m)");
  const round = averageRadiusWorksheet({ radii: "10, 11, 12, 10 m" });
  expect(answersOf(round)).toEqual(answersOf(averageRadiusWorksheet({ radii: "10 m, 11 m, 12 m, 10 m" })));
  expect(worked(round).working.inputs[0]?.figure).toContain("32.8084 ft (10 m), 36.0892 ft (11 m)");
  expect(refusedFields(offsetsWorksheet({ ...OFFSETS_EXAMPLE.typed, widths: "10 m, 12, 11, 9 m" }))).toEqual(["widths"]);
  expect(refusedFields(averageRadiusWorksheet({ radii: "10, 11 m, 12, 10" }))).toEqual(["radii"]);
});

test("widths typed without a space behind the comma are the same widths, and a decimal comma is refused", () => {
  const widths = (text: string) => offsetsWorksheet({ ...OFFSETS_EXAMPLE.typed, step: "10 ft", widths: text });
  expect(answersOf(widths("32,150,145,17"))).toEqual(answersOf(widths("32, 150, 145, 17")));
  expect(refusedFields(widths("32,5; 150; 145"))).toEqual(["widths"]);
  expect(refusedFields(widths("32, 15000, 145"))).toEqual(["widths"]);
  expect(refusedFields(circleWorksheet({ radius: "10,000.1 ft" }))).toEqual(["radius"]);
});
