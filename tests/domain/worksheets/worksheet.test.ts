import { describe, expect, test } from "vitest";
import { averageRadiusWorksheet, circleWorksheet, offsetsWorksheet, rectangleWorksheet, trapezoidWorksheet, triangleWorksheet } from "#domain/worksheets/area";
import { bagSeedWorksheet } from "#domain/worksheets/bag-seed";
import { degreeDaysWorksheet } from "#domain/worksheets/degree-days";
import { cansWorksheet, knownRateWorksheet } from "#domain/worksheets/irrigation";
import { limeByLabWorksheet, limeByTableWorksheet } from "#domain/worksheets/lime";
import { nutrientsInBagWorksheet, nutrientsOfProductWorksheet, productForNutrientWorksheet } from "#domain/worksheets/nutrients";
import { potashWorksheet } from "#domain/worksheets/potash";
import { seedWorksheet } from "#domain/worksheets/seed";
import { SPRAY_HOURS_EXAMPLE, sprayHoursWorksheet } from "#domain/worksheets/spray-hours";
import { boomWorksheet, gunWorksheet, smallAreaWorksheet } from "#domain/worksheets/sprayer";
import { panLineWorksheet, testAreaWorksheet } from "#domain/worksheets/spreader";
import { TANK_MIX_EXAMPLE, tankMixWorksheet } from "#domain/worksheets/tank-mix";
import { topdressingDepthWorksheet, topdressingForDepthWorksheet } from "#domain/worksheets/topdressing";
import { type WorksheetOutcome } from "#domain/worksheets/worksheet";
import { bareFiguresOf, comesTo, faultsOf } from "../../support/read-working";
import { worked } from "../../support/worked";

// Every worksheet is followed by hand, with entries that do not come out even: feet and inches, acres, liquids by their
// density, metric units.

const tank = { ...TANK_MIX_EXAMPLE.typed, tank: "187 gal", carrier: "1.37 gal per 1,000 sq ft", area: "3.3 acres" } as const;
const liquid = { grade: "16-2-3-0.5Fe", density: "10.65 lb per gal", slow: "4.7" } as const;
const dated = "2026-03-01, 65.3, 40.8\n2026-03-02, 60.1, 49.9\n2026-03-03, 71.7, 44.6\n2026-03-04, 30, -4\n2026-03-05, 77.3, 51.2";

const SHEETS: readonly (readonly [name: string, outcome: WorksheetOutcome])[] = [
  ["a rectangle in feet and inches", rectangleWorksheet({ length: "37 ft 5 in", width: "101 ft 8 in" })],
  ["a rectangle in meters", rectangleWorksheet({ length: "12.7 m", width: "33 m" })],
  ["a rectangle of many acres", rectangleWorksheet({ length: "1,013 ft 7 in", width: "997 ft" })],
  ["a triangle", triangleWorksheet({ base: "37 ft 5 in", height: "19 ft 7 in" })],
  ["a trapezoid", trapezoidWorksheet({ side: "37 ft 5 in", otherSide: "41 ft 1 in", height: "101 ft 8 in" })],
  ["a circle of acres", circleWorksheet({ radius: "300 ft" })],
  ["a circle in feet and inches", circleWorksheet({ radius: "37 ft 5 in" })],
  ["widths with pointed ends", offsetsWorksheet({ step: "7 ft 5 in", widths: "32 ft 1 in; 50; 45 ft 7 in; 17", ends: "points", line: "edge" })],
  ["widths with blunt ends", offsetsWorksheet({ step: "3 m", widths: "32 ft 1 in; 50; 45 ft 7 in; 17", ends: "widths", line: "edge" })],
  ["an average radius", averageRadiusWorksheet({ radii: "31 ft 7 in; 36; 41 ft 1 in; 38; 33; 30; 29" })],
  ["a tank mix by 1,000 sq ft on acres", tankMixWorksheet({ ...tank, rate1: "1.3 fl oz per 1,000 sq ft", rate2: "0.25% v/v" })],
  ["a tank mix of pounds and gallons by the acre", tankMixWorksheet({ ...tank, rate1: "1.7 lb per acre", kind1: "wettable powder", rate2: "1.3 gal per acre", name3: "Iron", rate3: "2.2 lb per 1,000 sq ft", kind3: "fertilizer or water conditioner" })],
  ["a tank mix at an output by the acre", tankMixWorksheet({ ...tank, carrier: "143 gal per acre", area: "187,000 sq ft", rate1: "37 fl oz per acre", rate2: "0.3 oz wt per gal", kind2: "wettable powder", name3: "Feed", rate3: "1.3 gal per 1,000 sq ft", kind3: "soluble liquid" })],
  ["a metric tank mix", tankMixWorksheet({ ...tank, tank: "700 L", carrier: "5.5 L per 100 m2", area: "1.3 ha", rate1: "45 mL per 100 m2", rate2: "2 g per L", kind2: "wettable powder" })],
  ["lime by the table", limeByTableWorksheet({ acidity: "8.1", targetPh: "6.5", equivalent: "87", area: "3 acres", cap: "100" })],
  ["lime by the lab", limeByLabWorksheet({ recommended: "7,000 lb per acre", equivalent: "93.3", area: "1,234 m2", cap: "50" })],
  ["a liquid for nitrogen", productForNutrientWorksheet({ ...liquid, nutrient: "N", target: "0.83 lb per 1,000 sq ft", area: "8,363 sq ft", bag: "" })],
  ["bags for potash by the acre", productForNutrientWorksheet({ grade: "22-3-7", nutrient: "K2O", target: "37 lb per acre", area: "2.7 acres", bag: "22 kg", density: "", slow: "" })],
  ["a liquid's nutrients", nutrientsOfProductWorksheet({ ...liquid, rate: "6 fl oz per 1,000 sq ft", area: "2.7 acres" })],
  ["a liquid's nutrients by the gallon", nutrientsOfProductWorksheet({ ...liquid, density: "specific gravity 1.277", rate: "1.3 gal per 1,000 sq ft", area: "1,234 m2" })],
  ["a granule's nutrients", nutrientsOfProductWorksheet({ grade: "22-3-7", rate: "11.3 oz wt per 1,000 sq ft", area: "8,363 sq ft", density: "", slow: "5.3" })],
  ["a bag's nutrients", nutrientsInBagWorksheet({ grade: "22-3-7-1.3Fe", bag: "22 kg", target: "0.83" })],
  ["potash in several applications", potashWorksheet({ recommended: "97 lb per acre", table: "State lab, Mehlich 3", grade: "22-3-7", area: "2.7 acres", cap: "0.83", capBy: "the label" })],
  ["potash in one application", potashWorksheet({ recommended: "0.7", table: "State lab, Mehlich 3", grade: "0-0-51", area: "8,363 sq ft", cap: "0.83", capBy: "the label" })],
  ["topdressing", topdressingForDepthWorksheet({ area: "2.7 acres", depth: "3/16 in", density: "1.37 short ton per cu yd" })],
  ["topdressing by a load", topdressingDepthWorksheet({ volume: "13 cu yd", area: "8,363 sq ft" })],
  ["seed", seedWorksheet({ rate: "3.3 lb per 1,000 sq ft", use: "bare ground", area: "2.7 acres", purity: "96.3", germination: "83", price: "3.79" })],
  ["seed into turf", seedWorksheet({ rate: "2 kg per 100 m2", use: "overseeding", area: "8,363 sq ft", purity: "97.2", germination: "87", price: "" })],
  ["seed from the bag", bagSeedWorksheet({ rate: "7.3 lb per 1,000 sq ft", use: "bare ground", area: "2.7 acres" })],
  ["seed from the bag into turf", bagSeedWorksheet({ rate: "3.7 kg per 100 m2", use: "overseeding", area: "163 sq ft" })],
  ["a spreader", testAreaWorksheet({ area: "187 sq ft", collected: "7.3 oz wt\n7.1 oz wt\n7.7 oz wt", wanted: "5.3 lb per 1,000 sq ft", passes: "two-passes-crosswise" })],
  ["a spreader by the kilogram", testAreaWorksheet({ area: "93 m2", collected: "1.13 kg", wanted: "", passes: "one-pass" })],
  ["a line of pans", panLineWorksheet({ spacing: "1 ft 7 in", catches: "0, 1.3, 2.7, 3.1, 4.3, 3.7, 2.2, 0.9, 0", swath: "", pattern: "round-and-round" })],
  ["a line of pans at a swath", panLineWorksheet({ spacing: "50 cm", catches: "0, 1.3, 2.7, 3.1, 4.3, 3.7, 2.2, 0.9, 0", swath: "7 ft", pattern: "back-and-forth" })],
  ["a line of pans that is uneven at its effective swath", panLineWorksheet({ spacing: "2 ft", catches: "0, 2, 6, 9, 6, 4, 6, 9, 6, 2, 0", swath: "", pattern: "round-and-round" })],
  ["a boom", boomWorksheet({ caught: "37.3 fl oz\n38.1 fl oz\n36.9 fl oz", caughtSeconds: "47", nozzleSpacing: "19 in", course: "201 ft 7 in", courseSeconds: "37.3\n38.1", wanted: "2 gal/1,000", density: "10.65 lb per gal" })],
  ["a small area", smallAreaWorksheet({ area: "1/128 acre", used: "25.3 fl oz\n24.7 fl oz", wanted: "", density: "specific gravity 1.277" })],
  ["a hose and gun", gunWorksheet({ area: "1,013 sq ft", areaSeconds: "47\n49\n53", caught: "5.1 L", caughtSeconds: "47", wanted: "", density: "" })],
  ["irrigation at a known rate", knownRateWorksheet({ depth: "13 mm", rate: "1.27 in per hour", longestRun: "11", soak: "31" })],
  ["irrigation by cans", cansWorksheet({ depth: "0.37", cans: "0.21, 0.27, 0.22, 0.18, 0.23, 0.19, 0.29", minutes: "17", wind: "3", longestRun: "7", soak: "20" })],
  ["irrigation by cans, two of them empty", cansWorksheet({ depth: "0.37", cans: "0.21, 0.27, 0.22, 0, 0.23, 0.19, 0.29, 0", minutes: "17", wind: "3", longestRun: "", soak: "" })],
  ["spray hours", sprayHoursWorksheet(SPRAY_HOURS_EXAMPLE.typed)],
  ["spray hours over midnight", sprayHoursWorksheet({ ...SPRAY_HOURS_EXAMPLE.typed, hours: `${SPRAY_HOURS_EXAMPLE.typed.hours}\nmidnight, 61, 93, 1.5, 0.07\n1 am, 60.3, 95, 2, 0\n7 am, 63, 91, 4, 0`, hottestAfter: "84.5", hoursAfter: "3", rainfast: "2.5" })],
  ["degree days", degreeDaysWorksheet({ days: dated, start: "", method: "simple", base: "50", threshold: "10" })],
  ["degree days, reset", degreeDaysWorksheet({ days: dated, start: "", method: "reset", base: "47.5", threshold: "" })],
  ["degree days, 86/50", degreeDaysWorksheet({ days: dated, start: "", method: "86-50", base: "", threshold: "" })],
];

/** What is looked up in a table, what the repeats say, what comes after it, and what is only to be done. */
const NOT_WORKED_OUT = /^(?:The table's row|On the (?:left|right) the catch|Going by how|Mixing order|Cycle and soak|Temperature against|Wind above|Rain in the hour|Near sun|Largest Delta T|Wet bulb by trial)/u;

describe.each(SHEETS)("%s", (_name, outcome) => {
  const { working: own, answers, tables } = worked(outcome);
  // Of daily and hourly figures only the first is told; the others stand in the table that the steps name.
  const rows = tables.filter(({ caption }) => /^(?:Day by day|Hour by hour)/u.test(caption)).flatMap((table) => table.rows);
  const working = { ...own, inputs: [...own.inputs, { name: "The table", figure: rows.flat().join(", ") }] };

  test("comes to what every line of it says", () => {
    expect(faultsOf(working)).toEqual([]);
    expect(bareFiguresOf(working).filter((line) => !NOT_WORKED_OUT.test(line))).toEqual([]);
  });

  test("shows no answer that no line comes to", () => {
    expect(answers.filter(({ figure }) => !comesTo(working, figure)).map(({ figure, unit, of }) => `${figure} ${unit} ${of}`)).toEqual([]);
  });
});
