import { getTimes } from "suncalc";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { type RangeCheck, latitudeRange, longitudeRange, refuseOutOfRange } from "#domain/turf/physical-range";
import { noonToNoon } from "#domain/weather/local-hours";

/** A place on earth; south and west are negative. */
export interface Place {
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
}

/** Sunrise and sunset of a local day, or that there is none. */
export type SunTimes =
  | {
      readonly kind: "rises-and-sets";
      readonly sunriseEpochMilliseconds: number;
      readonly sunsetEpochMilliseconds: number;
    }
  | { readonly kind: "always-up" }
  | { readonly kind: "always-down" };

const ONE_DAY_MILLISECONDS = 86_400_000;
const NOON_MILLISECONDS = ONE_DAY_MILLISECONDS / 2;

/** Asks for a place on earth, in degrees. */
export function placeRanges({ latitudeDegrees, longitudeDegrees }: Place): readonly RangeCheck[] {
  return [latitudeRange(latitudeDegrees), longitudeRange(longitudeDegrees)];
}

/**
 * Sunrise and sunset at a place on a local date, at sea level and with ordinary refraction, to about a minute (library
 * suncalc). They are those around the solar noon nearest to noon on the clock. Refuses what is no time zone
 * (`timeZone`) or no place (`latitudeDegrees`, `longitudeDegrees`).
 */
export function sunTimesOn(date: CalendarDate, timeZone: string, place: Place): Outcome<SunTimes> {
  const { latitudeDegrees, longitudeDegrees } = place;
  const refusal = refuseOutOfRange(placeRanges(place));
  if (refusal !== undefined) return refusal;
  const noon = noonToNoon(date, timeZone);
  if (!noon.ok) return noon;
  const times = getTimes(
    nearestSolarNoon(noon.value.fromEpochMilliseconds, longitudeDegrees),
    latitudeDegrees,
    longitudeDegrees,
  );
  if (times.sunrise !== null && times.sunset !== null) {
    return accept({
      kind: "rises-and-sets",
      sunriseEpochMilliseconds: times.sunrise.getTime(),
      sunsetEpochMilliseconds: times.sunset.getTime(),
    });
  }
  if (times.alwaysUp === true) return accept({ kind: "always-up" });
  if (times.alwaysDown === true) return accept({ kind: "always-down" });
  return badInput(
    "latitudeDegrees",
    `${latitudeDegrees}°`,
    "a place with a sunrise",
    `Sunrise and sunset on ${date} can't be computed there.`,
  );
}

/** The library picks its day by an instant, so it is asked with mean solar noon, in the middle of the day that is meant. */
function nearestSolarNoon(clockNoonEpochMilliseconds: number, longitudeDegrees: number): Date {
  const solarNoonUtc = NOON_MILLISECONDS - (longitudeDegrees / 360) * ONE_DAY_MILLISECONDS;
  const days = Math.round((clockNoonEpochMilliseconds - solarNoonUtc) / ONE_DAY_MILLISECONDS);
  return new Date(days * ONE_DAY_MILLISECONDS + solarNoonUtc);
}
