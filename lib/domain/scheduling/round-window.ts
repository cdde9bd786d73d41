import { type CalendarDate, addDays, daysBetween } from "#domain/foundation/calendar-date";
import { type InputRefusal, type Outcome, accept, badInput, missingFact } from "#domain/foundation/outcome";
import { refuseUnrealDate } from "#domain/turf/daily-series";
import { type DegreeDayWindow, monthAndDay, stateOfDegreeDayWindow } from "#domain/turf/degree-day-windows";
import { type DegreeDaySum } from "#domain/turf/degree-days";
import { refuseOutOfRange } from "#domain/turf/physical-range";
import { type SoilDay, type SoilTemperatureWindow, stateOfSoilWindow } from "#domain/turf/soil-temperature";

/**
 * When a round of a program may be done: between two dates, within degree days, while the soil has a temperature, or
 * so many days after the previous round was actually done. `PUBLISHED_DEGREE_DAY_WINDOWS` and `PUBLISHED_SOIL_WINDOWS`
 * hold the printed ones; a company may state its own in the same form.
 */
export type RoundWindow =
  | { readonly kind: "dates"; readonly opensOn: CalendarDate; readonly closesOn: CalendarDate }
  | { readonly kind: "degree-days"; readonly window: DegreeDayWindow }
  | { readonly kind: "soil-temperature"; readonly window: SoilTemperatureWindow }
  | { readonly kind: "days-since-previous"; readonly leastDays: number; readonly mostDays: number | "no-end" };

/** Soil temperatures of one place and depth, watched from a day on. */
export interface WatchedSoil {
  /** As the window writes it: "0 to 2 in", "4 in". */
  readonly depth: string;
  readonly from: CalendarDate;
  /** Day after day, as far as they are on file. */
  readonly days: readonly SoilDay[];
}

/** What a round's window is asked with. A kind of window looks only at the facts that it hangs on. */
export interface RoundWindowQuestion {
  readonly window: RoundWindow;
  /** The day that is asked about. */
  readonly on: CalendarDate;
  /**
   * When the round before was actually done on this lawn; a planned day is not a day on which it was done. A window that
   * counts degree days from the last application takes it for the day of that.
   */
  readonly previousRoundDoneOn: CalendarDate | "not-done";
  /** A running sum made with the window's own method and from its own start. */
  readonly degreeDays: DegreeDaySum | "none-on-file";
  readonly soil: WatchedSoil | "none-on-file";
}

/** How a day stands to a round's window. */
export type RoundWindowAnswer =
  | {
      readonly kind: "not-yet";
      /** Known for dates and days; degree days and soil open when the weather has it so. */
      readonly opensOn: CalendarDate | "by-weather";
      /** Where the window counts degree days: what the sum still lacks. */
      readonly remainingDegreeDays?: number;
    }
  | { readonly kind: "open"; readonly since: CalendarDate; readonly lastDay: CalendarDate | "by-weather" | "no-end" }
  /** Over since the first day on which it no longer holds. */
  | { readonly kind: "over"; readonly since: CalendarDate }
  /** A fact is missing or does not fit, and is named. */
  | { readonly kind: "cannot-say"; readonly refusal: InputRefusal };

/** The longest wait for a round that is taken for meant, in days: a year (common practice). */
const LONGEST_WAIT_DAYS = 366;

/**
 * Says how a day stands to a round's window: not yet, open, over, or that it can't be said and why. It can't be said, by
 * name: where no previous round was done that the window counts from; where no sum or soil is on file, or one of another
 * method, base, start or depth; where days up to the day before the one asked about are missing and could change the
 * answer; and where the window itself can't be meant. Nothing is taken from what comes after the day asked about.
 */
export function judgeRoundWindow(question: RoundWindowQuestion): RoundWindowAnswer {
  const unreal = refuseUnrealDate("on", question.on);
  if (unreal !== undefined) return cannotSay(unreal);
  const { window } = question;
  switch (window.kind) {
    case "dates":
      return byDates(window, question.on);
    case "days-since-previous":
      return byDaysSince(window, question);
    case "degree-days":
      return byDegreeDays(window.window, question);
    case "soil-temperature":
      return bySoil(window.window, question);
  }
}

function cannotSay({ refusal }: { readonly refusal: InputRefusal }): RoundWindowAnswer {
  return { kind: "cannot-say", refusal };
}

function byDates({ opensOn, closesOn }: Extract<RoundWindow, { readonly kind: "dates" }>, on: CalendarDate): RoundWindowAnswer {
  const unreal = refuseUnrealDate("window.opensOn", opensOn) ?? refuseUnrealDate("window.closesOn", closesOn);
  if (unreal !== undefined) return cannotSay(unreal);
  if (closesOn < opensOn) {
    return cannotSay(badInput("window.closesOn", closesOn, `${opensOn} or later`, `The window closes on ${closesOn}, before it opens on ${opensOn}.`));
  }
  return between(opensOn, closesOn, on);
}

function between(opensOn: CalendarDate, lastDay: CalendarDate | "no-end", on: CalendarDate): RoundWindowAnswer {
  if (on < opensOn) return { kind: "not-yet", opensOn };
  if (lastDay !== "no-end" && on > lastDay) return { kind: "over", since: addDays(lastDay, 1) };
  return { kind: "open", since: opensOn, lastDay };
}

function byDaysSince({ leastDays, mostDays }: Extract<RoundWindow, { readonly kind: "days-since-previous" }>, question: RoundWindowQuestion): RoundWindowAnswer {
  const most = mostDays === "no-end" ? LONGEST_WAIT_DAYS : mostDays;
  const refusal =
    refuseOutOfRange([
      { field: "window.leastDays", words: "The wait", value: leastDays, lowest: 0, highest: LONGEST_WAIT_DAYS, unit: "days" },
      { field: "window.mostDays", words: "The longest wait", value: most, lowest: leastDays, highest: LONGEST_WAIT_DAYS, unit: "days" },
    ]) ?? [leastDays, most].map(refusePartOfDay).find((each) => each !== undefined);
  if (refusal !== undefined) return cannotSay(refusal);
  const done = previousDone(question);
  if (!done.ok) return cannotSay(done);
  return between(addDays(done.value, leastDays), mostDays === "no-end" ? mostDays : addDays(done.value, mostDays), question.on);
}

function refusePartOfDay(days: number) {
  return Number.isInteger(days) ? undefined : badInput("window", `${days} days`, "whole days", `A wait of ${days} days is not in whole days.`);
}

/** The day on which the previous round was done, when it was and not after the day asked about. */
function previousDone({ previousRoundDoneOn: doneOn, on }: RoundWindowQuestion): Outcome<CalendarDate> {
  if (doneOn === "not-done") {
    return missingFact("previousRoundDoneOn", "the day on which the previous round was done", "The window counts from the previous round, and none was done.");
  }
  const unreal = refuseUnrealDate("previousRoundDoneOn", doneOn);
  if (unreal !== undefined) return unreal;
  if (doneOn <= on) return accept(doneOn);
  return badInput("previousRoundDoneOn", doneOn, `${on} or earlier`, `The previous round was done on ${doneOn}, after the day asked about, ${on}.`);
}

function byDegreeDays(window: DegreeDayWindow, question: RoundWindowQuestion): RoundWindowAnswer {
  const { on, degreeDays } = question;
  const { start } = window;
  if (start.kind === "calendar" && on.slice(5) < monthAndDay(start)) {
    return { kind: "not-yet", opensOn: "by-weather", remainingDegreeDays: window.opensAtDegreeDays };
  }
  const done = start.kind === "last-application" ? previousDone(question) : undefined;
  if (done?.ok === false) return cannotSay(done);
  if (degreeDays === "none-on-file") {
    return cannotSay(missingFact("degreeDays", "a running sum of degree days", "The window counts degree days, and no sum is on file."));
  }
  const starts = startsOf(window, on, done?.value);
  if (starts !== undefined && !starts.includes(degreeDays.from)) {
    const allowed = `a sum from ${starts.join(" or ")}`;
    return cannotSay(badInput("degreeDays.from", degreeDays.from, allowed, `The degree days were summed from ${degreeDays.from}; the window takes ${allowed}.`));
  }
  const state = stateOfDegreeDayWindow(sumThrough(degreeDays, on), window);
  if (!state.ok) return cannotSay({ refusal: { ...state.refusal, field: `degreeDays.${state.refusal.field}` } });
  if (state.value.kind === "past") return { kind: "over", since: state.value.closedOn.date };
  const hasEnd = window.closesAtDegreeDays !== undefined;
  if (state.value.kind === "open" && !hasEnd) return { kind: "open", since: state.value.openedOn.date, lastDay: "no-end" };
  const missing = firstMissing("degreeDays", degreeDays.through, on);
  if (missing !== undefined) return cannotSay(missing);
  if (state.value.kind === "open") return { kind: "open", since: state.value.openedOn.date, lastDay: "by-weather" };
  return { kind: "not-yet", opensOn: "by-weather", remainingDegreeDays: state.value.remainingDegreeDays };
}

/** The days on which the window's sum may begin; undefined where the source prints none. After an application either the day itself or the next counts as the first. */
function startsOf({ start }: DegreeDayWindow, on: CalendarDate, doneOn: CalendarDate | undefined): readonly string[] | undefined {
  if (start.kind === "calendar") return [`${on.slice(0, 4)}-${monthAndDay(start)}`];
  return doneOn === undefined ? undefined : [doneOn, addDays(doneOn, 1)];
}

/** The sum as it stood at the end of a day, without what came after. */
function sumThrough(sum: DegreeDaySum, on: CalendarDate): DegreeDaySum {
  const lines = sum.lines.filter(({ date }) => date <= on);
  return { ...sum, lines, totalDegreeDays: lines.at(-1)?.totalDegreeDays ?? 0 };
}

/** A day's own figures are only known when it is over, so that those through the day before are enough. */
function firstMissing(field: string, through: CalendarDate, on: CalendarDate) {
  if (daysBetween(through, on) <= 1) return undefined;
  const missing = addDays(through, 1);
  return missingFact(`${field} ${missing}`, `readings through ${addDays(on, -1)}`, `There is no reading for ${missing}, and ${on} hangs on it.`);
}

function bySoil(window: SoilTemperatureWindow, { on, soil }: RoundWindowQuestion): RoundWindowAnswer {
  if (soil === "none-on-file") {
    return cannotSay(missingFact("soil", "soil temperatures day by day", "The window goes by the soil's temperature, and none is on file."));
  }
  if (window.depth !== DEPTH_NOT_PRINTED && soil.depth !== window.depth) {
    return cannotSay(badInput("soil.depth", soil.depth, window.depth, `The soil was measured at ${soil.depth}; the window was found at ${window.depth}.`));
  }
  if (soil.from > on) {
    return cannotSay(badInput("soil.from", soil.from, `${on} or earlier`, `The soil is watched from ${soil.from}, after the day asked about, ${on}.`));
  }
  const days = soil.days.filter(({ date }) => date <= on);
  const last = days.at(-1)?.date;
  if (last === undefined || last < soil.from) {
    return cannotSay(missingFact(`soil ${soil.from}`, "a reading for each day", `There is no reading for ${soil.from}.`));
  }
  const state = stateOfSoilWindow(days, { from: soil.from, through: last }, window);
  if (!state.ok) return cannotSay({ refusal: { ...state.refusal, field: `soil ${state.refusal.field}` } });
  if (state.value.kind === "past") return { kind: "over", since: state.value.closedOn };
  const hasEnd = window.highestF !== undefined;
  if (state.value.kind === "open" && !hasEnd) return { kind: "open", since: state.value.openedOn, lastDay: "no-end" };
  const missing = firstMissing("soil", last, on);
  if (missing !== undefined) return cannotSay(missing);
  return state.value.kind === "open" ? { kind: "open", since: state.value.openedOn, lastDay: "by-weather" } : { kind: "not-yet", opensOn: "by-weather" };
}

/** What a published window writes where its source prints no depth: soil of any depth may be held against it. */
const DEPTH_NOT_PRINTED = "not printed";
