/** The dates of a month on which local rules let water run: the odd ones, the even ones, or those that the house number has. */
export const WATERING_DATES = ["odd", "even", "house-number"] as const;
export type WateringDates = (typeof WATERING_DATES)[number];

/**
 * The dates that a house number has: an odd number the odd ones, an even number the even ones (common practice of towns that
 * go by it). Undefined for a street that begins with no number, or with one that is its own name's: "5th Avenue".
 */
export function datesOfHouseNumber(street: string): "odd" | "even" | undefined {
  const number = /^\s*(\d+)(?!\d|(?:st|nd|rd|th)\b)/iu.exec(street)?.[1];
  if (number === undefined) return undefined;
  return Number(number.at(-1)) % 2 === 0 ? "even" : "odd";
}

/** Odd or even dates, whichever it comes to for a property; undefined where it goes by a house number that there is not. */
export function oddOrEven(dates: WateringDates, street: string): "odd" | "even" | undefined {
  return dates === "house-number" ? datesOfHouseNumber(street) : dates;
}

/** True for one of those answers. */
export function isWateringDates(text: string): text is WateringDates {
  return (WATERING_DATES as readonly string[]).includes(text);
}

/** The dates as they are stored; null where none are. */
export function wateringDatesOf(stored: string | null): WateringDates | null {
  return stored !== null && isWateringDates(stored) ? stored : null;
}
