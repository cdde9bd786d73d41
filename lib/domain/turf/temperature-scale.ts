/** The two scales in which temperatures, bases and degree days are given. */
export type TemperatureScale = "celsius" | "fahrenheit";

/** Degrees Fahrenheit from degrees Celsius. Source: NIST SP 811 Appendix B.8, (t - 32) / 1.8. */
export function fahrenheitFromCelsius(degreesC: number): number {
  return degreesC * 1.8 + 32;
}

/** Degrees Celsius from degrees Fahrenheit. Source: NIST SP 811 Appendix B.8, (t - 32) / 1.8. */
export function celsiusFromFahrenheit(degreesF: number): number {
  return (degreesF - 32) / 1.8;
}

/**
 * A temperature in degrees, read on one scale and given on another; unchanged when the scales are the same. Source:
 * NIST SP 811 Appendix B.8.
 */
export function convertTemperature(degrees: number, from: TemperatureScale, to: TemperatureScale): number {
  if (from === to) return degrees;
  return to === "fahrenheit" ? fahrenheitFromCelsius(degrees) : celsiusFromFahrenheit(degrees);
}

/**
 * A difference of temperature, or a sum of such (degree days), given on another scale: 200 degree days Celsius above 0
 * °C are 360 degree days Fahrenheit above 32 °F. Source: NIST SP 811 Appendix B.8.
 */
export function convertTemperatureDifference(
  degreesDifference: number,
  from: TemperatureScale,
  to: TemperatureScale,
): number {
  if (from === to) return degreesDifference;
  return to === "fahrenheit" ? degreesDifference * 1.8 : degreesDifference / 1.8;
}

/** The sign that follows a temperature on this scale. */
export function temperatureSign(scale: TemperatureScale): "°C" | "°F" {
  return scale === "celsius" ? "°C" : "°F";
}
