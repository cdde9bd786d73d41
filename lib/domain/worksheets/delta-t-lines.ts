import { celsiusFromFahrenheit, fahrenheitFromCelsius } from "#domain/turf/temperature-scale";
import { airPressureKilopascals } from "#domain/turf/vapor-pressure";
import { type WeatherHour } from "#domain/weather/spray-reasons";
import { deltaT } from "#domain/weather/wet-bulb";
import { type HourByClock, hourWords } from "#domain/worksheets/typed-hours";

/** At sea level: a few hundred feet move Delta T by less than a tenth of a degree. */
const SEA_LEVEL_METERS = 0;

interface WetBulb {
  readonly dryC: number;
  readonly wetC: number;
  readonly deltaTC: number;
}

function wetBulbOf({ temperatureF, relativeHumidityPercent }: WeatherHour): WetBulb | undefined {
  const dryC = celsiusFromFahrenheit(temperatureF ?? Number.NaN);
  const answer = deltaT(dryC, relativeHumidityPercent ?? Number.NaN, airPressureKilopascals(SEA_LEVEL_METERS));
  return answer.ok ? { dryC, wetC: dryC - answer.value.deltaTC, deltaTC: answer.value.deltaTC } : undefined;
}

/** Wet bulb and Delta T, both in °C, as the limits on Delta T are printed. */
export function wetBulbAndDeltaT(weather: WeatherHour): readonly [string, string] {
  const found = wetBulbOf(weather);
  return found === undefined ? ["", ""] : [found.wetC.toFixed(1), found.deltaTC.toFixed(1)];
}

/** A number with at most four digits after the point, and a minus that is one. */
function degrees(value: number): string {
  return String(Number(value.toFixed(4))).replace("-", "−");
}

/**
 * The hour with the largest Delta T, by hand: its temperature in °C, the wet bulb that was found by trial, their
 * difference; none below freezing. Source: FAO-56, as psychrometricWetBulbC has it.
 */
export function deltaTLines(hours: readonly HourByClock[]): readonly string[] {
  const found = hours.flatMap(({ minute, weather }) => {
    const wetBulb = wetBulbOf(weather);
    return wetBulb === undefined ? [] : [{ minute, weather, ...wetBulb }];
  });
  const largest = found.reduce<(typeof found)[number] | undefined>((most, one) => (most !== undefined && most.deltaTC >= one.deltaTC ? most : one), undefined);
  if (largest === undefined || largest.wetC < 0) return [];
  const { minute, weather, dryC, wetC, deltaTC } = largest;
  const inFahrenheit = weather.temperatureF ?? 0;
  return [
    `Largest Delta T, at ${hourWords(minute)}, with ${degrees(inFahrenheit)} °F and a humidity of ${String(weather.relativeHumidityPercent)}%.`,
    `In °C: ${degrees(inFahrenheit)} − 32 = ${degrees(inFahrenheit - 32)}; ${degrees(inFahrenheit - 32)} ÷ 1.8 = ${degrees(dryC)} °C.`,
    `Wet bulb by trial in the formula: ${degrees(wetC)} °C, which is ${fahrenheitFromCelsius(wetC).toFixed(1)} °F.`,
    `Delta T: ${degrees(dryC)} − ${degrees(wetC)} = ${degrees(deltaTC)} °C.`,
  ];
}
