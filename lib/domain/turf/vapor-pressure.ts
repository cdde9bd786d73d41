// Humidity and pressure of air. Source of every equation: Allen, Pereira, Raes & Smith 1998, Crop
// evapotranspiration, FAO Irrigation and Drainage Paper 56, chapter 3, by the number given. The functions are
// bare arithmetic: they check nothing, and an impossible input gives an impossible result.

/** Air pressure in kPa at an elevation in meters (FAO-56 Eq. 7). */
export function airPressureKilopascals(elevationMeters: number): number {
  return 101.3 * ((293 - 0.0065 * elevationMeters) / 293) ** 5.26;
}

/** Psychrometric constant in kPa/°C at an air pressure in kPa (FAO-56 Eq. 8). */
export function psychrometricConstant(pressureKilopascals: number): number {
  return 0.665e-3 * pressureKilopascals;
}

/** Saturation vapor pressure in kPa at an air temperature in °C (FAO-56 Eq. 11). */
export function saturationVaporPressureKilopascals(temperatureC: number): number {
  return 0.6108 * Math.exp((17.27 * temperatureC) / (temperatureC + 237.3));
}

/** Mean saturation vapor pressure in kPa of a day, from its extremes in °C (FAO-56 Eq. 12). */
export function meanSaturationVaporPressureKilopascals(
  minimumTemperatureC: number,
  maximumTemperatureC: number,
): number {
  return (
    (saturationVaporPressureKilopascals(maximumTemperatureC) +
      saturationVaporPressureKilopascals(minimumTemperatureC)) /
    2
  );
}

/** Slope of the saturation vapor pressure curve in kPa/°C at a temperature in °C (FAO-56 Eq. 13). */
export function vaporPressureSlope(temperatureC: number): number {
  return (4098 * saturationVaporPressureKilopascals(temperatureC)) / (temperatureC + 237.3) ** 2;
}

/** Actual vapor pressure in kPa from the dew point in °C (FAO-56 Eq. 14; with the day's lowest temperature, Eq. 48). */
export function vaporPressureFromDewPointKilopascals(dewPointC: number): number {
  return saturationVaporPressureKilopascals(dewPointC);
}

/** The kind of psychrometer, as its coefficient in 1/°C (FAO-56 Eq. 16). */
export const PSYCHROMETER_COEFFICIENTS = {
  ventilated: 0.000662,
  naturallyVentilated: 0.0008,
  indoors: 0.0012,
} as const;

/** Actual vapor pressure in kPa from a psychrometer's two temperatures (°C) and the pressure (kPa) (FAO-56 Eq. 15). */
export function vaporPressureFromWetBulbKilopascals(
  dryBulbC: number,
  wetBulbC: number,
  pressureKilopascals: number,
  coefficientPerDegreeC: number = PSYCHROMETER_COEFFICIENTS.ventilated,
): number {
  return (
    saturationVaporPressureKilopascals(wetBulbC) - coefficientPerDegreeC * pressureKilopascals * (dryBulbC - wetBulbC)
  );
}

/** Actual vapor pressure in kPa from a day's extremes of temperature (°C) and humidity (%) (FAO-56 Eq. 17). */
export function vaporPressureFromHumidityExtremesKilopascals(day: {
  readonly minimumTemperatureC: number;
  readonly maximumTemperatureC: number;
  readonly minimumRelativeHumidityPercent: number;
  readonly maximumRelativeHumidityPercent: number;
}): number {
  const atMinimum =
    saturationVaporPressureKilopascals(day.minimumTemperatureC) * (day.maximumRelativeHumidityPercent / 100);
  const atMaximum =
    saturationVaporPressureKilopascals(day.maximumTemperatureC) * (day.minimumRelativeHumidityPercent / 100);
  return (atMinimum + atMaximum) / 2;
}

/** Actual vapor pressure in kPa from a day's lowest temperature (°C) and highest humidity (%) (FAO-56 Eq. 18). */
export function vaporPressureFromMaximumHumidityKilopascals(
  minimumTemperatureC: number,
  maximumRelativeHumidityPercent: number,
): number {
  return saturationVaporPressureKilopascals(minimumTemperatureC) * (maximumRelativeHumidityPercent / 100);
}

/** Actual vapor pressure in kPa from a day's extremes of temperature (°C) and mean humidity (%) (FAO-56 Eq. 19). */
export function vaporPressureFromMeanHumidityKilopascals(
  minimumTemperatureC: number,
  maximumTemperatureC: number,
  meanRelativeHumidityPercent: number,
): number {
  return (
    meanSaturationVaporPressureKilopascals(minimumTemperatureC, maximumTemperatureC) *
    (meanRelativeHumidityPercent / 100)
  );
}

/** Dew point in °C at an actual vapor pressure in kPa: Eq. 14 of FAO-56 solved for the temperature. */
export function dewPointC(vaporPressureKilopascals: number): number {
  const exponent = Math.log(vaporPressureKilopascals / 0.6108);
  return (237.3 * exponent) / (17.27 - exponent);
}
