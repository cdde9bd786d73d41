// Published misprints: what is computed here is what the page means, and not what it prints.
import { expect } from "vitest";
import { rectangleArea } from "#domain/equipment/measured-space";
import { flowAtPressure, PSI_PER_BAR, ratedFlowOfSize } from "#domain/equipment/nozzle";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { densityFactor } from "#domain/equipment/spray-density";
import { calibrateSprayer } from "#domain/equipment/sprayer-calibration";
import { densityIn, densityOf } from "#domain/quantities/density";
import { exactly, measureInUnit } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateIn } from "#domain/quantities/rate";
import { decimal, toNumber } from "#domain/quantities/rational";
import { dailyReferenceEvapotranspiration, hargreavesMillimeters } from "#domain/turf/evapotranspiration";
import { gradeOf, nutrientsIn, slowShareOfNitrogen } from "#domain/turf/nutrients";
import { vaporPressureFromHumidityExtremesKilopascals } from "#domain/turf/vapor-pressure";
import { stullWetBulbC } from "#domain/weather/wet-bulb";
import { day, valueOf } from "../../support/domain-answers";
import { type PublishedStatement } from "../../support/published-check";

interface Misprint {
  readonly row: string;
  readonly what: string;
  readonly printed: number;
  /** What it must be, and how near ours must come to it. */
  readonly right: number;
  readonly tolerance: number;
  readonly source: string;
  readonly computed: () => number;
}

function boomGallonsPerAcre(): number {
  const catches = [{ nozzle: "all", volume: exactly("gal", "0.79"), seconds: 60 }];
  const boom = { method: "boom", nozzleSpacing: of("in", 18n), pace: { kind: "speed", milesPerHour: 3 }, catches } as const;
  return toNumber(rateIn(valueOf(calibrateSprayer(boom, { kind: "the-spray-itself" }, USUAL_SPREAD_LIMIT)).carrierRate, "gal per acre"));
}

function potashOf(): number {
  const { potash } = valueOf(nutrientsIn(of("lb", 50n), { grade: gradeOf("0", "0", "15"), release: { kind: "not-stated" } }));
  return toNumber(measureInUnit(potash, "lb"));
}

/** Example 18 of FAO-56. */
const uccle = () =>
  valueOf(dailyReferenceEvapotranspiration({
    date: day("2026-07-06"), latitudeDegrees: 50.8, elevationMeters: 100, minimumTemperatureC: 12.3, maximumTemperatureC: 21.5,
    actualVaporPressureKilopascals: vaporPressureFromHumidityExtremesKilopascals({
      minimumTemperatureC: 12.3, maximumTemperatureC: 21.5, minimumRelativeHumidityPercent: 63, maximumRelativeHumidityPercent: 84,
    }),
    solarRadiation: 22.07, clearSkyFrom: "elevation", windMetersPerSecond: 10 / 3.6, windHeightMeters: 10,
  }, "fao-56"));

const DENSITY_TABLE = "Oklahoma State, density table";
const specificGravity = (pounds: string) => toNumber(densityIn(densityOf(pounds, "lb per gal"), "kg per L"));
const factor = (pounds: string) => toNumber(densityFactor(densityOf(pounds, "lb per gal")));

const misprints: readonly Misprint[] = [
  { row: "misprints.1", what: "5940 x 0.79 / (3 x 18), gal per acre", printed: 88, right: 86.9, tolerance: 0.05, source: "Oklahoma State, Sprayer Calibration, http://www.turf.okstate.edu/FactSheets/sprayer.htm", computed: boomGallonsPerAcre },
  { row: "misprints.2", what: "factor at 8.0 lb per gal", printed: 0.88, right: 0.98, tolerance: 0.005, source: "a nozzle page; UNL and UGA print 0.98", computed: () => factor("8.0") },
  { row: "misprints.3", what: "specific gravity at 12 lb per gal", printed: 1.68, right: 1.44, tolerance: 0.005, source: DENSITY_TABLE, computed: () => specificGravity("12") },
  { row: "misprints.3", what: "factor at 12 lb per gal", printed: 1.3, right: 1.2, tolerance: 0.005, source: DENSITY_TABLE, computed: () => factor("12") },
  { row: "misprints.4", what: "size 025 at 2 bar, L a minute", printed: 0.98, right: 0.82, tolerance: 0.005, source: "a supplier's table after ISO 10625", computed: () => toNumber(measureInUnit(valueOf(flowAtPressure(ratedFlowOfSize("025"), 2 * PSI_PER_BAR)), "L")) },
  { row: "misprints.6", what: "18.5 by 18.5 ft in parts of an acre, 1 over", printed: 43_560 / (8.5 * 18.5), right: 128, tolerance: 1, source: "UF/IFAS Alachua Co., which prints 8.5 by 18.5 ft", computed: () => 1 / toNumber(measureInUnit(rectangleArea(of("ft", "18.5"), of("ft", "18.5")), "acre")) },
  { row: "misprints.7", what: "slow share of 15 % nitrogen with 7 % water-insoluble, %", printed: (100 * 15) / 7, right: 46.67, tolerance: 0.005, source: "prose of Cornell and of the Tampa Bay page", computed: () => 100 * toNumber(valueOf(slowShareOfNitrogen(gradeOf("15", "0", "15"), { kind: "slow-percent-of-product", percent: decimal("7") }))) },
  { row: "misprints.8", what: "50 lb of 0-0-15, lb of potash", printed: 75, right: 7.5, tolerance: 1e-9, source: "an eastern-shore sod page", computed: potashOf },
  { row: "misprints.9", what: "wet bulb by Stull at 30 °C and 50 %", printed: 21.92, right: 22.297, tolerance: 0.0005, source: "a web calculator", computed: () => valueOf(stullWetBulbC(30, 50)) },
  { row: "misprints.10", what: "example 18, soil heat flux", printed: 0.14, right: 0, tolerance: 0, source: "a public test of FAO-56", computed: () => uccle().soilHeatFlux },
  { row: "misprints.13", what: "Hargreaves at Lyon, mm (in MJ without 0.408)", printed: 5.033 / 0.408, right: 5.033, tolerance: 0.002, source: "texts that print 0.0023 with radiation in MJ", computed: () => hargreavesMillimeters({ minimumTemperatureC: 14.8, maximumTemperatureC: 26.6 }, 40.55) },
  { row: "misprints.14", what: "an acre in sq ft", printed: 4840, right: 43_560, tolerance: 0, source: "a gardening page, which means square yards", computed: () => toNumber(measureInUnit(of("acre", 1n), "sq ft")) },
];

export const MISPRINT_CHECKS = misprints.map(({ row, what, printed, right, tolerance, source, computed }): PublishedStatement => ({
  row,
  says: `${what} is ${String(right)} and not the ${String(Math.round(printed * 100) / 100)} of the misprint`,
  source,
  status: "calc",
  holds: () => {
    expect(Math.abs(computed() - right)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(computed() - printed)).toBeGreaterThan(tolerance + Math.abs(right - printed) / 2);
  },
}));
