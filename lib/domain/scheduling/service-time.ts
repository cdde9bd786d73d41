import { invariant } from "#domain/foundation/invariant";
import { type HouseSettings } from "#domain/company/house-settings";
import { type Quantity } from "#domain/quantities/quantity";
import { units } from "#domain/quantities/units";

const MINUTES_A_DAY = 1440n;

/**
 * How long a visit to so much lawn takes, in whole minutes rounded up and at most a day: the stop itself, and the walk
 * over the ground. A rough rule for planning a season; what a day's route counts may be set by hand. Throws for
 * settings that are not whole minutes. Common practice.
 */
export function serviceMinutesOf(area: Quantity<"area">, { minutesPerStop, minutesPerThousandSquareFeet }: Pick<HouseSettings, "minutesPerStop" | "minutesPerThousandSquareFeet">): number {
  invariant(Number.isInteger(minutesPerStop) && Number.isInteger(minutesPerThousandSquareFeet), "service times are set in whole minutes");
  const thousand = units["sq ft"].canonicalAmount * 1000n;
  const walk = (area.amount * BigInt(minutesPerThousandSquareFeet) + thousand - 1n) / thousand;
  const minutes = BigInt(minutesPerStop) + walk;
  return Number(minutes > MINUTES_A_DAY ? MINUTES_A_DAY : minutes < 1n ? 1n : minutes);
}
