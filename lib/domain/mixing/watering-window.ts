import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { canonicalAmountOf, compareExact, type Measure } from "#domain/quantities/exact-quantity";
import { type UnitSystem } from "#domain/quantities/format-quantity";
import { type WateringDepth } from "#domain/label/aftercare-constraint";
import { type AftercareEstimates } from "#domain/mixing/aftercare-instants";
import { type AftercareReason, inReasonOrder, reasonFor } from "#domain/mixing/aftercare-step";
import { type AppliedProduct, appliedName, constraintsOf, isOfOtherWork } from "#domain/mixing/applied-product";
import { depthFrom, depthWords, exactText, irrigationRun, type IrrigationStation, type StationRun, type TimedRun } from "#domain/mixing/irrigation-run";
import { type SpoilingRain, spoilingRain } from "#domain/mixing/rain-aftercare";
import { fitsInto, inParts, interleaved, type StationSchedule, type StationStart, type WateringPart } from "#domain/mixing/station-schedule";
import { type LostWater, settleOtherWork, type Unplaced } from "#domain/mixing/watering-of-other-work";
import { keptDryForRain, searchSpan, type StaysDry, stayingDry, untilAllIsDown, type WateringNeed, wateringNeeds } from "#domain/mixing/watering-bounds";
import { hoursLeaveNoTime, minutesKeepNoDepth, noCommonTime, tightestPair, timeTooShort } from "#domain/mixing/watering-conflict";
import { commonDepth } from "#domain/mixing/watering-depth";
import { authoritiesOfHours, hoursInTheWay, unknownHours, type WateringHours, withinWateringHours } from "#domain/mixing/watering-hours";
import { type Span } from "#domain/weather/local-hours";

/** What the watering of a visit hangs on. */
export interface WateringQuestion {
  readonly products: readonly AppliedProduct[];
  readonly visit: Span;
  readonly timeZone: string;
  readonly estimates: AftercareEstimates;
  readonly hours: WateringHours;
  readonly stations: readonly IrrigationStation[];
  readonly unitSystem: UnitSystem;
}

/**
 * How the visit is watered in. Instants are epoch milliseconds, exact depths are text in 0.125 micrometers. Mix tickets
 * keep it: what may be missing is missing in those that were issued before it was said.
 */
export type WateringAnswer =
  | { readonly kind: "none-needed" }
  /** A fact is missing that the time hangs on; the findings say which. */
  | { readonly kind: "undecided" }
  /** No time or no depth serves all products; the findings say which two are at odds. */
  | { readonly kind: "no-window" }
  | {
      readonly kind: "window";
      /** Every stretch in which it may be done at one go, in order; once is enough. None where it takes several. */
      readonly windows: readonly Span[];
      /** The stretches of several days, with whole stations in each, where none is long enough for all; else none. */
      readonly parts?: readonly WateringPart[];
      /** The runs of all stations at one go, one station at a time; none where a station has no minutes, or where it takes several parts. */
      readonly starts?: readonly StationStart[];
      /** The first date that a label sets; null where none does, or only one that has passed. */
      readonly dueAtEpochMilliseconds?: number | null;
      /** Whether a label's date has passed. */
      readonly isOverdue?: boolean;
      /** Whether any hours are on file that limit when water may run. */
      readonly hasHours?: boolean;
      /** True where the start waits for a lawn that is only thought to be dry by then. */
      readonly isEstimate: boolean;
      readonly leastDepth: string | null;
      readonly mostDepth: string | null;
      readonly depthWords: string | null;
      readonly stations: readonly StationRun[];
      readonly elapsedMinutes: number | null;
      /** Whether rain of that depth does it too, for all products; it may still spoil one of them while the water waits. */
      readonly rain: "counts" | "does-not-count" | "not-stated" | "may-spoil";
      /** The depths that water must stay under so as not to spoil a product, where no label says how much is put down. */
      readonly stayUnder?: readonly string[];
      readonly reasons: readonly AftercareReason[];
    };

/** The times in which a visit is watered in. */
export type WateringWindow = Extract<WateringAnswer, { readonly kind: "window" }>;

/** The answer with what was found on the way. */
export interface JudgedWatering {
  readonly answer: WateringAnswer;
  readonly findings: readonly Finding[];
  /** What water is kept off for: first what the labels say of water, then what rain would spoil. */
  readonly dry: readonly StaysDry[];
  /** What other work put down and can't be watered in as its label asks any more, whatever this visit does. */
  readonly lostToOthers: readonly LostWater[];
}

/**
 * When and how much to water so that every product's label is kept: after all that must stay dry, or that as much rain
 * would spoil, before the first due time, within the property's watering hours, long enough for the stations one at a
 * time; whole stations on different days where no stretch is long enough for all. Missing facts leave it undecided;
 * where nothing serves all, a hold names what is at odds. What was put down by other work and is at odds by itself already
 * wants care, and waits for water as what is late does, so that it holds up nothing of this visit. Refuses stations as irrigationRun refuses them.
 */
export function judgeWatering(question: WateringQuestion): Outcome<JudgedWatering> {
  const { products, visit, timeZone } = question;
  const wanted = wateringNeeds(products, visit, timeZone);
  const labelDry = stayingDry(products, question);
  const notes = overdueFindings(wanted, timeZone);
  const judged = (answer: WateringAnswer, findings: readonly Finding[], dry = dryUnder("not-known", question), lostToOthers: readonly LostWater[] = []) =>
    accept({ answer, findings: [...notes, ...findings], dry, lostToOthers });
  const missing = missingFindings(question, wanted, labelDry);
  if (missing.length > 0) return judged({ kind: "undecided" }, missing);
  if (products.some((applied) => isUnread(applied, wanted))) return judged({ kind: "undecided" }, []);
  if (wanted.length === 0) return judged({ kind: "none-needed" }, []);
  const others = { ...question, products: products.filter((applied) => isOfOtherWork(applied)) };
  const settled = settleOtherWork(wanted, (needs) => place(others, needs));
  if (!settled.ok) return settled;
  const { needs, findings, lost } = settled.value;
  if (needs.length === 0) return judged({ kind: "no-window" }, findings, undefined, lost);
  const placed = place(question, needs);
  if (!placed.ok) return placed;
  const { dry } = placed.value;
  if (placed.value.kind === "none") return judged({ kind: "no-window" }, [...findings, placed.value.finding], dry, lost);
  return judged(windowAnswer(placed.value), findings, dry, lost);
}

function dryUnder(water: Measure<"length"> | "not-known", { products, ...context }: WateringQuestion): readonly StaysDry[] {
  return [...stayingDry(products, context), ...keptDryForRain(products, water, context.timeZone)];
}

/** Where some products' water can run, or what is at odds and whose water it was about. */
function place(question: WateringQuestion, needs: readonly WateringNeed[]): Outcome<FoundPlaces | (Unplaced & { readonly dry: readonly StaysDry[] })> {
  const depth = commonDepth(needs, question);
  if (depth.kind === "no-common-depth") return accept({ kind: "none", finding: depth.finding, waters: [depth.thirstiest.applied], dry: dryUnder("not-known", question) });
  const stated = depth.kind === "depth" ? depth.depth : undefined;
  const runs = stated === undefined ? accept([]) : stationRuns(question, stated);
  if (!runs.ok) return runs;
  const dry = dryUnder(stated === undefined ? "not-known" : mostPutDown(stated, runs.value), question);
  const [unreachable] = minutesKeepNoDepth(runs.value, needs);
  if (unreachable !== undefined) {
    const waters = needs.flatMap(({ applied, constraint }) => (constraint.depth === "not-stated" ? [] : [applied]));
    return accept({ kind: "none", finding: unreachable, waters, dry });
  }
  const places = findPlaces(question, { needs, dry, runs: runs.value });
  if (places.kind === "none") return accept({ ...places, dry });
  return accept({ kind: "found", question, needs, dry, places, depth: stated, runs: runs.value });
}

/** What the thirstiest station puts down in its whole minutes, and the least depth itself where none has minutes. */
function mostPutDown({ least }: WateringDepth, runs: readonly StationRun[]): Measure<"length"> {
  const reached = runs.flatMap((run) => (run.kind === "run" ? [depthFrom(run.depthReached)] : []));
  return reached.reduce<Measure<"length">>((most, one) => (compareExact(one, most) > 0 ? one : most), least);
}

/**
 * A watering fact that nobody read leaves the time undecided, and so does rain that spoils where anything wants water;
 * the hold for it is that of all unread facts.
 */
function isUnread({ label, wateredInAtEpochMilliseconds: at }: AppliedProduct, needs: readonly WateringNeed[]): boolean {
  const isWateringInUnread = label.facts["watering-in"] === "unknown" && typeof at !== "number";
  const isRainUnread = label.facts["rain-that-spoils"] === "unknown" && needs.length > 0;
  return label.facts["watering-not-before"] === "unknown" || isWateringInUnread || isRainUnread;
}

function overdueFindings(needs: readonly WateringNeed[], timeZone: string): readonly Finding[] {
  return needs
    .filter(({ isOverdue }) => isOverdue)
    .map(({ applied, constraint }) =>
      takeCare({
        rule: "watering-in-overdue",
        source: constraint.basis,
        what: `${appliedName(applied, timeZone)} was to be watered in before this visit, and nobody has said that it was.`,
        toDo: "Ask the customer, and have it watered in as soon as the other products allow.",
        citation: constraint.source,
        about: [applied.label.productName],
      }),
    );
}

function missingFindings(
  { products, hours, timeZone }: WateringQuestion,
  needs: readonly WateringNeed[],
  dry: readonly StaysDry[],
): readonly Finding[] {
  const unsaid = constraintsOf(
    products.filter(({ wateredInAtEpochMilliseconds: at }) => at === "unknown"),
    "watering-in",
  ).map(({ applied }) =>
    hold("office", {
      rule: "watered-in-not-known",
      source: "house",
      what: `It is not on file whether ${appliedName(applied, timeZone)} has been watered in.`,
      toDo: "Ask the customer and put it on file.",
      about: [applied.label.productName],
    }),
  );
  if (needs.length === 0) return unsaid;
  const unguessed = dry
    .filter(({ end }) => end.atEpochMilliseconds === null)
    .map(({ applied, constraint }) =>
      hold("office", {
        rule: "drying-estimate-missing",
        source: "house",
        what: `${appliedName(applied, timeZone)} must not be watered until dry, and no estimate of that is on file.`,
        toDo: "Put an estimate of the drying time on file.",
        citation: constraint.source,
        about: [applied.label.productName],
      }),
    );
  return [...unsaid, ...unguessed, ...unknownHours(hours)];
}

const NO_STATION: IrrigationStation = { stationName: "Sprinkler or hose", depthPerHour: "not-tested", cycle: "none" };

function stationRuns({ stations, unitSystem }: WateringQuestion, depth: WateringDepth): Outcome<readonly StationRun[]> {
  const runs: StationRun[] = [];
  for (const station of stations.length === 0 ? [NO_STATION] : stations) {
    const run = irrigationRun(station, depth, unitSystem);
    if (!run.ok) return run;
    runs.push(run.value);
  }
  return accept(runs);
}

/** The minutes of all stations, or null where one has none or no depth is stated. */
function timedRuns(runs: readonly StationRun[]): readonly TimedRun[] | null {
  const timed = runs.flatMap((run) => (run.kind === "run" ? [run] : []));
  return timed.length === 0 || timed.length < runs.length ? null : timed;
}

interface PlaceBounds {
  readonly needs: readonly WateringNeed[];
  readonly dry: readonly StaysDry[];
  readonly runs: readonly StationRun[];
}

interface Places {
  readonly kind: "places";
  readonly windows: readonly Span[];
  readonly parts: readonly WateringPart[];
  readonly schedule: StationSchedule | null;
  readonly dueAtEpochMilliseconds: number | null;
}

function findPlaces({ products, visit, timeZone, hours }: WateringQuestion, { needs, dry, runs }: PlaceBounds): Places | Unplaced {
  const pair = tightestPair(dry, needs);
  const dueAtEpochMilliseconds = pair.due?.byEpochMilliseconds ?? null;
  const none = (finding: Finding): Unplaced =>
    pair.due === undefined ? { kind: "none", finding, waters: needs.map(({ applied }) => applied) } : { kind: "none", finding, waters: [], dateOf: pair.due.applied };
  const span = searchSpan(untilAllIsDown(visit, products), { dryUntil: pair.dry?.untilEpochMilliseconds ?? null, dueAt: dueAtEpochMilliseconds }, timeZone);
  if (span.fromEpochMilliseconds >= span.untilEpochMilliseconds) return none(noCommonTime(pair, timeZone));
  const timed = timedRuns(runs);
  const schedule = timed === null ? null : interleaved(timed);
  const elapsedMinutes = schedule?.elapsedMinutes ?? null;
  const stretches = withinWateringHours(span, hours, timeZone);
  const windows = stretches.filter((stretch) => fitsInto(elapsedMinutes ?? 0, stretch));
  const places = { kind: "places", windows, schedule, dueAtEpochMilliseconds } as const;
  if (windows.length > 0) return { ...places, parts: [] };
  const parts = timed === null ? undefined : inParts(timed, stretches);
  if (parts !== undefined) return { ...places, parts };
  const isTooShort = elapsedMinutes !== null && !fitsInto(elapsedMinutes, span);
  const leaveTime = (some: WateringHours) => {
    const found = withinWateringHours(span, some, timeZone);
    return found.some((stretch) => fitsInto(elapsedMinutes ?? 0, stretch)) || (timed !== null && inParts(timed, found) !== undefined);
  };
  return none(
    isTooShort
      ? timeTooShort(pair, needs, { timeZone, elapsedMinutes })
      : hoursLeaveNoTime(pair, hoursInTheWay(hours, leaveTime), needs, { timeZone, elapsedMinutes }),
  );
}

interface FoundPlaces {
  readonly kind: "found";
  readonly question: WateringQuestion;
  readonly needs: readonly WateringNeed[];
  readonly dry: readonly StaysDry[];
  readonly places: Places;
  readonly depth: WateringDepth | undefined;
  readonly runs: readonly StationRun[];
}

function windowAnswer({ question, needs, dry, places, depth, runs }: FoundPlaces): WateringAnswer {
  const { timeZone, unitSystem, products, visit, hours } = question;
  const { windows, parts, schedule, dueAtEpochMilliseconds } = places;
  const decisive = dry.filter(({ end }) => (end.atEpochMilliseconds ?? 0) > visit.untilEpochMilliseconds);
  const startsAt = [...windows, ...parts][0]?.fromEpochMilliseconds ?? visit.untilEpochMilliseconds;
  const spoiling = spoilingRain(products, { epochMilliseconds: startsAt, timeZone, unitSystem });
  return {
    kind: "window",
    windows,
    parts,
    starts: parts.length > 0 ? [] : (schedule?.starts ?? []),
    dueAtEpochMilliseconds,
    isOverdue: needs.some(({ isOverdue }) => isOverdue),
    hasHours: authoritiesOfHours(hours).length > 0,
    isEstimate: decisive.some(({ end }) => end.isEstimate),
    leastDepth: depth === undefined ? null : exactText(canonicalAmountOf(depth.least)),
    mostDepth: depth === undefined || depth.most === "none" ? null : exactText(canonicalAmountOf(depth.most)),
    depthWords: depth === undefined ? null : depthWords(depth.least, unitSystem),
    stations: runs,
    elapsedMinutes: schedule?.elapsedMinutes ?? null,
    rain: rainOf(needs, spoiling),
    stayUnder: depth === undefined ? spoiling.map(({ words }) => words) : [],
    reasons: inReasonOrder(
      [...needs, ...decisive].map(({ applied, constraint }) => reasonFor(appliedName(applied, timeZone), constraint)),
    ),
  };
}

/** What the labels say of rain. Where it would do for all and could still spoil one, nobody is told to wait for it. */
function rainOf(needs: readonly WateringNeed[], spoiling: readonly SpoilingRain[]): WateringWindow["rain"] {
  const rains = needs.map(({ constraint }) => constraint.rain);
  if (rains.includes("does-not-count")) return "does-not-count";
  if (!rains.every((rain) => rain === "counts")) return "not-stated";
  return spoiling.length > 0 ? "may-spoil" : "counts";
}
