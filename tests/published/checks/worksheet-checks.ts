// What the worksheets show of published examples.
import * as area from "#domain/worksheets/area";
import { DEGREE_DAYS_EXAMPLE, degreeDaysWorksheet } from "#domain/worksheets/degree-days";
import { KNOWN_RATE_EXAMPLE, knownRateWorksheet } from "#domain/worksheets/irrigation";
import { LIME_BY_TABLE_EXAMPLE, limeByTableWorksheet } from "#domain/worksheets/lime";
import { NUTRIENTS_IN_BAG_EXAMPLE, NUTRIENTS_OF_PRODUCT_EXAMPLE, nutrientsInBagWorksheet, nutrientsOfProductWorksheet, PRODUCT_FOR_NUTRIENT_EXAMPLE, productForNutrientWorksheet } from "#domain/worksheets/nutrients";
import { POTASH_EXAMPLE, potashWorksheet } from "#domain/worksheets/potash";
import { SEED_EXAMPLE, seedWorksheet } from "#domain/worksheets/seed";
import { BOOM_EXAMPLE, boomWorksheet, GUN_EXAMPLE, gunWorksheet, SMALL_AREA_EXAMPLE, smallAreaWorksheet } from "#domain/worksheets/sprayer";
import { PAN_LINE_EXAMPLE, panLineWorksheet, TEST_AREA_EXAMPLE, testAreaWorksheet } from "#domain/worksheets/spreader";
import { TANK_MIX_EXAMPLE, tankMixWorksheet } from "#domain/worksheets/tank-mix";
import { TOPDRESSING_DEPTH_EXAMPLE, TOPDRESSING_FOR_DEPTH_EXAMPLE, topdressingDepthWorksheet, topdressingForDepthWorksheet } from "#domain/worksheets/topdressing";
import { type WorksheetOutcome } from "#domain/worksheets/worksheet";
import { printedTo, type PublishedCheck } from "../../support/published-check";
import { worked } from "../../support/worked";

/*
 * What the worksheets show, read back from their words, against worked examples in print. The functions behind them are
 * checked to more digits elsewhere in this folder; here it is the figure that an applicator reads.
 * Left out: a printed 88 gal per acre on the Oklahoma State page, a misprint (its own formula gives 86.8).
 */

const CHARACTERS: Readonly<Record<string, string>> = { "¼": ".25", "½": ".5", "¾": ".75" };

/** The number that an answer shows. */
function shown(outcome: WorksheetOutcome, place = 0): number {
  const figure = worked(outcome).answers[place]?.figure ?? "";
  return Number(figure.replaceAll(",", "").replace(/[¼½¾]/u, (character) => CHARACTERS[character] ?? ""));
}

/** The number in a cell of the first table. */
function cell(outcome: WorksheetOutcome, row: number, column: number): number {
  return Number.parseFloat((worked(outcome).tables[0]?.rows[row]?.[column] ?? "").replaceAll(",", ""));
}

const NC_STATE = "NC State Extension, Caring for Your Lawn and the Environment, https://content.ces.ncsu.edu/caring-for-your-lawn-and-the-environment";
const NEBRASKA = "University of Nebraska-Lincoln, http://byf.unl.edu/LawnFertCalc";
const OHIO = "Ohio State Bulletin 817, http://ohioline.osu.edu/b817/";
const GROUNDS = "Grounds Maintenance, http://grounds-mag.com/mag/grounds_maintenance_calculate_areas/";
const GERKEN = "Gerken, Oklahoma State Univ.-OKC, https://paperzz.com/doc/9245112/";
const LOUISIANA = "LSU AgCenter, Pure Live Seed Calculation";
const CROPWATCH = "University of Nebraska CropWatch 2016, https://cropwatch.unl.edu/2016/setting-sprayer-flow-rate-non-water-solutions";

const nutrient = PRODUCT_FOR_NUTRIENT_EXAMPLE.typed;
const onThousand = (grade: string) => productForNutrientWorksheet({ ...nutrient, grade, area: "1,000 sq ft" });
const bag = (grade: string, weight: string) => nutrientsInBagWorksheet({ ...NUTRIENTS_IN_BAG_EXAMPLE.typed, grade, bag: weight, target: "1" });
const mix = TANK_MIX_EXAMPLE.typed;
const gerken = { ...mix, tank: "100 gal", carrier: "40 gal per acre", area: "25 acres", rate1: "3.6 pt per acre" };
const SEEN = "seen" as const;

export const WORKSHEET_CHECKS: readonly PublishedCheck[] = [
  { row: "fertilizer.6", name: "28-3-6 at 1 lb N on 6,000 sq ft, lb (printed 3.57 x 6)", expected: 21.42, tolerance: 0.011, source: NEBRASKA, status: SEEN, computed: () => shown(productForNutrientWorksheet(nutrient)) },
  { row: "fertilizer.8", name: "24-6-6 at 1 lb N, lb", expected: 4.17, tolerance: printedTo(2), source: NC_STATE, status: SEEN, computed: () => shown(onThousand("24-6-6")) },
  { row: "fertilizer.9", name: "10-10-10 at 1 lb N, lb", expected: 10, tolerance: printedTo(0), source: NC_STATE, status: SEEN, computed: () => shown(onThousand("10-10-10")) },
  { row: "fertilizer.9", name: "26-3-4 at 1 lb N, to the pound", expected: 4, tolerance: 0.5, source: NC_STATE, status: SEEN, computed: () => shown(onThousand("26-3-4")) },
  { row: "fertilizer.12", name: "20-5-10 at 1 lb N, lb", expected: 5, tolerance: printedTo(2), source: "UMass Extension, Rotary Spreader Calibration", status: SEEN, computed: () => shown(onThousand("20-5-10")) },
  { row: "fertilizer.20", name: "75 lb N from 28 % UAN at 10.65 lb per gal, gal", expected: 25.151, tolerance: 0.006, source: CROPWATCH, status: SEEN, computed: () => shown(productForNutrientWorksheet({ ...nutrient, grade: "28-0-0", target: "75 lb per acre", area: "1 acre", density: "10.65 lb per gal" }), 1) },
  { row: "fertilizer.11", name: "16-4-8 at 6.25 lb: N, lb", expected: 1, tolerance: printedTo(2), source: "McCarty and Cisar, UF/IFAS ENH-73 (1995)", status: SEEN, computed: () => shown(nutrientsOfProductWorksheet(NUTRIENTS_OF_PRODUCT_EXAMPLE.typed)) },
  { row: "fertilizer.11", name: "16-4-8 at 6.25 lb: K2O, oz (printed 0.5 lb)", expected: 8, tolerance: printedTo(1), source: "McCarty and Cisar, UF/IFAS ENH-73 (1995)", status: SEEN, computed: () => shown(nutrientsOfProductWorksheet(NUTRIENTS_OF_PRODUCT_EXAMPLE.typed), 2) },
  { row: "fertilizer.10", name: "40 lb of 10-6-4: N, lb", expected: 4, tolerance: printedTo(1), source: NC_STATE, status: SEEN, computed: () => shown(bag("10-6-4", "40 lb")) },
  { row: "fertilizer.10", name: "40 lb of 10-6-4: phosphate, lb", expected: 2.4, tolerance: printedTo(1), source: NC_STATE, status: SEEN, computed: () => shown(bag("10-6-4", "40 lb"), 1) },
  { row: "fertilizer.18", name: "30 lb of 24-2-8: N, lb", expected: 7.2, tolerance: printedTo(1), source: "Cornell Coop. Ext. Suffolk, https://paperzz.com/doc/8583758/", status: SEEN, computed: () => shown(bag("24-2-8", "30 lb")) },
  { row: "fertilizer.18", name: "30 lb of 24-2-8 treats about, sq ft", expected: 7000, tolerance: 500, source: "Cornell Coop. Ext. Suffolk, https://paperzz.com/doc/8583758/", status: SEEN, computed: () => shown(bag("24-2-8", "30 lb"), 3) },
  { row: "sprayers.14", name: "25 fl oz on 1/128 acre, gal per acre", expected: 25, tolerance: printedTo(0), source: "UF/IFAS Alachua Co. 2022", status: SEEN, computed: () => shown(smallAreaWorksheet(SMALL_AREA_EXAMPLE.typed), 1) },
  { row: "flow.2", name: "80 fl oz on 1/128 acre, gal per acre", expected: 80, tolerance: printedTo(0), source: `${OHIO}b817_07.html`, status: SEEN, computed: () => shown(smallAreaWorksheet({ ...SMALL_AREA_EXAMPLE.typed, used: "80 fl oz" }), 1) },
  { row: "hoses.3", name: "gun: 1.4 gal in 50 s, 1,000 sq ft in 50 s", expected: 1.4, tolerance: printedTo(1), source: "Calibrating Homeowner Equipment, https://vdocuments.site/calibrating-homeowner-equipment.html", status: SEEN, computed: () => shown(gunWorksheet(GUN_EXAMPLE.typed)) },
  { row: "hoses.1", name: "hose-end: 1.25 gal in 20 s, 250 sq ft in 20 s, gal per 1,000 (printed step times 4)", expected: 5, tolerance: printedTo(1), source: "National Pesticide Stewardship, Hose-end Sprayer Calibration", status: "calc", computed: () => shown(gunWorksheet({ ...GUN_EXAMPLE.typed, area: "250 sq ft", areaSeconds: "20", caught: "1.25 gal", caughtSeconds: "20" })) },
  { row: "sprayers.11", name: "boom: 101 fl oz a minute, 3 mph, 18 in, gal per acre by the page's own formula", expected: 86.8, tolerance: printedTo(1), source: "Oklahoma State, http://www.turf.okstate.edu/FactSheets/sprayer.htm", status: "calc", computed: () => shown(boomWorksheet(BOOM_EXAMPLE.typed), 1) },
  { row: "sprayers.23", name: "22.6 gal of water for 20 gal per acre of 28 % N (10.65 lb per gal)", expected: 20, tolerance: 0.1, source: CROPWATCH, status: SEEN, computed: () => shown(smallAreaWorksheet({ ...SMALL_AREA_EXAMPLE.typed, used: "22.6 fl oz", density: "10.65 lb per gal" }), 1) },
  { row: "spreaders.7", name: "half of the middle's catch at 6 ft on either side: swath, ft", expected: 12, tolerance: printedTo(0), source: `${OHIO}b817_13.html`, status: SEEN, computed: () => shown(panLineWorksheet(PAN_LINE_EXAMPLE.typed)) },
  { row: "spreaders.6", name: "5 lb target in two passes: a setting that gives 2.5 lb holds", expected: 2.5, tolerance: printedTo(1), source: "UMass Extension, Rotary Spreader Calibration", status: SEEN, computed: () => shown(testAreaWorksheet(TEST_AREA_EXAMPLE.typed)) },
  { row: "sprayers.12", name: "32 oz per acre at 20 gal per acre in 20 gal, fl oz", expected: 32, tolerance: printedTo(1), source: "Oklahoma State, http://www.turf.okstate.edu/FactSheets/sprayer.htm", status: SEEN, computed: () => cell(tankMixWorksheet(mix), 0, 1) },
  { row: "sprayers.19", name: "3.6 pt per acre on 25 acres, gal", expected: 11.25, tolerance: printedTo(2), source: GERKEN, status: SEEN, computed: () => wholeJobGallons() },
  { row: "areas.1", name: "rectangle 90 x 50, sq ft", expected: 4500, tolerance: printedTo(0), source: GROUNDS, status: SEEN, computed: () => shown(area.rectangleWorksheet(area.RECTANGLE_EXAMPLE.typed)) },
  { row: "areas.2", name: "triangle 125 x 75, sq ft (printed cut off)", expected: 4687, tolerance: 0.5, source: GROUNDS, status: SEEN, computed: () => shown(area.triangleWorksheet(area.TRIANGLE_EXAMPLE.typed)) },
  { row: "areas.3", name: "trapezoid 50, 70, height 30, sq ft", expected: 1800, tolerance: printedTo(0), source: GROUNDS, status: SEEN, computed: () => shown(area.trapezoidWorksheet(area.TRAPEZOID_EXAMPLE.typed)) },
  { row: "areas.4", name: "circle of radius 30, sq ft (printed with 3.14)", expected: 2826, tolerance: 2, source: GROUNDS, status: SEEN, computed: () => shown(area.circleWorksheet(area.CIRCLE_EXAMPLE.typed)) },
  { row: "areas.7", name: "offsets every 10 ft, sq ft", expected: 1440, tolerance: printedTo(0), source: GROUNDS, status: SEEN, computed: () => shown(area.offsetsWorksheet(area.OFFSETS_EXAMPLE.typed)) },
  { row: "infiltration.4", name: "1/2 in at 1.28 in an hour, min (printed 23.4, run 12, soak 30, run 12)", expected: 24, tolerance: printedTo(0), source: "https://calcady.com/trade/landscaping/precipitation-rate", status: SEEN, computed: () => shown(knownRateWorksheet(KNOWN_RATE_EXAMPLE.typed)) },
  { row: "degree-days.4", name: "base 50, 65/40, degree days", expected: 2.5, tolerance: printedTo(1), source: "Nugent, Michigan State, Calculating Growing Degree Days", status: SEEN, computed: () => cell(degreeDaysWorksheet(DEGREE_DAYS_EXAMPLE.typed), 0, 3) },
  { row: "degree-days.5", name: "base 50, 60/35, degree days", expected: 0, tolerance: printedTo(1), source: "Nugent, Michigan State, Calculating Growing Degree Days", status: SEEN, computed: () => cell(degreeDaysWorksheet(DEGREE_DAYS_EXAMPLE.typed), 1, 3) },
  { row: "degree-days.7", name: "base 50, 70/50, degree days", expected: 10, tolerance: printedTo(0), source: "Iowa State Agron 541", status: SEEN, computed: () => cell(degreeDaysWorksheet(DEGREE_DAYS_EXAMPLE.typed), 2, 3) },
  { row: "degree-days.6", name: "base 50, 75/27, degree days", expected: 1, tolerance: printedTo(0), source: "Virginia Tech 2007, via http://kentcoopextension.blogspot.com/2008/03/", status: "seen-2nd", computed: () => shown(degreeDaysWorksheet({ ...DEGREE_DAYS_EXAMPLE.typed, days: "2026-04-01, 75, 27", threshold: "" })) },
  { row: "care.7", name: "20 lb of pure live seed, 48 % and 80 %, lb (printed 52.6 after rounding to 0.38)", expected: 52.6, tolerance: 0.6, source: LOUISIANA, status: SEEN, computed: () => shown(seedWorksheet(SEED_EXAMPLE.typed)) },
  { row: "lime.10", name: "acidity 7.8 to pH 7.0, lb of calcium carbonate on 1,000 sq ft", expected: 180, tolerance: printedTo(0), source: "Penn State AASL, turf handbook, Table 1", status: SEEN, computed: () => shown(limeByTableWorksheet({ ...LIME_BY_TABLE_EXAMPLE.typed, equivalent: "100", area: "1,000 sq ft" })) },
  { row: "lime.38", name: "acidity 25.7 to pH 6.0, lb of calcium carbonate on 1,000 sq ft", expected: 410, tolerance: printedTo(0), source: "Penn State AASL, turf handbook, Table 1", status: SEEN, computed: () => shown(limeByTableWorksheet({ ...LIME_BY_TABLE_EXAMPLE.typed, acidity: "25.7", targetPh: "6.0", equivalent: "100", area: "1,000 sq ft" })) },
  { row: "fertilizer.11", name: "0.5 lb K2O from 16-4-8, lb of product", expected: 6.25, tolerance: printedTo(2), source: "McCarty and Cisar, UF/IFAS ENH-73 (1995)", status: SEEN, computed: () => shown(potashWorksheet(POTASH_EXAMPLE.typed)) },
  { row: "care.21", name: "topdressing 1/4 in on 2,000 sq ft, cu yd, unrounded (printed 1.6)", expected: 1.543, tolerance: 0.005, source: "Deschutes Recycling, https://deschutesrecycling.com/composting/", status: "calc", computed: () => shown(topdressingForDepthWorksheet(TOPDRESSING_FOR_DEPTH_EXAMPLE.typed)) },
  { row: "care.24", name: "324 sq ft an inch deep of sand at 1.35 short tons, lb", expected: 2700, tolerance: printedTo(0), source: "https://www.waupacasand.com/2011/09/01/sand-math-how-much-sand-do-i-need-for-my-project/", status: SEEN, computed: () => shown(topdressingForDepthWorksheet({ area: "324 sq ft", depth: "1 in", density: "1.35 short ton per cu yd" }), 1) },
  { row: "sand.4", name: "20.3 cu ft on 1,000 sq ft, in (printed as 6 mm)", expected: 0.236, tolerance: 0.02, source: "Woods 3 Aug 2020 (Schmid et al.)", status: SEEN, computed: () => shown(topdressingDepthWorksheet(TOPDRESSING_DEPTH_EXAMPLE.typed)) },
];

/** The whole job stands in the last column, as "11 gal 32 fl oz". */
function wholeJobGallons(): number {
  const words = worked(tankMixWorksheet(gerken)).tables[0]?.rows[0]?.at(-1) ?? "";
  const [, gallons = "NaN", ounces = "0"] = /^([\d,]+) gal(?: ([\d.]+) fl oz)?$/u.exec(words) ?? [];
  return Number(gallons) + Number(ounces) / 128;
}
