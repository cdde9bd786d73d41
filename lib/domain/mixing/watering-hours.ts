import { namedClockWords } from "#domain/foundation/clock-words";
import { type Finding, hold } from "#domain/foundation/finding";
import { groupedBy } from "#domain/foundation/grouping";
import { listWords } from "#domain/foundation/list-words";
import { type Refused } from "#domain/turf/physical-range";
import { type ClockHours, type ClockPeriod, clockSpans, refuseImpossiblePeriods } from "#domain/mixing/clock-periods";
import { weekdayWords } from "#domain/mixing/local-words";
import { intersectSpans } from "#domain/mixing/span-set";
import { type PastMidnight } from "#domain/properties/watering-fact";
import { type Authority, type OnFile, stated } from "#domain/weather/spray-limits";
import { type Span } from "#domain/weather/local-hours";

/** Hours of the week in which watering may run. */
export interface WateringPeriods {
  readonly periods: readonly ClockPeriod[];
}

/** When a property may be watered: by local rules, and by the days and hours its controller is set to. */
export interface WateringHours {
  readonly localRules: OnFile<WateringPeriods>;
  readonly controller: OnFile<WateringPeriods>;
}

/** The days on which a property may be watered: days of the week (0 is Sunday), or the odd or the even dates of a month. */
export type WateringDays = { readonly weekdays: readonly number[] } | { readonly datesOfMonth: "odd" | "even" };

const DAY_MINUTES = 1_440;
const WEEK_DAYS = 7;

/**
 * Days with one pair of hours as periods. What hours mean that end before they begin is said by `pastMidnight`: as a
 * controller runs they go on into the next day, and as many towns publish theirs they are the early and the late hours of
 * each of the days. Where nobody has said which, only what both allow is in: the late hours, and the early ones of a day
 * after another such day. The odd 1st after an odd 31st is left out of that.
 */
export function wateringPeriods(days: WateringDays, { fromMinuteOfDay, untilMinuteOfDay }: ClockHours, pastMidnight: PastMidnight | "not-said"): readonly ClockPeriod[] {
  if (fromMinuteOfDay < untilMinuteOfDay) return onDays(days, { fromMinuteOfDay, untilMinuteOfDay });
  const isUntilMidnight = untilMinuteOfDay === 0;
  if (isUntilMidnight || pastMidnight === "next-morning") return onDays(days, { fromMinuteOfDay, untilMinuteOfDay: untilMinuteOfDay + DAY_MINUTES });
  const early = { fromMinuteOfDay: 0, untilMinuteOfDay };
  const late = { fromMinuteOfDay, untilMinuteOfDay: DAY_MINUTES };
  return [...onDays(pastMidnight === "same-day" ? days : afterAnother(days), early), ...onDays(days, late)];
}

function onDays(days: WateringDays, hours: ClockHours): readonly ClockPeriod[] {
  return "datesOfMonth" in days ? [{ datesOfMonth: days.datesOfMonth, ...hours }] : days.weekdays.map((weekday) => ({ weekday, ...hours }));
}

/** Those of some days that come after another of them, week for week. */
function afterAnother(days: WateringDays): WateringDays {
  if ("datesOfMonth" in days) return { weekdays: [] };
  return { weekdays: days.weekdays.filter((weekday) => days.weekdays.includes((weekday + WEEK_DAYS - 1) % WEEK_DAYS)) };
}

/**
 * Periods in words, those of the same days together: "every day 5 am to 9 am", "Monday and Thursday midnight to 10 am and
 * 6 pm to midnight", "odd dates 10 pm to 5 am of the next day".
 */
export function periodWords(periods: readonly ClockPeriod[]): string {
  const ofHours = groupedBy(periods, ({ fromMinuteOfDay, untilMinuteOfDay }) => `${namedClockWords(fromMinuteOfDay)} to ${untilWords(untilMinuteOfDay)}`);
  const ofDays = groupedBy([...ofHours], ([, own]) => dayWords(own));
  return [...ofDays].map(([days, groups]) => `${days} ${listWords(groups.map(([hours]) => hours))}`).join("; ");
}

function untilWords(untilMinuteOfDay: number): string {
  return untilMinuteOfDay > DAY_MINUTES ? `${namedClockWords(untilMinuteOfDay)} of the next day` : namedClockWords(untilMinuteOfDay);
}

function dayWords(periods: readonly ClockPeriod[]): string {
  const weekdays = [...new Set(periods.flatMap((period) => ("weekday" in period ? [period.weekday] : [])))].toSorted((one, other) => one - other);
  const dates = [...new Set(periods.flatMap((period) => ("weekday" in period ? [] : [period.datesOfMonth])))];
  if (weekdays.length === WEEK_DAYS || dates.length === 2) return "every day";
  return listWords([...weekdays.map(weekdayWords), ...dates.map((which) => `${which} dates`)]);
}

/** All hours that are on file in words, those of the rules and of the controller; nothing where none are. */
export function hoursWords({ localRules, controller }: WateringHours): string {
  return [
    ...stated(localRules).map(({ periods }) => `Local rules: ${periodWords(periods)}.`),
    ...stated(controller).map(({ periods }) => `The controller: ${periodWords(periods)}.`),
  ].join(" ");
}

/** The hours in which water may run by all that is on file, as a customer is told them: "every day 4 am to 10 am"; empty where none are. */
export function hoursTogetherWords({ localRules, controller }: WateringHours): string {
  const [byRules, byController] = [localRules, controller].map((hours) => stated(hours).map(({ periods }) => periodWords(periods))[0]);
  if (byRules === undefined || byController === undefined || byRules === byController) return byRules ?? byController ?? "";
  return `both by local rules, ${byRules}, and by the controller, ${byController}`;
}

/** Refuses hours that are on no day, end before they begin or run for more than a day. At `localRules` or `controller`. */
export function refuseImpossibleHours(hours: WateringHours): Refused | undefined {
  return (
    refuseImpossiblePeriods("localRules", stated(hours.localRules).flatMap(({ periods }) => periods)) ??
    refuseImpossiblePeriods("controller", stated(hours.controller).flatMap(({ periods }) => periods))
  );
}

/** What of a span is within all hours that are on file. Hours that nobody knows leave it as it is; {@link unknownHours} says so. */
export function withinWateringHours(span: Span, hours: WateringHours, timeZone: string): readonly Span[] {
  return [...stated(hours.localRules), ...stated(hours.controller)].reduce<readonly Span[]>(
    (spans, { periods }) => intersectSpans(spans, clockSpans(periods, span, timeZone)),
    intersectSpans([span], [span]),
  );
}

/** The authorities behind the hours that are on file. */
export function authoritiesOfHours(hours: WateringHours): readonly Authority[] {
  return [...stated(hours.localRules), ...stated(hours.controller)].map(({ basis, source }) => ({ basis, source }));
}

/**
 * Of hours that leave no time those that leave none by themselves: first the local rules, since no controller that is set
 * anew helps where they leave none, then the controller alone. Both where it takes both.
 */
export function hoursInTheWay({ localRules, controller }: WateringHours, leaveTime: (hours: WateringHours) => boolean): WateringHours {
  const byRules = { localRules, controller: "none" } as const;
  const byController = { localRules: "none", controller } as const;
  return [byRules, byController].find((hours) => !leaveTime(hours)) ?? { localRules, controller };
}

/** A hold for each kind of hours that nobody has put on file. */
export function unknownHours(hours: WateringHours): readonly Finding[] {
  const missing = [
    { fact: hours.localRules, words: "the local rules on watering hours", source: "law" },
    { fact: hours.controller, words: "the days and hours of the customer's controller", source: "house" },
  ] as const;
  return missing
    .filter(({ fact }) => fact === "unknown")
    .map(({ words, source }) =>
      hold("office", {
        rule: "watering-hours-missing",
        source,
        what: `It is not on file what ${words} are, so no time for watering in can be given.`,
        toDo: "Put them on file, or put on file that there are none.",
        about: [],
      }),
    );
}
