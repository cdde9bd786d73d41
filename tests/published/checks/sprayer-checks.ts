// Speed, output, courses, hoses: sprayers as extension services and makers print them.
import { expect } from "vitest";
import { flowForCarrier, speedForCarrier } from "#domain/equipment/carrier-planning";
import { lengthOfArea, rectangleArea } from "#domain/equipment/measured-space";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { measurePace, milesPerHourOf } from "#domain/equipment/pace";
import { calibrateSprayer, type SprayerTest } from "#domain/equipment/sprayer-calibration";
import { hoseVolume } from "#domain/equipment/tank-hold-up";
import { judgeRate, SPRAYER_TOLERANCE } from "#domain/equipment/target-rate";
import { exactly, type Measure, measureInUnit, multiplyExact } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { concentrationInSpray, coverage, type Rate, rateIn, rateOf, times } from "#domain/quantities/rate";
import { rational, toNumber } from "#domain/quantities/rational";
import { valueOf } from "../../support/domain-answers";
import { printedTo, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

const OSU = "Oklahoma State, Sprayer Calibration, http://www.turf.okstate.edu/FactSheets/sprayer.htm";
const ALACHUA = "UF/IFAS Alachua Co. 2022-02-04, https://blogs.ifas.ufl.edu/alachuaco/2022/02/04/calibrating-a-backpack-sprayer-the-1-128th-rule/";
const NC_TREES = "NC State Christmas trees, https://christmastrees.ces.ncsu.edu/backpack-sprayer-calibration-worksheet/";
const CLEMSON = "Clemson, https://www.clemson.edu/cafls/research/weeds/spray-spread.html";
const OHIO_817 = "Ohio State Bulletin 817, http://ohioline.osu.edu/b817/b817_07.html";
const OHIO_OZKAN = "Ohio State Extension (Ozkan) in Farm and Dairy, https://www.farmanddairy.com/top-stories/7-steps-for-easy-sprayer-calibration/406279.html";
const DAKOTA = "South Dakota State, https://extension.sdstate.edu/pesticide-mixing-and-sprayer-calibration-equations";
const STEWARDSHIP = "National Pesticide Stewardship, http://pesticidestewardship.org/homeowner/Pages/Hose-endSprayerCalibration.aspx";
const HOMEOWNER = "slides Calibrating Homeowner Equipment, https://vdocuments.site/calibrating-homeowner-equipment.html";
const WILDFIRE = "US National Wildfire Coordinating Group, https://www.nwcg.gov/course/ffm/squirt-water/32-volume-of-water-in-hose";
const UNL_MATH = "UNL, https://pested.unl.edu/math";
const FORMULA = "the printed formula";

const perAcre = "gal per acre";
const carrierRate = (gallonsPerAcre: string) => rateOf("carrier-volume-per-area", gallonsPerAcre, perAcre);
const gallonsPerAcre = (rate: Rate<"carrier-volume-per-area">) => toNumber(rateIn(rate, perAcre));
const calibrated = (sprayer: SprayerTest) => valueOf(calibrateSprayer(sprayer, { kind: "the-spray-itself" }, USUAL_SPREAD_LIMIT)).carrierRate;
const acre128 = multiplyExact(of("acre", 1n), rational(1n, 128n));

function milesPerHour(feet: bigint, seconds: number): number {
  return milesPerHourOf(valueOf(measurePace({ kind: "timed-course", course: of("ft", feet), seconds: [seconds] })).distancePerMinute);
}

function boomAt(flowPerMinute: Measure<"volume">, mph: number, nozzleSpacing: Measure<"length">): number {
  const catches = [{ nozzle: "all", volume: flowPerMinute, seconds: 60 }];
  return gallonsPerAcre(calibrated({ method: "boom", nozzleSpacing, pace: { kind: "speed", milesPerHour: mph }, catches }));
}

function smallArea(area: Measure<"area">, volume: Measure<"volume">): Rate<"carrier-volume-per-area"> {
  return calibrated({ method: "small-area", runs: [{ area, volume }] });
}

function courseFeet(inches: number): number {
  return toNumber(measureInUnit(lengthOfArea(acre128, of("in", BigInt(inches))), "ft"));
}

const courses = (row: string, source: string, printed: Readonly<Record<number, number>>, tolerance: number): readonly PublishedRow[] =>
  Object.entries(printed).map(([inches, feet]) => ({
    row,
    inputs: `1/128 acre, ${inches} in a nozzle, ft of course`,
    expected: feet, tolerance, source, status: "seen",
    computed: () => courseFeet(Number(inches)), second: (43_560 / 128 / Number(inches)) * 12,
  }));

const paceAndRateRows: readonly PublishedRow[] = [
  { row: ["sprayers.3", "sprayers.10"], inputs: "200 ft in 45 s, mph", expected: 3, tolerance: printedTo(0), source: OSU, status: "seen", computed: () => milesPerHour(200n, 45), second: (200 * 60) / (45 * 88) },
  { row: "sprayers.10", inputs: "200 ft in 27 s, mph", expected: 5, tolerance: printedTo(0), source: OSU, status: "seen", computed: () => milesPerHour(200n, 27), second: (200 * 60) / (27 * 88) },
  { row: ["sprayers.3", "sprayers.11"], inputs: "101 fl oz a minute, gal a minute", expected: 0.79, tolerance: printedTo(2), source: OSU, status: "seen", computed: () => toNumber(measureInUnit(of("fl oz", 101n), "gal")), second: 101 / 128 },
  { row: "sprayers.11", inputs: "the same at 3 mph and 18 in, gal per acre", expected: 86.8, tolerance: printedTo(1), source: FORMULA, status: "calc", computed: () => boomAt(of("fl oz", 101n), 3, of("in", 18n)), second: (5940 * (101 / 128)) / 54 },
  { row: "sprayers.12", inputs: "32 fl oz per acre at 20 gal per acre, fl oz in 20 gal", expected: 32, tolerance: printedTo(0), source: OSU, status: "seen", computed: () => toNumber(measureInUnit(times(concentrationInSpray(rateOf("product-volume-per-area", 32n, "fl oz per acre"), carrierRate("20")), of("gal", 20n)), "fl oz")), second: 32 },
  { row: ["sprayers.7", "sprayers.14"], inputs: "25 fl oz in the 30 s for 1/128 acre, gal per acre", expected: 25, tolerance: printedTo(0), source: ALACHUA, status: "seen", computed: () => gallonsPerAcre(smallArea(acre128, of("fl oz", 25n))), second: 25 },
  { row: "flow.2", inputs: "80 fl oz over 1/128 acre, gal per acre", expected: 80, tolerance: printedTo(0), source: OHIO_817, status: "seen", computed: () => gallonsPerAcre(smallArea(acre128, of("fl oz", 80n))), second: 80 },
  { row: "elsewhere.1", inputs: "15 fl oz over 1/128 acre, gal per acre", expected: 15, tolerance: printedTo(0), source: OHIO_OZKAN, status: "seen", computed: () => gallonsPerAcre(smallArea(acre128, of("fl oz", 15n))), second: 15 },
  { row: "sprayers.15", inputs: "1/128 acre at a width of 6 ft, ft of course", expected: 57, tolerance: printedTo(0), source: NC_TREES, status: "seen", computed: () => courseFeet(72), second: 43_560 / 128 / 6 },
  ...courses("sprayers.16", CLEMSON, { 12: 340, 16: 255, 20: 204, 24: 170, 28: 146, 32: 128, 36: 113, 40: 102 }, printedTo(0)),
  // This bulletin divides 340 instead of 340.3, and cuts off what is left.
  ...courses("flow.3", OHIO_817, { 18: 227, 20: 204, 22: 185, 24: 170, 26: 157, 28: 146, 30: 136, 32: 127, 34: 120, 36: 113, 38: 107, 40: 102 }, 0.7),
  ...courses("elsewhere.2", OHIO_OZKAN, { 10: 408, 15: 272, 20: 204, 30: 136, 40: 102 }, printedTo(0)),
  { row: "sprayers.1", inputs: "1 gal a minute, 1 mph, 1 in, gal per acre", expected: 5940, tolerance: printedTo(0), source: FORMULA, status: "seen", computed: () => boomAt(of("gal", 1n), 1, of("in", 1n)), second: 5940 },
  { row: "sprayers.1", inputs: "1 gal a minute, 1 mph, 1 ft, gal per acre", expected: 495, tolerance: printedTo(0), source: FORMULA, status: "seen", computed: () => boomAt(of("gal", 1n), 1, of("ft", 1n)), second: 495 },
  { row: "sprayers.1", inputs: "1 fl oz a minute, 1 mph, 1 in, gal per acre", expected: 46.4, tolerance: printedTo(1), source: FORMULA, status: "seen", computed: () => boomAt(of("fl oz", 1n), 1, of("in", 1n)), second: 5940 / 128 },
  { row: ["sprayers.2", "flow.6"], inputs: "1 gal a minute, 1 mph, 1 in, gal per 1,000 sq ft (printed form not found)", expected: 136, tolerance: printedTo(0), source: FORMULA, status: "memory", computed: () => boomAt(of("gal", 1n), 1, of("in", 1n)) / 43.56, second: 5940 / 43.56 },
  { row: ["sprayers.4", "sprayers.20"], inputs: "190 L/ha, 10 km/h, 50 cm, L a minute", expected: 1.583, tolerance: printedTo(3), source: "CRAN AgroTech flowrat inputs", status: "calc", computed: () => toNumber(measureInUnit(valueOf(flowForCarrier(rateOf("carrier-volume-per-area", 190n, "L per ha"), of("cm", 50n), { kind: "speed", milesPerHour: 10 / 1.609344 })), "L")), second: Number((10 / 1.609344).toFixed(6)) * 1.609344 * 190 * 50 / 60_000 },
  { row: "flow.4", inputs: "15 gal per acre, 10 mph, 20 in, gal a minute", expected: 0.505, tolerance: printedTo(3), source: DAKOTA, status: "calc", computed: () => toNumber(measureInUnit(valueOf(flowForCarrier(carrierRate("15"), of("in", 20n), { kind: "speed", milesPerHour: 10 })), "gal")), second: (15 * 10 * 20) / 5940 },
  { row: "flow.4", inputs: "the same, fl oz a minute", expected: 64.6, tolerance: printedTo(1), source: DAKOTA, status: "calc", computed: () => toNumber(measureInUnit(valueOf(flowForCarrier(carrierRate("15"), of("in", 20n), { kind: "speed", milesPerHour: 10 })), "fl oz")), second: (15 * 10 * 20 * 128) / 5940 },
  { row: "hoses.1", inputs: "1.25 gal for 250 sq ft, gal per 1,000 sq ft", expected: 5, tolerance: printedTo(0), source: STEWARDSHIP, status: "calc", computed: () => toNumber(rateIn(smallArea(of("sq ft", 250n), exactly("gal", "1.25")), "gal per 1,000 sq ft")), second: 5 },
  { row: "hoses.1", inputs: "the same, gal per acre", expected: 217.8, tolerance: printedTo(1), source: STEWARDSHIP, status: "calc", computed: () => gallonsPerAcre(smallArea(of("sq ft", 250n), exactly("gal", "1.25"))), second: 5 * 43.56 },
  { row: "hoses.3", inputs: "gun, 50 s for 1,000 sq ft and 1.4 gal in 50 s, gal per 1,000 sq ft", expected: 1.4, tolerance: printedTo(1), source: HOMEOWNER, status: "seen", computed: () => toNumber(rateIn(gunOfSlides(), "gal per 1,000 sq ft")), second: 1.4 },
  { row: "hoses.3", inputs: "the same, gal per acre", expected: 61, tolerance: printedTo(1), source: HOMEOWNER, status: "calc", computed: () => gallonsPerAcre(gunOfSlides()), second: 1.4 * 43.56 },
];

function gunOfSlides(): Rate<"carrier-volume-per-area"> {
  return calibrated({ method: "gun", coverings: [{ area: of("sq ft", 1000n), seconds: 50 }], catches: [{ nozzle: "gun", volume: exactly("gal", "1.4"), seconds: 50 }] });
}

const hoseGallons = (inches: string, feet: bigint) =>
  toNumber(measureInUnit(valueOf(hoseVolume({ name: "hose", length: of("ft", feet), innerDiameter: of("in", inches) })), "gal"));
const hoseByHand = (inches: number, feet: number) => (Math.PI * inches ** 2 * feet * 12) / 4 / 231;
const calcHose = (inches: string, feet: bigint, expected: number, decimals: number): PublishedRow => ({
  row: "hoses.7",
  inputs: `hose ${inches} in x ${feet} ft, gal`,
  expected, tolerance: printedTo(decimals), source: "a quarter of pi times the diameter squared times the length", status: "calc",
  computed: () => hoseGallons(inches, feet), second: hoseByHand(Number(inches), Number(feet)),
});
const strip = (feet: string, miles: number): PublishedRow => ({
  row: "hoses.8",
  inputs: `a strip of ${feet} ft x ${miles} mi, acres`,
  expected: 1, tolerance: 1e-12, source: UNL_MATH, status: "seen",
  computed: () => toNumber(measureInUnit(rectangleArea(of("ft", feet), of("ft", BigInt(5280 * miles))), "acre")), second: 1,
});

const hoseRows: readonly PublishedRow[] = [
  { row: "hoses.6", inputs: "hose 1 in x 100 ft, cu in (printed with 3.14)", expected: 942, tolerance: 942 * (Math.PI / 3.14 - 1) + 0.5, source: WILDFIRE, status: "seen", computed: () => hoseGallons("1", 100n) * 231, second: Math.PI * 0.25 * 1200 },
  { row: "hoses.6", inputs: "the same, gal", expected: 4, tolerance: printedTo(0), source: WILDFIRE, status: "seen", computed: () => hoseGallons("1", 100n), second: hoseByHand(1, 100) },
  { ...calcHose("1", 100n, 4.08, 2), row: "hoses.6" }, calcHose("0.375", 100n, 0.57, 2), calcHose("0.5", 100n, 1.02, 2), calcHose("0.625", 100n, 1.59, 2), calcHose("0.75", 100n, 2.29, 2),
  calcHose("0.5", 300n, 3.1, 1),
  strip("8.25", 1), strip("16.5", 0.5), strip("33", 0.25),
  { row: "hoses.8", inputs: "88 ft in a minute, mph", expected: 1, tolerance: 1e-12, source: UNL_MATH, status: "seen", computed: () => milesPerHour(88n, 60), second: 1 },
];

const CEPEP = "Colorado State CEPEP Fact Sheet 204, https://paperzz.com/doc/8765247/";
const BUHLER = "National Pesticide Stewardship (NC State, Buhler), http://pesticidestewardship.org";
const CORE_MANUAL = "a summary of a core manual (weak)";
/** Of a hand sprayer that put 0.5 gal on 250 sq ft and holds 3 gal, with a product at 4 fl oz per 1,000 sq ft. */
const byHand = smallArea(of("sq ft", 250n), exactly("gal", "0.5"));
const fourOunces = rateOf("product-volume-per-area", 4n, "fl oz per 1,000 sq ft");
const squareFeetIn = (tank: Measure<"volume">) => toNumber(measureInUnit(coverage(byHand, tank), "sq ft"));
const ouncesIn = (tank: Measure<"volume">) => toNumber(measureInUnit(times(concentrationInSpray(fourOunces, byHand), tank), "fl oz"));

const tankRows: readonly PublishedRow[] = [
  { row: "hoses.2", inputs: "2 qt a tree for six trees, gal", expected: 3, tolerance: 1e-12, source: STEWARDSHIP, status: "seen", computed: () => toNumber(measureInUnit(multiplyExact(of("qt", 2n), rational(6n)), "gal")), second: (2 * 6) / 4 },
  { row: ["sprayers.8", "hoses.4"], inputs: "hand sprayer, 0.5 gal on 250 sq ft, gal per 1,000 sq ft (invented amounts)", expected: 2, tolerance: 1e-12, source: CEPEP, status: "calc", computed: () => toNumber(rateIn(byHand, "gal per 1,000 sq ft")), second: 0.5 * 4 },
  { row: ["sprayers.8", "hoses.4"], inputs: "the same, sq ft from its 3 gal", expected: 1500, tolerance: 1e-9, source: CEPEP, status: "calc", computed: () => squareFeetIn(of("gal", 3n)), second: (3 / 2) * 1000 },
  { row: ["sprayers.8", "hoses.4"], inputs: "the same at 4 fl oz per 1,000 sq ft, fl oz in its 3 gal", expected: 6, tolerance: 1e-12, source: CEPEP, status: "calc", computed: () => ouncesIn(of("gal", 3n)), second: (4 / 2) * 3 },
  { row: "sprayers.8", inputs: "the same, fl oz in the gallon of a partial tank", expected: 2, tolerance: 1e-12, source: FORMULA, status: "calc", computed: () => ouncesIn(of("gal", 1n)), second: 4 / 2 },
  { row: "hoses.4", inputs: "the same, tanks of 3 gal for 6,000 sq ft", expected: 4, tolerance: 1e-9, source: CEPEP, status: "calc", computed: () => toNumber(measureInUnit(times(byHand, of("sq ft", 6000n)), "gal")) / 3, second: 6000 / (500 * 3) },
  { row: "flow.5", inputs: "twice the speed, part of the volume per acre", expected: 0.5, tolerance: 1e-6, source: CORE_MANUAL, status: "seen-2nd", computed: () => boomAt(of("gal", 1n), 6, of("in", 20n)) / boomAt(of("gal", 1n), 3, of("in", 20n)), second: boomByHand(6, 20) / boomByHand(3, 20) },
  { row: "flow.5", inputs: "twice the width per nozzle, part of the volume per acre", expected: 0.5, tolerance: 1e-6, source: CORE_MANUAL, status: "seen-2nd", computed: () => boomAt(of("gal", 1n), 3, of("in", 40n)) / boomAt(of("gal", 1n), 3, of("in", 20n)), second: boomByHand(3, 40) / boomByHand(3, 20) },
  { row: "hoses.8", inputs: "1 mph, ft in a second", expected: 1.46, tolerance: 0.01, source: UNL_MATH, status: "seen", computed: () => toNumber(measureInUnit(valueOf(measurePace({ kind: "speed", milesPerHour: 1 })).distancePerMinute, "ft")) / 60, second: 5280 / 3600 },
];

function boomByHand(mph: number, inches: number): number {
  return 5940 / (mph * inches);
}

/** Each printed form turned round must give back what it was given. */
const thereAndBack: readonly PublishedStatement[] = [
  {
    row: ["sprayers.1", "sprayers.4"],
    says: "speed from flow, and flow from speed, are one formula turned round",
    source: FORMULA,
    status: "calc",
    holds: () => {
      for (const [gallons, inches, mph] of [["15", 20n, 10], ["40", 18n, 3], ["87.12", 36n, 2.5]] as const) {
        const flow = valueOf(flowForCarrier(carrierRate(gallons), of("in", inches), { kind: "speed", milesPerHour: mph }));
        expect(valueOf(speedForCarrier(carrierRate(gallons), of("in", inches), flow))).toBeCloseTo(mph, 6);
      }
    },
  },
  {
    row: "hoses.5",
    says: "a gun is accepted within 5% of the wanted rate",
    source: BUHLER,
    status: "seen",
    holds: () => {
      const wanted = rateOf("carrier-volume-per-area", 2n, "gal per 1,000 sq ft");
      const found = (gallons: string) => judgeRate("gun", rateOf("carrier-volume-per-area", gallons, "gal per 1,000 sq ft"), wanted, SPRAYER_TOLERANCE);
      expect([found("1.9"), found("2.1")].map(({ findings }) => findings.length)).toEqual([0, 0]);
      expect([found("1.89"), found("2.11")].map(({ findings }) => findings.length)).toEqual([1, 1]);
    },
  },
  {
    row: "hoses.5",
    says: "a gun is timed three times",
    source: BUHLER,
    status: "seen",
    holds: () => {
      const timed = (runs: number) => valueOf(calibrateSprayer({
        method: "gun",
        coverings: Array.from({ length: runs }, () => ({ area: of("sq ft", 1000n), seconds: 50 })),
        catches: [{ nozzle: "gun", volume: of("gal", 2n), seconds: 60 }],
      }, { kind: "the-spray-itself" }, USUAL_SPREAD_LIMIT));
      expect(timed(2).findings.map(({ rule }) => rule)).toEqual(["calibration-of-few-gun-runs"]);
      expect(timed(3).findings).toEqual([]);
    },
  },
];

export const SPRAYER_CHECKS: readonly PublishedEntry[] = [...paceAndRateRows, ...hoseRows, ...tankRows, ...thereAndBack];
