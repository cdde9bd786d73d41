import { clockWordsInFull } from "#domain/foundation/clock-words";
import { listWords } from "#domain/foundation/list-words";
import { oddOrEven, type WateringDates } from "#domain/properties/watering-dates";
import { WEEKDAY_NAMES, type Weekday, WEEKDAYS } from "#domain/properties/weekday";

/** Hours of a day on file, in minutes of the local day. Hours that end before they begin pass midnight. */
export interface WateringHoursOnFile {
  readonly fromMinute: number;
  /** 1,440 is the midnight that ends the day. */
  readonly untilMinute: number;
}

/**
 * What a town means by hours that pass midnight. "Monday, midnight to 10 am and 6 pm to midnight" are the early and the late
 * hours of the same day, and "Monday 6 pm to 10 am of the following day" runs into the next morning; towns publish both.
 */
export const PAST_MIDNIGHT = ["same-day", "next-morning"] as const;
export type PastMidnight = (typeof PAST_MIDNIGHT)[number];

/** Hours of a town's rule. */
export interface TownHoursOnFile extends WateringHoursOnFile {
  /** Absent where the hours don't pass midnight, and where nobody has said. */
  readonly pastMidnight?: PastMidnight;
}

/** The days on file: days of the week, or dates of the month. */
export type WateringDaysOnFile = { readonly weekdays: readonly Weekday[] } | { readonly dates: WateringDates };

/** When water may run, as far as it is on file: days, hours or both, never neither. */
export interface WateringOnFile<Hours extends WateringHoursOnFile = WateringHoursOnFile> {
  /** Null where the days are not on file: not every day. */
  readonly days: WateringDaysOnFile | null;
  /** Null where the hours are not on file: not every hour, which is midnight to midnight. */
  readonly hours: Hours | null;
}

/** One of the two facts of a property: what is on file of it, that there is none, or that nobody has said. */
export type WateringFact<Hours extends WateringHoursOnFile = WateringHoursOnFile> = WateringOnFile<Hours> | "none" | "unknown";

/** The town's rule. */
export type TownRule = WateringFact<TownHoursOnFile>;

/** When water may run at a property: as the town's rule has it, and as the controller is set. The two are not the same. */
export interface WateringOfProperty {
  readonly townRule: TownRule;
  /** A controller whose hours pass midnight runs on into the next morning. */
  readonly controller: WateringFact;
}

/** The whole of a day, for a fact that limits days only. */
export const WHOLE_DAY: WateringHoursOnFile = { fromMinute: 0, untilMinute: 1440 };

/** Whether hours end before they begin. Those until the midnight that ends the day don't. */
export function passesMidnight({ fromMinute, untilMinute }: WateringHoursOnFile): boolean {
  return untilMinute < fromMinute;
}

/** The days on file: of the week, or the dates, with those that the house number comes to. */
function daysWords(days: WateringDaysOnFile, street: string): string {
  if ("weekdays" in days) return days.weekdays.length === WEEKDAYS.length ? "Every day" : listWords(days.weekdays.map((weekday) => WEEKDAY_NAMES[weekday]));
  const which = oddOrEven(days.dates, street);
  if (which === undefined) return "By the house number, which the street does not have";
  return `${which === "odd" ? "Odd" : "Even"} dates${days.dates === "house-number" ? ", by the house number" : ""}`;
}

function hoursWords(hours: WateringHoursOnFile, pastMidnight: PastMidnight | undefined): string {
  const { fromMinute, untilMinute } = hours;
  if (fromMinute === WHOLE_DAY.fromMinute && untilMinute === WHOLE_DAY.untilMinute) return "every hour";
  const [from, until] = [clockWordsInFull(fromMinute), clockWordsInFull(untilMinute)];
  if (!passesMidnight(hours)) return `${from} to ${until}`;
  if (pastMidnight === undefined) return `${from} to ${until}, and not on file of which morning`;
  return pastMidnight === "next-morning" ? `${from} to ${until} of the next day` : `midnight to ${until} and ${from} to midnight`;
}

function factWords<Hours extends WateringHoursOnFile>(fact: WateringFact<Hours>, street: string, none: string, wordsOf: (hours: Hours) => string): string {
  if (fact === "none") return none;
  if (fact === "unknown") return "Not on file";
  const { days, hours } = fact;
  return [days === null ? "Days not on file" : daysWords(days, street), hours === null ? "hours not on file" : wordsOf(hours)].join("; ");
}

/** The town's rule in words: "Monday and Wednesday; midnight to 10:00 am and 6:00 pm to midnight". What is missing of it is said. */
export function townRuleWords(townRule: TownRule, street: string): string {
  return factWords(townRule, street, "The town has none", (hours) => hoursWords(hours, hours.pastMidnight));
}

/** The controller in words: "Odd dates; 10:00 pm to 5:00 am of the next day". What is missing of it is said. */
export function controllerWords(controller: WateringFact, street: string): string {
  return factWords(controller, street, "There is none: water is turned on by hand", (hours) => hoursWords(hours, "next-morning"));
}
