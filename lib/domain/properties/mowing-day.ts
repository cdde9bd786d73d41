import { accept, type Outcome } from "#domain/foundation/outcome";
import { isWeekday, readWeekday, WEEKDAY_NAMES, type Weekday } from "#domain/properties/weekday";

/** A customer who mows, on no day that could be told beforehand. */
export const NO_FIXED_DAY = "no-fixed-day";

/** On which day a property is mowed. Not on file is null beside it. */
export type MowingDay = Weekday | typeof NO_FIXED_DAY;

/** How the day is stored: a weekday, the word that there is none that is fixed, or neither where nobody has said. */
export interface MowingColumns {
  readonly mowingWeekday: number | null;
  readonly mowsOnNoFixedDay: boolean;
}

/** The day that is on file; null where nobody has said. */
export function mowingDayOf({ mowingWeekday, mowsOnNoFixedDay }: MowingColumns): MowingDay | null {
  if (mowsOnNoFixedDay) return NO_FIXED_DAY;
  return mowingWeekday !== null && isWeekday(mowingWeekday) ? mowingWeekday : null;
}

/** The same as it is stored. */
export function mowingColumnsOf(day: MowingDay | null): MowingColumns {
  return day === NO_FIXED_DAY ? { mowingWeekday: null, mowsOnNoFixedDay: true } : { mowingWeekday: day, mowsOnNoFixedDay: false };
}

/** "on Tuesday", "on no fixed day". */
export function mowingDayWords(day: MowingDay): string {
  return day === NO_FIXED_DAY ? "on no fixed day" : `on ${WEEKDAY_NAMES[day]}`;
}

/**
 * Reads the day from a list: a day of the week, or words that say that none is fixed ("varies", "no fixed day"). Empty is
 * not on file. Refuses whatever is neither, as readWeekday does.
 */
export function readMowingDay(field: string, text: string): Outcome<MowingDay | null> {
  return /^\s*(no fixed day|varies|varying|any day|different days)\.?\s*$/iu.test(text) ? accept(NO_FIXED_DAY) : readWeekday(field, text);
}
