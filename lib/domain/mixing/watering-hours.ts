import { namedClockWords } from "#domain/foundation/clock-words";
import { type Finding, hold } from "#domain/foundation/finding";
import { groupedBy } from "#domain/foundation/grouping";
import { listWords } from "#domain/foundation/list-words";
import { type Refused } from "#domain/turf/physical-range";
import { type ClockHours, type ClockPeriod, clockSpans, refuseImpossiblePeriods } from "#domain/mixing/clock-periods";
import { weekdayWords } from "#domain/mixing/local-words";
import { intersectSpans } from "#domain/mixing/span-set";
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

const MIDNIGHT_MINUTES = 1_440;

/**
 * Days with one pair of hours as periods. Hours that end before they begin run over midnight: on a day of the week into
 * the next day, as a controller runs on. A rule about dates lets water run on its own dates only (common practice), so
 * that such hours are the early and the late ones of each such date and never reach into the next.
 */
export function wateringPeriods(days: WateringDays, { fromMinuteOfDay, untilMinuteOfDay }: ClockHours): readonly ClockPeriod[] {
  const isOverMidnight = fromMinuteOfDay >= untilMinuteOfDay;
  const late = { fromMinuteOfDay, untilMinuteOfDay: isOverMidnight ? MIDNIGHT_MINUTES : untilMinuteOfDay };
  const early = isOverMidnight && untilMinuteOfDay > 0 ? [{ fromMinuteOfDay: 0, untilMinuteOfDay }] : [];
  if ("datesOfMonth" in days) return [...early, late].map((hours) => ({ datesOfMonth: days.datesOfMonth, ...hours }));
  return days.weekdays.flatMap((weekday) => [
    { weekday, ...late },
    ...early.map((hours) => ({ weekday: (weekday + 1) % WEEK_DAYS, ...hours })),
  ]);
}

const WEEK_DAYS = 7;

/** Periods in words, those of the same hours together: "every day 5 am to 9 am", "odd dates 6 pm to midnight". */
export function periodWords(periods: readonly ClockPeriod[]): string {
  const groups = groupedBy(periods, ({ fromMinuteOfDay, untilMinuteOfDay }) => `${namedClockWords(fromMinuteOfDay)} to ${namedClockWords(untilMinuteOfDay)}`);
  return [...groups].map(([hours, own]) => `${dayWords(own)} ${hours}`).join("; ");
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

/** Refuses hours that are on no day or end before they begin. At `localRules` or `controller`. */
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
