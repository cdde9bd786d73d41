// What a customer is to do and leave after a visit, in order and with times, as a notice prints it.
import { listWords } from "#domain/foundation/list-words";
import { type AftercareOfLawns } from "#domain/mixing/aftercare-of-lawns";
import { AFTERCARE_ROWS, type AftercareReason, type AftercareStep } from "#domain/mixing/aftercare-step";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type Span } from "#domain/weather/local-hours";
import { dayOnPaper, spanOnPaper } from "#domain/papers/paper-time";
import { type PlannedStep, stepsBeforehand } from "#domain/papers/planned-times";

/** Who asks for a step, a product's label or a law, and in which words. */
export interface NoticeReason {
  readonly asks: string;
  /** Quoted; empty where nobody has read them. */
  readonly words: readonly string[];
}

/** One thing to do or to leave. */
export interface NoticeStep {
  /** "Until Wednesday, Apr 15, 2026, 12:45 pm". */
  readonly when: string;
  readonly what: string;
  readonly why: readonly NoticeReason[];
}

/** What is to be done and left on the lawns that got the same, in order of time. */
export interface NoticeAftercare {
  readonly lawns: string;
  readonly steps: readonly NoticeStep[];
}

/** The aftercare of a notice, with the sentence that says what its times are counted from. */
export interface AftercareOnNotice {
  readonly countedFrom: string;
  readonly groups: readonly NoticeAftercare[];
  /** What labels want of leaf and soil as a product goes down: the crew has minded it, and a customer is not asked for it. */
  readonly mindedByCrew: readonly NoticeReason[];
}

/**
 * The aftercare as planned, for a notice that is printed before the visit: what hangs on the work says so, with the time
 * that the plan gives.
 * @param products those of the visit, as they are planned
 */
export function plannedAftercare(groups: readonly AftercareOfLawns[], planned: Span, products: readonly AppliedProduct[], timeZone: string): AftercareOnNotice {
  const { fromEpochMilliseconds: from, untilEpochMilliseconds: until } = planned;
  return {
    countedFrom: `Times are as planned, for work on ${dayOnPaper(from, timeZone)}, ${spanOnPaper(from, until, timeZone)}. They move with the work.`,
    groups: groups.map((group) => groupOf(group, planned, stepsBeforehand(group.timeline, { planned, products, timeZone }))),
    mindedByCrew: mindedByCrew(groups),
  };
}

/** The aftercare as it counts from the work that was really done, for a notice that is printed from its record. */
export function aftercareAsDone(groups: readonly AftercareOfLawns[], done: Span, timeZone: string): AftercareOnNotice {
  const { fromEpochMilliseconds: from, untilEpochMilliseconds: until } = done;
  return {
    countedFrom: `Times count from the work as it was done on ${dayOnPaper(from, timeZone)}, ${spanOnPaper(from, until, timeZone)}.`,
    groups: groups.map((group) => groupOf(group, done, group.timeline.steps.map((step) => ({ step, when: whenDone(step, done) })))),
    mindedByCrew: mindedByCrew(groups),
  };
}

function mindedByCrew(groups: readonly AftercareOfLawns[]): readonly NoticeReason[] {
  const all = groups.flatMap(({ timeline }) => timeline.lawnAtApplication.map(({ productName, labelWords }) => ({ asks: productName, words: [labelWords] })));
  return [...new Map(all.map((reason) => [JSON.stringify(reason), reason])).values()];
}

/** What the crew does itself, before it leaves, is nothing that a customer is told to do. */
function isForCustomer({ row, kind }: AftercareStep): boolean {
  return row !== "sign" || kind === "may-not";
}

function groupOf({ lawnNames }: AftercareOfLawns, { fromEpochMilliseconds: work }: Span, steps: readonly PlannedStep[]): NoticeAftercare {
  // What an earlier visit began is in force as much as what this one begins, and stands in its place among the rows.
  const startOf = ({ startsAtEpochMilliseconds }: AftercareStep) => Math.max(startsAtEpochMilliseconds, work);
  const inOrder = steps
    .filter(({ step }) => isForCustomer(step))
    .toSorted((one, other) => startOf(one.step) - startOf(other.step) || AFTERCARE_ROWS.indexOf(one.step.row) - AFTERCARE_ROWS.indexOf(other.step.row));
  return {
    lawns: listWords(lawnNames),
    steps: inOrder.map(({ step, when }) => ({ when, what: step.words, why: reasonsOf(step.reasons) })),
  };
}

function reasonsOf(reasons: readonly AftercareReason[]): readonly NoticeReason[] {
  const byWho = new Map<string, Set<string>>();
  for (const { productName, basis, source, labelWords } of reasons) {
    const asks = basis === "label" ? productName : source;
    const words = byWho.get(asks) ?? new Set<string>();
    if (labelWords !== "") words.add(labelWords);
    byWho.set(asks, words);
  }
  return [...byWho].map(([asks, words]) => ({ asks, words: [...words] }));
}

/** What is forbidden from the work on has only an end; what begins later says when. */
function whenDone(step: AftercareStep, { untilEpochMilliseconds: workEnds }: Span): string {
  const { kind, startsAtEpochMilliseconds: start, startsAtWords, endsAtEpochMilliseconds: end, endsAtWords } = step;
  if (kind === "must") return `From ${startsAtWords}, ${end === null ? endsAtWords : `by ${endsAtWords}`}`;
  return start > workEnds ? `From ${startsAtWords} until ${endsAtWords}` : `Until ${endsAtWords}`;
}
