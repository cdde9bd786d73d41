import { type LimitBasis } from "#domain/weather/spray-limits";
import { type AftercareKind, type StatedConstraint } from "#domain/label/aftercare-constraint";
import { type AftercareEnd, latestEnd } from "#domain/mixing/aftercare-instants";
import { localWords } from "#domain/mixing/local-words";

/** What a step concerns, in the order in which rows are drawn. */
export const AFTERCARE_ROWS = ["people-and-pets", "watering", "mowing", "seeding", "sign"] as const;
export type AftercareRowName = (typeof AFTERCARE_ROWS)[number];

/** Why a step stands there: a product, and the words that ask for it. */
export interface AftercareReason {
  readonly productName: string;
  readonly kind: AftercareKind;
  readonly labelWords: string;
  readonly basis: LimitBasis;
  readonly source: string;
}

/** One thing to do or to leave, from an instant until another. */
export interface AftercareStep {
  readonly row: AftercareRowName;
  readonly kind: "may-not" | "must";
  readonly startsAtEpochMilliseconds: number;
  /** Null where no time can be given: then the words say what is waited for. */
  readonly endsAtEpochMilliseconds: number | null;
  readonly isEstimate: boolean;
  /** Where a state of the lawn is waited for beside a stated time: that time, before which it does not end. */
  readonly notBeforeEpochMilliseconds?: number;
  /** Where what moves with the work is joined with what does not, as other work: the latest stated time of the latter. */
  readonly fixedEndEpochMilliseconds?: number;
  /** Of water that has no hours, beside other water that has: those hours are not its own. */
  readonly hasNoHours?: boolean;
  /** What to do or leave: "Keep people and pets off the lawn until dry." */
  readonly words: string;
  readonly startsAtWords: string;
  /** "about Saturday, Mar 7, 2026, 5 pm, an estimate". */
  readonly endsAtWords: string;
  readonly reasons: readonly AftercareReason[];
}

/** What one product's constraint forbids, before it is joined with the others of its row. */
export interface MayNot {
  readonly row: AftercareRowName;
  readonly startsAtEpochMilliseconds: number;
  readonly end: AftercareEnd;
  /** Whether its end moves with the hour of this visit's work, or with its day: that of other work does not, nor a sunset. */
  readonly movesWithWork: boolean;
  readonly reason: AftercareReason;
}

const MAY_NOT_WORDS: Readonly<Record<AftercareRowName, string>> = {
  "people-and-pets": "Keep people and pets off the lawn",
  watering: "Do not water",
  mowing: "Do not mow",
  seeding: "Do not seed",
  sign: "Leave the sign up",
};

/** The reason that a stated constraint gives. */
export function reasonFor(productName: string, constraint: StatedConstraint): AftercareReason {
  const { kind, labelWords, basis, source } = constraint;
  return { productName, kind, labelWords, basis, source };
}

/** Reasons in an order that does not hang on the order of the products, each once. */
export function inReasonOrder(reasons: readonly AftercareReason[]): readonly AftercareReason[] {
  if (reasons.length === 1) return reasons;
  const keyOf = ({ productName, kind, labelWords, basis, source }: AftercareReason) =>
    JSON.stringify([productName, kind, labelWords, basis, source]);
  const byKey = new Map(reasons.map((reason) => [keyOf(reason), reason]));
  return [...byKey.keys()].toSorted().flatMap((key) => byKey.get(key) ?? []);
}

/** What is waited for, in words; "watered in and dry" says the dry and the watered in of other products too. */
function waitWords(waitsFor: readonly string[]): string {
  const most = waitsFor.find((words) => words === "watered in and dry");
  return waitsFor.filter((words) => most === undefined || words === most || !most.includes(words)).join(" and ");
}

/**
 * How an end is said: a time, an estimated one, or only what is waited for. Where a state of the lawn may come before a
 * stated time, that time is said too: dry grass does not end 24 hours.
 */
export function endWords({ atEpochMilliseconds: at, isEstimate, waitsFor, notBeforeEpochMilliseconds: stated }: AftercareEnd, timeZone: string): string {
  const notBefore = stated === null || stated === at ? "" : `, and not before ${localWords(stated, timeZone, "end")}`;
  if (at === null) return `${waitWords(waitsFor)}; no time can be given${notBefore}`;
  const words = localWords(at, timeZone, "end");
  return isEstimate ? `about ${words}, an estimate${notBefore}` : words;
}

interface Joined {
  readonly startsAtEpochMilliseconds: number;
  readonly end: AftercareEnd;
  readonly members: readonly MayNot[];
}

function joinOverlapping(mayNots: readonly MayNot[]): readonly Joined[] {
  const joined: Joined[] = [];
  const inOrder = mayNots.toSorted((one, other) => one.startsAtEpochMilliseconds - other.startsAtEpochMilliseconds);
  for (const mayNot of inOrder) {
    const { startsAtEpochMilliseconds, end } = mayNot;
    const last = joined.at(-1);
    const lastEnd = last?.end.atEpochMilliseconds;
    const touches = lastEnd === null || (lastEnd !== undefined && startsAtEpochMilliseconds <= lastEnd);
    if (last === undefined || !touches) joined.push({ startsAtEpochMilliseconds, end, members: [mayNot] });
    else {
      const { startsAtEpochMilliseconds: from, members } = last;
      joined[joined.length - 1] = { startsAtEpochMilliseconds: from, end: latestEnd([last.end, end]), members: [...members, mayNot] };
    }
  }
  return joined;
}

/**
 * What one row forbids, in order of time and without overlap: where constraints overlap the later end counts, an
 * estimated part makes the end an estimate, and an end that can't be given keeps the whole open. Ends at or before
 * their start, and before the given instant, are left out: they no longer run.
 */
export function joinMayNots(
  row: AftercareRowName,
  mayNots: readonly MayNot[],
  from: { readonly epochMilliseconds: number; readonly timeZone: string },
): readonly AftercareStep[] {
  const running = mayNots.filter(({ row: own, end, startsAtEpochMilliseconds }) => {
    const at = end.atEpochMilliseconds;
    return own === row && (at === null || (at > startsAtEpochMilliseconds && at > from.epochMilliseconds));
  });
  return joinOverlapping(running).map(({ startsAtEpochMilliseconds, end: joined, members }) => {
    const end = runningFrom(joined, from.epochMilliseconds);
    const { waitsFor, notBeforeEpochMilliseconds } = end;
    return {
      row,
      kind: "may-not",
      startsAtEpochMilliseconds,
      endsAtEpochMilliseconds: end.atEpochMilliseconds,
      isEstimate: end.isEstimate,
      words: mayNotWords(row, end),
      ...(notBeforeEpochMilliseconds === null || waitsFor.length === 0 ? {} : { notBeforeEpochMilliseconds }),
      ...fixedEndOf(members, from.epochMilliseconds),
      startsAtWords: localWords(startsAtEpochMilliseconds, from.timeZone, "start"),
      endsAtWords: endWords(end, from.timeZone),
      reasons: inReasonOrder(members.map(({ reason }) => reason)),
    };
  });
}

/** One that is over by then is none. */
function fixedEndOf(members: readonly MayNot[], epochMilliseconds: number): Pick<AftercareStep, "fixedEndEpochMilliseconds"> {
  const fixed = members.flatMap(({ movesWithWork, end: { notBeforeEpochMilliseconds: stated } }) => (movesWithWork || stated === null || stated <= epochMilliseconds ? [] : [stated]));
  return fixed.length === 0 || !members.some(({ movesWithWork }) => movesWithWork) ? {} : { fixedEndEpochMilliseconds: Math.max(...fixed) };
}

/** A stated time that is over by then says nothing beside the state of the lawn that is still waited for. */
function runningFrom(end: AftercareEnd, epochMilliseconds: number): AftercareEnd {
  const { notBeforeEpochMilliseconds: stated } = end;
  return stated !== null && stated <= epochMilliseconds ? { ...end, notBeforeEpochMilliseconds: null } : end;
}

/** "Keep people and pets off the lawn until dry, and not before the time given." */
function mayNotWords(row: AftercareRowName, { waitsFor, notBeforeEpochMilliseconds: stated }: AftercareEnd): string {
  if (waitsFor.length === 0) return `${MAY_NOT_WORDS[row]}.`;
  return `${MAY_NOT_WORDS[row]} until ${waitWords(waitsFor)}${stated === null ? "" : ", and not before the time given"}.`;
}

/** Steps by time, and those of one time in the order of the rows. */
export function inTimeOrder(steps: readonly AftercareStep[]): readonly AftercareStep[] {
  const endOf = ({ endsAtEpochMilliseconds }: AftercareStep) => endsAtEpochMilliseconds ?? Number.MAX_VALUE;
  return steps.toSorted(
    (one, other) =>
      one.startsAtEpochMilliseconds - other.startsAtEpochMilliseconds ||
      AFTERCARE_ROWS.indexOf(one.row) - AFTERCARE_ROWS.indexOf(other.row) ||
      endOf(one) - endOf(other) ||
      one.words.localeCompare(other.words, "en"),
  );
}
