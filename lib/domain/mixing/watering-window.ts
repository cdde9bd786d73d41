import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { canonicalAmountOf } from "#domain/quantities/exact-quantity";
import { type UnitSystem } from "#domain/quantities/format-quantity";
import { type WateringDepth } from "#domain/label/aftercare-constraint";
import { type AftercareEstimates } from "#domain/mixing/aftercare-instants";
import { type AftercareReason, inReasonOrder, reasonFor } from "#domain/mixing/aftercare-step";
import { type AppliedProduct, appliedName, constraintsOf } from "#domain/mixing/applied-product";
import { depthWords, exactText, irrigationRun, type IrrigationStation, type StationRun } from "#domain/mixing/irrigation-run";
import { searchSpan, type StaysDry, stayingDry, type WateringNeed, wateringNeeds } from "#domain/mixing/watering-bounds";
import { hoursLeaveNoTime, noCommonTime, tightestPair, timeTooShort } from "#domain/mixing/watering-conflict";
import { commonDepth } from "#domain/mixing/watering-depth";
import { unknownHours, type WateringHours, withinWateringHours } from "#domain/mixing/watering-hours";
import { type Span } from "#domain/weather/local-hours";

const ONE_MINUTE_MILLISECONDS = 60_000;

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

/** How the visit is watered in. Instants are epoch milliseconds, exact depths are text in 0.125 micrometers. */
export type WateringAnswer =
  | { readonly kind: "none-needed" }
  /** A fact is missing that the time hangs on; the findings say which. */
  | { readonly kind: "undecided" }
  /** No time or no depth serves all products; the findings say which two are at odds. */
  | { readonly kind: "no-window" }
  | {
      readonly kind: "window";
      /** Every stretch in which it may be done at one go, in order; once is enough. */
      readonly windows: readonly Span[];
      /** True where the start waits for a lawn that is only thought to be dry by then. */
      readonly isEstimate: boolean;
      readonly leastDepth: string | null;
      readonly mostDepth: string | null;
      readonly depthWords: string | null;
      readonly stations: readonly StationRun[];
      readonly elapsedMinutes: number | null;
      /** Whether rain of that depth does it too, for all products. */
      readonly rain: "counts" | "does-not-count" | "not-stated";
      readonly reasons: readonly AftercareReason[];
    };

/** The answer with what was found on the way. */
export interface JudgedWatering {
  readonly answer: WateringAnswer;
  readonly findings: readonly Finding[];
}

/**
 * When and how much to water so that every product's label is kept: after all that must stay dry, before the first due
 * time, within the property's watering hours, long enough for the stations one after another. Missing facts leave it
 * undecided; where nothing serves all, a hold names the two products. Refuses stations that can't be meant.
 */
export function judgeWatering(question: WateringQuestion): Outcome<JudgedWatering> {
  const { products, visit, timeZone } = question;
  const needs = wateringNeeds(products, visit, timeZone);
  const dry = stayingDry(products, question);
  const notes = overdueFindings(needs, timeZone);
  const missing = missingFindings(question, needs, dry);
  if (missing.length > 0) return accept({ answer: { kind: "undecided" }, findings: [...notes, ...missing] });
  if (products.some(isUnread)) return accept({ answer: { kind: "undecided" }, findings: notes });
  if (needs.length === 0) return accept({ answer: { kind: "none-needed" }, findings: notes });
  const depth = commonDepth(needs, question);
  if (depth.kind === "no-common-depth") {
    return accept({ answer: { kind: "no-window" }, findings: [...notes, depth.finding] });
  }
  const runs = depth.kind === "not-stated" ? accept([]) : stationRuns(question, depth.depth);
  if (!runs.ok) return runs;
  const judged = findWindows(question, { needs, dry, elapsedMinutes: elapsedOf(runs.value) });
  if (judged.finding !== undefined) {
    return accept({ answer: { kind: "no-window" }, findings: [...notes, judged.finding] });
  }
  const stated = depth.kind === "depth" ? depth.depth : undefined;
  const answer = windowAnswer({ question, needs, dry, windows: judged.windows, depth: stated, runs: runs.value });
  return accept({ answer, findings: notes });
}

/** A watering fact that nobody read leaves the time undecided; the hold for it is that of all unread facts. */
function isUnread({ label, wateredInAtEpochMilliseconds: at }: AppliedProduct): boolean {
  const isWateringInUnread = label.facts["watering-in"] === "unknown" && typeof at !== "number";
  return label.facts["watering-not-before"] === "unknown" || isWateringInUnread;
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

/** All stations one after another, or null where one has no minutes. */
function elapsedOf(runs: readonly StationRun[]): number | null {
  const minutes = runs.flatMap((run) => (run.kind === "run" ? [run.elapsedMinutes] : []));
  return minutes.length === 0 || minutes.length < runs.length ? null : minutes.reduce((total, one) => total + one, 0);
}

interface WindowBounds {
  readonly needs: readonly WateringNeed[];
  readonly dry: readonly StaysDry[];
  readonly elapsedMinutes: number | null;
}

function findWindows(
  { visit, timeZone, hours }: WateringQuestion,
  { needs, dry, elapsedMinutes }: WindowBounds,
): { readonly windows: readonly Span[]; readonly finding?: Finding } {
  const search = searchSpan(visit, timeZone);
  const pair = tightestPair(dry, needs);
  const fromEpochMilliseconds = Math.max(search.fromEpochMilliseconds, pair.dry?.untilEpochMilliseconds ?? 0);
  const dueAt = pair.due?.byEpochMilliseconds ?? Infinity;
  if (fromEpochMilliseconds >= dueAt) return { windows: [], finding: noCommonTime(pair, timeZone) };
  const untilEpochMilliseconds = Math.min(dueAt, search.untilEpochMilliseconds);
  const leastMilliseconds = (elapsedMinutes ?? 0) * ONE_MINUTE_MILLISECONDS;
  if (elapsedMinutes !== null && untilEpochMilliseconds - fromEpochMilliseconds < leastMilliseconds) {
    return { windows: [], finding: timeTooShort(pair, { timeZone, elapsedMinutes }) };
  }
  const windows = withinWateringHours({ fromEpochMilliseconds, untilEpochMilliseconds }, hours, timeZone).filter(
    (span) => span.untilEpochMilliseconds - span.fromEpochMilliseconds >= leastMilliseconds,
  );
  if (windows.length > 0) return { windows };
  return { windows: [], finding: hoursLeaveNoTime(pair, hours, needs, { timeZone, elapsedMinutes }) };
}

interface FoundWindows {
  readonly question: WateringQuestion;
  readonly needs: readonly WateringNeed[];
  readonly dry: readonly StaysDry[];
  readonly windows: readonly Span[];
  readonly depth: WateringDepth | undefined;
  readonly runs: readonly StationRun[];
}

function windowAnswer({ question, needs, dry, windows, depth, runs }: FoundWindows): WateringAnswer {
  const rains = needs.map(({ constraint }) => constraint.rain);
  const { timeZone, unitSystem } = question;
  const decisive = dry.filter(({ end }) => (end.atEpochMilliseconds ?? 0) > question.visit.untilEpochMilliseconds);
  return {
    kind: "window",
    windows,
    isEstimate: decisive.some(({ end }) => end.isEstimate),
    leastDepth: depth === undefined ? null : exactText(canonicalAmountOf(depth.least)),
    mostDepth: depth === undefined || depth.most === "none" ? null : exactText(canonicalAmountOf(depth.most)),
    depthWords: depth === undefined ? null : depthWords(depth.least, unitSystem),
    stations: runs,
    elapsedMinutes: elapsedOf(runs),
    rain: rainOf(rains),
    reasons: inReasonOrder(
      [...needs, ...decisive].map(({ applied, constraint }) => reasonFor(appliedName(applied, timeZone), constraint)),
    ),
  };
}

function rainOf(rains: readonly ("counts" | "does-not-count" | "not-stated")[]): "counts" | "does-not-count" | "not-stated" {
  if (rains.includes("does-not-count")) return "does-not-count";
  return rains.every((rain) => rain === "counts") ? "counts" : "not-stated";
}
