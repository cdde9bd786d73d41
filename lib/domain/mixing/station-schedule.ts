import { type TimedRun } from "#domain/mixing/irrigation-run";
import { intersectSpans } from "#domain/mixing/span-set";
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

/** A station's runs, and between which minutes of a stretch they must lie. */
export interface StationTurn {
  readonly run: TimedRun;
  readonly earliestMinute: number;
  readonly latestMinute: number;
}

interface Waiting {
  readonly turn: StationTurn;
  readonly runsDone: number;
  readonly restedAfterMinutes: number;
}

/** What a station still needs from its next run on, its rests counted. */
function stillNeeds({ turn: { run }, runsDone }: Waiting): number {
  const left = run.runsMinutes.slice(runsDone);
  return left.reduce((total, minutes) => total + minutes, 0) + Math.max(0, left.length - 1) * run.soakMinutes;
}

/** How long it could still wait and be done by its latest minute. */
function spareMinutes(waiting: Waiting): number {
  return waiting.turn.latestMinute - stillNeeds(waiting);
}

/**
 * Stations one at a time, the runs of one in the rests of another, none before its earliest minute. Whenever no station
 * runs, of those whose rest is over the one starts that has the least time to spare before its latest minute, which is the
 * one that still needs the longest where that minute is the same for all; of equal ones the first listed. Where none is
 * rested, all wait for the first that is. Undefined where one is not done by its latest minute.
 *
 * It does not look ahead: it never lets a rested station wait for one that will be rested soon, never cuts a run shorter
 * than the station asks for, and does not try other orders, one of which may end somewhat sooner.
 */
export function inTurn(turns: readonly StationTurn[]): StationSchedule | undefined {
  const starts: StationStart[] = [];
  let now = 0;
  let waiting: readonly Waiting[] = turns.map((turn) => ({ turn, runsDone: 0, restedAfterMinutes: turn.earliestMinute }));
  for (;;) {
    const unfinished = waiting.filter(({ turn, runsDone }) => runsDone < turn.run.runsMinutes.length);
    const rested = unfinished.filter(({ restedAfterMinutes }) => restedAfterMinutes <= now);
    const [first] = unfinished;
    if (first === undefined) return { starts, elapsedMinutes: now };
    if (rested.length === 0) {
      now = Math.min(...unfinished.map(({ restedAfterMinutes }) => restedAfterMinutes));
      continue;
    }
    const next = rested.reduce((tightest, one) => (spareMinutes(one) < spareMinutes(tightest) ? one : tightest));
    const { run, latestMinute } = next.turn;
    const runMinutes = run.runsMinutes[next.runsDone] ?? 0;
    starts.push({ stationName: run.stationName, startsAfterMinutes: now, runMinutes });
    now += runMinutes;
    if (now > latestMinute) return undefined;
    const after = { turn: next.turn, runsDone: next.runsDone + 1, restedAfterMinutes: now + run.soakMinutes };
    waiting = unfinished.map((one) => (one === next ? after : one));
  }
}

/** Stations {@link inTurn} that may all run at any time. It never takes longer than the stations one after another. */
export function interleaved(runs: readonly TimedRun[]): StationSchedule {
  const schedule = inTurn(runs.map((run) => ({ run, earliestMinute: 0, latestMinute: Number.MAX_SAFE_INTEGER })));
  if (schedule === undefined) throw new Error("Stations that may run at any time were not in time.");
  return schedule;
}

/** The first whole minute of a stretch, in milliseconds since 1970: a controller is set in whole minutes. */
export function firstWholeMinute({ fromEpochMilliseconds }: Span): number {
  return Math.ceil(fromEpochMilliseconds / ONE_MINUTE_MILLISECONDS) * ONE_MINUTE_MILLISECONDS;
}

/** Whether so many minutes fit into a stretch from its first whole minute on. */
export function fitsInto(elapsedMinutes: number, span: Span): boolean {
  return span.untilEpochMilliseconds - firstWholeMinute(span) >= elapsedMinutes * ONE_MINUTE_MILLISECONDS;
}

/** Stations that must run in one stretch, and the time that is left for them. */
interface Load {
  readonly runs: readonly TimedRun[];
  readonly span: Span;
}

/** What of a stretch lies in the time that is left; undefined where nothing does. */
function shareOf(stretch: Span, { span }: Load): Span | undefined {
  return intersectSpans([stretch], [span])[0];
}

/** All loads in one stretch, from its first whole minute on; undefined where they do not fit. */
function withinStretch(loads: readonly Load[], stretch: Span): StationSchedule | undefined {
  const first = firstWholeMinute(stretch);
  const turns: StationTurn[] = [];
  for (const load of loads) {
    const share = shareOf(stretch, load);
    if (share === undefined) return undefined;
    const earliestMinute = (firstWholeMinute(share) - first) / ONE_MINUTE_MILLISECONDS;
    const latestMinute = Math.floor((share.untilEpochMilliseconds - first) / ONE_MINUTE_MILLISECONDS);
    turns.push(...load.runs.map((run) => ({ run, earliestMinute, latestMinute })));
  }
  return inTurn(turns);
}

interface FilledStretch {
  readonly stretch: Span;
  readonly starts: readonly StationStart[];
}

/** Each stretch in turn takes every load, in the order of the list, that still fits beside those it has. Undefined where one is left over. */
function filled(loads: readonly Load[], stretches: readonly Span[]): readonly FilledStretch[] | undefined {
  const all: FilledStretch[] = [];
  let left = loads;
  for (const stretch of stretches) {
    if (left.length === 0) break;
    const taken: Load[] = [];
    let starts: readonly StationStart[] = [];
    for (const load of left) {
      const schedule = withinStretch([...taken, load], stretch);
      if (schedule === undefined) continue;
      taken.push(load);
      starts = schedule.starts;
    }
    if (taken.length > 0) all.push({ stretch, starts });
    left = left.filter((load) => !taken.includes(load));
  }
  return left.length === 0 ? all : undefined;
}

/** Whole stations, in the order of the list, and where that leaves one over the longest first. */
function stationByStation(loads: readonly Load[], stretches: readonly Span[]): readonly FilledStretch[] | undefined {
  const each = loads.flatMap(({ runs, span }) => runs.map((run) => ({ runs: [run], span, elapsedMinutes: run.elapsedMinutes })));
  const longestFirst = each.toSorted(
    (one, other) => one.span.untilEpochMilliseconds - other.span.untilEpochMilliseconds || other.elapsedMinutes - one.elapsedMinutes,
  );
  return filled(each, stretches) ?? filled(longestFirst, stretches);
}

const ANY_TIME: Span = { fromEpochMilliseconds: -Infinity, untilEpochMilliseconds: Infinity };

/**
 * Whole stations on the stretches of several days, where none is long enough for all: each stretch in turn takes every
 * station, in the order of the list, that still fits beside those it has. Where that leaves one over, the same with the
 * longest first. Undefined where both leave one over.
 *
 * It does not look for the fullest stretches: a packing that only a search of all would find is not found. No station is
 * cut in two.
 */
export function inParts(runs: readonly TimedRun[], windows: readonly Span[]): readonly WateringPart[] | undefined {
  return stationByStation([{ runs, span: ANY_TIME }], windows)?.map(({ stretch, starts }) => ({ ...stretch, starts }));
}

/** The stations of lawns that are watered alike, and the time that the labels leave for them. No station is in two. */
export type LawnsLoad = Load;

/** Where lawns are watered beside the others of a property. */
export interface LawnsPlaces {
  /** The stretch in which all their stations run, and later ones that would do for all lawns; none where it takes several. */
  readonly windows: readonly Span[];
  readonly parts: readonly WateringPart[];
  /** The runs in the first of the windows, counted from its first whole minute; none where it takes several. */
  readonly starts: readonly StationStart[];
  /** Whether stations of other lawns run in a stretch of these. */
  readonly isWithOthers: boolean;
}

/**
 * All stations of a property on its stretches, one at a time over all its lawns. First all that are watered alike in one
 * stretch, those that are due first before the others; where that leaves some over, station by station as {@link inParts}
 * does. Undefined where both leave one over: what inParts does not find is not found here either.
 */
export function placedTogether(loads: readonly LawnsLoad[], stretches: readonly Span[]): readonly LawnsPlaces[] | undefined {
  const dueFirst = loads.toSorted((one, other) => one.span.untilEpochMilliseconds - other.span.untilEpochMilliseconds);
  const found = filled(dueFirst, stretches) ?? stationByStation(dueFirst, stretches);
  if (found === undefined) return undefined;
  const doForAll = stretches.filter((stretch) => withinStretch(loads.filter((load) => shareOf(stretch, load) !== undefined), stretch) !== undefined);
  return loads.map((load) => {
    const names = new Set(load.runs.map(({ stationName }) => stationName));
    const used = found.flatMap(({ stretch, starts }) => {
      const own = starts.filter(({ stationName }) => names.has(stationName));
      const share = shareOf(stretch, load);
      if (own.length === 0 || share === undefined) return [];
      const offset = (firstWholeMinute(share) - firstWholeMinute(stretch)) / ONE_MINUTE_MILLISECONDS;
      const moved = own.map((start) => ({ ...start, startsAfterMinutes: start.startsAfterMinutes - offset }));
      return [{ part: { ...share, starts: moved }, isWithOthers: own.length < starts.length }];
    });
    const isWithOthers = used.some((one) => one.isWithOthers);
    const parts = used.map(({ part }) => part);
    const [first, ...others] = parts;
    if (first === undefined || others.length > 0) return { windows: [], parts, starts: [], isWithOthers };
    const { starts, fromEpochMilliseconds, untilEpochMilliseconds } = first;
    const later = doForAll.flatMap((stretch) => (stretch.fromEpochMilliseconds >= untilEpochMilliseconds ? (shareOf(stretch, load) ?? []) : []));
    return { windows: [{ fromEpochMilliseconds, untilEpochMilliseconds }, ...later], parts: [], starts, isWithOthers };
  });
}
