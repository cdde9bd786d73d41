import { z } from "zod";
import { optionalClockTime } from "#application/clock-time.schema";
import { tickField } from "#application/properties/measure-fields.schema";
import { type WateringDates, WATERING_DATES } from "#domain/properties/watering-dates";
import { passesMidnight, PAST_MIDNIGHT, type TownRule, type WateringDaysOnFile, type WateringFact, type WateringHoursOnFile, WHOLE_DAY } from "#domain/properties/watering-fact";
import { WEEKDAYS } from "#domain/properties/weekday";

/** Ticks by the number of the weekday: an object as the server reads a form, or a list as the browser's form holds numbered fields. */
const ticksOfDays = z.preprocess(
  (ticks) => (Array.isArray(ticks) ? Object.fromEntries(Object.entries(ticks)) : ticks),
  z.object(Object.fromEntries(WEEKDAYS.map((weekday) => [weekday, tickField])) as Record<string, typeof tickField>).default({}),
);

/** What the days go by: days of the week (those that are ticked), or dates of the month. */
function daysBy<const Dates extends readonly WateringDates[]>(dates: Dates) {
  return z.union([z.literal("weekdays").transform(() => null), z.enum(dates)], "Choose what the days go by.");
}

interface TypedFact {
  readonly isNone: boolean;
  readonly from: number | null;
  readonly until: number | null;
  readonly by: WateringDates | null;
  readonly on: Readonly<Record<string, boolean | undefined>>;
}

function hoursOf({ from, until }: TypedFact, context: z.RefinementCtx): WateringHoursOnFile | null {
  if (from === null && until === null) return null;
  if (from === 0 && until === 0) return WHOLE_DAY;
  // Midnight as the end is the end of the day; a time field sends it as the start of one.
  if (from !== null && until !== null && from !== until) return { fromMinute: from, untilMinute: until === 0 ? WHOLE_DAY.untilMinute : until };
  const message = from === until ? "The two times are the same. Give midnight twice where it is every hour of the day." : "Give both times, or neither.";
  context.addIssue({ code: "custom", path: ["until"], message });
  return z.NEVER;
}

/** What was typed, as a fact: nothing at all is not on file. Refused are days of both kinds, and days or hours of what is said not to be there. */
function factOf(typed: TypedFact, context: z.RefinementCtx): WateringFact {
  const { isNone, by, on } = typed;
  const weekdays = WEEKDAYS.filter((weekday) => on[String(weekday)] === true);
  const hours = hoursOf(typed, context);
  if (by !== null && weekdays.length > 0) context.addIssue({ code: "custom", path: ["by"], message: "Days of the week are ticked too. Untick them, or choose days of the week." });
  const days = by !== null ? { dates: by } : weekdays.length === 0 ? null : { weekdays };
  if (!isNone) return days === null && hours === null ? "unknown" : { days, hours };
  if (days !== null || hours !== null) context.addIssue({ code: "custom", path: ["by"], message: "Days or hours are given, and it is ticked that there are none. Leave them empty, or untick it." });
  return "none";
}

/** A time of a fact; nothing is null. */
const timeField = optionalClockTime("05:30");

function fieldsBy<const Dates extends readonly WateringDates[]>(dates: Dates) {
  return { isNone: tickField, from: timeField, until: timeField, by: daysBy(dates), on: ticksOfDays };
}

const PAST_MIDNIGHT_MESSAGE = "The town's hours pass midnight. Choose whether they are the early and late hours of the same day or run into the next morning, or that it is not known yet.";

/** What is chosen where nobody has looked it up. */
export const PAST_MIDNIGHT_NOT_KNOWN = "not-known";

/** What the town means by hours past midnight; radio keys of which none is pressed come as nothing. */
const pastMidnightField = z.union([z.enum([...PAST_MIDNIGHT, PAST_MIDNIGHT_NOT_KNOWN]), z.literal("").transform(() => null)], PAST_MIDNIGHT_MESSAGE).nullish();

/** Every day has the same hours in either reading. Days that are not on file leave every day. */
function isEveryDay(days: WateringDaysOnFile | null): boolean {
  return days === null || ("weekdays" in days && days.weekdays.length === WEEKDAYS.length);
}

/** When the town lets water run. What hours past midnight mean is refused where nothing is chosen, and is nothing where they don't pass it or where it is not known yet. */
export const townRuleFields = z
  .object({ ...fieldsBy(WATERING_DATES), pastMidnight: pastMidnightField }, "Give the town's watering rule.")
  .transform((typed, context): TownRule => {
    const fact = factOf(typed, context);
    if (typeof fact === "string" || fact.hours === null || !passesMidnight(fact.hours) || typed.pastMidnight === PAST_MIDNIGHT_NOT_KNOWN) return fact;
    if (typeof typed.pastMidnight === "string") return { ...fact, hours: { ...fact.hours, pastMidnight: typed.pastMidnight } };
    if (isEveryDay(fact.days)) return fact;
    context.addIssue({ code: "custom", path: ["pastMidnight"], message: PAST_MIDNIGHT_MESSAGE });
    return z.NEVER;
  });

/** When the controller is set to run. It may be set to odd or to even dates, knows no house number and runs on past midnight. */
export const controllerFields = z.object(fieldsBy(["odd", "even"]), "Give the controller's days and hours.").transform((typed, context) => factOf(typed, context));

/** Two times as they are typed where they pass midnight, of which a town's rule has to say what they mean; undefined where they don't. */
export function typedPastMidnight(from: string, until: string): WateringHoursOnFile | undefined {
  const [fromMinute, untilMinute] = [timeField.safeParse(from).data ?? null, timeField.safeParse(until).data ?? null];
  if (fromMinute === null || untilMinute === null || untilMinute === 0) return undefined;
  return passesMidnight({ fromMinute, untilMinute }) ? { fromMinute, untilMinute } : undefined;
}
