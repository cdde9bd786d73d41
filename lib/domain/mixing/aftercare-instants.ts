import { addDays, type CalendarDate, calendarDateIn, calendarDateOf } from "#domain/foundation/calendar-date";
import { instantOfClock, utcOffsetAt } from "#domain/foundation/utc-offset";
import { AT_ONCE_MINUTES, type AwaitedState, type DueReach, type Reach, type ReachAnchor, type ReachBack, type Until } from "#domain/label/aftercare-constraint";
import { dayIn } from "#domain/mixing/clock-periods";
import { type Authority } from "#domain/weather/spray-limits";

const ONE_MINUTE_MILLISECONDS = 60_000;
const ONE_DAY_MILLISECONDS = 86_400_000;

/** When a product was put down, or will be, and its sign put up. */
export interface ApplicationTimes {
  readonly startsAtEpochMilliseconds: number;
  readonly endsAtEpochMilliseconds: number;
  readonly postedAtEpochMilliseconds: number | "not-posted";
}

/** How long something is guessed to take, with who says so. Nobody knows when a lawn is dry. */
export type TimeEstimate = (Authority & { readonly durationMinutes: number }) | "unknown";

/** The estimates of a visit, as its weather suggests or the company has them. */
export interface AftercareEstimates {
  readonly untilDry: TimeEstimate;
  readonly untilDustSettled: TimeEstimate;
  readonly untilDryAfterWatering: TimeEstimate;
}

/** The estimates a company starts with; none is from a label. */
export const DEFAULT_AFTERCARE_ESTIMATES: AftercareEstimates = {
  untilDry: { durationMinutes: 120, basis: "common-practice", source: "common practice: a spray on turf dries in about 2 h" },
  untilDustSettled: { durationMinutes: 30, basis: "common-practice", source: "common practice: dust settles within half an hour" },
  untilDryAfterWatering: {
    durationMinutes: 120,
    basis: "common-practice",
    source: "common practice: a watered lawn dries in about 2 h",
  },
};

/** When something ends: at an instant, known or estimated, or at one that can't be given. */
export interface AftercareEnd {
  readonly atEpochMilliseconds: number | null;
  /** Whether the instant is one. Where no estimate is later than a stated time it is none, whatever else is waited for. */
  readonly isEstimate: boolean;
  /** The states of the lawn that it waits for, in words. */
  readonly waitsFor: readonly string[];
  /** The latest of the times that hang on no state of the lawn: it never ends before, however the lawn looks. Null where it waits for states only. */
  readonly notBeforeEpochMilliseconds: number | null;
}

/** An end at a time that hangs on no state of the lawn. */
export function endAt(epochMilliseconds: number, isEstimate = false): AftercareEnd {
  return { atEpochMilliseconds: epochMilliseconds, isEstimate, waitsFor: [], notBeforeEpochMilliseconds: epochMilliseconds };
}

/** An end that waits for a state of the lawn: at an estimated instant, or at one that can't be given. */
export function endOnState(words: string, epochMilliseconds: number | null = null): AftercareEnd {
  return { atEpochMilliseconds: epochMilliseconds, isEstimate: true, waitsFor: [words], notBeforeEpochMilliseconds: null };
}

/** Everything that an end may hang on besides the application. */
export interface EndContext {
  readonly timeZone: string;
  readonly estimates: AftercareEstimates;
  /** When the product will have been watered in at the latest, if that can be said. */
  readonly wateredInAtEpochMilliseconds: number | null;
}

const STATE_WORDS: Readonly<Record<AwaitedState, string>> = {
  dry: "dry",
  "dust-settled": "the dust has settled",
  "watered-in": "watered in",
  "watered-in-and-dry": "watered in and dry",
};

/**
 * The first instant (milliseconds since 1970) of a date, months after another. Where the month has no such day, the
 * first of the next: later, never earlier.
 */
export function startOfDateMonthsAfter(date: CalendarDate, months: number, timeZone: string): number {
  const [year, month, dayOfMonth] = date.split("-").map(Number) as [number, number, number];
  const firstOfMonth = calendarDateOf(Date.UTC(year, month - 1 + months, 1));
  const firstOfNext = calendarDateOf(Date.UTC(year, month + months, 1));
  const wanted = addDays(firstOfMonth, dayOfMonth - 1);
  return dayIn(wanted < firstOfNext ? wanted : firstOfNext, timeZone).fromEpochMilliseconds;
}

function anchored(anchor: ReachAnchor, application: ApplicationTimes) {
  const { startsAtEpochMilliseconds, endsAtEpochMilliseconds, postedAtEpochMilliseconds } = application;
  if (anchor === "application-start") return { at: startsAtEpochMilliseconds, isEstimate: false };
  if (anchor === "application-end") return { at: endsAtEpochMilliseconds, isEstimate: false };
  // A sign that does not stand yet is counted from the end of the work, and its end is an estimate.
  return postedAtEpochMilliseconds === "not-posted"
    ? { at: endsAtEpochMilliseconds, isEstimate: true }
    : { at: postedAtEpochMilliseconds, isEstimate: false };
}

/** Past the hour that comes twice where clocks go back. */
const PAST_THE_CHANGE_MILLISECONDS = 3 * 3_600_000;

/**
 * So many days from an instant by each reading of "2 days": until the clock shows the same on that day, and so many times
 * 24 h. They differ only where clocks change in between, and where the clock then shows it twice, both count. California
 * counts a day of a farm's entry interval as 24 h from the end of the application (3 CCR 6772(a)(4)); labels of lawns
 * don't say. Reading both is common practice.
 */
function daysFrom(instant: number, days: number, timeZone: string) {
  const shown = instant + utcOffsetAt(instant, timeZone) + days * ONE_DAY_MILLISECONDS;
  const first = instantOfClock(shown, timeZone);
  const again = shown - utcOffsetAt(first + PAST_THE_CHANGE_MILLISECONDS, timeZone);
  const last = again + utcOffsetAt(again, timeZone) === shown ? again : first;
  const byHours = instant + days * ONE_DAY_MILLISECONDS;
  return { earliest: Math.min(first, byHours), latest: Math.max(last, byHours) };
}

/**
 * What days may count from. Where the words do not say, both ends of the work: the end alone is not always the later of
 * the two, since a clock that is put forward or back between them can turn them round.
 */
function countedFrom(from: ReachAnchor | "not-said"): readonly ReachAnchor[] {
  return from === "not-said" ? ["application-start", "application-end"] : [from];
}

/**
 * When a "not before" ends. "2 days" end by the latest of their readings, counted from the start and from the end of the
 * work where the words do not say, so that none is broken; never at the midnight before, which is hours early. A calendar day begins
 * it: "the day following" is over at its first instant.
 */
export function notBefore(reach: Reach, application: ApplicationTimes, timeZone: string): AftercareEnd {
  if (reach.anchor === "days") {
    const froms = countedFrom(reach.from).map((from) => anchored(from, application));
    const at = Math.max(...froms.map((from) => daysFrom(from.at, reach.days, timeZone).latest));
    return endAt(at, froms.some(({ isEstimate }) => isEstimate));
  }
  const date = calendarDateIn(timeZone, application.endsAtEpochMilliseconds);
  if (reach.anchor === "calendar-day") {
    return endAt(dayIn(addDays(date, reach.days), timeZone).fromEpochMilliseconds);
  }
  if (reach.anchor === "calendar-month") {
    return endAt(startOfDateMonthsAfter(date, reach.months, timeZone));
  }
  const { at, isEstimate } = anchored(reach.anchor, application);
  return endAt(at + reach.durationMinutes * ONE_MINUTE_MILLISECONDS, isEstimate);
}

/** Where a due time counts from. Before the sign stands, the start of the work is the earliest it can be: never too late. */
function dueFrom(anchor: ReachAnchor, application: ApplicationTimes): number {
  const isUnposted = anchor === "posting" && application.postedAtEpochMilliseconds === "not-posted";
  return isUnposted ? application.startsAtEpochMilliseconds : anchored(anchor, application).at;
}

/**
 * The instant (milliseconds since 1970) by which something is due. "Within 2 days" is due by the earliest of its
 * readings, counted from the start and from the end of the work where the words do not say, and not by the end of that
 * day, which can be most of a day late. At once is within {@link AT_ONCE_MINUTES} after the work. A calendar day is due
 * by its end, counted from the day the work began.
 */
export function dueBy(reach: DueReach, application: ApplicationTimes, timeZone: string): number {
  if (reach.anchor === "at-once") return application.endsAtEpochMilliseconds + AT_ONCE_MINUTES * ONE_MINUTE_MILLISECONDS;
  if (reach.anchor === "days") {
    return Math.min(...countedFrom(reach.from).map((from) => daysFrom(dueFrom(from, application), reach.days, timeZone).earliest));
  }
  if (reach.anchor === "calendar-day") {
    const date = calendarDateIn(timeZone, application.startsAtEpochMilliseconds);
    return dayIn(addDays(date, reach.days), timeZone).untilEpochMilliseconds;
  }
  return dueFrom(reach.anchor, application) + reach.durationMinutes * ONE_MINUTE_MILLISECONDS;
}

/**
 * The instant (milliseconds since 1970) from which on something counts as within the time before an application. Days
 * reach back to the earlier of the first instant of that day and so many times 24 h before the work.
 */
export function reachesBackTo(reach: ReachBack, application: ApplicationTimes, timeZone: string): number {
  const { startsAtEpochMilliseconds } = application;
  if (reach.anchor === "application-start") {
    return startsAtEpochMilliseconds - reach.durationMinutes * ONE_MINUTE_MILLISECONDS;
  }
  const date = calendarDateIn(timeZone, startsAtEpochMilliseconds);
  const midnight = dayIn(addDays(date, -reach.days), timeZone).fromEpochMilliseconds;
  return reach.anchor === "days" ? Math.min(midnight, startsAtEpochMilliseconds - reach.days * ONE_DAY_MILLISECONDS) : midnight;
}

function stateEnd(state: AwaitedState, application: ApplicationTimes, context: EndContext): AftercareEnd {
  const { estimates, wateredInAtEpochMilliseconds } = context;
  const after = (start: number | null, estimate: TimeEstimate) =>
    endOnState(STATE_WORDS[state], start === null || estimate === "unknown" ? null : start + estimate.durationMinutes * ONE_MINUTE_MILLISECONDS);
  switch (state) {
    case "dry":
      return after(application.endsAtEpochMilliseconds, estimates.untilDry);
    case "dust-settled":
      return after(application.endsAtEpochMilliseconds, estimates.untilDustSettled);
    case "watered-in":
      return endOnState(STATE_WORDS[state], wateredInAtEpochMilliseconds);
    case "watered-in-and-dry":
      return after(wateredInAtEpochMilliseconds, estimates.untilDryAfterWatering);
  }
}

/**
 * The latest of several ends. One that can't be given keeps the whole from being given, and the times among them still
 * hold: nothing ends before the latest of those. The whole is an estimate where only estimates are as late as it.
 */
export function latestEnd(ends: readonly AftercareEnd[]): AftercareEnd {
  const [only, ...others] = ends;
  if (only !== undefined && others.length === 0) return only;
  const instants = ends.flatMap(({ atEpochMilliseconds }) => atEpochMilliseconds ?? []);
  const at = instants.length < ends.length ? null : Math.max(...instants);
  const stated = ends.flatMap(({ notBeforeEpochMilliseconds }) => notBeforeEpochMilliseconds ?? []);
  return {
    atEpochMilliseconds: at,
    isEstimate: ends.filter(({ atEpochMilliseconds }) => atEpochMilliseconds === at).every(({ isEstimate }) => isEstimate),
    waitsFor: [...new Set(ends.flatMap(({ waitsFor }) => waitsFor))].toSorted(),
    notBeforeEpochMilliseconds: stated.length === 0 ? null : Math.max(...stated),
  };
}

/** When the later of a label's conditions is met. */
export function endOf(untilLaterOf: readonly Until[], application: ApplicationTimes, context: EndContext): AftercareEnd {
  return latestEnd(
    untilLaterOf.map((until) =>
      until.anchor === "state"
        ? stateEnd(until.state, application, context)
        : notBefore(until, application, context.timeZone),
    ),
  );
}
