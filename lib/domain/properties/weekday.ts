import { accept, badInput, type Outcome } from "#domain/foundation/outcome";

/** The days of the week, 1 Monday to 7 Sunday, as ISO 8601 counts them. */
export const WEEKDAYS = [1, 2, 3, 4, 5, 6, 7] as const;
export type Weekday = (typeof WEEKDAYS)[number];

/** Their names. */
export const WEEKDAY_NAMES: Readonly<Record<Weekday, string>> = {
  1: "Monday",
  2: "Tuesday",
  3: "Wednesday",
  4: "Thursday",
  5: "Friday",
  6: "Saturday",
  7: "Sunday",
};

/** True for a whole number from 1 to 7. */
export function isWeekday(value: number): value is Weekday {
  return (WEEKDAYS as readonly number[]).includes(value);
}

const FEWEST_LETTERS = 2;

/**
 * Reads a day of the week from its beginning, two letters or more: "Tue", "thurs.", "Tuesdays". Empty is no day.
 * Refused: a letter that begins two days, and whatever begins none. At `field`.
 */
export function readWeekday(field: string, text: string): Outcome<Weekday | null> {
  const found = text.trim();
  if (found === "") return accept(null);
  const letters = found.toLowerCase().replace(/\.$/u, "").replace(/days$/u, "day");
  const day = WEEKDAYS.find((weekday) => letters.length >= FEWEST_LETTERS && WEEKDAY_NAMES[weekday].toLowerCase().startsWith(letters));
  const short = { tues: 2, weds: 3, thur: 4, thurs: 4 } as const;
  const known = day ?? (letters in short ? short[letters as keyof typeof short] : undefined);
  if (known !== undefined) return accept(known);
  return badInput(field, found, "a day of the week, such as Tue or Thursday", `"${found}" is no day of the week that can be told.`);
}

/** Several days as the schema keeps them: "135" for Monday, Wednesday and Friday. Empty for none. */
export function weekdayDigits(weekdays: readonly Weekday[]): string {
  return WEEKDAYS.filter((weekday) => weekdays.includes(weekday)).join("");
}

/** The days that stand in such a text, in their order. */
export function weekdaysOf(digits: string): readonly Weekday[] {
  return WEEKDAYS.filter((weekday) => digits.includes(String(weekday)));
}
