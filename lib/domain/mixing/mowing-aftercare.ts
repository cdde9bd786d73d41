import { addDays, type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { type AftercareStep } from "#domain/mixing/aftercare-step";
import { reachesBackTo } from "#domain/mixing/aftercare-instants";
import { type AppliedProduct, appliedName, constraintsOf, weakestAuthority } from "#domain/mixing/applied-product";
import { datesIn, dayIn, weekdayOf } from "#domain/mixing/clock-periods";
import { dateWords, localWords, weekdayWords } from "#domain/mixing/local-words";
import { overlap } from "#domain/mixing/span-set";
import { localTimeAt, type Span } from "#domain/weather/local-hours";

/** When the customer mows: the day of the week (0 for Sunday) or none that is fixed, and when it was last done. */
export interface MowingHabit {
  readonly weekday: number | "none" | "unknown";
  readonly lastMowedAtEpochMilliseconds: number | "unknown";
}

/** How many mowing days are named one by one where mowing is forbidden for long. */
const MOST_NAMED_DAYS = 4;

/**
 * The mowing days that fall where mowing is forbidden after the visit. A day on which it is over is named with its time.
 * A mowing day that nobody knows wants care where anything is forbidden; where none is fixed the customer is told when not to mow.
 */
export function mowingDaysInTheWay(
  steps: readonly AftercareStep[],
  habit: MowingHabit,
  visit: Span,
  timeZone: string,
): readonly Finding[] {
  const mowing = steps.filter(({ row, kind }) => row === "mowing" && kind === "may-not");
  if (mowing.length === 0 || habit.weekday === "none") return [];
  if (habit.weekday === "unknown") return [unknownMowingDay(mowing)];
  const { weekday } = habit;
  return mowing.flatMap((step) => {
    const dates = collidingDates(step, weekday, visit, timeZone);
    return dates.length === 0 ? [] : [collision(step, dates, timeZone)];
  });
}

function collidingDates(step: AftercareStep, weekday: number, visit: Span, timeZone: string): readonly CalendarDate[] {
  const from = Math.max(step.startsAtEpochMilliseconds, visit.untilEpochMilliseconds);
  if (step.endsAtEpochMilliseconds === null) {
    const { date } = localTimeAt(from, timeZone);
    return [addDays(date, (weekday - weekdayOf(date) + 7) % 7)];
  }
  if (step.endsAtEpochMilliseconds <= from) return [];
  const span = { fromEpochMilliseconds: from, untilEpochMilliseconds: step.endsAtEpochMilliseconds };
  return datesIn(span, timeZone).filter((date) => weekdayOf(date) === weekday);
}

function aboutOf(steps: readonly AftercareStep[]): readonly string[] {
  return [...new Set(steps.flatMap(({ reasons }) => reasons.map(({ productName }) => productName)))].toSorted();
}

function citationOf(steps: readonly AftercareStep[]): string {
  return [...new Set(steps.flatMap(({ reasons }) => reasons.map(({ source }) => source)))].toSorted().join("; ");
}

function collision(step: AftercareStep, dates: readonly CalendarDate[], timeZone: string): Finding {
  const { endsAtEpochMilliseconds: end } = step;
  const named = dates.slice(0, MOST_NAMED_DAYS).map(dateWords).join("; ");
  const more = dates.length > MOST_NAMED_DAYS ? `; and ${dates.length - MOST_NAMED_DAYS} more` : "";
  const lastDate = dates.at(-1);
  const lastDay = lastDate === undefined ? undefined : dayIn(lastDate, timeZone);
  const isOverThatDay = end !== null && lastDay !== undefined && end < lastDay.untilEpochMilliseconds;
  const { source } = weakestAuthority(step.reasons);
  return takeCare({
    rule: "mowing-day-in-the-way",
    source,
    what: `The customer's mowing day falls where ${aboutOf([step]).join(" and ")} must not be mowed.`,
    figure: `Mowing days: ${named}${more}. Not before ${step.endsAtWords}.`,
    toDo:
      isOverThatDay && dates.length === 1
        ? `Ask the customer to mow that day only after ${localWords(end, timeZone, "end")}.`
        : "Ask the customer to mow on another day.",
    citation: citationOf([step]),
    about: aboutOf([step]),
  });
}

/** The customer is told when not to mow in any case, so this does not keep a ticket from being issued. */
function unknownMowingDay(steps: readonly AftercareStep[]): Finding {
  return takeCare({
    rule: "mowing-day-missing",
    source: "house",
    what: "The customer's mowing day is not on file, so it can't be held against the time without mowing.",
    figure: `No mowing before ${steps.map(({ endsAtWords }) => endsAtWords).join("; ")}.`,
    toDo: "Ask the customer and put it on file, or put on file that no day is fixed.",
    about: aboutOf(steps),
  });
}

/**
 * Whether the lawn was mowed too shortly before a product of this visit. When nobody knows the last mowing, a mowing day
 * within that time, or one that nobody knows or that is not fixed, wants care: only the crew at the gate can see how long the grass is, and
 * the plan can't be decided before.
 */
export function mowedTooShortlyBefore(
  products: readonly AppliedProduct[],
  habit: MowingHabit,
  timeZone: string,
): readonly Finding[] {
  const planned = products.filter(({ appliedIn }) => appliedIn === "this-visit");
  return constraintsOf(planned, "mowing-before").flatMap(({ applied, constraint }) => {
    const from = reachesBackTo(constraint.within, applied.application, timeZone);
    const span = { fromEpochMilliseconds: from, untilEpochMilliseconds: applied.application.startsAtEpochMilliseconds };
    const name = appliedName(applied, timeZone);
    const figure = `Not mowed since ${localWords(from, timeZone, "start")}.`;
    const words = { citation: constraint.source, about: [applied.label.productName], figure };
    const last = habit.lastMowedAtEpochMilliseconds;
    if (last !== "unknown") {
      if (last < span.fromEpochMilliseconds || last >= span.untilEpochMilliseconds) return [];
      const { source, answerableBy } = weakestAuthority([constraint]);
      const what = `The lawn was mowed ${localWords(last, timeZone, "start")}, too shortly before ${name}.`;
      return [hold(answerableBy, { rule: "mowed-too-shortly-before", source, what, toDo: "Move the visit.", ...words })];
    }
    if (!mayHaveMowed(habit.weekday, span, timeZone)) return [];
    const what = lastMowingWords(habit.weekday, name);
    return [
      takeCare({ rule: "last-mowing-missing", source: "house", what, toDo: "Ask at the gate when it was last mowed, and leave the lawn if it is too short.", ...words }),
    ];
  });
}

function lastMowingWords(weekday: MowingHabit["weekday"], name: string): string {
  if (weekday === "unknown") return `Neither the last mowing nor the customer's mowing day is on file, and ${name} must not follow it too soon.`;
  if (weekday === "none") return `The customer mows on no fixed day, and when last is not on file; ${name} must not follow it too soon.`;
  return `The customer mows on ${weekdayWords(weekday)}, which may be too shortly before ${name}.`;
}

function mayHaveMowed(weekday: MowingHabit["weekday"], span: Span, timeZone: string): boolean {
  if (weekday === "unknown") return true;
  if (span.fromEpochMilliseconds >= span.untilEpochMilliseconds) return false;
  return weekday === "none" || datesIn(span, timeZone).some((date) => weekdayOf(date) === weekday && overlap(dayIn(date, timeZone), span));
}
