import { type WateringDates } from "#domain/properties/watering-dates";
import { type Weekday } from "#domain/properties/weekday";

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
