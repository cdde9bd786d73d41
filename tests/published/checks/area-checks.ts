// Areas of lawns from their measures, as printed, in square feet.
import { expect } from "vitest";
import { inUnit, of } from "#domain/quantities/quantity";
import { toNumber } from "#domain/quantities/rational";
import { fromSignedAmount } from "#domain/quantities/signed-quantity";
import { measureArea, type MeasuredShape } from "#domain/turf/field-area";
import { printedTo, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

const GROUNDS = "Grounds Maintenance, Calculate areas, http://grounds-mag.com/mag/grounds_maintenance_calculate_areas/";
const GERKEN = "Gerken, Oklahoma State Univ.-OKC, https://paperzz.com/doc/9245112/";
const SOD = "several sod growers' pages";
const CALIFORNIA = "Univ. of California ANR, https://ucanr.edu/blogs/blogcore/postdetail.cfm?postnum=16761";
const VIRGINIA = "Virginia Turfgrass Council, https://vaturf.org/topics/topic-size-of-treatment-area-2-2-2/";

const feet = (value: number) => of("ft", BigInt(value));

function squareFeet(shape: MeasuredShape): number {
  const outcome = measureArea(shape);
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  return toNumber(inUnit(outcome.value.area, "sq ft"));
}

/** A circle that the page worked with 3.14 is off by this part: pi / 3.14 - 1. */
const CRUDE_PI = Math.PI / 3.14 - 1;

const rows: readonly PublishedRow[] = [
  { row: "areas.1", inputs: "rectangle 90 x 50", expected: 4500, tolerance: printedTo(0), source: GROUNDS, status: "seen", computed: () => squareFeet({ kind: "rectangle", length: feet(90), width: feet(50) }), second: 90 * 50 },
  { row: "areas.2", inputs: "triangle, base 125, height 75 (printed cut off)", expected: 4687, tolerance: 0.5, source: GROUNDS, status: "seen", computed: () => squareFeet({ kind: "triangle", base: feet(125), height: feet(75) }), second: (125 * 75) / 2 },
  { row: "areas.3", inputs: "trapezoid 50 and 70, height 30", expected: 1800, tolerance: printedTo(0), source: GROUNDS, status: "seen", computed: () => squareFeet({ kind: "trapezoid", parallelSides: [feet(50), feet(70)], height: feet(30) }), second: ((50 + 70) / 2) * 30 },
  { row: "areas.4", inputs: "circle, radius 30 (printed with 3.14)", expected: 2826, tolerance: 2826 * CRUDE_PI + 0.5, source: GROUNDS, status: "seen", computed: () => squareFeet({ kind: "circle", radius: feet(30) }), second: Math.PI * 900 },
  { row: "areas.5", inputs: "circle by 0.8 x diameter squared, diameter 50", expected: 2000, tolerance: printedTo(0), source: GROUNDS, status: "seen", computed: () => squareFeet({ kind: "circle by rule of thumb", diameter: feet(50) }), second: 0.8 * 2500 },
  { row: "areas.6", inputs: "oval by 0.8 x length x width, 60 x 40", expected: 1920, tolerance: printedTo(0), source: GROUNDS, status: "seen", computed: () => squareFeet({ kind: "oval by rule of thumb", length: feet(60), width: feet(40) }), second: 0.8 * 2400 },
  { row: ["areas.7", "areas.10"], inputs: "offsets, widths every 10 ft of 32, 50, 45, 17", expected: 1440, tolerance: printedTo(0), source: GROUNDS, status: "seen", computed: () => squareFeet({ kind: "offsets, sum of widths", step: feet(10), widths: [32, 50, 45, 17].map(feet) }), second: (32 + 50 + 45 + 17) * 10 },
  { row: "areas.8", inputs: "circle, diameter 80 (printed with 3.14)", expected: 5024, tolerance: 5024 * CRUDE_PI + 0.5, source: GERKEN, status: "seen", computed: () => squareFeet({ kind: "circle", radius: feet(40) }), second: Math.PI * 1600 },
  { row: "areas.8", inputs: "triangle 30 x 26", expected: 390, tolerance: printedTo(0), source: GERKEN, status: "seen", computed: () => squareFeet({ kind: "triangle", base: feet(30), height: feet(26) }), second: 390 },
  { row: "areas.8", inputs: "rectangle 60 x 25", expected: 1500, tolerance: printedTo(0), source: GERKEN, status: "seen", computed: () => squareFeet({ kind: "rectangle", length: feet(60), width: feet(25) }), second: 1500 },
  { row: "areas.9", inputs: "circle, radius 10", expected: 314, tolerance: printedTo(0), source: SOD, status: "seen", computed: () => squareFeet({ kind: "circle", radius: feet(10) }), second: Math.PI * 100 },
  { row: "areas.9", inputs: "triangle 10 x 20", expected: 100, tolerance: printedTo(0), source: SOD, status: "seen", computed: () => squareFeet({ kind: "triangle", base: feet(10), height: feet(20) }), second: 100 },
  { row: "areas.21", inputs: "rectangle 80 x 60", expected: 4800, tolerance: printedTo(0), source: CALIFORNIA, status: "seen", computed: () => squareFeet({ kind: "rectangle", length: feet(80), width: feet(60) }), second: 4800 },
  { row: "areas.21", inputs: "circle, diameter 40 (printed with 3.14)", expected: 1256, tolerance: 1256 * CRUDE_PI + 0.5, source: CALIFORNIA, status: "seen", computed: () => squareFeet({ kind: "circle", radius: feet(20) }), second: Math.PI * 400 },
  { row: "areas.22", inputs: "rectangle 50 x 30", expected: 1500, tolerance: printedTo(0), source: VIRGINIA, status: "seen", computed: () => squareFeet({ kind: "rectangle", length: feet(50), width: feet(30) }), second: 1500 },
  { row: "areas.22", inputs: "triangle, base 40, height 80", expected: 1600, tolerance: printedTo(0), source: VIRGINIA, status: "seen", computed: () => squareFeet({ kind: "triangle", base: feet(40), height: feet(80) }), second: 1600 },
];

const moreRows: readonly PublishedRow[] = [
  { row: "areas.10", inputs: "the same offsets by trapezoids (the other of two ways)", expected: 1195, tolerance: 1e-9, source: `${GROUNDS} (widths)`, status: "calc", computed: () => squareFeet({ kind: "offsets, trapezoids", step: feet(10), widths: [32, 50, 45, 17].map(feet) }), second: ((32 + 50) / 2 + (50 + 45) / 2 + (45 + 17) / 2) * 10 },
];

const noArea: PublishedStatement = {
  row: "areas.16",
  says: "no corner or one makes no area; ours refuses it instead of taking it for zero",
  source: "GeographicLib 2.1 Python tests",
  status: "seen",
  holds: () => {
    const corner = { east: fromSignedAmount("length", 0n), north: fromSignedAmount("length", 0n) };
    for (const corners of [[], [corner]]) expect(measureArea({ kind: "corners", corners }).ok).toBe(false);
  },
};

export const AREA_CHECKS: readonly PublishedEntry[] = [...rows, ...moreRows, noArea];
