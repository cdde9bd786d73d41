// The times of an aftercare on a paper that is printed before the work is done: each that moves with the work says what it
// counts from, and beside the one that decides as planned stands every other that may decide at another hour of the day.
import { listWords } from "#domain/foundation/list-words";
import { type AftercareTimeline } from "#domain/mixing/aftercare";
import { type AftercareReason, type AftercareStep } from "#domain/mixing/aftercare-step";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { dueReasons, keepOffReasons, type StatedTime, statedTimes } from "#domain/mixing/counted-from-work";
import { mayBeFirst, mayBeLast, type PlannedWork } from "#domain/mixing/deciding-times";
import { localWords } from "#domain/mixing/local-words";
import { wateringSteps, withinHoursWords } from "#domain/mixing/watering-steps";
import { type WateringWindow } from "#domain/mixing/watering-window";

/** The work of a visit as it is planned, with its products. */
export interface PlannedVisit extends PlannedWork {
  readonly products: readonly AppliedProduct[];
}

/** A step as it is told beforehand: "Until 4 hours after the work ends, about Friday, May 1, 2026, 8 pm as planned". */
export interface PlannedStep {
  readonly step: AftercareStep;
  readonly when: string;
}

/** The steps of an aftercare as they are told before the work is done; those of a watering that has hours in words of their own. */
export function stepsBeforehand({ steps, watering }: Pick<AftercareTimeline, "steps" | "watering">, visit: PlannedVisit): readonly PlannedStep[] {
  const water = watering.kind === "window" ? watering : undefined;
  const isToldAnew = ({ row, kind, hasNoHours }: AftercareStep) => water !== undefined && row === "watering" && kind === "must" && hasNoHours !== true;
  const anew = water === undefined ? [] : waterBeforehand(water, visit);
  return [...steps.filter((step) => !isToldAnew(step)), ...anew].map((step) => ({ step, when: step.kind === "may-not" ? mayNotWhen(step, visit) : mustWhen(step, step.hasNoHours === true ? undefined : water, visit) }));
}

function waterBeforehand(water: WateringWindow, visit: PlannedVisit): readonly AftercareStep[] {
  return wateringSteps(water, visit.timeZone, {
    mayMove: ({ fromEpochMilliseconds }) => water.isEstimate || beginnings({ startsAtEpochMilliseconds: fromEpochMilliseconds, isEstimate: false }, water, visit).some(({ counted }) => counted !== null),
    laterUntil: (end) => laterUntil(end, water, visit),
    dueWords: () => firstOfWords(endings(null, water, visit), visit),
  });
}

/** What the times of a watering hang on; of water without hours there are the reasons only. */
type Water = Pick<WateringWindow, "reasons"> & Partial<Pick<WateringWindow, "ofOtherWork">>;

function fixedAt(atEpochMilliseconds: number | null | undefined): readonly StatedTime[] {
  return typeof atEpochMilliseconds === "number" ? [{ atEpochMilliseconds, counted: null }] : [];
}

function ownTimes(reasons: readonly AftercareReason[], { products, timeZone }: PlannedVisit): readonly StatedTime[] {
  return statedTimes(reasons, products, timeZone);
}

type Beginning = Pick<AftercareStep, "startsAtEpochMilliseconds" | "isEstimate">;

/**
 * All that a watering may have to wait for, the last as planned first. A beginning that nothing counted sets is that of hours,
 * and stands; one that is estimated waits for a state of the lawn after the work, whose end says nothing beside it.
 */
function beginnings({ startsAtEpochMilliseconds: start, isEstimate }: Beginning, { reasons, ofOtherWork }: Water, visit: PlannedVisit): readonly StatedTime[] {
  const workEnds: StatedTime = { atEpochMilliseconds: visit.planned.untilEpochMilliseconds, counted: { words: "the end of the work", from: "application-end" } };
  const waits = [...(isEstimate ? [] : [workEnds]), ...ownTimes(keepOffReasons(reasons), visit)];
  const hours = waits.some(({ atEpochMilliseconds: at, counted }) => counted !== null && at === start) ? [] : fixedAt(start);
  return mayBeLast([...waits, ...fixedAt(ofOtherWork?.dryUntilEpochMilliseconds), ...hours], visit);
}

/** All dates by which it may have to be done, the first as planned first. An end that nothing counted sets is that of hours, and stands. */
function endings(end: number | null, { reasons, ofOtherWork }: Water, visit: PlannedVisit): readonly StatedTime[] {
  const dues = ownTimes(dueReasons(reasons), visit);
  const hours = dues.some(({ atEpochMilliseconds: at, counted }) => counted !== null && at === end) ? [] : fixedAt(end);
  return mayBeFirst([...dues, ...fixedAt(ofOtherWork?.dueAtEpochMilliseconds), ...hours], visit);
}

function besideEnd(end: number | null, times: readonly StatedTime[], { timeZone }: PlannedVisit): string {
  const rest = times.filter((time) => time !== leadOf(times, end));
  return rest.map(({ atEpochMilliseconds: at, counted }) => (counted === null ? `, and by ${localWords(at, timeZone, "due")}` : `, and within ${counted.words}`)).join("");
}

function laterUntil(end: number, water: Water, visit: PlannedVisit): string {
  const times = endings(end, water, visit);
  return `${countedAt(times, end)?.words ?? localWords(end, visit.timeZone, "due")}${besideEnd(end, times, visit)}`;
}

function firstOfWords(times: readonly StatedTime[], { timeZone }: PlannedVisit): string {
  const words = times.map(({ atEpochMilliseconds: at, counted }) => counted?.words ?? localWords(at, timeZone, "due"));
  return `${listWords(words)}${words.length > 1 ? ", whichever is first" : ""}`;
}

function notBefore(times: readonly StatedTime[], timeZone: string): string {
  return times.map(({ atEpochMilliseconds: at, counted }) => `, and not before ${counted?.words ?? localWords(at, timeZone, "end")}`).join("");
}

/** The one of several times that a step gives as its own. */
function leadOf(times: readonly StatedTime[], at: number | null | undefined): StatedTime | undefined {
  return times.find(({ atEpochMilliseconds }) => atEpochMilliseconds === at);
}

/** What that time is counted from; null where it does not move with the work. */
function countedAt(times: readonly StatedTime[], at: number | null): StatedTime["counted"] {
  return leadOf(times, at)?.counted ?? null;
}

function mustWhen(step: AftercareStep, water: WateringWindow | undefined, visit: PlannedVisit): string {
  const { endsAtEpochMilliseconds: end, endsAtWords, reasons } = step;
  const from = beginningWhen(step, water ?? { reasons }, visit);
  const times = endings(end, water ?? { reasons }, visit);
  const beside = besideEnd(end, times, visit);
  if (end === null) return `${from}, ${endsAtWords}${beside}`;
  const counted = countedAt(times, end);
  const hours = water !== undefined && movesFromHours(step, water, visit) ? withinHoursWords(water) : "";
  return `${from}${hours}, ${counted === null ? `by ${endsAtWords}` : `within ${counted.words}, by about ${localWords(end, visit.timeZone, "due")} as planned`}${beside}`;
}

/**
 * Whether a time that a step of water gives moves with the work, and so may come to lie where the hours of the property leave
 * no water: its beginning, its end, or that of later hours. Times that the hours set themselves need no hours beside them.
 */
function movesFromHours(step: AftercareStep, water: WateringWindow, visit: PlannedVisit): boolean {
  const { startsAtEpochMilliseconds: start, endsAtEpochMilliseconds: end } = step;
  const ends = [end, water.windows.at(-1)?.untilEpochMilliseconds ?? null];
  return countedAt(beginnings(step, water, visit), start) !== null || ends.some((at) => countedAt(endings(at, water, visit), at) !== null);
}

/** From when on something is to be done. */
function beginningWhen(step: AftercareStep, water: Water, visit: PlannedVisit): string {
  const { startsAtEpochMilliseconds: start, startsAtWords } = step;
  const times = beginnings(step, water, visit);
  const lead = leadOf(times, start);
  const rest = notBefore(times.filter((time) => time !== lead), visit.timeZone);
  if (lead === undefined || lead.counted === null) return `From ${startsAtWords}${rest}`;
  return `From ${lead.counted.words}, about ${localWords(start, visit.timeZone, "end")} as planned${rest}`;
}

/** Until when something is left. A stated time beside a state of the lawn is told with what it counts from. */
function mayNotWhen(step: AftercareStep, visit: PlannedVisit): string {
  const { planned, timeZone } = visit;
  const { startsAtEpochMilliseconds: start, endsAtEpochMilliseconds: end, notBeforeEpochMilliseconds: stated = end, endsAtWords } = step;
  const times = mayBeLast([...ownTimes(step.reasons, visit), ...fixedAt(step.fixedEndEpochMilliseconds)], visit);
  const lead = leadOf(times, stated);
  const until = lead === undefined || lead.counted === null || stated === null ? endsAtWords : countedUntil(lead.counted.words, step, stated, timeZone);
  const rest = notBefore(times.filter((time) => time !== lead && time.atEpochMilliseconds > planned.untilEpochMilliseconds), timeZone);
  return start > planned.untilEpochMilliseconds ? `From ${step.startsAtWords} until ${until}${rest}` : `Until ${until}${rest}`;
}

function countedUntil(words: string, { endsAtEpochMilliseconds: end, endsAtWords, isEstimate }: AftercareStep, stated: number, timeZone: string): string {
  if (stated !== end) return `${endsAtWords} (${words}, as planned)`;
  return `${words}, about ${localWords(stated, timeZone, "end")} as planned${isEstimate ? ", an estimate" : ""}`;
}
