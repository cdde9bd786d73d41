import { type InputRefusal, type Outcome, accept, badInput, refuse } from "#domain/foundation/outcome";

/** A point on the earth, in degrees; south and west are negative. */
export interface Position {
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
}

/** What travel times rest on: a router's roads, or a guess from straight lines. */
export interface TravelBasis {
  readonly kind: "by-road" | "estimate";
  /** Where the times come from, as a sentence for the screen. */
  readonly words: string;
}

/**
 * Travel between places: the row is where one leaves, the column where one arrives. There and back may differ. Whole
 * seconds and whole meters, so that sums are exact and the same on every machine.
 */
export interface TravelMatrix {
  readonly basis: TravelBasis;
  readonly seconds: readonly (readonly number[])[];
  readonly meters: readonly (readonly number[])[];
}

/** How straight lines become travel. All three are the company's own settings: no number of this kind holds everywhere. */
export interface TravelEstimate {
  /** Length by road over the straight line: 1 or more. Between 1.2 and 1.4 is common practice. */
  readonly detourFactor: number;
  /** The average over the whole way, stops at lights included. */
  readonly speedMetersPerSecond: number;
  /** What is added to each way between two different places: parking, loading, leaving. */
  readonly secondsPerWay: number;
}

/** The mean radius of the earth, (2a + b) / 3, in meters. Moritz 2000, Geodetic Reference System 1980, J. Geodesy 74:128-133, R1. */
export const EARTH_MEAN_RADIUS_METERS = 6_371_008.8;

/**
 * The way between two positions over a sphere, in meters, by the haversine formula (Sinnott 1984, Virtues of the
 * haversine, Sky and Telescope 68:159). Against the ellipsoid it is up to about half a percent off.
 */
export function greatCircleMeters(from: Position, to: Position): number {
  const halfNorth = Math.sin(radians(to.latitudeDegrees - from.latitudeDegrees) / 2);
  const halfEast = Math.sin(radians(to.longitudeDegrees - from.longitudeDegrees) / 2);
  const haversine =
    halfNorth ** 2 + Math.cos(radians(from.latitudeDegrees)) * Math.cos(radians(to.latitudeDegrees)) * halfEast ** 2;
  return 2 * EARTH_MEAN_RADIUS_METERS * Math.asin(Math.min(1, Math.sqrt(haversine)));
}

/**
 * Takes over a matrix from elsewhere. Refuses one that is not square, whose halves differ in size, or in which a
 * number is not a whole number of zero or more: a way that doesn't exist is not a number.
 */
export function travelMatrixOf(
  basis: TravelBasis,
  seconds: readonly (readonly number[])[],
  meters: readonly (readonly number[])[],
): Outcome<TravelMatrix> {
  const refusal = refuseTable("seconds", seconds, seconds.length) ?? refuseTable("meters", meters, seconds.length);
  if (refusal !== undefined) return refuse(refusal);
  return accept({ basis, seconds, meters });
}

/**
 * Travel between all positions, guessed: the straight line over the earth times the detour factor, at the speed, plus
 * the seconds for each way; from a place to itself, or to another at the very same position, nothing. Rounded to whole
 * meters and seconds. Refuses positions not on the earth (`latitudeDegrees`, `longitudeDegrees`), a `detourFactor`
 * below 1, a `speedMetersPerSecond` not above zero, and `secondsPerWay` below zero.
 */
export function estimateTravel(positions: readonly Position[], estimate: TravelEstimate): Outcome<TravelMatrix> {
  const { detourFactor, speedMetersPerSecond, secondsPerWay } = estimate;
  const refusal = refuseEstimate(estimate) ?? positions.map(refusePosition).find((found) => found !== undefined);
  if (refusal !== undefined) return refuse(refusal);
  const ways = positions.map((from) => positions.map((to) => greatCircleMeters(from, to) * detourFactor));
  const inSeconds = (way: number) => (way === 0 ? 0 : Math.round(way / speedMetersPerSecond + secondsPerWay));
  const words =
    `Estimated: the straight line times ${detourFactor}, at ${shown(speedMetersPerSecond)} meters per second, ` +
    `plus ${secondsPerWay} seconds for each way.`;
  return travelMatrixOf(
    { kind: "estimate", words },
    ways.map((row) => row.map(inSeconds)),
    ways.map((row) => row.map(Math.round)),
  );
}

/** The seconds from one place to another. Throws where either is no place of the matrix. */
export function travelSeconds(travel: TravelMatrix, from: number, to: number): number {
  return entry(travel.seconds, from, to);
}

/** The meters from one place to another. Throws where either is no place of the matrix. */
export function travelMeters(travel: TravelMatrix, from: number, to: number): number {
  return entry(travel.meters, from, to);
}

function entry(table: readonly (readonly number[])[], from: number, to: number): number {
  const value = table[from]?.[to];
  if (value === undefined) throw new RangeError(`no way from place ${from} to place ${to}`);
  return value;
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

function shown(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function refuseTable(
  field: string,
  table: readonly (readonly number[])[],
  placeCount: number,
): InputRefusal | undefined {
  const square = `${placeCount} rows of ${placeCount} numbers`;
  if (table.length !== placeCount) {
    return refusal(field, `${table.length} rows`, square, `The table of ${field} has ${table.length} rows; it must have ${square}.`);
  }
  for (const [from, row] of table.entries()) {
    if (row.length !== placeCount) {
      return refusal(field, `${row.length} numbers in row ${from}`, square, `Row ${from} of the table of ${field} has ${row.length} numbers; it must have ${placeCount}.`);
    }
    const to = row.findIndex((value) => !Number.isSafeInteger(value) || value < 0);
    if (to !== -1) {
      const found = String(row[to]);
      return refusal(field, found, "a whole number, zero or more", `From place ${from} to place ${to} the table of ${field} says ${found}; it must be a whole number, zero or more.`);
    }
  }
  return undefined;
}

function refuseEstimate({ detourFactor, speedMetersPerSecond, secondsPerWay }: TravelEstimate): InputRefusal | undefined {
  if (!(detourFactor >= 1 && detourFactor < Infinity)) {
    return refusal("detourFactor", String(detourFactor), "1 or more", "The detour factor must be 1 or more: no road is shorter than the straight line.");
  }
  if (!(speedMetersPerSecond > 0 && speedMetersPerSecond < Infinity)) {
    return refusal("speedMetersPerSecond", String(speedMetersPerSecond), "above zero", "The speed must be above zero.");
  }
  if (!(secondsPerWay >= 0 && secondsPerWay < Infinity)) {
    return refusal("secondsPerWay", String(secondsPerWay), "zero or more", "The seconds for each way must be zero or more.");
  }
  return undefined;
}

function refusePosition({ latitudeDegrees, longitudeDegrees }: Position, index: number): InputRefusal | undefined {
  if (!(Math.abs(latitudeDegrees) <= 90)) {
    return refusal("latitudeDegrees", String(latitudeDegrees), "from -90 to 90", `The latitude of place ${index} must be from -90 to 90 degrees.`);
  }
  if (!(Math.abs(longitudeDegrees) <= 180)) {
    return refusal("longitudeDegrees", String(longitudeDegrees), "from -180 to 180", `The longitude of place ${index} must be from -180 to 180 degrees.`);
  }
  return undefined;
}

function refusal(field: string, found: string, allowed: string, sentence: string): InputRefusal {
  return badInput(field, found, allowed, sentence).refusal;
}
