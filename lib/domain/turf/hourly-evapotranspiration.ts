import { EARLIEST_EPOCH_MILLISECONDS, LATEST_EPOCH_MILLISECONDS, calendarDateOf } from "#domain/foundation/calendar-date";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { dayOfYear } from "#domain/turf/daily-series";
import {
  type PenmanMonteithTerms,
  type ReferenceResult,
  type ReferenceSurface,
  SURFACES,
  penmanMonteith,
  placeAndAirRanges,
  windAtTwoMeters,
} from "#domain/turf/penman-monteith";
import { type Refused, latitudeRange, longitudeRange, refuseOutOfRange, temperatureRange } from "#domain/turf/physical-range";
import {
  clearSkyRadiation,
  extraterrestrialRadiationOfHour,
  netLongwaveRadiationOfHour,
  netShortwaveRadiation,
  sineOfSunHeight,
  solarTimeAngleRadians,
} from "#domain/turf/solar-radiation";
import {
  airPressureKilopascals,
  psychrometricConstant,
  saturationVaporPressureKilopascals,
  vaporPressureSlope,
} from "#domain/turf/vapor-pressure";

/** From this height of the sun on, an hour's own radiation shows how clear the sky is (ASCE 2005). */
const HIGH_SUN_RADIANS = 0.3;

/** MJ per square meter by which an hour's reading may pass what reaches the top of the atmosphere, at dawn too (common practice). */
const HOURLY_RADIATION_MARGIN = 0.3;

/** An hour's weather for reference evapotranspiration. Radiation in MJ per square meter and hour; east is positive. */
export interface ReferenceHour {
  readonly startsAtEpochMilliseconds: number;
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
  readonly elevationMeters: number;
  readonly temperatureC: number;
  readonly actualVaporPressureKilopascals: number;
  readonly solarRadiation: number;
  /**
   * Solar radiation over that of a clear sky in the last hours of high sun, from 0 to 1. It stands in while the
   * sun is down or lower than 0.3 radians, when the hour's own ratio says nothing (ASCE 2005).
   */
  readonly clearnessBeforeSunset: number;
  readonly windMetersPerSecond: number;
  readonly windHeightMeters: number;
}

/**
 * Reference evapotranspiration of an hour by Penman-Monteith (FAO-56 Eq. 53; ASCE 2005). An hour counts as day while
 * net radiation is above zero. Refuses impossible readings, each at its own field.
 */
export function hourlyReferenceEvapotranspiration(
  hour: ReferenceHour,
  surface: ReferenceSurface,
): Outcome<ReferenceResult> {
  const refusal = refuseHourAndPlace(hour);
  if (refusal !== undefined) return refusal;
  const { temperatureC, actualVaporPressureKilopascals, solarRadiation } = hour;
  const { extraterrestrial, clearSky, isHighSun } = sunOfHour(hour);
  const saturation = saturationVaporPressureKilopascals(temperatureC);
  const limits = { saturationVaporPressureKilopascals: saturation, extraterrestrialRadiation: extraterrestrial, radiationMargin: HOURLY_RADIATION_MARGIN };
  const wrongAir = refuseOutOfRange(placeAndAirRanges(hour, limits));
  if (wrongAir !== undefined) return wrongAir;
  const constants = SURFACES[surface];
  const { stefanBoltzmannPerDay } = constants;
  const ownClearness = isHighSun ? Math.min(1, solarRadiation / clearSky) : hour.clearnessBeforeSunset;
  const clearness = Math.max(constants.leastClearness, ownClearness);
  const longwave = netLongwaveRadiationOfHour(temperatureC, {
    stefanBoltzmannPerDay,
    actualVaporPressureKilopascals,
    clearness,
  });
  const shortwave = netShortwaveRadiation(solarRadiation);
  const netRadiation = shortwave - longwave;
  const isDay = netRadiation > 0;
  const pressureKilopascals = airPressureKilopascals(hour.elevationMeters);
  const terms: PenmanMonteithTerms = {
    slope: vaporPressureSlope(temperatureC),
    psychrometricConstant: psychrometricConstant(pressureKilopascals),
    netRadiation,
    soilHeatFlux: netRadiation * (isDay ? constants.soilHeatShareByDay : constants.soilHeatShareByNight),
    meanTemperatureC: temperatureC,
    windAtTwoMeters: windAtTwoMeters(hour.windMetersPerSecond, hour.windHeightMeters),
    saturationVaporPressureKilopascals: saturation,
    actualVaporPressureKilopascals,
  };
  const denominator = isDay ? constants.hourlyDenominatorByDay : constants.hourlyDenominatorByNight;
  return accept({
    ...terms,
    surface,
    pressureKilopascals,
    extraterrestrialRadiation: extraterrestrial,
    clearSkyRadiation: clearSky,
    netShortwaveRadiation: shortwave,
    netLongwaveRadiation: longwave,
    evapotranspirationMillimeters: penmanMonteith(terms, constants.hourlyNumerator, denominator),
  });
}

function refuseHourAndPlace(hour: ReferenceHour): Refused | undefined {
  return refuseOutOfRange([
    {
      field: "startsAtEpochMilliseconds",
      words: "The hour",
      value: hour.startsAtEpochMilliseconds,
      lowest: EARLIEST_EPOCH_MILLISECONDS,
      highest: LATEST_EPOCH_MILLISECONDS,
      unit: "ms",
    },
    longitudeRange(hour.longitudeDegrees),
    {
      field: "clearnessBeforeSunset",
      words: "The clearness before sunset",
      value: hour.clearnessBeforeSunset,
      lowest: 0,
      highest: 1,
      unit: "(a share)",
    },
    temperatureRange("temperatureC", "The temperature", hour.temperatureC),
    latitudeRange(hour.latitudeDegrees),
  ]);
}

/** The sun over the middle of an hour, by the mean solar time of the place, which knows no time zone. */
function sunOfHour(hour: ReferenceHour): {
  readonly extraterrestrial: number;
  readonly clearSky: number;
  readonly isHighSun: boolean;
} {
  const middle = new Date(hour.startsAtEpochMilliseconds + 1_800_000 + hour.longitudeDegrees * 240_000);
  const solarDay = dayOfYear(calendarDateOf(middle.getTime()));
  const meanSolarTimeHours = middle.getUTCHours() + middle.getUTCMinutes() / 60 + middle.getUTCSeconds() / 3600;
  const extraterrestrial = extraterrestrialRadiationOfHour(hour.latitudeDegrees, solarDay, meanSolarTimeHours);
  const clearSky = clearSkyRadiation(hour.elevationMeters, extraterrestrial);
  const timeAngle = solarTimeAngleRadians(meanSolarTimeHours, solarDay);
  const isHighSun = sineOfSunHeight(hour.latitudeDegrees, solarDay, timeAngle) >= Math.sin(HIGH_SUN_RADIANS);
  return { extraterrestrial, clearSky, isHighSun };
}
