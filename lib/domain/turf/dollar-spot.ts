import { type CalendarDate, addDays } from "#domain/foundation/calendar-date";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { type Dated, unbrokenDays } from "#domain/turf/daily-series";
import { type DiseaseModel } from "#domain/turf/disease-risk";
import { percentRange, refuseOutOfRange, temperatureRange } from "#domain/turf/physical-range";

/** A day's mean air temperature and mean relative humidity. */
export interface HumidDay extends Dated {
  readonly meanTemperatureC: number;
  readonly meanRelativeHumidityPercent: number;
}

/** Smith-Kerns: the coefficients were read in two texts that quote the paper, the rest in its abstract. */
export const SMITH_KERNS: DiseaseModel = {
  disease: "dollar-spot",
  name: "Smith-Kerns",
  madeFor: "golf course turf, field sites in Wisconsin and Oklahoma, tested in six states",
  validity: "five-day mean air temperature from 10 to 35 °C; the threshold of 20 % is a start, to be adjusted per site",
  source: "Smith, Kerns et al. 2018, PLOS ONE 13(3): e0194216",
  address: "https://journals.plos.org/plosone/article?id=10.1371/journal.pone.0194216",
  reading: "read-second-hand",
};

/** Days of the moving means. Source: SMITH_KERNS. */
export const DOLLAR_SPOT_MEAN_DAYS = 5;

/** The spray threshold of the paper as a probability; 0.3 and 0.4 were tested too (Rutgers 2022). */
export const DOLLAR_SPOT_THRESHOLD = 0.2;

/** The model's answer for one day. */
export interface DollarSpotAnswer {
  readonly model: DiseaseModel;
  readonly meanTemperatureC: number;
  readonly meanRelativeHumidityPercent: number;
  /** From 0 to 1. */
  readonly probability: number;
  readonly threshold: number;
  readonly isFavorable: boolean;
}

/**
 * The probability of dollar spot, from 0 to 1, from the five-day means of air temperature and relative humidity: logit
 * = -11.4041 + 0.0894 RH + 0.1932 T. Refuses a mean temperature outside 10 to 35 °C, where the model says nothing, and
 * an impossible humidity. Source: SMITH_KERNS.
 */
export function dollarSpotProbability(meanTemperatureC: number, meanRelativeHumidityPercent: number): Outcome<number> {
  const refusal = refuseOutOfRange([
    {
      field: "meanTemperatureC",
      words: "The five-day mean temperature, for which the dollar spot model was made,",
      value: meanTemperatureC,
      lowest: 10,
      highest: 35,
      unit: "°C",
    },
    percentRange("meanRelativeHumidityPercent", "The five-day mean relative humidity", meanRelativeHumidityPercent),
  ]);
  if (refusal !== undefined) return refusal;
  const logit = -11.4041 + 0.0894 * meanRelativeHumidityPercent + 0.1932 * meanTemperatureC;
  return accept(1 / (1 + Math.exp(-logit)));
}

/**
 * The answer for one day, from the means of that day and the four before it, against a threshold from 0 to 1. Refuses a
 * missing day (naming it), impossible readings, a threshold outside 0 to 1, and means outside the model's range.
 */
export function judgeDollarSpot(
  series: readonly HumidDay[],
  date: CalendarDate,
  threshold: number,
): Outcome<DollarSpotAnswer> {
  const days = unbrokenDays(series, { from: addDays(date, 1 - DOLLAR_SPOT_MEAN_DAYS), through: date });
  if (!days.ok) return days;
  const refusal = refuseOutOfRange([
    { field: "threshold", words: "The threshold", value: threshold, lowest: 0, highest: 1, unit: "(a share)" },
    ...days.value.flatMap((day) => [
      temperatureRange(`${day.date} meanTemperatureC`, `The mean temperature of ${day.date}`, day.meanTemperatureC),
      percentRange(
        `${day.date} meanRelativeHumidityPercent`,
        `The mean relative humidity of ${day.date}`,
        day.meanRelativeHumidityPercent,
      ),
    ]),
  ]);
  if (refusal !== undefined) return refusal;
  const meanTemperatureC = meanOf(days.value.map((day) => day.meanTemperatureC));
  const meanRelativeHumidityPercent = meanOf(days.value.map((day) => day.meanRelativeHumidityPercent));
  const probability = dollarSpotProbability(meanTemperatureC, meanRelativeHumidityPercent);
  if (!probability.ok) return probability;
  return accept({
    model: SMITH_KERNS,
    meanTemperatureC,
    meanRelativeHumidityPercent,
    probability: probability.value,
    threshold,
    isFavorable: probability.value >= threshold,
  });
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
