import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { type DiseaseModel, type IndexAnswer } from "#domain/turf/disease-risk";
import { hoursOfDayRange, refuseOutOfRange, temperatureRange } from "#domain/turf/physical-range";

/** The anthracnose severity index of Danneberger, Vargas & Jones. */
export const DANNEBERGER_ANTHRACNOSE: DiseaseModel = {
  disease: "anthracnose",
  name: "Danneberger anthracnose severity index",
  madeFor: "annual bluegrass in Michigan, foliar blight",
  validity:
    "three-day means; foliar blight, not basal rot; the range of its field data was not read, so it is refused " +
    "where its curve would rise in the cold, and above 35 °C; its scale ends at 6, more than half of the turf diseased",
  source: "Danneberger, Vargas & Jones 1984, Phytopathology 74: 448-451",
  address: "https://scilit.com/publications/4c4bb18c8d7f83250de63ea1cd0239ab",
  reading: "read",
};

/**
 * The index from which infection is expected. It predicted 14 of 16 periods of increase. Source:
 * DANNEBERGER_ANTHRACNOSE.
 */
export const ANTHRACNOSE_THRESHOLD = 2;

/**
 * The mean temperature in °C above which the index is not asked. Its own data were not read; foliar blight is reported
 * from 80 to 95 °F (35 °C). Source: University of Illinois Extension, Anthracnose of turfgrass.
 */
export const ANTHRACNOSE_HOTTEST_C = 35;

/**
 * The index of a three-day period: 4.0233 - 0.2283 LW - 0.5308 T - 0.0013 LW2 + 0.0197 T2 + 0.0155 LW T, where T is the
 * mean temperature in °C and LW the mean hours of leaf wetness per day.
 *
 * The regression is a parabola in T, and to the left of its lowest point it would call cold weather dangerous; to the
 * right it climbs without end. It is refused on both sides, as are impossible readings and a threshold outside 0 to 6.
 * Source: DANNEBERGER_ANTHRACNOSE.
 */
export function judgeAnthracnose(
  period: { readonly meanTemperatureC: number; readonly meanLeafWetHoursPerDay: number },
  threshold: number,
): Outcome<IndexAnswer> {
  const { meanTemperatureC: temperature, meanLeafWetHoursPerDay: wetHours } = period;
  const refusal = refuseOutOfRange([
    temperatureRange("meanTemperatureC", "The three-day mean temperature", temperature),
    hoursOfDayRange("meanLeafWetHoursPerDay", "The time with wet leaves", wetHours),
    { field: "threshold", words: "The threshold", value: threshold, lowest: 0, highest: 6, unit: "(index)" },
  ]);
  if (refusal !== undefined) return refusal;
  if (temperature > ANTHRACNOSE_HOTTEST_C) {
    return badInput(
      "meanTemperatureC",
      `${temperature} °C`,
      `up to ${ANTHRACNOSE_HOTTEST_C} °C`,
      `The anthracnose model says nothing at ${temperature} °C: foliar blight is reported up to ${ANTHRACNOSE_HOTTEST_C} °C, and the curve climbs on beyond it.`,
    );
  }
  const coldestC = coldestTemperatureC(wetHours);
  if (temperature < coldestC) {
    const allowed = `${coldestC.toFixed(1)} °C or more with ${wetHours} h of leaf wetness`;
    return badInput(
      "meanTemperatureC",
      `${temperature} °C`,
      allowed,
      `The anthracnose model says nothing at ${temperature} °C: below ${coldestC.toFixed(1)} °C its curve rises again.`,
    );
  }
  const index =
    4.0233 -
    0.2283 * wetHours -
    0.5308 * temperature -
    0.0013 * wetHours ** 2 +
    0.0197 * temperature ** 2 +
    0.0155 * wetHours * temperature;
  return accept({ model: DANNEBERGER_ANTHRACNOSE, index, threshold, isFavorable: index >= threshold });
}

/** Where the index is least for a number of wet hours, in °C: its derivative by temperature is zero there. */
function coldestTemperatureC(wetHours: number): number {
  return (0.5308 - 0.0155 * wetHours) / (2 * 0.0197);
}
