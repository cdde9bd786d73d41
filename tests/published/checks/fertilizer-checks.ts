import { type Outcome } from "#domain/foundation/outcome";
import { densityOf, massOf } from "#domain/quantities/density";
import { type ExactQuantity, exactly, measureInUnit, multiplyExact } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { coverage, type Rate, rateIn, rateOf, times } from "#domain/quantities/rate";
import { decimal, toNumber } from "#domain/quantities/rational";
import {
  EXTENSION_FACTORS,
  gradeOf,
  type Nutrient,
  nutrientsDelivered,
  nutrientsIn,
  productForNutrient,
  slowShareOfNitrogen,
} from "#domain/turf/nutrients";
import { printedTo, type PublishedRow } from "../../support/published-check";

const notStated = { kind: "not-stated" } as const;
const perThousand = "lb per 1,000 sq ft";

function valueOf<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  return outcome.value;
}

function pounds(quantity: ExactQuantity<"mass"> | "not-stated"): number {
  if (quantity === "not-stated") throw new Error("the label states it");
  return toNumber(measureInUnit(quantity, "lb"));
}

function grade(text: string) {
  const [nitrogen = "", phosphate = "", potash = ""] = text.split("-");
  return gradeOf(nitrogen, phosphate, potash);
}

function product(text: string, nutrientPounds: string, nutrient: Nutrient = "N"): Rate<"product-mass-per-area"> {
  return valueOf(productForNutrient(nutrient, rateOf("nutrient-mass-per-area", nutrientPounds, perThousand), grade(text)));
}

function poundsPerThousand(text: string, nutrientPounds = "1"): number {
  return toNumber(rateIn(product(text, nutrientPounds), perThousand));
}

function onLawn(text: string, squareFeet: bigint): number {
  return pounds(times(product(text, "1"), of("sq ft", squareFeet)));
}

function inBag(text: string, weight: string, nutrient: "nitrogen" | "phosphate" | "phosphorus" | "potash" | "potassium"): number {
  return pounds(valueOf(nutrientsIn(exactly("lb", weight), { grade: grade(text), release: notStated }))[nutrient]);
}

function delivered(text: string, rate: string, nutrient: "nitrogen" | "phosphate" | "potash"): number {
  const nutrients = nutrientsDelivered(rateOf("product-mass-per-area", rate, perThousand), {
    grade: grade(text),
    release: notStated,
  });
  return toNumber(rateIn(valueOf(nutrients)[nutrient], perThousand));
}

function slowShare(text: string, percent: string): number {
  return 100 * toNumber(valueOf(slowShareOfNitrogen(grade(text), { kind: "slow-percent-of-product", percent: decimal(percent) })));
}

const NEBRASKA = "Univ. of Nebraska-Lincoln, Lawn Fertilizer Calculations, http://byf.unl.edu/LawnFertCalc";
const ALABAMA = "Alabama Coop. Extension, Home Grounds post 387, https://sites.aces.edu/group/homegrounds/blog/";
const NC_STATE = "NC State Extension, Caring for Your Lawn and the Environment, https://content.ces.ncsu.edu/caring-for-your-lawn-and-the-environment";
const FLORIDA = "McCarty & Cisar, UF/IFAS ENH-73 (1995), https://docslib.org/doc/2582559/";
const UMASS = "UMass Extension, Rotary Spreader Calibration, https://ag.umass.edu/turf/fact-sheets/rotary-spreader-calibration-procedures";
const LSU = "LSU AgCenter (Strahan) via The Advocate";
const PENN_STATE = "Penn State, How Much Phosphorus and Potassium are Really in Your Fertilizer? (19 Dec 2022), https://plantscience.psu.edu/research/centers/turf/extension/factsheets/how-much";
const FIGART = "UF/IFAS agent Figart, Jacksonville Times-Union 2021-03-20";
const TAMPA = "Tampa Bay Estuary Program, http://tbep.org/ (slow-release page)";
const SUFFOLK = "Cornell Coop. Ext. Suffolk, https://paperzz.com/doc/8583758/";
const WOODS = "Woods, Asian Turfgrass Center 19 Mar 2015, https://www.blog.asianturfgrass.com/2015/03/calculating-how-much-of-an-element-is-applied-in-a-liquid-fertilizer.html";
const CROPWATCH = "Univ. of Nebraska CropWatch 2016, https://cropwatch.unl.edu/2016/setting-sprayer-flow-rate-non-water-solutions";

const rows: readonly PublishedRow[] = [
  { row: ["fertilizer.1", "fertilizer.2", "fertilizer.6"], inputs: "28-3-6, 1 lb N per 1,000", expected: 3.57, tolerance: printedTo(2), source: NEBRASKA, status: "seen", computed: () => poundsPerThousand("28-3-6"), second: 100 / 28 },
  { row: "fertilizer.6", inputs: "28-3-6, 1 lb N on 6,000 sq ft (printed 3.57 x 6)", expected: 21.42, tolerance: 6 * printedTo(2), source: NEBRASKA, status: "seen", computed: () => onLawn("28-3-6", 6000n), second: 600 / 28 },
  { row: "fertilizer.7", inputs: "10-10-10, 1 lb N", expected: 10, tolerance: printedTo(0), source: ALABAMA, status: "seen", computed: () => poundsPerThousand("10-10-10"), second: 10 },
  { row: "fertilizer.7", inputs: "15-0-15, 1 lb N (printed cut off)", expected: 6.6, tolerance: 0.1, source: ALABAMA, status: "seen", computed: () => poundsPerThousand("15-0-15"), second: 100 / 15 },
  { row: "fertilizer.7", inputs: "26-3-8, 1 lb N", expected: 3.8, tolerance: 0.05, source: ALABAMA, status: "seen", computed: () => poundsPerThousand("26-3-8"), second: 100 / 26 },
  { row: "fertilizer.7", inputs: "0.5-0.5-0.5, 1 lb N", expected: 200, tolerance: printedTo(0), source: ALABAMA, status: "seen", computed: () => poundsPerThousand("0.5-0.5-0.5"), second: 200 },
  { row: "fertilizer.8", inputs: "24-6-6, 1 lb N", expected: 4.17, tolerance: printedTo(2), source: NC_STATE, status: "seen", computed: () => poundsPerThousand("24-6-6"), second: 100 / 24 },
  { row: "fertilizer.8", inputs: "24-6-6, 1 lb N on 5,000 sq ft (printed 4 x 5)", expected: 20, tolerance: 5 * 0.17, source: NC_STATE, status: "seen", computed: () => onLawn("24-6-6", 5000n), second: 500 / 24 },
  { row: "fertilizer.9", inputs: "6-2-0, 1 lb N, to the pound", expected: 17, tolerance: printedTo(0), source: NC_STATE, status: "seen", computed: () => poundsPerThousand("6-2-0"), second: 100 / 6 },
  { row: "fertilizer.9", inputs: "10-10-10, 1 lb N, to the pound", expected: 10, tolerance: printedTo(0), source: NC_STATE, status: "seen", computed: () => poundsPerThousand("10-10-10"), second: 10 },
  { row: "fertilizer.9", inputs: "14-3-6, 1 lb N, to the pound", expected: 7, tolerance: printedTo(0), source: NC_STATE, status: "seen", computed: () => poundsPerThousand("14-3-6"), second: 100 / 14 },
  { row: "fertilizer.9", inputs: "20-5-5, 1 lb N, to the pound", expected: 5, tolerance: printedTo(0), source: NC_STATE, status: "seen", computed: () => poundsPerThousand("20-5-5"), second: 5 },
  { row: "fertilizer.9", inputs: "26-3-4, 1 lb N, to the pound", expected: 4, tolerance: printedTo(0), source: NC_STATE, status: "seen", computed: () => poundsPerThousand("26-3-4"), second: 100 / 26 },
  { row: "fertilizer.9", inputs: "35-3-5, 1 lb N, to the pound", expected: 3, tolerance: printedTo(0), source: NC_STATE, status: "seen", computed: () => poundsPerThousand("35-3-5"), second: 100 / 35 },
  { row: "fertilizer.10", inputs: "40 lb bag 10-6-4, N", expected: 4, tolerance: printedTo(1), source: NC_STATE, status: "seen", computed: () => inBag("10-6-4", "40", "nitrogen"), second: 40 * 0.1 },
  { row: "fertilizer.10", inputs: "40 lb bag 10-6-4, phosphate", expected: 2.4, tolerance: printedTo(1), source: NC_STATE, status: "seen", computed: () => inBag("10-6-4", "40", "phosphate"), second: 40 * 0.06 },
  { row: "fertilizer.10", inputs: "40 lb bag 10-6-4, potash", expected: 1.6, tolerance: printedTo(1), source: NC_STATE, status: "seen", computed: () => inBag("10-6-4", "40", "potash"), second: 40 * 0.04 },
  { row: "fertilizer.11", inputs: "16-4-8, 1 lb N", expected: 6.25, tolerance: printedTo(2), source: FLORIDA, status: "seen", computed: () => poundsPerThousand("16-4-8"), second: 100 / 16 },
  { row: "fertilizer.11", inputs: "16-4-8 at 6.25 lb, N", expected: 1, tolerance: printedTo(2), source: FLORIDA, status: "seen", computed: () => delivered("16-4-8", "6.25", "nitrogen"), second: 6.25 * 0.16 },
  { row: "fertilizer.11", inputs: "16-4-8 at 6.25 lb, P2O5", expected: 0.25, tolerance: printedTo(2), source: FLORIDA, status: "seen", computed: () => delivered("16-4-8", "6.25", "phosphate"), second: 6.25 * 0.04 },
  { row: "fertilizer.11", inputs: "16-4-8 at 6.25 lb, K2O", expected: 0.5, tolerance: printedTo(2), source: FLORIDA, status: "seen", computed: () => delivered("16-4-8", "6.25", "potash"), second: 6.25 * 0.08 },
  { row: "fertilizer.12", inputs: "20-5-10, 1 lb N", expected: 5, tolerance: printedTo(2), source: UMASS, status: "seen", computed: () => poundsPerThousand("20-5-10"), second: 5 },
  { row: "fertilizer.13", inputs: "13-13-13, 1 lb N", expected: 7.7, tolerance: printedTo(1), source: LSU, status: "seen-2nd", computed: () => poundsPerThousand("13-13-13"), second: 100 / 13 },
  { row: "fertilizer.14", inputs: "1,250 lb of 5-10-20, N", expected: 62.5, tolerance: printedTo(1), source: LSU, status: "seen", computed: () => inBag("5-10-20", "1250", "nitrogen"), second: 1250 * 0.05 },
  { row: "fertilizer.14", inputs: "1,250 lb of 5-10-20, P2O5", expected: 125, tolerance: printedTo(0), source: LSU, status: "seen", computed: () => inBag("5-10-20", "1250", "phosphate"), second: 1250 * 0.1 },
  { row: "fertilizer.14", inputs: "1,250 lb of 5-10-20, P", expected: 55, tolerance: printedTo(0), source: LSU, status: "seen", computed: () => inBag("5-10-20", "1250", "phosphorus"), second: 125 * 0.44 },
  { row: "fertilizer.14", inputs: "1,250 lb of 5-10-20, K2O", expected: 250, tolerance: printedTo(0), source: LSU, status: "seen", computed: () => inBag("5-10-20", "1250", "potash"), second: 1250 * 0.2 },
  { row: "fertilizer.14", inputs: "1,250 lb of 5-10-20, K", expected: 207.5, tolerance: printedTo(1), source: LSU, status: "calc", computed: () => inBag("5-10-20", "1250", "potassium"), second: 250 * 0.83 },
  { row: "fertilizer.15", inputs: "20% P2O5, percent P", expected: 8.8, tolerance: printedTo(1), source: PENN_STATE, status: "seen", computed: () => inBag("0-20-0", "100", "phosphorus"), second: 20 * 0.44 },
  { row: "fertilizer.15", inputs: "10% K2O, percent K", expected: 8.3, tolerance: printedTo(1), source: PENN_STATE, status: "seen", computed: () => inBag("0-0-10", "100", "potassium"), second: 10 * 0.83 },
  { row: "fertilizer.3", inputs: "factor of P in P2O5", expected: 0.44, tolerance: printedTo(2), source: PENN_STATE, status: "seen", computed: () => toNumber(EXTENSION_FACTORS.phosphorusInPhosphate), second: 0.44 },
  { row: "fertilizer.3", inputs: "factor of K in K2O", expected: 0.83, tolerance: printedTo(2), source: PENN_STATE, status: "seen", computed: () => toNumber(EXTENSION_FACTORS.potassiumInPotash), second: 0.83 },
  { row: ["fertilizer.4", "fertilizer.16"], inputs: "15-0-15 with 7% WIN, percent of N", expected: 46.67, tolerance: printedTo(2), source: FIGART, status: "seen", computed: () => slowShare("15-0-15", "7"), second: 700 / 15 },
  { row: "fertilizer.17", inputs: "10-10-10 with 5% WIN, percent of N", expected: 50, tolerance: printedTo(0), source: TAMPA, status: "seen", computed: () => slowShare("10-10-10", "5"), second: 50 },
  { row: "fertilizer.18", inputs: "30 lb bag 24-2-8, N", expected: 7.2, tolerance: printedTo(1), source: SUFFOLK, status: "seen", computed: () => inBag("24-2-8", "30", "nitrogen"), second: 30 * 0.24 },
  { row: "fertilizer.18", inputs: "30 lb bag 24-2-8, P2O5", expected: 0.6, tolerance: printedTo(1), source: SUFFOLK, status: "seen", computed: () => inBag("24-2-8", "30", "phosphate"), second: 30 * 0.02 },
  { row: "fertilizer.18", inputs: "30 lb bag 24-2-8, K2O", expected: 2.4, tolerance: printedTo(1), source: SUFFOLK, status: "seen", computed: () => inBag("24-2-8", "30", "potash"), second: 30 * 0.08 },
  { row: "fertilizer.18", inputs: "30 lb bag 24-2-8 at 1 lb N, sq ft (printed about 7,000)", expected: 7000, tolerance: 250, source: SUFFOLK, status: "seen", computed: () => toNumber(measureInUnit(coverage(product("24-2-8", "1"), of("lb", 30n)), "sq ft")), second: 7200 },
  { row: "fertilizer.19", inputs: "liquid at 10.68 lb per gal, lb per fl oz", expected: 0.083, tolerance: printedTo(3), source: WOODS, status: "seen", computed: () => pounds(massOf(of("fl oz", 1n), densityOf("10.68", "lb per gal"))), second: 10.68 / 128 },
  { row: "fertilizer.19", inputs: "6 fl oz of it, lb (printed 0.083 x 6)", expected: 0.498, tolerance: 6 * printedTo(3), source: WOODS, status: "seen", computed: () => pounds(massOf(of("fl oz", 6n), densityOf("10.68", "lb per gal"))), second: (6 * 10.68) / 128 },
  { row: "fertilizer.19", inputs: "0.4% Mn of it, lb", expected: 0.002, tolerance: printedTo(3), source: WOODS, status: "seen", computed: () => pounds(multiplyExact(massOf(of("fl oz", 6n), densityOf("10.68", "lb per gal")), decimal("0.004"))), second: (6 * 10.68 * 0.004) / 128 },
  { row: "fertilizer.19", inputs: "4% N of it, lb per 1,000", expected: 0.02, tolerance: printedTo(2), source: WOODS, status: "seen", computed: () => liquidNitrogen(), second: (6 * 10.68 * 0.04) / 128 },
  { row: ["fertilizer.5", "fertilizer.20"], inputs: "28% UAN at 10.65 lb per gal, lb N per gal", expected: 2.982, tolerance: printedTo(3), source: CROPWATCH, status: "seen", computed: () => pounds(multiplyExact(massOf(of("gal", 1n), densityOf("10.65", "lb per gal")), decimal("0.28"))), second: 10.65 * 0.28 },
  { row: ["fertilizer.5", "fertilizer.20"], inputs: "75 lb N per acre from it, gal (printed 75 / 2.982)", expected: 25.151, tolerance: printedTo(3), source: CROPWATCH, status: "seen", computed: () => gallonsOfUan(), second: 75 / 2.982 },
];

function liquidNitrogen(): number {
  const nutrients = nutrientsDelivered(rateOf("product-volume-per-area", 6n, "fl oz per 1,000 sq ft"), {
    grade: gradeOf("4", "0", "0"),
    release: notStated,
    density: densityOf("10.68", "lb per gal"),
  });
  return toNumber(rateIn(valueOf(nutrients).nitrogen, perThousand));
}

function gallonsOfUan(): number {
  const wanted = rateOf("nutrient-mass-per-area", "75", "lb per acre");
  const mass = times(valueOf(productForNutrient("N", wanted, gradeOf("28", "0", "0"))), of("acre", 1n));
  const perGallon = massOf(of("gal", 1n), densityOf("10.65", "lb per gal"));
  return pounds(mass) / pounds(perGallon);
}

const KOPEC_IRON = "Kopec, Univ. of Arizona, March 1998, https://turf.arizona.edu/tips398.html";
const KREUSER = "Kreuser, UNL, Golfdom 15 Aug 2018, https://www.golfdom.com/treatment-of-iron-deficiency-and-chlorosis/";
const YUST = "Yust, Wehner & Fermanian 1984, Agron. J. 76(6):934-938, https://digitalcommons.calpoly.edu/cafes_dean/11";

function ironProduct(ouncesOfIron: string): number {
  const target = rateOf("nutrient-mass-per-area", ouncesOfIron, "oz wt per 1,000 sq ft");
  const needed = valueOf(productForNutrient("Fe", target, gradeOf("0", "0", "0", "20")));
  return toNumber(rateIn(needed, "oz wt per 1,000 sq ft"));
}

function ironPerAcre(ouncesOfIron: string): number {
  return toNumber(rateIn(rateOf("nutrient-mass-per-area", ouncesOfIron, "oz wt per 1,000 sq ft"), "lb per acre"));
}

function ironDelivered(ouncesOfProduct: bigint): number {
  const nutrients = nutrientsDelivered(rateOf("product-mass-per-area", ouncesOfProduct, "oz wt per 1,000 sq ft"), {
    grade: gradeOf("0", "0", "0", "20"),
    release: notStated,
  });
  const { iron } = valueOf(nutrients);
  if (iron === "not-stated") throw new Error("the label states it");
  return toNumber(rateIn(iron, "oz wt per 1,000 sq ft"));
}

function studyRate(unit: "lb per acre" | "oz wt per 1,000 sq ft"): number {
  return toNumber(rateIn(rateOf("nutrient-mass-per-area", "2.2", "kg per ha"), unit));
}

/** The rates are seen at their sources; the conversions of them are worked out, so each row is a self-check. */
const ironRows: readonly PublishedRow[] = [
  { row: ["iron.1", "iron.4"], inputs: "0.4 oz Fe per 1,000 with a 20% product, oz product", expected: 2, tolerance: printedTo(3), source: KREUSER, status: "calc", computed: () => ironProduct("0.4"), second: 0.4 / 0.2 },
  { row: "iron.4", inputs: "1.6 oz Fe per 1,000 with a 20% product, oz product", expected: 8, tolerance: printedTo(3), source: KREUSER, status: "calc", computed: () => ironProduct("1.6"), second: 1.6 / 0.2 },
  { row: ["iron.1", "iron.4"], inputs: "0.4 oz Fe per 1,000, lb per acre", expected: 1.089, tolerance: printedTo(3), source: KREUSER, status: "calc", computed: () => ironPerAcre("0.4"), second: (0.4 * 43.56) / 16 },
  { row: "iron.4", inputs: "1.6 oz Fe per 1,000, lb per acre", expected: 4.356, tolerance: printedTo(3), source: KREUSER, status: "calc", computed: () => ironPerAcre("1.6"), second: (1.6 * 43.56) / 16 },
  { row: "iron.6", inputs: "2.2 kg Fe per ha, lb per acre", expected: 1.96, tolerance: printedTo(2), source: YUST, status: "calc", computed: () => studyRate("lb per acre"), second: (2.2 / 0.45359237) * 0.40468564224 },
  { row: "iron.6", inputs: "2.2 kg Fe per ha, oz per 1,000", expected: 0.721, tolerance: printedTo(3), source: YUST, status: "calc", computed: () => studyRate("oz wt per 1,000 sq ft"), second: (((2.2 / 0.45359237) * 0.40468564224) / 43.56) * 16 },
  { row: "iron.7", inputs: "2 oz of a 20% product, oz Fe per 1,000", expected: 0.4, tolerance: printedTo(3), source: KOPEC_IRON, status: "calc", computed: () => ironDelivered(2n), second: 0.4 },
];

const RILEY = "Riley Co., Kansas, extension column, http://akingpm.com/article_5bb48f5e-5b29-11ef-8a95-c73783b69a07.html";
const DURHAM = "NC State TurfFiles via https://durhammastergardeners.com/2016/02/16/fertilize-fescue-in-february/";

/** Of the monthly schedules, what this code computes: product for a nitrogen rate. */
const scheduleRows: readonly PublishedRow[] = [
  { row: "nitrogen-by-month.14", inputs: "10-10-10 at 1/2 lb N", expected: 5, tolerance: printedTo(0), source: DURHAM, status: "seen", computed: () => poundsPerThousand("10-10-10", "0.5"), second: 50 / 10 },
  { row: "nitrogen-by-month.15", inputs: "urea 46-0-0, 1 lb N (printed: a little over 2)", expected: 2.17, tolerance: printedTo(2), source: RILEY, status: "calc", computed: () => poundsPerThousand("46-0-0"), second: 100 / 46 },
  { row: "nitrogen-by-month.15", inputs: "ammonium sulfate 21-0-0, 1 lb N (printed: a little less than 5)", expected: 4.76, tolerance: printedTo(2), source: RILEY, status: "calc", computed: () => poundsPerThousand("21-0-0"), second: 100 / 21 },
];

/** Fertilizer, iron, and what the monthly schedules let this code compute. */
export const FERTILIZER_CHECKS: readonly PublishedRow[] = [...rows, ...ironRows, ...scheduleRows];
