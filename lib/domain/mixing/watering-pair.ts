import { calendarDateIn } from "#domain/foundation/calendar-date";
import { listWords } from "#domain/foundation/list-words";
import { endWords } from "#domain/mixing/aftercare-step";
import { type AppliedProduct, appliedName, isOfOtherWork } from "#domain/mixing/applied-product";
import { localWords } from "#domain/mixing/local-words";
import { type StaysDry, type WateringNeed } from "#domain/mixing/watering-bounds";
import { type Authority } from "#domain/weather/spray-limits";

/** The product that must stay dry the longest, and the one whose water is due first. */
export interface TightestPair {
  readonly dry: (StaysDry & { readonly untilEpochMilliseconds: number }) | undefined;
  readonly due: (WateringNeed & { readonly byEpochMilliseconds: number }) | undefined;
}

/** Finds the two that leave the least time between them. Of equal ones the first of the list counts. */
export function tightestPair(staysDry: readonly StaysDry[], needs: readonly WateringNeed[]): TightestPair {
  let dry: TightestPair["dry"];
  for (const one of staysDry) {
    const until = one.end.atEpochMilliseconds;
    if (until !== null && (dry === undefined || until > dry.untilEpochMilliseconds)) {
      dry = { ...one, untilEpochMilliseconds: until };
    }
  }
  let due: TightestPair["due"];
  for (const one of needs) {
    const by = one.dueAtEpochMilliseconds;
    if (by !== null && (due === undefined || by < due.byEpochMilliseconds)) due = { ...one, byEpochMilliseconds: by };
  }
  return { dry, due };
}

/** Until when the one must stay dry and by when the other wants its water, as a sentence; empty where there is neither. */
export function pairFigure({ dry, due }: TightestPair, timeZone: string): string {
  const parts = [
    ...(dry === undefined ? [] : [`${appliedName(dry.applied, timeZone)}: no water until ${endWords(dry.end, timeZone)}${rainWords(dry)}`]),
    ...(due === undefined ? [] : [`${appliedName(due.applied, timeZone)}: watered in ${byWords(due, timeZone)}`]),
  ];
  return parts.length === 0 ? "" : `${parts.join("; ")}.`;
}

/** By when, and that it is an estimate where the label's words give no time. */
export function byWords({ byEpochMilliseconds, constraint: { by }, estimatedBy }: NonNullable<TightestPair["due"]>, timeZone: string): string {
  const words = localWords(byEpochMilliseconds, timeZone, "due");
  if (estimatedBy.length === 0) return `by ${words}`;
  return `${by !== "not-stated" && by.anchor === "at-once" ? "at once, " : ""}by about ${words}, an estimate`;
}

/** Why water is kept off where the label speaks of rain only. */
function rainWords({ constraint }: StaysDry): string {
  return constraint.kind === "rain-that-spoils" ? ", since rain before then spoils it and so does as much water" : "";
}

/** Those of the two that there are. */
export function membersOf({ dry, due }: TightestPair): readonly (StaysDry | WateringNeed)[] {
  return [dry, due].flatMap((one) => one ?? []);
}

/** Their names, each once. */
export function namesOf(pair: TightestPair): readonly string[] {
  return [...new Set(membersOf(pair).map(({ applied }) => applied.label.productName))];
}

/**
 * Everybody whose word a pair's times rest on. How long "at once" is does not count where a stated time keeps water off
 * into another day than that of the work: by no reading is that at once.
 */
export function authoritiesOf({ dry, due }: TightestPair, timeZone: string): readonly Authority[] {
  const fromDry = dry === undefined ? [] : [dry.constraint, ...dry.estimatedBy];
  if (due === undefined) return fromDry;
  const stated = dry?.end.notBeforeEpochMilliseconds ?? null;
  const isAtOnce = due.constraint.by !== "not-stated" && due.constraint.by.anchor === "at-once";
  const isAnotherDay = stated !== null && calendarDateIn(timeZone, stated) > calendarDateIn(timeZone, due.applied.application.endsAtEpochMilliseconds);
  return [...fromDry, due.constraint, ...(isAtOnce && isAnotherDay ? [] : due.estimatedBy)];
}

/** Products in words, each once. */
export function namedOnce(products: readonly AppliedProduct[], timeZone: string): string {
  return listWords([...new Set(products.map((applied) => appliedName(applied, timeZone)))]);
}

const WRITE_IT_DOWN = "and write it down in a look at the lawn";

/**
 * What keeps products of this visit apart from those that are down already and want water: those are watered in first.
 * Undefined where only products of this visit want water.
 */
export function waterInFirst(wantWater: readonly AppliedProduct[], stayDry: readonly AppliedProduct[], timeZone: string): string | undefined {
  const down = wantWater.filter((applied) => isOfOtherWork(applied));
  if (down.length === 0) return undefined;
  const own = [...wantWater, ...stayDry].filter((applied) => !isOfOtherWork(applied));
  return `Have ${namedOnce(down, timeZone)} watered in before this visit ${WRITE_IT_DOWN}, or put ${own.length === 0 ? "this visit's products" : namedOnce(own, timeZone)} down after it has been.`;
}
