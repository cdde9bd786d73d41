import { type CalendarDate } from "#domain/foundation/calendar-date";
import { invariant } from "#domain/foundation/invariant";
import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { dayOfYear, refuseUnrealDate } from "#domain/turf/daily-series";
import {
  type PenmanMonteithTerms,
  type ReferenceResult,
  type ReferenceSurface,
  SURFACES,
  penmanMonteith,
  placeAndAirRanges,
  windAtTwoMeters,
} from "#domain/turf/penman-monteith";
import { type Refused, latitudeRange, refuseOutOfRange, temperatureRange } from "#domain/turf/physical-range";
import {
  clearSkyRadiation,
  clearSkyRadiationWithHumidity,
  evaporationMillimeters,
  extraterrestrialRadiation,
  netLongwaveRadiation,
  netShortwaveRadiation,
} from "#domain/turf/solar-radiation";
import {
  airPressureKilopascals,
  meanSaturationVaporPressureKilopascals,
  psychrometricConstant,
  vaporPressureSlope,
} from "#domain/turf/vapor-pressure";

/** A day's weather for reference evapotranspiration. Radiation in MJ per square meter and day. */
export interface ReferenceDay {
  readonly date: CalendarDate;
  readonly latitudeDegrees: number;
  readonly elevationMeters: number;
  readonly minimumTemperatureC: number;
  readonly maximumTemperatureC: number;
  readonly actualVaporPressureKilopascals: number;
  readonly solarRadiation: number;
  /** What the radiation of a clear sky is reckoned from: FAO-56 Eq. 37, or ASCE 2005 appendix D. */
  readonly clearSkyFrom: "elevation" | "elevation-and-humidity";
  readonly windMetersPerSecond: number;
  readonly windHeightMeters: number;
}

/** MJ per square meter by which a day's reading may pass what reaches the top of the atmosphere (common practice). */
const DAILY_RADIATION_MARGIN = 1;

/**
 * Reference evapotranspiration of a day by Penman-Monteith, soil heat flux zero (FAO-56 Eq. 6, 42; ASCE 2005 for its
 * two surfaces). Refuses a day that the calendar does not have (`date`), impossible readings at their own fields, a
 * lowest above a highest temperature, and days without sunrise, on which a clear sky is no measure of clouds.
 */
export function dailyReferenceEvapotranspiration(
  day: ReferenceDay,
  surface: ReferenceSurface,
): Outcome<ReferenceResult> {
  const wrongDay = refuseUnrealDate("date", day.date) ?? refuseExtremes(day) ?? refuseOutOfRange([latitudeRange(day.latitudeDegrees)]);
  if (wrongDay !== undefined) return wrongDay;
  const { minimumTemperatureC: minimum, maximumTemperatureC: maximum, actualVaporPressureKilopascals } = day;
  const meanTemperatureC = (minimum + maximum) / 2;
  const extraterrestrial = extraterrestrialRadiation(day.latitudeDegrees, dayOfYear(day.date));
  if (extraterrestrial <= 0) return refuseNoSun(day.date);
  const saturation = meanSaturationVaporPressureKilopascals(minimum, maximum);
  const limits = { saturationVaporPressureKilopascals: saturation, extraterrestrialRadiation: extraterrestrial, radiationMargin: DAILY_RADIATION_MARGIN };
  const refusal = refuseOutOfRange(placeAndAirRanges(day, limits));
  if (refusal !== undefined) return refusal;
  const pressureKilopascals = airPressureKilopascals(day.elevationMeters);
  const clearSky =
    day.clearSkyFrom === "elevation"
      ? clearSkyRadiation(day.elevationMeters, extraterrestrial)
      : clearSkyRadiationWithHumidity({ ...day, dayOfYear: dayOfYear(day.date), pressureKilopascals });
  const constants = SURFACES[surface];
  const { stefanBoltzmannPerDay } = constants;
  const clearness = Math.min(1, Math.max(constants.leastClearness, day.solarRadiation / clearSky));
  const longwave = netLongwaveRadiation(minimum, maximum, {
    stefanBoltzmannPerDay,
    actualVaporPressureKilopascals,
    clearness,
  });
  const shortwave = netShortwaveRadiation(day.solarRadiation);
  const terms: PenmanMonteithTerms = {
    slope: vaporPressureSlope(meanTemperatureC),
    psychrometricConstant: psychrometricConstant(pressureKilopascals),
    netRadiation: shortwave - longwave,
    soilHeatFlux: 0,
    meanTemperatureC,
    windAtTwoMeters: windAtTwoMeters(day.windMetersPerSecond, day.windHeightMeters),
    saturationVaporPressureKilopascals: saturation,
    actualVaporPressureKilopascals,
  };
  return accept({
    ...terms,
    surface,
    pressureKilopascals,
    extraterrestrialRadiation: extraterrestrial,
    clearSkyRadiation: clearSky,
    netShortwaveRadiation: shortwave,
    netLongwaveRadiation: longwave,
    evapotranspirationMillimeters: penmanMonteith(terms, constants.dailyNumerator, constants.dailyDenominator),
  });
}

/**
 * Reference evapotranspiration of a day in mm from temperatures alone (Hargreaves; FAO-56 Eq. 52), for places
 * without radiation, humidity and wind: 0.0023 (Tmean + 17.8) (Tmax - Tmin)^0.5 Ra, with Ra in mm.
 * Refuses impossible dates, temperatures and latitudes. Far below freezing it is zero.
 */
export function hargreavesEvapotranspirationMillimeters(day: {
  readonly date: CalendarDate;
  readonly latitudeDegrees: number;
  readonly minimumTemperatureC: number;
  readonly maximumTemperatureC: number;
}): Outcome<number> {
  const refusal = refuseUnrealDate("date", day.date) ?? refuseExtremes(day) ?? refuseOutOfRange([latitudeRange(day.latitudeDegrees)]);
  if (refusal !== undefined) return refusal;
  return accept(hargreavesMillimeters(day, extraterrestrialRadiation(day.latitudeDegrees, dayOfYear(day.date))));
}

/** The bare Hargreaves equation in mm, for extraterrestrial radiation in MJ per square meter and day (FAO-56 Eq. 52). Throws for extremes turned round. */
export function hargreavesMillimeters(
  day: {
    readonly minimumTemperatureC: number;
    readonly maximumTemperatureC: number;
    readonly meanTemperatureC?: number;
  },
  extraterrestrial: number,
): number {
  const { minimumTemperatureC: minimum, maximumTemperatureC: maximum } = day;
  const mean = day.meanTemperatureC ?? (minimum + maximum) / 2;
  invariant(maximum >= minimum && Number.isFinite(mean), "a day's highest temperature is not under its lowest");
  invariant(extraterrestrial >= 0 && Number.isFinite(extraterrestrial), "radiation is an amount");
  return Math.max(0, 0.0023 * (mean + 17.8) * Math.sqrt(maximum - minimum) * evaporationMillimeters(extraterrestrial));
}

function refuseExtremes(day: Pick<ReferenceDay, "minimumTemperatureC" | "maximumTemperatureC">): Refused | undefined {
  const { minimumTemperatureC: minimum, maximumTemperatureC: maximum } = day;
  const refusal = refuseOutOfRange([
    temperatureRange("minimumTemperatureC", "The day's lowest temperature", minimum),
    temperatureRange("maximumTemperatureC", "The day's highest temperature", maximum),
  ]);
  if (refusal !== undefined || minimum <= maximum) return refusal;
  return badInput(
    "minimumTemperatureC",
    `${minimum} °C`,
    `at most ${maximum} °C`,
    `The day's lowest temperature, ${minimum} °C, is above its highest, ${maximum} °C.`,
  );
}

function refuseNoSun(date: CalendarDate): Refused {
  return badInput(
    "latitudeDegrees",
    `no sunrise on ${date}`,
    "a place where the sun rises",
    `The sun does not rise there on ${date}, so evapotranspiration can't be computed.`,
  );
}
