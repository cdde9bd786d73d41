// Nozzles by size, color, pressure and the density of what they spray.
import { expect } from "vitest";
import { dropletClasses } from "#domain/label/droplet-class";
import { flowAtPressure, NEW_TIP_TOLERANCE_PERCENT, type NozzleSize, nozzleSizes, pressureForFlow, PSI_PER_BAR, ratedFlowOfSize } from "#domain/equipment/nozzle";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { densityFactor, sprayRateFromWater, waterRateForSpray } from "#domain/equipment/spray-density";
import { calibrateSprayer, type SprayerTest } from "#domain/equipment/sprayer-calibration";
import { densityIn, densityOf } from "#domain/quantities/density";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { type Rate, rateIn, rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { valueOf } from "../../support/domain-answers";
import { printedTo, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

const OSU = "Oklahoma State, Sprayer Calibration, http://www.turf.okstate.edu/FactSheets/sprayer.htm";
const OHIO_OZKAN = "Ohio State Extension (Ozkan) in Farm and Dairy, https://www.farmanddairy.com/top-stories/7-steps-for-easy-sprayer-calibration/406279.html";
const DENSITY_TABLE = "UNL CropWatch 2016, https://cropwatch.unl.edu/2016/setting-sprayer-flow-rate-non-water-solutions, and Univ. of Georgia, https://studylib.net/doc/11102397/";
const AFTER_ISO = "a supplier's table after ISO 10625";
const ISO_TEXT = "two public texts that quote ISO 10625";
const CHART_TWIST = "https://sprayers101.com/nozzle-chart-twist/";
const MAKER_TABLE = "a nozzle maker's table of 2025 quoted in a public test";

const MPH_AT_6_KMH = 6 / 1.609344;
/** For the second ways, which use nothing of the product. */
const THREE_BAR_IN_PSI = 300_000 / 6894.757293168;
const carrierRate = (gallonsPerAcre: string) => rateOf("carrier-volume-per-area", gallonsPerAcre, "gal per acre");
const gallonsPerAcre = (rate: Rate<"carrier-volume-per-area">) => toNumber(rateIn(rate, "gal per acre"));
const calibrated = (sprayer: SprayerTest) => valueOf(calibrateSprayer(sprayer, { kind: "the-spray-itself" }, USUAL_SPREAD_LIMIT)).carrierRate;

/** lb per gal; specific gravity and factor as printed, to two places, from a gravity that was rounded first. */
const densities: readonly (readonly [poundsPerGallon: string, gravity: number, factor: number])[] = [
  ["6.6", 0.79, 0.89], ["7.0", 0.84, 0.92], ["8.0", 0.96, 0.98], ["8.34", 1, 1], ["9.0", 1.08, 1.04], ["10.0", 1.2, 1.1], ["10.65", 1.28, 1.13], ["11.0", 1.32, 1.15],
  ["11.06", 1.33, 1.15], ["11.4", 1.37, 1.17], ["11.5", 1.38, 1.17], ["11.6", 1.39, 1.18], ["12.0", 1.44, 1.2], ["14.0", 1.68, 1.3], ["16.0", 1.92, 1.39],
];
const TWICE_ROUNDED = 0.006;
const POUNDS_PER_GALLON_OF_WATER = 3.785411784 / 0.45359237;
const densityRows: readonly PublishedRow[] = [
  ...densities.flatMap(([pounds, gravity, factor]): readonly PublishedRow[] => [
    { row: "sprayers.21", inputs: `${pounds} lb/gal, specific gravity`, expected: gravity, tolerance: TWICE_ROUNDED, source: DENSITY_TABLE, status: "seen", computed: () => toNumber(densityIn(densityOf(pounds, "lb per gal"), "kg per L")), second: Number(pounds) / POUNDS_PER_GALLON_OF_WATER },
    { row: ["sprayers.6", "sprayers.22"], inputs: `${pounds} lb/gal, factor`, expected: factor, tolerance: TWICE_ROUNDED, source: DENSITY_TABLE, status: "seen", computed: () => toNumber(densityFactor(densityOf(pounds, "lb per gal"))), second: Math.sqrt(Number(pounds) / POUNDS_PER_GALLON_OF_WATER) },
  ]),
  { row: "sprayers.23", inputs: "20 gal per acre of 28% N, water to calibrate to", expected: 22.6, tolerance: 20 * 0.005, source: DENSITY_TABLE, status: "seen", computed: () => gallonsPerAcre(waterRateForSpray(carrierRate("20"), densityOf("10.65", "lb per gal"))), second: 20 * Math.sqrt(10.65 / POUNDS_PER_GALLON_OF_WATER) },
  { row: "sprayers.13", inputs: "22 gal per acre of 28% N, water to calibrate to", expected: 24.86, tolerance: 22 * 0.005, source: OSU, status: "seen", computed: () => gallonsPerAcre(waterRateForSpray(carrierRate("22"), densityOf("10.65", "lb per gal"))), second: 22 * Math.sqrt(10.65 / POUNDS_PER_GALLON_OF_WATER) },
];

/** Size, color, L/min at 3 bar and at 2 bar, L/ha at 2 bar, 6 km/h and 50 cm, as printed. The 2-bar flow of 025 is `calc`. */
const sizes: readonly (readonly [NozzleSize, string, number, number, number])[] = [
  ["01", "orange", 0.4, 0.33, 65], ["015", "green", 0.6, 0.49, 98], ["02", "yellow", 0.8, 0.65, 131], ["025", "lilac", 1, 0.82, 164], ["03", "blue", 1.2, 0.98, 196],
  ["04", "red", 1.6, 1.31, 261], ["05", "brown", 2, 1.63, 327], ["06", "gray", 2.4, 1.96, 392], ["08", "white", 3.2, 2.61, 523],
];
const flowAt = (size: NozzleSize, pressurePsi: number) => toNumber(measureInUnit(valueOf(flowAtPressure(ratedFlowOfSize(size), pressurePsi)), "L"));
const nominalLitersPerHectare = (size: NozzleSize) =>
  toNumber(rateIn(calibrated({ method: "boom", nozzleSpacing: of("cm", 50n), pace: { kind: "speed", milesPerHour: MPH_AT_6_KMH }, catches: [], nominal: { rated: ratedFlowOfSize(size), pressurePsi: 2 * PSI_PER_BAR } }), "L per ha"));
const nozzleRows: readonly PublishedRow[] = [
  ...sizes.flatMap(([size, , at3, at2, perHectare]): readonly PublishedRow[] => [
    { row: "nozzles.1", inputs: `size ${size} at 3 bar, L a minute`, expected: at3, tolerance: printedTo(2), source: ISO_TEXT, status: "seen-2nd", computed: () => flowAt(size, 3 * PSI_PER_BAR), second: at3 },
    { row: ["sprayers.25", "nozzles.7"], inputs: `size ${size} at 2 bar, L a minute`, expected: at2, tolerance: printedTo(2), source: AFTER_ISO, status: size === "025" ? "calc" : "seen", computed: () => flowAt(size, 2 * PSI_PER_BAR), second: at3 * Math.sqrt(2 / 3) },
    // The page worked size 025 with a flow that was rounded up to 0.82.
    { row: "sprayers.27", inputs: `size ${size} at 2 bar, 6 km/h, 50 cm, L/ha`, expected: perHectare, tolerance: size === "025" ? 0.75 : printedTo(0), source: AFTER_ISO, status: "seen", computed: () => nominalLitersPerHectare(size), second: (60_000 * at3 * Math.sqrt(2 / 3)) / (Number(MPH_AT_6_KMH.toFixed(6)) * 1.609344 * 50) },
  ]),
  { row: "nozzles.2", inputs: "size 20 at 3 bar, L a minute", expected: 8, tolerance: printedTo(1), source: ISO_TEXT, status: "seen-2nd", computed: () => flowAt("20", 3 * PSI_PER_BAR), second: 8 },
  { row: ["sprayers.5", "flow.1"], inputs: "3.22 L a minute at 2 bar, at 8 bar (within 1%)", expected: 6.43, tolerance: 0.0643, source: MAKER_TABLE, status: "seen-2nd", computed: () => toNumber(measureInUnit(valueOf(flowAtPressure({ flowPerMinute: of("L", "3.22"), atPressurePsi: 2 * PSI_PER_BAR, statedBy: "maker" }, 8 * PSI_PER_BAR)), "L")), second: 6.44 },
  // A tenth of a gallon at 40 psi for each 01 is another convention; it lies 1.3% under that of 3 bar.
  ...(["04", "05", "06"] as const).map((size): PublishedRow => ({
    row: "sprayers.26",
    inputs: `size ${size} at 40 psi, gal a minute (the other convention, within 2%)`,
    expected: Number(size) / 10, tolerance: Number(size) / 500, source: CHART_TWIST, status: "seen",
    computed: () => flowAt(size, 40) / 3.785411784, second: (Number(size) * 0.4 * Math.sqrt(40 / THREE_BAR_IN_PSI)) / 3.785411784,
  })),
];

/** A tenth of a gallon a minute at 40 psi for each 01, taken to 3 bar, in L a minute. */
const gallonsConvention = (size: NozzleSize) => Number(size.replace(/^0(\d)5$/u, "0$1.5")) * 0.1 * 3.785411784 * Math.sqrt(THREE_BAR_IN_PSI / 40);
const printedConvention = [0.395, 0.592, 0.79, 0.987, 1.184, 1.579, 1.974, 2.369, 3.158];

const ofSizes = sizes.map(([size, color]): PublishedStatement => ({
  row: ["nozzles.1", "sprayers.24"],
  says: `size ${size} is ${color}`,
  source: ISO_TEXT,
  status: "seen-2nd",
  holds: () => expect(nozzleSizes[size]).toMatchObject({ color }),
}));

const statements: readonly PublishedStatement[] = [
  ...ofSizes,
  {
    row: ["nozzles.3", "nozzles.8"],
    says: "a new tip may be 5% off, and both conventions lie within that, 1.3% apart",
    source: ISO_TEXT,
    status: "seen-2nd",
    holds: () => {
      expect(NEW_TIP_TOLERANCE_PERCENT).toBe(5);
      for (const [place, [size]] of sizes.entries()) {
        expect(gallonsConvention(size)).toBeCloseTo(printedConvention[place] ?? Number.NaN, 3);
        expect(flowAt(size, 3 * PSI_PER_BAR) / gallonsConvention(size)).toBeCloseTo(1.013, 3);
      }
    },
  },
  { row: "nozzles.5", says: "there are eight droplet categories", source: ISO_TEXT, status: "seen-2nd", holds: () => expect(dropletClasses).toHaveLength(8) },
  {
    row: "sprayers.5",
    says: "pressure from flow, and flow from pressure, are one formula turned round",
    source: "the printed formula",
    status: "calc",
    holds: () => {
      for (const [size] of sizes) for (const psi of [20, 40, 58]) {
        const flow = valueOf(flowAtPressure(ratedFlowOfSize(size), psi));
        expect(valueOf(pressureForFlow(ratedFlowOfSize(size), flow))).toBeCloseTo(psi, 6);
      }
    },
  },
  {
    row: "sprayers.6",
    says: "spray from water, and water from spray, are one formula turned round",
    source: "the printed formula",
    status: "calc",
    holds: () => {
      for (const [density] of densities) {
        const spray = densityOf(density, "lb per gal");
        expect(gallonsPerAcre(sprayRateFromWater(waterRateForSpray(carrierRate("20"), spray), spray))).toBeCloseTo(20, 9);
      }
    },
  },
  { row: "elsewhere.3", says: "nozzles more than 10% off are replaced", source: OHIO_OZKAN, status: "seen", holds: () => expect(toNumber(USUAL_SPREAD_LIMIT.percent)).toBe(10) },
];

export const NOZZLE_CHECKS: readonly PublishedEntry[] = [...densityRows, ...nozzleRows, ...statements];
