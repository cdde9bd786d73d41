import { type Outcome, accept } from "#domain/foundation/outcome";
import { percentRange, refuseOutOfRange, temperatureRange } from "#domain/turf/physical-range";
import { saturationVaporPressureKilopascals, vaporPressureFromWetBulbKilopascals } from "#domain/turf/vapor-pressure";

/**
 * Wet-bulb temperature in °C at sea level from temperature (°C) and relative humidity (%) by the fit of Stull 2011, J.
 * Appl. Meteor. Climatol. 50: 2267-2269. Its error is -1 to +0.65 °C, below 0.3 on average. Refuses readings outside
 * the fit: `relativeHumidityPercent` from 5 to 99, `temperatureC` from -20 to 50.
 */
export function stullWetBulbC(temperatureC: number, relativeHumidityPercent: number): Outcome<number> {
  const refusal = refuseOutOfRange([
    { field: "temperatureC", words: "The temperature", value: temperatureC, lowest: -20, highest: 50, unit: "°C" },
    {
      field: "relativeHumidityPercent",
      words: "The relative humidity",
      value: relativeHumidityPercent,
      lowest: 5,
      highest: 99,
      unit: "%",
    },
  ]);
  if (refusal !== undefined) return refusal;
  const humidity = relativeHumidityPercent;
  return accept(
    temperatureC * Math.atan(0.151977 * Math.sqrt(humidity + 8.313659)) +
      Math.atan(temperatureC + humidity) -
      Math.atan(humidity - 1.676331) +
      0.00391838 * humidity ** 1.5 * Math.atan(0.023101 * humidity) -
      4.686035,
  );
}

/** Halvings of a span of at most 100 °C until it is far below any thermometer's step. */
const HALVINGS = 50;

/**
 * Wet-bulb temperature in °C from temperature (°C), relative humidity (%) and air pressure (kPa): the one at which a
 * ventilated psychrometer would read this humidity (FAO-56 Eq. 11, 15, 16). Below freezing it is that over water, not
 * ice. Refuses impossible readings; a pressure of 45 to 110 kPa is that of land from below sea level to over 6,000 m.
 */
export function psychrometricWetBulbC(
  temperatureC: number,
  relativeHumidityPercent: number,
  pressureKilopascals: number,
): Outcome<number> {
  const refusal = refuseOutOfRange([
    temperatureRange("temperatureC", "The temperature", temperatureC),
    percentRange("relativeHumidityPercent", "The relative humidity", relativeHumidityPercent),
    {
      field: "pressureKilopascals",
      words: "The air pressure",
      value: pressureKilopascals,
      lowest: 45,
      highest: 110,
      unit: "kPa",
    },
  ]);
  if (refusal !== undefined) return refusal;
  const vaporPressure = saturationVaporPressureKilopascals(temperatureC) * (relativeHumidityPercent / 100);
  let tooCold = temperatureC - 100;
  let warmEnough = temperatureC;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (tooCold + warmEnough) / 2;
    if (vaporPressureFromWetBulbKilopascals(temperatureC, middle, pressureKilopascals) < vaporPressure)
      tooCold = middle;
    else warmEnough = middle;
  }
  return accept(warmEnough);
}

/**
 * Relative humidity in % from a psychrometer's two temperatures in °C and the air pressure in kPa (FAO-56 Eq. 15, 16).
 * Bare arithmetic: it checks nothing.
 */
export function relativeHumidityPercent(dryBulbC: number, wetBulbC: number, pressureKilopascals: number): number {
  const vaporPressure = vaporPressureFromWetBulbKilopascals(dryBulbC, wetBulbC, pressureKilopascals);
  return (100 * vaporPressure) / saturationVaporPressureKilopascals(dryBulbC);
}

/** What a Delta T says of how long fine drops last. */
export type DeltaTClass = "below-2" | "ideal" | "above-8" | "above-10";

/** Dry-bulb less wet-bulb temperature. It is a note beside a spray hour and never closes one. */
export interface DeltaT {
  readonly deltaTC: number;
  readonly classification: DeltaTClass;
}

/**
 * Delta T in °C by the psychrometric wet bulb. From 2 to 8 °C is ideal; above 10 drops dry out, and below 2
 * they last and drift far. Source: Australian Bureau of Meteorology, quoted by sprayers101.com/delta-t.
 * Refuses as {@link psychrometricWetBulbC} does.
 */
export function deltaT(
  temperatureC: number,
  relativeHumidityPercent: number,
  pressureKilopascals: number,
): Outcome<DeltaT> {
  const wetBulbC = psychrometricWetBulbC(temperatureC, relativeHumidityPercent, pressureKilopascals);
  if (!wetBulbC.ok) return wetBulbC;
  const deltaTC = temperatureC - wetBulbC.value;
  return accept({ deltaTC, classification: classifyDeltaT(deltaTC) });
}

/** The class of a Delta T in °C; the ends of the ideal range belong to it. Source: as for {@link deltaT}. */
export function classifyDeltaT(deltaTC: number): DeltaTClass {
  if (deltaTC < 2) return "below-2";
  if (deltaTC <= 8) return "ideal";
  return deltaTC <= 10 ? "above-8" : "above-10";
}
