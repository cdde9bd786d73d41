import { calendarDateIn } from "#domain/foundation/calendar-date";
import { clockWords } from "#domain/foundation/clock-words";
import { groupedBy } from "#domain/foundation/grouping";
import { listWords } from "#domain/foundation/list-words";
import { type AftercareStep } from "#domain/mixing/aftercare-step";
import { weekdayOf } from "#domain/mixing/clock-periods";
import { dateWords, localWords, weekdayWords, whichOfTwo } from "#domain/mixing/local-words";
import { firstWholeMinute, type StationStart, type WateringPart } from "#domain/mixing/station-schedule";
import { alsoWatersSentence } from "#domain/mixing/watering-shared";
import { type WateringAnswer, type WateringWindow } from "#domain/mixing/watering-window";
import { minuteOfDayAt, type Span } from "#domain/weather/local-hours";

const ONE_MINUTE_MILLISECONDS = 60_000;

/** How times are told before the work is done: those that move with it are given by what they count from, not by the clock. */
export interface ToldBeforehand {
  /** Whether a stretch may have to begin at another time than planned. */
  readonly mayMove: (stretch: Span) => boolean;
  /** Until when later hours do: "72 hours after the work ends", with what else may end them wherever the work ends. */
  readonly laterUntil: (endEpochMilliseconds: number) => string;
  /** The first date that a label sets. */
  readonly dueWords: (dueAtEpochMilliseconds: number) => string;
}

interface Told {
  readonly timeZone: string;
  readonly beforehand?: ToldBeforehand | undefined;
}

/**
 * How the visit is watered in, as steps. Where a label sets a date: at one go it is the first stretch, and the words say
 * until when later ones do too; in several parts it is a step for each. Where none does there is one step without an end,
 * whose words say that, and which lists all parts where there are several.
 * @param beforehand left out where the times are those of the work itself, as it is planned or as it was done
 */
export function wateringSteps(answer: WateringAnswer, timeZone: string, beforehand?: ToldBeforehand): readonly AftercareStep[] {
  if (answer.kind !== "window") return [];
  const told = { timeZone, beforehand };
  const { windows, parts = [] } = answer;
  const [first] = windows;
  if (first !== undefined) {
    const words = `${atOneGoWords(answer, first, told)}${rainWords(answer, first, told)}${laterWords(answer, told)}`;
    return [stepOf(answer, first, words, timeZone)];
  }
  const lead = `Water in with ${answer.depthWords ?? "what the label says"}, each station once, in ${parts.length} parts.`;
  const order = answer.isWithOthers === true ? " One station at a time on the whole property." : "";
  if (hasDate(answer)) {
    return parts.map((part, index) => {
      const asides = asideWords(answer, part, index === parts.length - 1);
      const runs = part.starts.length === 0 ? "" : ` ${startsWords(part.starts, part, told)}.${order}`;
      const words = `${lead} Part ${index + 1}${fromBeginning(part.starts, part, told)}:${runs}${asides}${rainWords(answer, part, told)}`;
      return stepOf(answer, part, words, timeZone);
    });
  }
  const all = parts.map((part, index) => `${partWords(part, told)}${asideWords(answer, part, index === parts.length - 1)}`).join(" ");
  return parts.slice(0, 1).map((part) => stepOf(answer, part, `${lead} They may run so: ${all}${order}${rainWords(answer, part, told)}`, timeZone));
}

function hasDate({ dueAtEpochMilliseconds }: WateringWindow): boolean {
  return typeof dueAtEpochMilliseconds === "number";
}

function stepOf(answer: WateringWindow, { fromEpochMilliseconds, untilEpochMilliseconds }: Span, words: string, timeZone: string): AftercareStep {
  const { isEstimate, reasons } = answer;
  const starts = localWords(fromEpochMilliseconds, timeZone, "end");
  return {
    row: "watering",
    kind: "must",
    startsAtEpochMilliseconds: fromEpochMilliseconds,
    endsAtEpochMilliseconds: hasDate(answer) ? untilEpochMilliseconds : null,
    isEstimate,
    words,
    startsAtWords: isEstimate ? `about ${starts}, an estimate` : starts,
    endsAtWords: hasDate(answer) ? localWords(untilEpochMilliseconds, timeZone, "due") : noDateWords(answer),
    reasons,
  };
}

/** ", within the watering hours (every day 4 am to 10 am)"; empty where no hours are on file. Tickets of before the hours were kept don't name them. */
export function withinHoursWords({ hasHours, hoursInWords = "" }: Pick<WateringWindow, "hasHours" | "hoursInWords">): string {
  if (hasHours !== true) return "";
  return `, within the watering hours${hoursInWords === "" ? "" : ` (${hoursInWords})`}`;
}

/** What stands in place of a date. */
function noDateWords(answer: WateringWindow): string {
  const within = withinHoursWords(answer);
  return answer.isOverdue === true
    ? `as soon as it can be${within}; the date on the label has passed`
    : `when it suits${within}; no date on the label`;
}

function atOneGoWords(answer: WateringWindow, span: Span, told: Told): string {
  const { depthWords, stations, starts = [], isWithOthers } = answer;
  if (depthWords === null) return "Water in as the label says; it states no depth.";
  const order = starts.length === 0 ? [] : orderWords(starts, span, isWithOthers === true, told);
  const shared = alsoWatersWords(answer, stations.map(({ stationName }) => stationName));
  return [`Water in with ${depthWords}.`, ...stations.map(({ sentence }) => sentence), ...shared, ...order].join(" ");
}

/** In which order stations run, where that needs times: stations without rests take as long one after another in any order. */
function orderWords(starts: readonly StationStart[], span: Span, isWithOthers: boolean, told: Told): readonly string[] {
  const counted = fromBeginning(starts, span, told);
  if (isWithOthers) return [`One station at a time on the whole property, for example${counted === "" ? "" : `${counted}:`} ${startsWords(starts, span, told)}.`];
  const stationCount = new Set(starts.map(({ stationName }) => stationName)).size;
  if (stationCount < 2 || starts.length === stationCount) return [];
  return [`One at a time${counted === "" ? `, begun at ${clockAt(span, 0, told.timeZone)}` : counted}: ${startsWords(starts, span, told)}.`];
}

/** How the minutes of stations are meant where they stand in place of times of the clock. */
function fromBeginning(starts: readonly StationStart[], span: Span, { beforehand }: Told): string {
  return starts.length > 0 && beforehand?.mayMove(span) === true ? ", in minutes from the beginning" : "";
}

/** What is said of some stations because their water reaches other lawns of the visit too. */
function alsoWatersWords({ alsoWaters = [] }: WateringWindow, stationNames: readonly string[]): readonly string[] {
  return alsoWaters
    .filter(({ stationName }) => stationNames.includes(stationName))
    .map(alsoWatersSentence);
}

/** Beside the times of a part: which of its stations reach other lawns, and with the last part the stations that have no minutes. */
function asideWords(answer: WateringWindow, { starts }: WateringPart, isLast: boolean): string {
  const untimed = isLast ? answer.stations.filter(({ kind }) => kind !== "run") : [];
  const names = [...starts, ...untimed].map(({ stationName }) => stationName);
  return [...untimed.map(({ sentence }) => sentence), ...alsoWatersWords(answer, names)].map((words) => ` ${words}`).join("");
}

/** The time of the clock so long after the first whole minute of a stretch, with its day where that is another one. */
function clockAt(span: Span, afterMinutes: number, timeZone: string): string {
  const first = firstWholeMinute(span);
  const instant = first + afterMinutes * ONE_MINUTE_MILLISECONDS;
  const date = calendarDateIn(timeZone, instant);
  const day = date === calendarDateIn(timeZone, first) ? "" : `${weekdayWords(weekdayOf(date))} `;
  return `${day}${clockWords(minuteOfDayAt(instant, timeZone))}${whichOfTwo(instant, timeZone)}`;
}

/**
 * Each station with its times, as a controller is set: "Back at 5 am and 5:40 am for 10 min each; Front at 5:10 am for 20 min".
 * Beforehand, where the beginning may move, each in minutes from it: "Back at 0 and 40 min for 10 min each".
 */
function startsWords(starts: readonly StationStart[], span: Span, { timeZone, beforehand }: Told): string {
  const isMoving = beforehand?.mayMove(span) === true;
  const timesWords = (afterMinutes: readonly number[]) => (isMoving ? `${listWords(afterMinutes.map(String))} min` : listWords(afterMinutes.map((minutes) => clockAt(span, minutes, timeZone))));
  const byStation = groupedBy(starts, ({ stationName }) => stationName);
  return [...byStation]
    .map(([stationName, own]) => {
      const byMinutes = [...groupedBy(own, ({ runMinutes }) => runMinutes)];
      const runs = byMinutes.map(([runMinutes, same]) => {
        const times = timesWords(same.map(({ startsAfterMinutes }) => startsAfterMinutes));
        return `at ${times} for ${runMinutes} min${same.length > 1 ? " each" : ""}`;
      });
      return `${stationName} ${runs.join(", ")}`;
    })
    .join("; ");
}

function partWords(part: WateringPart, told: Told): string {
  const date = dateWords(calendarDateIn(told.timeZone, firstWholeMinute(part)));
  return `${date}${fromBeginning(part.starts, part, told)}:${part.starts.length === 0 ? "" : ` ${startsWords(part.starts, part, told)}.`}`;
}

function rainWords(answer: WateringWindow, span: Span, told: Told): string {
  const { depthWords, rain, stayUnder = [] } = answer;
  const said: Readonly<Record<WateringWindow["rain"], string>> = {
    counts: ` ${depthWords ?? ""} of rain ${rainTimeWords(answer, span, told)} does it too.`,
    "does-not-count": " Rain does not replace it.",
    "may-spoil": " Do not wait for rain instead.",
    "not-stated": "",
  };
  return `${depthWords === null ? "" : said[rain]}${stayUnder.map((words) => ` ${words} As much water does too.`).join("")}`;
}

/**
 * In which time rain does it, which may begin before the hours in which water may run and end after them. Beforehand, where
 * it counts only from a time after the work, it is told as the time for water is: that is never too early.
 */
function rainTimeWords({ rainFrom, dueAtEpochMilliseconds: due = null }: WateringWindow, span: Span, { timeZone, beforehand }: Told): string {
  const isSameTime = rainFrom?.epochMilliseconds === span.fromEpochMilliseconds && (due === null || due === span.untilEpochMilliseconds);
  if (rainFrom === undefined || isSameTime || (beforehand !== undefined && !rainFrom.isEndOfWork)) return "in that time";
  const from = rainFrom.isEndOfWork ? "from the work" : `from ${localWords(rainFrom.epochMilliseconds, timeZone, "end")}`;
  if (due === null) return `${from} on`;
  return `${from} until ${beforehand === undefined ? localWords(due, timeZone, "due") : beforehand.dueWords(due)}`;
}

/** Until when it may still be done where the first stretch was missed. */
function laterWords(answer: WateringWindow, { timeZone, beforehand }: Told): string {
  const last = answer.windows.at(-1);
  if (answer.windows.length < 2 || last === undefined || !hasDate(answer)) return "";
  const end = last.untilEpochMilliseconds;
  return ` Later watering hours do as well, until ${beforehand === undefined ? localWords(end, timeZone, "due") : beforehand.laterUntil(end)}.`;
}
