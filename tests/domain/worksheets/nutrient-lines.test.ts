import { expect, test } from "vitest";
import { densityOf } from "#domain/quantities/density";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { decimal } from "#domain/quantities/rational";
import { gradeOf, nutrientsDelivered } from "#domain/turf/nutrients";
import { bagLines, deliveredLines, densityFigure, elementLines, heldLines, liquidLines, nutrientTable, ounceLines, partsOfGrade, treatedLines, weightLines } from "#domain/worksheets/nutrient-lines";

const grade = gradeOf("20", "5", "0", "0.5");
const release = { kind: "slow-percent-of-product", percent: decimal("5") } as const;
const rate = rateOf("product-mass-per-area", "4", "lb per 1,000 sq ft");
const area = exactly("sq ft", "500");
const density = densityOf("10.65", "lb per gal");

function delivered() {
  const outcome = nutrientsDelivered(rate, { grade, release });
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  return outcome.value;
}

test("a grade's parts, with iron only where it is stated", () => {
  expect(partsOfGrade(grade).map(({ name }) => name)).toEqual(["N", "P2O5", "K2O", "Fe"]);
  expect(partsOfGrade(gradeOf("20", "5", "0")).map(({ name }) => name)).toEqual(["N", "P2O5", "K2O"]);
});

test("what is delivered, on 1,000 sq ft and on the area, without what there is none of", () => {
  expect(deliveredLines({ grade, release, rate, delivered: delivered(), area })).toEqual([
    "N: 4 lb × 20% = 0.8 lb per 1,000 sq ft.",
    "N on the area: 500 sq ft ÷ 1,000 sq ft × 0.8 lb = 0.4 lb.",
    "N on the area, in ounces: 0.4 lb × 16 oz wt = 6.4 oz wt.",
    "Slow-release share of the nitrogen: 5% ÷ 20% = 25%.",
    "Slow-release N: 0.8 lb × 25% = 0.2 lb per 1,000 sq ft.",
    "Slow-release N on the area: 500 sq ft ÷ 1,000 sq ft × 0.2 lb = 0.1 lb.",
    "Slow-release N on the area, in ounces: 0.1 lb × 16 oz wt = 1.6 oz wt.",
    "Quick-release N: 0.8 lb − 0.2 lb = 0.6 lb per 1,000 sq ft.",
    "Quick-release N on the area: 500 sq ft ÷ 1,000 sq ft × 0.6 lb = 0.3 lb.",
    "Quick-release N on the area, in ounces: 0.3 lb × 16 oz wt = 4.8 oz wt.",
    "P2O5: 4 lb × 5% = 0.2 lb per 1,000 sq ft.",
    "P2O5 on the area: 500 sq ft ÷ 1,000 sq ft × 0.2 lb = 0.1 lb.",
    "P2O5 on the area, in ounces: 0.1 lb × 16 oz wt = 1.6 oz wt.",
    "Fe: 4 lb × 0.5% = 0.02 lb per 1,000 sq ft.",
    "Fe on the area: 500 sq ft ÷ 1,000 sq ft × 0.02 lb = 0.01 lb.",
    "Fe on the area, in ounces: 0.01 lb × 16 oz wt = 0.16 oz wt.",
  ]);
  expect(nutrientTable(delivered(), area).rows.map(([name]) => name)).toEqual(["N", "of it quick-release", "of it slow-release", "P2O5", "K2O", "Fe"]);
  expect(elementLines(delivered())).toEqual(["As P: 0.2 lb × 0.44 = 0.088 lb per 1,000 sq ft."]);
});

test("liquids by their density", () => {
  expect(densityFigure(density)).toBe("10.65 lb per gal");
  expect(liquidLines(rate, exactly("lb", "2"), density)).toEqual(["By volume: 2 lb ÷ 10.65 lb × 128 fl oz = 24.0376 fl oz.", "By volume on 1,000 sq ft: 4 lb ÷ 10.65 lb × 128 fl oz = 48.0751 fl oz."]);
  expect(weightLines(rateOf("product-volume-per-area", "2", "gal per 1,000 sq ft"), rateOf("product-mass-per-area", "21.3", "lb per 1,000 sq ft"), density)).toEqual(["By weight: 2 gal × 10.65 lb = 21.3 lb per 1,000 sq ft."]);
  expect(weightLines(rate, rate, undefined)).toEqual([]);
  const ounces = rateOf("product-mass-per-area", "8", "oz wt per 1,000 sq ft");
  expect(weightLines(ounces, ounces, undefined)).toEqual(["In pounds: 8 oz wt ÷ 16 oz wt × 1 lb = ½ lb per 1,000 sq ft."]);
});

test("bags: what they hold, how many, how far they go", () => {
  expect(heldLines("N", decimal("16"), exactly("lb", "5"))).toEqual(["N: 5 lb × 16% = 0.8 lb.", "N, in ounces: 0.8 lb × 16 oz wt = 12.8 oz wt."]);
  expect(bagLines(exactly("lb", "50"), exactly("lb", "50"), { bags: 1n, leftOver: of("lb", 0n) })).toEqual(["Bags: 50 lb ÷ 50 lb = 1, so 1 whole bag."]);
  expect(treatedLines(exactly("lb", "100"), rateOf("nutrient-mass-per-area", "1", "lb per 1,000 sq ft"), exactly("sq ft", "100000"))).toEqual([
    "Area: 100 lb ÷ 1 lb × 1,000 sq ft = 100,000 sq ft.",
    "In acres: 100,000 sq ft ÷ 43,560 sq ft × 1 acre = 2.2957 acres.",
  ]);
  expect(ounceLines("N", exactly("lb", "0"))).toEqual([]);
});
