// The sun's energy on the ground. Source of every equation: Allen, Pereira, Raes & Smith 1998, FAO Irrigation
// and Drainage Paper 56, chapter 3, by the number given; the clear sky with humidity is from the ASCE
// standardized reference evapotranspiration equation (2005), appendix D. Radiation is in MJ per square meter
// and day, or hour where the name says so. The functions are bare arithmetic and check nothing.

/** Solar constant in MJ per square meter and minute (FAO-56 Eq. 21). */
const SOLAR_CONSTANT = 0.082;
/**
 * Stefan-Boltzmann constant in MJ per K4, square meter and day, as each publication rounds it (FAO-56 Eq. 39; ASCE
 * 2005).
 */
export const STEFAN_BOLTZMANN_PER_DAY = { fao56: 4.903e-9, asce: 4.901e-9 } as const;
/** Share of radiation that the reference grass reflects (FAO-56 Eq. 38). */
const ALBEDO = 0.23;

/** Degrees to radians (FAO-56 Eq. 22). */
export function radians(degrees: number): number {
  return (Math.PI / 180) * degrees;
}

/** Inverse relative distance from earth to sun on a day of the year (FAO-56 Eq. 23). */
export function inverseRelativeDistance(dayOfYear: number): number {
  return 1 + 0.033 * Math.cos(((2 * Math.PI) / 365) * dayOfYear);
}

/** The sun's declination in radians on a day of the year (FAO-56 Eq. 24). */
export function solarDeclinationRadians(dayOfYear: number): number {
  return 0.409 * Math.sin(((2 * Math.PI) / 365) * dayOfYear - 1.39);
}

/** Sunset hour angle in radians (FAO-56 Eq. 25): 0 where the sun stays down, pi where it stays up. */
export function sunsetHourAngleRadians(latitudeRadians: number, declinationRadians: number): number {
  const cosine = -Math.tan(latitudeRadians) * Math.tan(declinationRadians);
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}

/**
 * Extraterrestrial radiation of a day, in MJ per square meter and day (FAO-56 Eq. 21). South latitudes are negative.
 */
export function extraterrestrialRadiation(latitudeDegrees: number, dayOfYear: number): number {
  const latitude = radians(latitudeDegrees);
  const declination = solarDeclinationRadians(dayOfYear);
  const sunset = sunsetHourAngleRadians(latitude, declination);
  const height =
    sunset * Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
  return ((24 * 60) / Math.PI) * SOLAR_CONSTANT * inverseRelativeDistance(dayOfYear) * height;
}

/** Seasonal correction of solar time in hours (FAO-56 Eq. 32, 33). */
export function seasonalCorrectionHours(dayOfYear: number): number {
  const b = (2 * Math.PI * (dayOfYear - 81)) / 364;
  return 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
}

/**
 * Solar time angle in radians at the middle of a period, zero at solar noon (FAO-56 Eq. 31). Mean solar
 * time is standard time corrected by 4 minutes for each degree between the place and its zone's meridian.
 */
export function solarTimeAngleRadians(meanSolarTimeHours: number, dayOfYear: number): number {
  return (Math.PI / 12) * (meanSolarTimeHours + seasonalCorrectionHours(dayOfYear) - 12);
}

/**
 * Extraterrestrial radiation of one hour, in MJ per square meter and hour (FAO-56 Eq. 28 to 30), zero while the sun is
 * down. The part of an hour before sunrise or after sunset doesn't count.
 */
export function extraterrestrialRadiationOfHour(
  latitudeDegrees: number,
  dayOfYear: number,
  middleMeanSolarTimeHours: number,
): number {
  const latitude = radians(latitudeDegrees);
  const declination = solarDeclinationRadians(dayOfYear);
  const sunset = sunsetHourAngleRadians(latitude, declination);
  const middle = solarTimeAngleRadians(middleMeanSolarTimeHours, dayOfYear);
  const withinDaylight = (angle: number) => Math.min(sunset, Math.max(-sunset, angle));
  const begin = withinDaylight(middle - Math.PI / 24);
  const end = withinDaylight(middle + Math.PI / 24);
  const height =
    (end - begin) * Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * (Math.sin(end) - Math.sin(begin));
  const radiation = ((12 * 60) / Math.PI) * SOLAR_CONSTANT * inverseRelativeDistance(dayOfYear) * height;
  return Math.max(0, radiation);
}

/** The sine of the sun's height at a solar time angle in radians; below zero while it is down (ASCE 2005). */
export function sineOfSunHeight(latitudeDegrees: number, dayOfYear: number, timeAngleRadians: number): number {
  const latitude = radians(latitudeDegrees);
  const declination = solarDeclinationRadians(dayOfYear);
  return (
    Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(timeAngleRadians)
  );
}

/** Daylight hours of a day, without refraction (FAO-56 Eq. 34). */
export function daylightHours(latitudeDegrees: number, dayOfYear: number): number {
  return (24 / Math.PI) * sunsetHourAngleRadians(radians(latitudeDegrees), solarDeclinationRadians(dayOfYear));
}

/**
 * Solar radiation, in the unit of the extraterrestrial one, from hours of sunshine, with the coefficients 0.25 and 0.50
 * (FAO-56 Eq. 35).
 */
export function radiationFromSunshine(sunshineHours: number, possibleHours: number, extraterrestrial: number): number {
  return (0.25 + 0.5 * (sunshineHours / possibleHours)) * extraterrestrial;
}

/** Where a place lies, for radiation from temperatures (FAO-56 Eq. 50): the coefficient in °C^-0.5. */
export const TEMPERATURE_RADIATION_COEFFICIENTS = { interior: 0.16, coastal: 0.19 } as const;

/**
 * Solar radiation, in the unit of the extraterrestrial one, from the day's extremes in °C (Hargreaves; FAO-56 Eq. 50).
 */
export function radiationFromTemperatures(
  minimumTemperatureC: number,
  maximumTemperatureC: number,
  extraterrestrial: number,
  coefficient: number,
): number {
  return coefficient * Math.sqrt(maximumTemperatureC - minimumTemperatureC) * extraterrestrial;
}

/**
 * Solar radiation of a clear sky, in the unit of the extraterrestrial one, at an elevation in meters (FAO-56 Eq. 37).
 */
export function clearSkyRadiation(elevationMeters: number, extraterrestrial: number): number {
  return (0.75 + 2e-5 * elevationMeters) * extraterrestrial;
}

/** What the fuller clear-sky equation asks for. */
export interface ClearSky {
  readonly latitudeDegrees: number;
  readonly dayOfYear: number;
  readonly pressureKilopascals: number;
  readonly actualVaporPressureKilopascals: number;
}

/**
 * Solar radiation of a clear sky, in MJ per square meter and day, with the day's humidity and sun height, turbidity 1
 * (ASCE 2005, Eq. D.1 to D.6).
 */
export function clearSkyRadiationWithHumidity(sky: ClearSky): number {
  const latitude = radians(sky.latitudeDegrees);
  const yearAngle = ((2 * Math.PI) / 365) * sky.dayOfYear;
  const sinSunHeight = Math.max(
    0.1,
    Math.sin(0.85 + 0.3 * latitude * Math.sin(yearAngle - 1.39) - 0.42 * latitude ** 2),
  );
  const waterMillimeters = 0.14 * sky.actualVaporPressureKilopascals * sky.pressureKilopascals + 2.1;
  const beam =
    0.98 *
    Math.exp((-0.00146 * sky.pressureKilopascals) / sinSunHeight - 0.075 * (waterMillimeters / sinSunHeight) ** 0.4);
  const diffuse = beam >= 0.15 ? 0.35 - 0.36 * beam : 0.18 + 0.82 * beam;
  return (beam + diffuse) * extraterrestrialRadiation(sky.latitudeDegrees, sky.dayOfYear);
}

/** Net shortwave radiation of the reference grass, in the unit of the solar radiation (FAO-56 Eq. 38). */
export function netShortwaveRadiation(solarRadiation: number): number {
  return (1 - ALBEDO) * solarRadiation;
}

/**
 * What longwave loss depends on; the constant in MJ per K4, square meter and day. `clearness` is solar radiation over
 * that of a clear sky, a part of one, at most 1.
 */
export interface LongwaveFactors {
  readonly stefanBoltzmannPerDay: number;
  readonly actualVaporPressureKilopascals: number;
  readonly clearness: number;
}

/**
 * Net outgoing longwave radiation of a day, in MJ per square meter and day, from its extremes in °C (FAO-56 Eq. 39).
 */
export function netLongwaveRadiation(
  minimumTemperatureC: number,
  maximumTemperatureC: number,
  factors: LongwaveFactors,
): number {
  const meanFourthPower = ((maximumTemperatureC + 273.16) ** 4 + (minimumTemperatureC + 273.16) ** 4) / 2;
  return factors.stefanBoltzmannPerDay * meanFourthPower * longwaveShare(factors);
}

/**
 * Net outgoing longwave radiation of one hour, in MJ per square meter and hour (FAO-56 Eq. 39 with 1/24 of its
 * constant).
 */
export function netLongwaveRadiationOfHour(temperatureC: number, factors: LongwaveFactors): number {
  return (factors.stefanBoltzmannPerDay / 24) * (temperatureC + 273.16) ** 4 * longwaveShare(factors);
}

function longwaveShare({ actualVaporPressureKilopascals, clearness }: LongwaveFactors): number {
  return (0.34 - 0.14 * Math.sqrt(actualVaporPressureKilopascals)) * (1.35 * clearness - 0.35);
}

/**
 * Soil heat flux between two months, in MJ per square meter and day, from the mean temperatures in °C of the month
 * before and the month after (FAO-56 Eq. 43).
 */
export function monthlySoilHeatFlux(previousMonthC: number, nextMonthC: number): number {
  return 0.07 * (nextMonthC - previousMonthC);
}

/**
 * Soil heat flux of a month, in MJ per square meter and day, where the next is not known yet, from it and the month
 * before (FAO-56 Eq. 44).
 */
export function monthlySoilHeatFluxSoFar(previousMonthC: number, thisMonthC: number): number {
  return 0.14 * (thisMonthC - previousMonthC);
}

/** Millimeters of water that an energy in MJ per square meter evaporates (FAO-56 Eq. 20). */
export function evaporationMillimeters(energy: number): number {
  return 0.408 * energy;
}
