// A real daily series: Seattle-Tacoma airport 2012 to 2015, from NOAA, as the package vega-datasets carries it.
// Temperatures in °C, precipitation in mm, wind in m/s.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

export interface SeattleDay {
  readonly date: string;
  readonly precipitationMillimeters: number;
  readonly maximumC: number;
  readonly minimumC: number;
  readonly windMetersPerSecond: number;
}

/** Where the series was measured. */
export const SEATTLE = { latitudeDegrees: 47.45, longitudeDegrees: -122.31, elevationMeters: 132 } as const;

function readSeries(): readonly SeattleDay[] {
  const library = createRequire(import.meta.url).resolve("vega-datasets");
  const text = readFileSync(new URL("../data/seattle-weather.csv", `file://${library}`), "utf8");
  const [header, ...lines] = text.trim().split("\n");
  if (header?.trim() !== "date,precipitation,temp_max,temp_min,wind,weather")
    throw new Error(`Unknown columns: ${header ?? ""}`);
  return lines.map((line) => {
    const [date = "", precipitation, maximum, minimum, wind] = line.split(",");
    return {
      date,
      precipitationMillimeters: Number(precipitation),
      maximumC: Number(maximum),
      minimumC: Number(minimum),
      windMetersPerSecond: Number(wind),
    };
  });
}

/** The days from January 1, 2012 through December 31, 2015. */
export const seattleDays: readonly SeattleDay[] = readSeries();
