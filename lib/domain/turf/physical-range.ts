import { type InputRefusal, badInput, missingFact } from "#domain/foundation/outcome";

/** One input of a physical model: what it is called, its value, and the range in which the model may be asked. */
export interface RangeCheck {
  /** The name of the field, as the caller names it. */
  readonly field: string;
  /** The same in plain words, to begin a sentence with: "The relative humidity". */
  readonly words: string;
  readonly value: number;
  readonly lowest: number;
  readonly highest: number;
  /** The unit as it is written after a number: "°C", "%". */
  readonly unit: string;
}

/** A no to an input: the part of an Outcome that isn't a value. */
export interface Refused {
  readonly ok: false;
  readonly refusal: InputRefusal;
}

/**
 * Answers with the refusal of the first input that is unknown (not a number) or lies outside its range (both
 * ends belong to it), or with undefined when all are fine.
 */
export function refuseOutOfRange(checks: readonly RangeCheck[]): Refused | undefined {
  const wrong = checks.find(({ value, lowest, highest }) => !(value >= lowest && value <= highest));
  if (wrong === undefined) return undefined;
  const { field, words, value, unit } = wrong;
  const allowed = `from ${wrong.lowest} to ${wrong.highest} ${unit}`;
  if (Number.isNaN(value)) return missingFact(field, allowed, `${words} is not known.`);
  return badInput(field, `${value} ${unit}`, allowed, `${words} is ${value} ${unit}; it must be ${allowed}.`);
}

/**
 * The temperatures that are taken for a reading of outdoor air or soil at all: beyond them a sensor or a unit is wrong.
 * The coldest and hottest air ever measured are -89.2 and 56.7 °C (World Meteorological Organization, from memory);
 * sunlit soil gets hotter.
 */
export const READABLE_TEMPERATURE_C = { lowest: -90, highest: 75 } as const;

/** Asks for a temperature of outdoor air or soil in °C. */
export function temperatureRange(field: string, words: string, value: number): RangeCheck {
  return { field, words, value, ...READABLE_TEMPERATURE_C, unit: "°C" };
}

/** Asks for a latitude in degrees; south is negative. */
export function latitudeRange(value: number): RangeCheck {
  return { field: "latitudeDegrees", words: "The latitude", value, lowest: -90, highest: 90, unit: "°" };
}

/** Asks for a longitude in degrees; west is negative. */
export function longitudeRange(value: number): RangeCheck {
  return { field: "longitudeDegrees", words: "The longitude", value, lowest: -180, highest: 180, unit: "°" };
}

/** Asks for a share from 0 to 100 %. */
export function percentRange(field: string, words: string, value: number): RangeCheck {
  return { field, words, value, lowest: 0, highest: 100, unit: "%" };
}

/** Asks for a time within one day, from 0 to 24 h. */
export function hoursOfDayRange(field: string, words: string, value: number): RangeCheck {
  return { field, words, value, lowest: 0, highest: 24, unit: "h" };
}

/** The most of something that is taken for meant, and its unit as it is written after a number. */
export interface AmountLimit {
  readonly highest: number;
  readonly unit: string;
}

/**
 * Wind beyond which a sensor or a unit is wrong, as 60 m/s and as the same in mph: the mean wind of a strong hurricane
 * (common practice; nobody works in a quarter of it).
 */
export const MOST_WIND = {
  metersPerSecond: { highest: 60, unit: "m/s" },
  milesPerHour: { highest: 134, unit: "mph" },
} as const satisfies Readonly<Record<string, AmountLimit>>;

/**
 * The most rain ever measured: 305 mm (12 in) in 42 minutes, taken for an hour, and 1,825 mm in a day. World
 * Meteorological Organization, world weather and climate extremes (from memory).
 */
export const MOST_RAIN = {
  hourMillimeters: { highest: 305, unit: "mm" },
  hourInches: { highest: 12, unit: "in" },
  dayMillimeters: { highest: 1825, unit: "mm" },
} as const satisfies Readonly<Record<string, AmountLimit>>;

/** Asks for an amount, in the unit of its limit, that may be zero but not less, and not more than a limit. */
export function amountRange(field: string, words: string, value: number, { highest, unit }: AmountLimit): RangeCheck {
  return { field, words, value, lowest: 0, highest, unit };
}
