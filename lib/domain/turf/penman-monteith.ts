import { invariant } from "#domain/foundation/invariant";
import { MOST_WIND, type RangeCheck, amountRange, latitudeRange } from "#domain/turf/physical-range";
import { STEFAN_BOLTZMANN_PER_DAY } from "#domain/turf/solar-radiation";

/**
 * The reference surfaces: clipped grass of FAO-56, and the short (grass) and tall (alfalfa) reference of the
 * ASCE standardized equation (2005). Turf coefficients go with the short ones.
 */
export type ReferenceSurface = "fao-56" | "asce-short" | "asce-tall";

/**
 * What tells one surface from another in the equation. Numerators in K mm s3 per Mg and day (or hour), denominators in
 * s/m, the Stefan-Boltzmann constant in MJ per K4, square meter and day; the rest are parts of one.
 */
export interface SurfaceConstants {
  readonly dailyNumerator: number;
  readonly dailyDenominator: number;
  readonly hourlyNumerator: number;
  readonly hourlyDenominatorByDay: number;
  readonly hourlyDenominatorByNight: number;
  readonly soilHeatShareByDay: number;
  readonly soilHeatShareByNight: number;
  readonly stefanBoltzmannPerDay: number;
  /** The least solar radiation over that of a clear sky that the longwave equation is given. */
  readonly leastClearness: number;
}

/**
 * The surfaces by name. FAO-56 Eq. 6, 45, 46, 53; ASCE standardized equation (2005), table 1. The daily figures give
 * published answers; the hourly ones of ASCE are from memory, and no published answer for them was at hand.
 */
export const SURFACES: Readonly<Record<ReferenceSurface, SurfaceConstants>> = {
  "fao-56": {
    dailyNumerator: 900,
    dailyDenominator: 0.34,
    hourlyNumerator: 37,
    hourlyDenominatorByDay: 0.34,
    hourlyDenominatorByNight: 0.34,
    soilHeatShareByDay: 0.1,
    soilHeatShareByNight: 0.5,
    stefanBoltzmannPerDay: STEFAN_BOLTZMANN_PER_DAY.fao56,
    // FAO-56 names no least, so under a very dark sky its longwave comes in rather than out; the ASCE surfaces have one.
    leastClearness: 0,
  },
  "asce-short": {
    dailyNumerator: 900,
    dailyDenominator: 0.34,
    hourlyNumerator: 37,
    hourlyDenominatorByDay: 0.24,
    hourlyDenominatorByNight: 0.96,
    soilHeatShareByDay: 0.1,
    soilHeatShareByNight: 0.5,
    stefanBoltzmannPerDay: STEFAN_BOLTZMANN_PER_DAY.asce,
    leastClearness: 0.3,
  },
  "asce-tall": {
    dailyNumerator: 1600,
    dailyDenominator: 0.38,
    hourlyNumerator: 66,
    hourlyDenominatorByDay: 0.25,
    hourlyDenominatorByNight: 1.7,
    soilHeatShareByDay: 0.04,
    soilHeatShareByNight: 0.2,
    stefanBoltzmannPerDay: STEFAN_BOLTZMANN_PER_DAY.asce,
    leastClearness: 0.3,
  },
};

/**
 * Lower than this the profile of FAO-56 Eq. 47 is no wind any more: its logarithm falls to zero at 9.5 cm over the
 * grass. Common practice.
 */
const LEAST_HEIGHT_METERS = 0.5;

/** Wind speed at 2 m from that at another height over grass, from half a meter up, both in m/s (FAO-56 Eq. 47). Throws for others. */
export function windAtTwoMeters(windMetersPerSecond: number, heightMeters: number): number {
  invariant(windMetersPerSecond >= 0 && Number.isFinite(windMetersPerSecond), "a wind blows at no less than nothing");
  invariant(heightMeters >= LEAST_HEIGHT_METERS && Number.isFinite(heightMeters), "wind is measured over the grass");
  return heightMeters === 2 ? windMetersPerSecond : (windMetersPerSecond * 4.87) / Math.log(67.8 * heightMeters - 5.42);
}

/**
 * What the Penman-Monteith equation joins. Energies in MJ per square meter and period, pressures in kPa, the slope and
 * the psychrometric constant in kPa/°C, wind in m/s.
 */
export interface PenmanMonteithTerms {
  readonly slope: number;
  readonly psychrometricConstant: number;
  readonly netRadiation: number;
  readonly soilHeatFlux: number;
  readonly meanTemperatureC: number;
  readonly windAtTwoMeters: number;
  readonly saturationVaporPressureKilopascals: number;
  readonly actualVaporPressureKilopascals: number;
}

/** The FAO Penman-Monteith equation of a day, in mm (FAO-56 Eq. 6). */
export function penmanMonteithDailyMillimeters(terms: PenmanMonteithTerms): number {
  const { dailyNumerator, dailyDenominator } = SURFACES["fao-56"];
  return penmanMonteith(terms, dailyNumerator, dailyDenominator);
}

/**
 * The Penman-Monteith equation in mm, with the numerator and denominator constants of a surface and period
 * (FAO-56 Eq. 6, 53; ASCE 2005 Eq. 1).
 */
export function penmanMonteith(terms: PenmanMonteithTerms, numerator: number, denominator: number): number {
  const { slope, psychrometricConstant: gamma, windAtTwoMeters: wind } = terms;
  const deficit = terms.saturationVaporPressureKilopascals - terms.actualVaporPressureKilopascals;
  const radiationTerm = 0.408 * slope * (terms.netRadiation - terms.soilHeatFlux);
  const windTerm = gamma * (numerator / (terms.meanTemperatureC + 273)) * wind * deficit;
  return (radiationTerm + windTerm) / (slope + gamma * (1 + denominator * wind));
}

/** Reference evapotranspiration with every step it was made from. Radiation in MJ per square meter and period. */
export interface ReferenceResult extends PenmanMonteithTerms {
  readonly surface: ReferenceSurface;
  readonly pressureKilopascals: number;
  readonly extraterrestrialRadiation: number;
  readonly clearSkyRadiation: number;
  readonly netShortwaveRadiation: number;
  readonly netLongwaveRadiation: number;
  /** Millimeters in the period; a little below zero in a night with dew. */
  readonly evapotranspirationMillimeters: number;
}

/** The most vapor that air of the period can hold, and the most sun that can reach it there and then. */
interface AirLimits {
  readonly saturationVaporPressureKilopascals: number;
  readonly extraterrestrialRadiation: number;
  /** What a reading may show above that: light from below the horizon, and a pyranometer's own error. */
  readonly radiationMargin: number;
}

/** What both the daily and the hourly equation read of the place and the air. */
interface PlaceAndAir {
  readonly latitudeDegrees: number;
  readonly elevationMeters: number;
  readonly actualVaporPressureKilopascals: number;
  readonly solarRadiation: number;
  readonly windMetersPerSecond: number;
  readonly windHeightMeters: number;
}

/**
 * Asks for what the equation reads of the place and the air. Vapor pressure ends at saturation (FAO-56 Eq. 11 and 12)
 * and solar radiation a little above what reaches the top of the atmosphere (FAO-56 Eq. 21 and 28): beyond them a
 * reading is in another unit. Ends are shown, and taken, up to the next hundredth. The elevation is that of land on
 * which turf grows, -450 to 6,000 m, and a gauge hangs from 0.5 to 100 m high (common practice).
 */
export function placeAndAirRanges(reading: PlaceAndAir, limits: AirLimits): RangeCheck[] {
  return [
    latitudeRange(reading.latitudeDegrees),
    {
      field: "elevationMeters",
      words: "The elevation",
      value: reading.elevationMeters,
      lowest: -450,
      highest: 6000,
      unit: "m",
    },
    {
      field: "actualVaporPressureKilopascals",
      words: "The vapor pressure",
      value: reading.actualVaporPressureKilopascals,
      lowest: 0,
      highest: upToHundredth(limits.saturationVaporPressureKilopascals),
      unit: "kPa",
    },
    amountRange("solarRadiation", "The solar radiation", reading.solarRadiation, {
      highest: upToHundredth(limits.extraterrestrialRadiation + limits.radiationMargin),
      unit: "MJ/m2",
    }),
    amountRange("windMetersPerSecond", "The wind", reading.windMetersPerSecond, MOST_WIND.metersPerSecond),
    {
      field: "windHeightMeters",
      words: "The height of the wind gauge",
      value: reading.windHeightMeters,
      lowest: 0.5,
      highest: 100,
      unit: "m",
    },
  ];
}

function upToHundredth(value: number): number {
  return Math.ceil(value * 100) / 100;
}
