import { clockWordsInFull } from "#domain/foundation/clock-words";
import { listWords } from "#domain/foundation/list-words";
import { oddOrEven, type WateringDates } from "#domain/properties/watering-dates";
import { WEEKDAY_NAMES, type Weekday, WEEKDAYS } from "#domain/properties/weekday";

/** Hours of a day on file, in minutes of the local day. Hours that end before they begin run past midnight. */
export interface WateringHoursOnFile {
  readonly fromMinute: number;
  /** 1,440 is the midnight that ends the day. */
  readonly untilMinute: number;
}

/** The days on file: days of the week, or dates of the month. */
export type WateringDaysOnFile = { readonly weekdays: readonly Weekday[] } | { readonly dates: WateringDates };

/** When water may run, as far as it is on file: days, hours or both, never neither. */
export interface WateringOnFile {
  /** Null where the days are not on file: not every day. */
  readonly days: WateringDaysOnFile | null;
  /** Null where the hours are not on file: not every hour, which is midnight to midnight. */
  readonly hours: WateringHoursOnFile | null;
}

/** One of the two facts of a property: what is on file of it, that there is none, or that nobody has said. */
export type WateringFact = WateringOnFile | "none" | "unknown";

/** When water may run at a property: as the town's rule has it, and as the controller is set. The two are not the same. */
export interface WateringOfProperty {
  readonly townRule: WateringFact;
  readonly controller: WateringFact;
}

/** The whole of a day, for a fact that limits days only. */
export const WHOLE_DAY: WateringHoursOnFile = { fromMinute: 0, untilMinute: 1440 };

/** The days on file: of the week, or the dates, with those that the house number comes to. */
function daysWords(days: WateringDaysOnFile, street: string): string {
  if ("weekdays" in days) return days.weekdays.length === WEEKDAYS.length ? "Every day" : listWords(days.weekdays.map((weekday) => WEEKDAY_NAMES[weekday]));
  const which = oddOrEven(days.dates, street);
  if (which === undefined) return "By the house number, which the street does not have";
  return `${which === "odd" ? "Odd" : "Even"} dates${days.dates === "house-number" ? ", by the house number" : ""}`;
}

function hoursWords({ fromMinute, untilMinute }: WateringHoursOnFile): string {
  const isWholeDay = fromMinute === WHOLE_DAY.fromMinute && untilMinute === WHOLE_DAY.untilMinute;
  return isWholeDay ? "every hour" : `${clockWordsInFull(fromMinute)} to ${clockWordsInFull(untilMinute)}`;
}

/**
 * A fact in words: "Monday and Wednesday; 4:00 am to 9:00 am". What is missing of it is said.
 * @param none what is said where there is none: "The town has none"
 */
export function wateringFactWords(fact: WateringFact, street: string, none: string): string {
  if (fact === "none") return none;
  if (fact === "unknown") return "Not on file";
  const { days, hours } = fact;
  return [days === null ? "Days not on file" : daysWords(days, street), hours === null ? "hours not on file" : hoursWords(hours)].join("; ");
}
