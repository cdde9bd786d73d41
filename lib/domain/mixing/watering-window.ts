import { type Finding } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { canonicalAmountOf, compareExact, type Measure } from "#domain/quantities/exact-quantity";
import { type UnitSystem } from "#domain/quantities/format-quantity";
import { type WateringDepth } from "#domain/label/aftercare-constraint";
import { type AftercareEstimates } from "#domain/mixing/aftercare-instants";
import { type AftercareReason, inReasonOrder, reasonFor } from "#domain/mixing/aftercare-step";
import { type AppliedProduct, appliedName, isOfOtherWork } from "#domain/mixing/applied-product";
import { depthFrom, depthWords, exactText, irrigationRun, type IrrigationStation, type StationRun } from "#domain/mixing/irrigation-run";
import { type SpoilingRain, spoilingRain } from "#domain/mixing/rain-aftercare";
import { type StationStart, type WateringPart } from "#domain/mixing/station-schedule";
import { type LostWater, settleOtherWork, type Unplaced } from "#domain/mixing/watering-of-other-work";
import { keptDryForRain, rainKeepsOffUntil, type StaysDry, stayingDry, type WateringNeed, wateringNeeds } from "#domain/mixing/watering-bounds";
import { minutesKeepNoDepth } from "#domain/mixing/watering-conflict";
import { commonDepth } from "#domain/mixing/watering-depth";
import { isUnread, missingFindings, overdueFindings } from "#domain/mixing/watering-facts";
import { authoritiesOfHours, hoursTogetherWords, type WateringHours } from "#domain/mixing/watering-hours";
import { placeAlone, placeWaterings, type PlacedWatering, type WateringPlaces, type WateringToPlace } from "#domain/mixing/watering-places";
import { type ReachedLawns, type SharedWater } from "#domain/mixing/watering-shared";
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
      /**
       * The runs of all stations that have minutes in the first of the windows, one station at a time, counted from its first
       * whole minute; none where it takes several parts.
       */
      readonly starts?: readonly StationStart[];
      /** Whether stations of other lawns run in the same stretch: then the runs leave room for those. */
      readonly isWithOthers?: boolean;
      /** Stations that water other lawns of the visit too, whose steps name them as well. */
      readonly alsoWaters?: readonly ReachedLawns[];
      /** The first date that a label sets; null where none does, or only one that has passed. */
      readonly dueAtEpochMilliseconds?: number | null;
      /** What of these times other work sets, which this visit's hour does not move: the last dry time, and the first date. */
      readonly ofOtherWork?: { readonly dryUntilEpochMilliseconds: number | null; readonly dueAtEpochMilliseconds: number | null };
      /** Whether a label's date has passed. */
      readonly isOverdue?: boolean;
      /** Whether any hours are on file that limit when water may run. */
      readonly hasHours?: boolean;
      /** Those hours as a customer is told them; empty where there are none. */
      readonly hoursInWords?: string;
      /** True where the start waits for a lawn that is only thought to be dry by then, and for nothing that is stated. */
      readonly isEstimate: boolean;
      readonly leastDepth: string | null;
      /** Whose label asks for that depth: others ask for less, or state none. */
      readonly leastDepthOf?: readonly string[];
      readonly mostDepth: string | null;
      readonly depthWords: string | null;
      readonly stations: readonly StationRun[];
      readonly elapsedMinutes: number | null;
      /** Whether rain of that depth does it too, for all products; it may still spoil one of them while the water waits. */
      readonly rain: "counts" | "does-not-count" | "not-stated" | "may-spoil";
      /** From when on rain that counts does it: from the end of the work, or from when it spoils no product any more. */
      readonly rainFrom?: { readonly epochMilliseconds: number; readonly isEndOfWork: boolean };
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
  /** The most water that any station puts down at one watering, where it is known how much is wanted. */
  readonly water: WaterPutDown;
  /** What other lawns ask of the stations that these share with them. Left out where they share none. */
  readonly shared?: SharedWater;
  /** Where only a controller leaves no time: the times in which it may be done by hand, and what still has none. */
  readonly byHand?: { readonly answer: WateringWindow; readonly lostToOthers: readonly LostWater[] };
}

type WaterPutDown = Measure<"length"> | "not-known";

/** Lawns that are watered alike, by their names. */
export interface LawnsToWater extends WateringQuestion {
  readonly lawnNames: readonly string[];
}

/**
 * When and how much to water so that every product's label is kept: after all that must stay dry, or that as much rain
 * would spoil, before the first due time, within the property's watering hours, long enough for the stations one at a
 * time; whole stations on different days where no stretch is long enough for all. Missing facts leave it undecided;
 * where nothing serves all, a hold names what is at odds. What was put down by other work and is at odds by itself already
 * wants care, and waits for water as what is late does, so that it holds up nothing of this visit. Refuses stations as irrigationRun refuses them.
 */
export function judgeWatering(question: WateringQuestion): Outcome<JudgedWatering> {
  const judged = judgeWaterings([{ ...question, lawnNames: [] }]);
  if (!judged.ok) return judged;
  const [only] = judged.value;
  if (only === undefined) throw new Error("One watering was asked for and none was judged.");
  return accept(only);
}

/**
 * The same for several lawns of one property, in their order. One station of the property runs at a time, whichever lawn
 * it waters; where that leaves too little time, a hold names the lawns and stands with the first of them. No station may
 * be asked for twice.
 */
export function judgeWaterings(questions: readonly LawnsToWater[]): Outcome<readonly JudgedWatering[]> {
  const asked: (JudgedWatering | WantedWater)[] = [];
  for (const question of questions) {
    const one = wantedWater(question);
    if (!one.ok) return one;
    asked.push(one.value);
  }
  const wanted = asked.flatMap((one) => ("runs" in one ? [one] : []));
  const [first] = wanted;
  if (first === undefined) return accept(asked.flatMap((one) => ("runs" in one ? [] : [one])));
  const places = placeWaterings(wanted, first.question);
  const placedOf = new Map(wanted.map((one, index) => [one, places[index]]));
  return accept(asked.map((one) => ("runs" in one ? placedAnswer(one, placedOf.get(one)) : one)));
}

/** Water that is wanted, before its time is looked for. */
interface WaterToPlace extends WateringToPlace {
  readonly kind: "to-place";
  readonly question: LawnsToWater;
  readonly water: WaterPutDown;
  readonly depth: WateringDepth | undefined;
}

/** The same with what was found and let go on the way. */
interface WantedWater extends WaterToPlace {
  readonly notes: readonly Finding[];
  readonly lostToOthers: readonly LostWater[];
}

/** What must stay dry, where one watering puts down so much: by what the labels say of water and of rain. */
export function keptDry(products: readonly AppliedProduct[], water: WaterPutDown, context: Pick<WateringQuestion, "timeZone" | "estimates">): readonly StaysDry[] {
  return [...stayingDry(products, context), ...keptDryForRain(products, water, context.timeZone)];
}

function wantedWater(question: LawnsToWater): Outcome<JudgedWatering | WantedWater> {
  const { products, visit, timeZone } = question;
  const wanted = wateringNeeds(products, visit, timeZone);
  const notes = overdueFindings(wanted, timeZone);
  const labelDry = stayingDry(products, question);
  const judged = (answer: WateringAnswer, findings: readonly Finding[], water: WaterPutDown = "not-known", lostToOthers: readonly LostWater[] = []) =>
    accept({ answer, findings: [...notes, ...findings], dry: [...labelDry, ...keptDryForRain(products, water, timeZone)], water, lostToOthers });
  const missing = missingFindings(question, wanted, labelDry);
  if (missing.length > 0) return judged({ kind: "undecided" }, missing);
  if (products.some((applied) => isUnread(applied, wanted))) return judged({ kind: "undecided" }, []);
  if (wanted.length === 0) return judged({ kind: "none-needed" }, []);
  const others = { ...question, products: products.filter((applied) => isOfOtherWork(applied)) };
  const settled = settleOtherWork(wanted, (needs) => placeOf(others, needs), timeZone);
  if (!settled.ok) return settled;
  const { needs, findings, lost } = settled.value;
  if (needs.length === 0) return judged({ kind: "no-window" }, findings, undefined, lost);
  const asked = waterFor(question, needs, labelDry);
  if (!asked.ok) return asked;
  if (asked.value.kind === "none") return judged({ kind: "no-window" }, [...findings, asked.value.finding], asked.value.water, lost);
  return accept({ ...asked.value, notes: [...notes, ...findings], lostToOthers: lost });
}

/** How much some products' water is, over which stations; or what is at odds about it and whose water that is. */
function waterFor(question: LawnsToWater, needs: readonly WateringNeed[], labelDry: readonly StaysDry[]): Outcome<WaterToPlace | (Unplaced & { readonly water: WaterPutDown })> {
  const { products, lawnNames } = question;
  const common = commonDepth(needs, question);
  if (common.kind === "no-common-depth") return accept({ kind: "none", of: "depth", finding: common.finding, waters: [common.thirstiest.applied], water: "not-known" });
  const depth = common.kind === "depth" ? common.depth : undefined;
  const runs = depth === undefined ? accept([]) : stationRuns(question, depth);
  if (!runs.ok) return runs;
  const water = depth === undefined ? "not-known" : mostPutDown(depth, runs.value);
  const [unreachable] = minutesKeepNoDepth(runs.value, needs);
  if (unreachable !== undefined) {
    const waters = needs.flatMap(({ applied, constraint }) => (constraint.depth === "not-stated" ? [] : [applied]));
    return accept({ kind: "none", of: "minutes", finding: unreachable, waters, water });
  }
  return accept({ kind: "to-place", question, lawnNames, products, needs, dry: [...labelDry, ...keptDryForRain(products, water, question.timeZone)], water, depth, runs: runs.value });
}

/** Whether there is a time for some products' water, whatever else runs on the property. */
function placeOf(question: LawnsToWater, needs: readonly WateringNeed[]): Outcome<{ readonly kind: "found" } | Unplaced> {
  const asked = waterFor(question, needs, stayingDry(question.products, question));
  if (!asked.ok) return asked;
  if (asked.value.kind === "none") return accept(asked.value);
  const alone = placeAlone(asked.value, 0, question);
  return accept("kind" in alone ? alone : { kind: "found" });
}

function placedAnswer(wanted: WantedWater, places: PlacedWatering | undefined): JudgedWatering {
  const { notes, dry, water, lostToOthers } = wanted;
  if (places === undefined) throw new Error("A time was looked for, and neither found nor missed.");
  if (places.kind === "none") return { answer: { kind: "no-window" }, findings: [...notes, ...places.findings], dry, water, lostToOthers };
  return { answer: windowAnswer(wanted, places), findings: notes, dry, water, lostToOthers };
}

/** What the thirstiest station puts down in its whole minutes, and the least depth itself where none has minutes. */
function mostPutDown({ least }: WateringDepth, runs: readonly StationRun[]): Measure<"length"> {
  const reached = runs.flatMap((run) => (run.kind === "run" ? [depthFrom(run.depthReached)] : []));
  return reached.reduce<Measure<"length">>((most, one) => (compareExact(one, most) > 0 ? one : most), least);
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

function windowAnswer({ question, needs, dry, depth, runs }: WantedWater, places: WateringPlaces): WateringAnswer {
  const { timeZone, unitSystem, products, visit, hours } = question;
  const { windows, parts, starts, isWithOthers, dueAtEpochMilliseconds, elapsedMinutes } = places;
  const decisive = dry.filter(({ end }) => (end.atEpochMilliseconds ?? 0) > visit.untilEpochMilliseconds);
  const startsAt = [...windows, ...parts][0]?.fromEpochMilliseconds ?? visit.untilEpochMilliseconds;
  const spoiling = spoilingRain(products, { epochMilliseconds: startsAt, timeZone, unitSystem });
  const lastDry = decisive.filter(({ end }) => end.atEpochMilliseconds === startsAt);
  const rain = rainOf(needs, spoiling);
  return {
    kind: "window",
    windows,
    parts,
    starts,
    isWithOthers,
    dueAtEpochMilliseconds,
    ofOtherWork: timesOfOtherWork(needs, decisive),
    isOverdue: needs.some(({ isOverdue }) => isOverdue),
    hasHours: authoritiesOfHours(hours).length > 0,
    hoursInWords: hoursTogetherWords(hours),
    isEstimate: lastDry.length > 0 && lastDry.every(({ end }) => end.isEstimate),
    leastDepth: depth === undefined ? null : exactText(canonicalAmountOf(depth.least)),
    leastDepthOf: depth === undefined ? [] : leastDepthOf(needs, depth, timeZone),
    mostDepth: depth === undefined || depth.most === "none" ? null : exactText(canonicalAmountOf(depth.most)),
    depthWords: depth === undefined ? null : depthWords(depth.least, unitSystem),
    stations: runs,
    elapsedMinutes,
    rain,
    ...(rain === "counts" ? { rainFrom: rainFromOf(products, visit, timeZone) } : {}),
    stayUnder: depth === undefined ? spoiling.map(({ words }) => words) : [],
    reasons: inReasonOrder(
      [...needs, ...decisive].map(({ applied, constraint }) => reasonFor(appliedName(applied, timeZone), constraint)),
    ),
  };
}

function timesOfOtherWork(needs: readonly WateringNeed[], dry: readonly StaysDry[]): NonNullable<WateringWindow["ofOtherWork"]> {
  const dryEnds = dry.flatMap(({ applied, end }) => (isOfOtherWork(applied) ? (end.atEpochMilliseconds ?? []) : []));
  const dues = needs.flatMap(({ applied, dueAtEpochMilliseconds: due }) => (isOfOtherWork(applied) ? (due ?? []) : []));
  return { dryUntilEpochMilliseconds: dryEnds.length === 0 ? null : Math.max(...dryEnds), dueAtEpochMilliseconds: dues.length === 0 ? null : Math.min(...dues) };
}

function leastDepthOf(needs: readonly WateringNeed[], { least }: WateringDepth, timeZone: string): readonly string[] {
  const deepest = needs.filter(({ constraint: { depth } }) => depth !== "not-stated" && compareExact(depth.least, least) === 0);
  return [...new Set(deepest.map(({ applied }) => appliedName(applied, timeZone)))].toSorted();
}

function rainFromOf(products: readonly AppliedProduct[], { untilEpochMilliseconds: workEnds }: Span, timeZone: string): NonNullable<WateringWindow["rainFrom"]> {
  const keptOff = rainKeepsOffUntil(products, timeZone);
  const isEndOfWork = keptOff === null || keptOff <= workEnds;
  return { epochMilliseconds: isEndOfWork ? workEnds : keptOff, isEndOfWork };
}

/** What the labels say of rain. Where it would do for all and could still spoil one, nobody is told to wait for it. */
function rainOf(needs: readonly WateringNeed[], spoiling: readonly SpoilingRain[]): WateringWindow["rain"] {
  const rains = needs.map(({ constraint }) => constraint.rain);
  if (rains.includes("does-not-count")) return "does-not-count";
  if (!rains.every((rain) => rain === "counts")) return "not-stated";
  return spoiling.length > 0 ? "may-spoil" : "counts";
}
