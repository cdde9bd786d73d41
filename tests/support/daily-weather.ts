// Real daily series from NOAA, as the package vega-datasets carries them in weather.csv: an airport of Seattle and one
// of New York, every day from 2012 through 2015 (seattle-weather.csv is its first half; the hourly file beside it holds
// normals of 1981 to 2010 and no weather). Temperatures in °C, precipitation in mm. No humidity and no radiation.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

export interface WeatherDay {
  readonly date: string;
  readonly precipitationMillimeters: number;
  readonly maximumC: number;
  readonly minimumC: number;
  /** The package says km/h; NOAA's daily summaries, from which the file is made, give m/s (from memory). */
  readonly windMetersPerSecond: number;
}

export interface WeatherPlace {
  readonly name: "Seattle" | "New York";
  readonly latitudeDegrees: number;
  readonly elevationMeters: number;
  /** From January 1, 2012 through December 31, 2015. */
  readonly days: readonly WeatherDay[];
}

function readLines(): readonly (readonly string[])[] {
  const library = createRequire(import.meta.url).resolve("vega-datasets");
  const text = readFileSync(new URL("../data/weather.csv", `file://${library}`), "utf8");
  const [header, ...lines] = text.trim().split("\n");
  if (header?.trim() !== "location,date,precipitation,temp_max,temp_min,wind,weather") throw new Error(`Unknown columns: ${header ?? ""}`);
  return lines.map((line) => line.split(","));
}

const lines = readLines();

function daysOf(name: WeatherPlace["name"]): readonly WeatherDay[] {
  return lines
    .filter(([location]) => location === name)
    .map(([, date = "", precipitation, maximum, minimum, wind]) => ({
      date,
      precipitationMillimeters: Number(precipitation),
      maximumC: Number(maximum),
      minimumC: Number(minimum),
      windMetersPerSecond: Number(wind),
    }));
}

/** Where the airports lie is from memory; both ways of each test start from the same place. */
export const SEATTLE: WeatherPlace = { name: "Seattle", latitudeDegrees: 47.45, elevationMeters: 132, days: daysOf("Seattle") };
export const NEW_YORK: WeatherPlace = { name: "New York", latitudeDegrees: 40.64, elevationMeters: 4, days: daysOf("New York") };
export const weatherPlaces = [SEATTLE, NEW_YORK] as const;

/** Saturation vapor pressure in kPa, plainly (FAO-56 Eq. 11). */
export function plainVaporPressure(temperatureC: number): number {
  return 0.6108 * Math.exp((17.27 * temperatureC) / (temperatureC + 237.3));
}

/** The mean relative humidity in percent if dew falls at the lowest temperature, which FAO-56 (Eq. 48) takes where humidity is not measured. */
export function plainHumidityPercent({ minimumC, maximumC }: WeatherDay): number {
  return (100 * plainVaporPressure(minimumC)) / plainVaporPressure((minimumC + maximumC) / 2);
}
