import { type Finding } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { type AppliedProduct, isOfOtherWork } from "#domain/mixing/applied-product";
import { type StationRun, type TimedRun } from "#domain/mixing/irrigation-run";
import { localWords } from "#domain/mixing/local-words";
import { fitsInto, inParts, interleaved, type LawnsLoad, type LawnsPlaces, placedTogether } from "#domain/mixing/station-schedule";
import { searchSpan, type StaysDry, untilAllIsDown, type WateringNeed } from "#domain/mixing/watering-bounds";
import { hoursLeaveNoTime, noCommonTime, timeTooShort } from "#domain/mixing/watering-conflict";
import { hoursInTheWay, type WateringHours, withinWateringHours } from "#domain/mixing/watering-hours";
import { type Unplaced } from "#domain/mixing/watering-of-other-work";
import { membersOf, type TightestPair, tightestPair } from "#domain/mixing/watering-pair";
import { type UnitSystem } from "#domain/quantities/format-quantity";
import { type Span } from "#domain/weather/local-hours";

/** Lawns that are watered alike, with what their time hangs on. */
export interface WateringToPlace {
  readonly lawnNames: readonly string[];
  readonly products: readonly AppliedProduct[];
  readonly needs: readonly WateringNeed[];
  readonly dry: readonly StaysDry[];
  readonly runs: readonly StationRun[];
}

/** What is the same for all lawns of a property. */
export interface PlacesSetting {
  readonly visit: Span;
  readonly timeZone: string;
  readonly hours: WateringHours;
  readonly unitSystem: UnitSystem;
}

/** When lawns are watered, or that they can't be. Of several lawns that together leave too little time one has the finding. */
export type PlacedWatering = WateringPlaces | { readonly kind: "none"; readonly findings: readonly Finding[] };

/** The stretches in which lawns are watered. */
export interface WateringPlaces extends LawnsPlaces {
  readonly kind: "places";
  readonly dueAtEpochMilliseconds: number | null;
  /** From the first drop to the last where these lawns are watered alone; null where a station has no minutes. */
  readonly elapsedMinutes: number | null;
}

/** Lawns that have a time of their own, before the stations of other lawns are looked at. */
export interface Alone {
  readonly index: number;
  readonly watering: WateringToPlace;
  readonly places: WateringPlaces;
  readonly pair: TightestPair;
  readonly load: LawnsLoad;
}

/**
 * When each of several lawns of a property is watered: after what must stay dry on it, before what is due on it, within
 * the property's hours, and with no two stations of the property at one time. Stations without a test take time that
 * nobody knows: those that have minutes are placed, and the others are watered beside them.
 */
export function placeWaterings(all: readonly WateringToPlace[], setting: PlacesSetting): readonly PlacedWatering[] {
  const placed = all.map((watering, index) => placeAlone(watering, index, setting));
  const answers = placed.map((one): PlacedWatering => ("kind" in one ? { kind: "none", findings: [one.finding] } : one.places));
  const sharing = placed.flatMap((one) => ("kind" in one || one.load.runs.length === 0 ? [] : [one]));
  if (sharing.length > 1) for (const [index, answer] of placeBeside(sharing, setting)) answers[index] = answer;
  return answers;
}

function timedRuns(runs: readonly StationRun[]): readonly TimedRun[] {
  return runs.flatMap((run) => (run.kind === "run" ? [run] : []));
}

/** The time that the labels leave on lawns by themselves. Empty or turned where they leave none. */
function spanOf({ products, dry, needs }: WateringToPlace, { visit, timeZone }: PlacesSetting): Span {
  const pair = tightestPair(dry, needs);
  return searchSpan(untilAllIsDown(visit, products), { dryUntil: pair.dry?.untilEpochMilliseconds ?? null, dueAt: pair.due?.byEpochMilliseconds ?? null }, timeZone);
}

/** The time of lawns by themselves, whatever else runs on the property; or why there is none, and whose water it is about. */
export function placeAlone(watering: WateringToPlace, index: number, setting: PlacesSetting): Alone | Unplaced {
  const { timeZone, hours, unitSystem } = setting;
  const { dry, needs, runs } = watering;
  const pair = tightestPair(dry, needs);
  const dueAtEpochMilliseconds = pair.due?.byEpochMilliseconds ?? null;
  const none = (finding: Finding): Unplaced =>
    pair.due === undefined ? { kind: "none", of: "time", finding, waters: needs.map(({ applied }) => applied) } : { kind: "none", of: "time", finding, waters: [], dateOf: pair.due.applied };
  const span = spanOf(watering, setting);
  if (span.fromEpochMilliseconds >= span.untilEpochMilliseconds) return none(noCommonTime(pair, needs, { timeZone, unitSystem }));
  const timed = timedRuns(runs);
  const { starts, elapsedMinutes } = interleaved(timed);
  const stretches = withinWateringHours(span, hours, timeZone);
  const windows = stretches.filter((stretch) => fitsInto(elapsedMinutes, stretch));
  const isComplete = timed.length > 0 && timed.length === runs.length;
  const places = { kind: "places", windows, dueAtEpochMilliseconds, isWithOthers: false, elapsedMinutes: isComplete ? elapsedMinutes : null } as const;
  const alone = { index, watering, pair, load: { runs: timed, span } };
  if (windows.length > 0) return { ...alone, places: { ...places, parts: [], starts } };
  const parts = timed.length === 0 ? undefined : inParts(timed, stretches);
  if (parts !== undefined) return { ...alone, places: { ...places, parts, starts: [] } };
  const minutes = timed.length === 0 ? null : elapsedMinutes;
  const leaveTime = (some: WateringHours) => {
    const found = withinWateringHours(span, some, timeZone);
    return found.some((stretch) => fitsInto(elapsedMinutes, stretch)) || (timed.length > 0 && inParts(timed, found) !== undefined);
  };
  const finding =
    minutes !== null && !fitsInto(minutes, span)
      ? timeTooShort(pair, needs, { timeZone, elapsedMinutes: minutes })
      : hoursLeaveNoTime(pair, { inTheWay: hoursInTheWay(hours, leaveTime), onFile: hours }, needs, { timeZone, elapsedMinutes: minutes });
  return none(withFigure(finding, timed.length === 0 ? "" : untestedWords([watering])));
}

function withFigure(finding: Finding, words: string): Finding {
  return words === "" ? finding : { ...finding, figure: `${finding.figure ?? ""} ${words}`.trim() };
}

/** Minutes that nobody knows are not among those that were counted. */
function untestedWords(waterings: readonly WateringToPlace[]): string {
  const names = waterings.flatMap(({ runs }) => runs.flatMap(({ kind, stationName }) => (kind === "test-first" ? [stationName] : [])));
  return names.length === 0 ? "" : `The time for ${listWords(names)} is not known and comes on top.`;
}

type IndexedPlaces = readonly (readonly [number, PlacedWatering])[];

/** Lawns that each have a time, on the stretches of all of them. Where they do not fit, the first that are due and do not are held. */
function placeBeside(sharing: readonly Alone[], setting: PlacesSetting): IndexedPlaces {
  const [only, ...others] = sharing;
  if (only === undefined) return [];
  if (others.length === 0) return [[only.index, only.places]];
  const found = placesBeside(sharing, setting);
  if (found !== undefined) return found;
  const dueFirst = sharing.toSorted((one, other) => one.load.span.untilEpochMilliseconds - other.load.span.untilEpochMilliseconds);
  const count = dueFirst.findIndex((_, index) => index > 0 && placesBeside(dueFirst.slice(0, index + 1), setting) === undefined);
  const held = count < 0 ? dueFirst : dueFirst.slice(0, count + 1);
  const free = sharing.filter((one) => !held.includes(one));
  const first = Math.min(...held.map(({ index }) => index));
  const none = held.map(({ index }) => [index, { kind: "none", findings: index === first ? [lawnsLeaveNoTime(held, setting)] : [] }] as const);
  return [...none, ...placeBeside(free, setting)];
}

function placedWithin(loads: readonly LawnsLoad[], hours: WateringHours, timeZone: string): readonly LawnsPlaces[] | undefined {
  const hull = {
    fromEpochMilliseconds: Math.min(...loads.map(({ span }) => span.fromEpochMilliseconds)),
    untilEpochMilliseconds: Math.max(...loads.map(({ span }) => span.untilEpochMilliseconds)),
  };
  return placedTogether(loads, withinWateringHours(hull, hours, timeZone));
}

function placesBeside(sharing: readonly Alone[], { hours, timeZone }: PlacesSetting): IndexedPlaces | undefined {
  const found = placedWithin(sharing.map(({ load }) => load), hours, timeZone);
  if (found === undefined) return undefined;
  return sharing.flatMap(({ index, places }, at) => {
    const own = found[at];
    return own === undefined ? [] : [[index, { ...places, ...own }] as const];
  });
}

/**
 * What of this visit must stay dry the longest, where all that wants water is down already and would have its time together
 * if this visit put nothing down; else undefined.
 */
function ownDryInTheWay(held: readonly Alone[], setting: PlacesSetting): TightestPair["dry"] {
  if (held.some(({ watering: { needs } }) => needs.some(({ applied }) => !isOfOtherWork(applied)))) return undefined;
  const loads = held.map(({ watering, load: { runs } }): LawnsLoad => {
    const others = { ...watering, products: watering.products.filter(isOfOtherWork), dry: watering.dry.filter(({ applied }) => isOfOtherWork(applied)) };
    return { runs, span: spanOf(others, setting) };
  });
  if (placedWithin(loads, setting.hours, setting.timeZone) === undefined) return undefined;
  return tightestPair(held.flatMap(({ watering: { dry } }) => dry.filter(({ applied }) => !isOfOtherWork(applied))), []).dry;
}

/** The hold where each of several lawns could be watered, but not all of them with one station at a time. */
function lawnsLeaveNoTime(held: readonly Alone[], setting: PlacesSetting): Finding {
  const { hours, timeZone } = setting;
  const waterings = held.map(({ watering }) => watering);
  const needs = waterings.flatMap((watering) => watering.needs);
  const pair = { dry: ownDryInTheWay(held, setting), due: tightestPair([], needs).due };
  const context = { timeZone, elapsedMinutes: interleaved(held.flatMap(({ load: { runs } }) => runs)).elapsedMinutes };
  const leaveTime = (some: WateringHours) => placedWithin(held.map(({ load }) => load), some, timeZone) !== undefined;
  const isTooShort = !leaveTime({ localRules: "none", controller: "none" });
  const finding = isTooShort ? timeTooShort(pair, needs, context) : hoursLeaveNoTime(pair, { inTheWay: hoursInTheWay(hours, leaveTime), onFile: hours }, needs, context);
  const lawns = listWords(waterings.flatMap(({ lawnNames }) => lawnNames));
  const leaves = isTooShort ? "The labels leave" : "The hours in which this property may be watered leave";
  return {
    ...withFigure(finding, [...held.map((one) => shareWords(one, timeZone)), untestedWords(waterings)].filter((words) => words !== "").join(" ")),
    what: `${leaves} too little time for watering in ${lawns}, one station at a time.`,
    about: [...new Set([...membersOf(pair), ...needs].map(({ applied }) => applied.label.productName))],
  };
}

/** "Back: 60 min for Preem 0-0-7, from Friday, May 1, 2026, 4 pm until Saturday, May 2, 2026, 4 pm." */
function shareWords({ watering: { lawnNames, needs }, load: { runs, span }, places: { dueAtEpochMilliseconds: due } }: Alone, timeZone: string): string {
  const products = listWords([...new Set(needs.map(({ applied }) => applied.label.productName))]);
  const from = localWords(span.fromEpochMilliseconds, timeZone, "end");
  const until = due === null ? "" : ` until ${localWords(due, timeZone, "due")}`;
  return `${listWords(lawnNames)}: ${interleaved(runs).elapsedMinutes} min for ${products}, from ${from}${until}.`;
}
