import { type TimedRun } from "#domain/mixing/irrigation-run";
import { type Span } from "#domain/weather/local-hours";

const ONE_MINUTE_MILLISECONDS = 60_000;

/** One run of one station, counted from the first drop. */
export interface StationStart {
  readonly stationName: string;
  readonly startsAfterMinutes: number;
  readonly runMinutes: number;
}

/** The runs of all stations in order of time, one station at a time, and the minutes from the first drop to the last. */
export interface StationSchedule {
  readonly starts: readonly StationStart[];
  readonly elapsedMinutes: number;
}

/** Stations that are watered in one stretch, whole ones only. */
export interface WateringPart extends Span {
  readonly starts: readonly StationStart[];
}

interface Waiting {
  readonly run: TimedRun;
  readonly runsDone: number;
  readonly restedAfterMinutes: number;
}

/** What a station still needs from its next run on, its rests counted. */
function stillNeeds({ run, runsDone }: Waiting): number {
  const left = run.runsMinutes.slice(runsDone);
  return left.reduce((total, minutes) => total + minutes, 0) + Math.max(0, left.length - 1) * run.soakMinutes;
}

/**
 * Stations one at a time, the runs of one in the rests of another. Whenever no station runs, of those whose rest is over
 * the one starts that still needs the longest, its rests counted; of equal ones the first listed. Where none is rested,
 * all wait for the first that is. It never takes longer than the stations one after another.
 *
 * It does not look ahead: it never lets a rested station wait for one that will be rested soon, never cuts a run shorter
 * than the station asks for, and does not try other orders, one of which may end somewhat sooner.
 */
export function interleaved(runs: readonly TimedRun[]): StationSchedule {
  const starts: StationStart[] = [];
  let now = 0;
  let waiting: readonly Waiting[] = runs.map((run) => ({ run, runsDone: 0, restedAfterMinutes: 0 }));
  for (;;) {
    const unfinished = waiting.filter(({ run, runsDone }) => runsDone < run.runsMinutes.length);
    const rested = unfinished.filter(({ restedAfterMinutes }) => restedAfterMinutes <= now);
    const [first] = unfinished;
    if (first === undefined) return { starts, elapsedMinutes: now };
    if (rested.length === 0) {
      now = Math.min(...unfinished.map(({ restedAfterMinutes }) => restedAfterMinutes));
      continue;
    }
    const next = rested.reduce((longest, one) => (stillNeeds(one) > stillNeeds(longest) ? one : longest));
    const runMinutes = next.run.runsMinutes[next.runsDone] ?? 0;
    starts.push({ stationName: next.run.stationName, startsAfterMinutes: now, runMinutes });
    now += runMinutes;
    const after = { run: next.run, runsDone: next.runsDone + 1, restedAfterMinutes: now + next.run.soakMinutes };
    waiting = unfinished.map((one) => (one === next ? after : one));
  }
}

/** The first whole minute of a stretch, in milliseconds since 1970: a controller is set in whole minutes. */
export function firstWholeMinute({ fromEpochMilliseconds }: Span): number {
  return Math.ceil(fromEpochMilliseconds / ONE_MINUTE_MILLISECONDS) * ONE_MINUTE_MILLISECONDS;
}

/** Whether so many minutes fit into a stretch from its first whole minute on. */
export function fitsInto(elapsedMinutes: number, span: Span): boolean {
  return span.untilEpochMilliseconds - firstWholeMinute(span) >= elapsedMinutes * ONE_MINUTE_MILLISECONDS;
}

/**
 * Whole stations on the stretches of several days, where none is long enough for all: each stretch in turn takes every
 * station, in the order of the list, that still fits beside those it has. Where that leaves one over, the same with the
 * longest first. Undefined where both leave one over.
 *
 * It does not look for the fullest stretches: a packing that only a search of all would find is not found. No station is
 * cut in two.
 */
export function inParts(runs: readonly TimedRun[], windows: readonly Span[]): readonly WateringPart[] | undefined {
  const longestFirst = runs.toSorted((one, other) => other.elapsedMinutes - one.elapsedMinutes);
  return filled(runs, windows) ?? filled(longestFirst, windows);
}

function filled(runs: readonly TimedRun[], windows: readonly Span[]): readonly WateringPart[] | undefined {
  const parts: WateringPart[] = [];
  let left = runs;
  for (const window of windows) {
    if (left.length === 0) break;
    const taken: TimedRun[] = [];
    for (const run of left) if (fitsInto(interleaved([...taken, run]).elapsedMinutes, window)) taken.push(run);
    if (taken.length > 0) parts.push({ ...window, starts: interleaved(taken).starts });
    left = left.filter((run) => !taken.includes(run));
  }
  return left.length === 0 ? parts : undefined;
}
