import { calendarDateIn } from "#domain/foundation/calendar-date";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { type AppliedProduct, appliedName, isOfOtherWork, weakestAuthority } from "#domain/mixing/applied-product";
import { listWords } from "#domain/foundation/list-words";
import { endWords } from "#domain/mixing/aftercare-step";
import { type StationRun } from "#domain/mixing/irrigation-run";
import { localWords } from "#domain/mixing/local-words";
import { type StaysDry, type WateringNeed } from "#domain/mixing/watering-bounds";
import { authoritiesOfHours, hoursWords, type WateringHours } from "#domain/mixing/watering-hours";
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

function pairFigure({ dry, due }: TightestPair, timeZone: string): string {
  const parts = [
    ...(dry === undefined ? [] : [`${appliedName(dry.applied, timeZone)}: no water until ${endWords(dry.end, timeZone)}${rainWords(dry)}`]),
    ...(due === undefined ? [] : [`${appliedName(due.applied, timeZone)}: watered in ${byWords(due, timeZone)}`]),
  ];
  return parts.length === 0 ? "" : `${parts.join("; ")}.`;
}

/** By when, and that it is an estimate where the label's words give no time. */
function byWords({ byEpochMilliseconds, constraint: { by }, estimatedBy }: NonNullable<TightestPair["due"]>, timeZone: string): string {
  const words = localWords(byEpochMilliseconds, timeZone, "due");
  if (estimatedBy.length === 0) return `by ${words}`;
  return `${by !== "not-stated" && by.anchor === "at-once" ? "at once, " : ""}by about ${words}, an estimate`;
}

/** Why water is kept off where the label speaks of rain only. */
function rainWords({ constraint }: StaysDry): string {
  return constraint.kind === "rain-that-spoils" ? ", since rain before then spoils it and so does as much water" : "";
}

function membersOf({ dry, due }: TightestPair): readonly (StaysDry | WateringNeed)[] {
  return [dry, due].flatMap((one) => one ?? []);
}

function namesOf(pair: TightestPair): readonly string[] {
  return [...new Set(membersOf(pair).map(({ applied }) => applied.label.productName))];
}

/**
 * Everybody whose word a pair's times rest on. How long "at once" is does not count where a stated time keeps water off
 * into another day than that of the work: by no reading is that at once.
 */
function authoritiesOf({ dry, due }: TightestPair, timeZone: string): readonly Authority[] {
  const fromDry = dry === undefined ? [] : [dry.constraint, ...dry.estimatedBy];
  if (due === undefined) return fromDry;
  const stated = dry?.end.notBeforeEpochMilliseconds ?? null;
  const isAtOnce = due.constraint.by !== "not-stated" && due.constraint.by.anchor === "at-once";
  const isAnotherDay = stated !== null && calendarDateIn(timeZone, stated) > calendarDateIn(timeZone, due.applied.application.endsAtEpochMilliseconds);
  return [...fromDry, due.constraint, ...(isAtOnce && isAnotherDay ? [] : due.estimatedBy)];
}

function namedOnce(products: readonly AppliedProduct[], timeZone: string): string {
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

/** What is still to be done about the water of a product whose time can't be kept any more. */
const LATE = "as soon as the other products and the watering hours allow. It will be late.";

/**
 * The hold where the labels of two products leave no time for water at all. Advises to split the visit, or how to keep
 * apart from what is down already. A dry time that is over before the due time is not at odds with it: then the work
 * itself takes too long. Where no product of this visit takes part nothing can be left out any more: it wants care.
 */
export function noCommonTime(found: TightestPair, timeZone: string): Finding {
  const { due } = found;
  const isAtOdds = found.dry !== undefined && due !== undefined && found.dry.untilEpochMilliseconds >= due.byEpochMilliseconds;
  const pair = isAtOdds ? found : { dry: undefined, due };
  const { source, answerableBy, citation } = weakestAuthority(authoritiesOf(pair, timeZone));
  const [dryName = "", dueName = ""] = [pair.dry, pair.due].map((one) =>
    one === undefined ? undefined : appliedName(one.applied, timeZone),
  );
  const isOneProduct = dryName === dueName || dryName === "";
  const words = {
    rule: "no-common-watering-time",
    source,
    what: isOneProduct
      ? `${dueName} can't be watered in: its time is over before ${isAtOdds ? "it may be watered" : "the work ends"}.`
      : `${dryName} must stay dry longer than ${dueName} can wait for water.`,
    figure: pairFigure(pair, timeZone),
    citation,
    about: namesOf(pair),
  } as const;
  if (membersOf(pair).every(({ applied }) => isOfOtherWork(applied))) return takeCare({ ...words, toDo: nowThatItIsDown(pair, dueName, timeZone) });
  return hold(answerableBy, { ...words, toDo: isOneProduct ? toDoAlone(isAtOdds) : keptApart(pair, timeZone) });
}

function toDoAlone(isAtOdds: boolean): string {
  return isAtOdds ? "Read its label again; its own times are at odds." : "Put it down last, or split the visit.";
}

function keptApart({ dry, due }: TightestPair, timeZone: string): string {
  if (dry === undefined || due === undefined) return "";
  const [dryName, dueName] = [appliedName(dry.applied, timeZone), appliedName(due.applied, timeZone)];
  if (isOfOtherWork(dry.applied)) return `Put ${dueName} down after ${endWords(dry.end, timeZone)}.`;
  return waterInFirst([due.applied], [dry.applied], timeZone) ?? `Split the visit: put ${dryName} and ${dueName} down on different days.`;
}

function nowThatItIsDown({ dry }: TightestPair, dueName: string, timeZone: string): string {
  const first = dry === undefined ? "" : `Keep water off until ${endWords(dry.end, timeZone)}. `;
  return `${first}${dry === undefined ? "Have" : "Then have"} ${dueName} watered in ${LATE}`;
}

/** What is to be done first where the water that is due first is that of a product that is down already. */
function firstOfAll({ dry, due }: TightestPair, needs: readonly WateringNeed[], timeZone: string): string | undefined {
  if (due !== undefined && !isOfOtherWork(due.applied)) return undefined;
  return waterInFirst(needs.map(({ applied }) => applied), dry === undefined ? [] : [dry.applied], timeZone);
}

/** Whether any product of this visit takes part. */
function takesPart(pair: TightestPair, needs: readonly WateringNeed[]): boolean {
  return [...membersOf(pair), ...needs].some(({ applied }) => !isOfOtherWork(applied));
}

/**
 * The hold where the labels leave some time, but less than the stations need one at a time, whatever the hours. The
 * office may answer it, since how the water is run is the plan's own. It wants care where all is down already.
 */
export function timeTooShort(
  pair: TightestPair,
  needs: readonly WateringNeed[],
  context: { readonly timeZone: string; readonly elapsedMinutes: number },
): Finding {
  const together = "un stations at the same time where there is water enough";
  const words = {
    rule: "watering-time-too-short",
    source: "house",
    what: "The labels leave less time for watering in than the stations need one at a time.",
    figure: `${pairFigure(pair, context.timeZone)} The stations need ${context.elapsedMinutes} min.`.trim(),
    about: namesOf(pair),
  } as const;
  if (!takesPart(pair, needs)) {
    return takeCare({ ...words, toDo: `Ask the customer to r${together}. Where there is not, have it watered in ${LATE}` });
  }
  const first = firstOfAll(pair, needs, context.timeZone);
  return hold("office", { ...words, toDo: first === undefined ? `R${together}, or split the visit.` : `R${together}. Where there is not: ${first}` });
}

/**
 * The hold where no whole minute of a station keeps within what the labels ask for. The office may answer it, since with
 * what the lawn is watered is the plan's own. It wants care where all is down already.
 */
export function minutesKeepNoDepth(runs: readonly StationRun[], needs: readonly WateringNeed[]): readonly Finding[] {
  const off = runs.filter(({ kind }) => kind === "no-minutes");
  if (off.length === 0) return [];
  const withDepth = needs.filter(({ constraint }) => constraint.depth !== "not-stated");
  const words = {
    rule: "station-minutes-miss-depth",
    source: "house",
    what: `No whole minutes of ${listWords(off.map(({ stationName }) => stationName))} put down what the labels ask for.`,
    figure: off.map(({ sentence }) => sentence).join(" "),
    toDo: "Water that part with a slower sprinkler that was tested, or have the station refitted and tested again.",
    citation: [...new Set(withDepth.map(({ constraint }) => constraint.source))].join("; "),
    about: [...new Set(withDepth.map(({ applied }) => applied.label.productName))],
  } as const;
  return [withDepth.every(({ applied }) => isOfOtherWork(applied)) ? takeCare(words) : hold("office", words)];
}

/**
 * The hold where watering hours leave none of the time that the labels leave, or less than the stations need, whole
 * stations on different days included. The hours may change where they are not law, so the weakest authority says who
 * answers. It wants care where all is down already.
 */
export function hoursLeaveNoTime(
  pair: TightestPair,
  hours: WateringHours,
  needs: readonly WateringNeed[],
  context: { readonly timeZone: string; readonly elapsedMinutes: number | null },
): Finding {
  const { timeZone, elapsedMinutes } = context;
  const wants = pair.due === undefined ? needs.map(({ constraint }) => constraint) : [];
  const { source, answerableBy, citation } = weakestAuthority([...wants, ...authoritiesOf(pair, timeZone), ...authoritiesOfHours(hours)]);
  const about = pair.due === undefined ? needs.map(({ applied }) => applied.label.productName) : namesOf(pair);
  const runs = elapsedMinutes === null ? "" : `The stations need ${elapsedMinutes} min one at a time.`;
  const words = {
    rule: "watering-hours-leave-no-time",
    source,
    what: "The hours in which this property may be watered leave no time, or too little, for watering in.",
    figure: [pairFigure(pair, timeZone), hoursWords(hours), runs].filter((one) => one !== "").join(" "),
    citation,
    about: [...new Set(about)],
  } as const;
  if (!takesPart(pair, needs)) return takeCare({ ...words, toDo: outsideTheHours(pair, hours, needs, timeZone) });
  const byHours = `Put the product down on a day before a watering day, ${hours.controller === "none" ? "" : "set the controller anew within the town's rule, "}or split the visit.`;
  return hold(answerableBy, { ...words, toDo: firstOfAll(pair, needs, timeZone) ?? byHours });
}

/** What the customer may do about what is down already: not the rules of a town, but a controller may be left for once. */
function outsideTheHours(pair: TightestPair, hours: WateringHours, needs: readonly WateringNeed[], timeZone: string): string {
  const names = namedOnce((pair.due === undefined ? needs : [pair.due]).map(({ applied }) => applied), timeZone);
  const isLaw = authoritiesOfHours(hours).some(({ basis }) => basis === "law");
  const late = pair.due === undefined ? "over several goes, or with sprinklers that take less time." : LATE;
  return isLaw ? `Have ${names} watered in ${late}` : `Ask the customer to have ${names} watered in by hand before this visit. Where that can't be, have it watered in ${late}`;
}
