import { expect, test } from "vitest";
import { TOPDRESSING_DEPTH_EXAMPLE, TOPDRESSING_FOR_DEPTH_EXAMPLE, topdressingDepthWorksheet, topdressingForDepthWorksheet } from "#domain/worksheets/topdressing";
import { answersOf, refusedFields, stepsOf, worked } from "../../support/worked";

test("the material for a depth, in cubic yards", () => {
  const outcome = topdressingForDepthWorksheet(TOPDRESSING_FOR_DEPTH_EXAMPLE.typed);
  expect(answersOf(outcome)).toEqual(["1.54 cu yd"]);
  expect(stepsOf(outcome)).toEqual(["Volume: 2,000 sq ft × ¼ in ÷ 12 in = 41.6667 cu ft.", "In cubic yards: 41.6667 cu ft ÷ 27 cu ft × 1 cu yd = 1.5432 cu yd."]);
});

test("by weight too where its seller states it", () => {
  const outcome = topdressingForDepthWorksheet({ area: "2,000", depth: "1/4", density: "2,700 lb per cu yd" });
  expect(answersOf(outcome)).toEqual(["1.54 cu yd", "4,167 lb"]);
  expect(stepsOf(outcome).at(-1)).toBe("Weight: 1.5432 cu yd × 2,700 lb = 4,166.67 lb.");
  expect(worked(outcome).working.source).toContain("2,700 lb to the cubic yard");
});

test("acres become square feet first", () => {
  expect(stepsOf(topdressingForDepthWorksheet({ area: "1/2 acre", depth: "1/4 in", density: "" }))[0]).toContain("× 43,560 sq ft = 21,780 sq ft");
});

test("how deep a load lies", () => {
  const outcome = topdressingDepthWorksheet(TOPDRESSING_DEPTH_EXAMPLE.typed);
  expect(answersOf(outcome)).toEqual(["0.244 in"]);
  expect(worked(outcome).working.result).toContain("6.19 mm");
  expect(stepsOf(outcome)).toEqual(["Depth: 20.3 cu ft ÷ 1,000 sq ft × 12 in = 0.2436 in."]);
});

test("refused by field", () => {
  expect(refusedFields(topdressingForDepthWorksheet({ area: "2,000", depth: "1/4", density: "2,700 lb per gal" }))).toEqual(["density"]);
  expect(refusedFields(topdressingForDepthWorksheet({ area: "", depth: "0", density: "heavy" }))).toEqual(["area", "depth", "density"]);
  expect(refusedFields(topdressingDepthWorksheet({ volume: "2 lb", area: "x" }))).toEqual(["volume", "area"]);
});
