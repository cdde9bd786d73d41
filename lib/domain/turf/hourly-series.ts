import { type Outcome, accept, missingFact } from "#domain/foundation/outcome";

/** Something known for one hour, which begins at an instant. */
export interface HourStart {
  readonly startsAtEpochMilliseconds: number;
}

/** One hour, in milliseconds. */
export const ONE_HOUR_MILLISECONDS = 3_600_000;

/**
 * The hours themselves when each follows the one before it at once. Refuses a gap and a repeated hour: it
 * names the hour that is missing as an instant in UTC.
 */
export function unbrokenHours<Hour extends HourStart>(hours: readonly Hour[]): Outcome<readonly Hour[]> {
  const first = hours[0];
  if (first === undefined) return accept(hours);
  const expectedAt = (index: number) => first.startsAtEpochMilliseconds + index * ONE_HOUR_MILLISECONDS;
  const gap = hours.findIndex(
    ({ startsAtEpochMilliseconds }, index) => startsAtEpochMilliseconds !== expectedAt(index),
  );
  return gap === -1 ? accept(hours) : missingHour(expectedAt(gap));
}

/**
 * The hours of a series that begin at or after one instant and before another, when none is missing.
 * Refuses a gap, naming the first missing hour as an instant in UTC.
 */
export function unbrokenHoursBetween<Hour extends HourStart>(
  hours: readonly Hour[],
  fromEpochMilliseconds: number,
  untilEpochMilliseconds: number,
): Outcome<readonly Hour[]> {
  const within = hours.filter(
    ({ startsAtEpochMilliseconds: start }) => start >= fromEpochMilliseconds && start < untilEpochMilliseconds,
  );
  if (within[0]?.startsAtEpochMilliseconds !== fromEpochMilliseconds) return missingHour(fromEpochMilliseconds);
  const unbroken = unbrokenHours(within);
  if (!unbroken.ok) return unbroken;
  const end = fromEpochMilliseconds + within.length * ONE_HOUR_MILLISECONDS;
  return end < untilEpochMilliseconds ? missingHour(end) : unbroken;
}

function missingHour(epochMilliseconds: number) {
  if (!Number.isFinite(epochMilliseconds)) {
    return missingFact("startsAtEpochMilliseconds", "an instant", "An hour of the series has no time.");
  }
  const instant = new Date(epochMilliseconds).toISOString().slice(0, 16);
  return missingFact(
    instant,
    "a reading for each hour",
    `There is no reading for the hour that begins at ${instant} UTC.`,
  );
}
