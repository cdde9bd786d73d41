/** The columns of a day on a truck that hold the forecast highs of the days after it. */
export interface HighColumns {
  readonly forecastNextHighF: number | null;
  readonly forecastSecondHighF: number | null;
  readonly forecastThirdHighF: number | null;
}

/** The forecast highs of the three days after a day, in degrees Fahrenheit and in their order; null where nobody entered one. */
export function comingHighsOf({ forecastNextHighF, forecastSecondHighF, forecastThirdHighF }: HighColumns): readonly (number | null)[] {
  return [forecastNextHighF, forecastSecondHighF, forecastThirdHighF];
}

/** The same highs as columns. */
export function comingHighColumns([next = null, second = null, third = null]: readonly (number | null)[]): HighColumns {
  return { forecastNextHighF: next, forecastSecondHighF: second, forecastThirdHighF: third };
}
