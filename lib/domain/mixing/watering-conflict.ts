import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { appliedName, isOfOtherWork, weakestAuthority } from "#domain/mixing/applied-product";
import { listWords } from "#domain/foundation/list-words";
import { endWords } from "#domain/mixing/aftercare-step";
import { type StationRun } from "#domain/mixing/irrigation-run";
import { type WateringNeed } from "#domain/mixing/watering-bounds";
import { authoritiesOfHours, hoursWords, type WateringHours } from "#domain/mixing/watering-hours";
import { authoritiesOf, membersOf, namedOnce, namesOf, pairFigure, type TightestPair, waterInFirst } from "#domain/mixing/watering-pair";
import { thirstInTheWay, type WordsOfPlace } from "#domain/mixing/watering-thirst";
import { stated } from "#domain/weather/spray-limits";

/** What is still to be done about the water of a product whose time can't be kept any more. */
const LATE = "as soon as the other products and the watering hours allow. It will be late.";

/**
 * The hold where the labels of two products leave no time for water at all, be it because a third wants so much of it.
 * Advises to split the visit, or how to keep apart from what is down already. A dry time that is over before the due time
 * is not at odds with it: then the work itself takes too long. Where no product of this visit takes part nothing can be
 * left out any more: it wants care.
 */
export function noCommonTime(found: TightestPair, needs: readonly WateringNeed[], words: WordsOfPlace): Finding {
  const { due } = found;
  const { timeZone } = words;
  const isAtOdds = found.dry !== undefined && due !== undefined && found.dry.untilEpochMilliseconds >= due.byEpochMilliseconds;
  const pair = isAtOdds ? found : { dry: undefined, due };
  const thirst = thirstInTheWay(pair, needs, words);
  const third = thirst === undefined ? [] : [thirst.thirstiest];
  const { source, answerableBy, citation } = weakestAuthority([...authoritiesOf(pair, timeZone), ...third.map(({ constraint }) => constraint)]);
  const [dryName = "", dueName = ""] = [pair.dry, pair.due].map((one) =>
    one === undefined ? undefined : appliedName(one.applied, timeZone),
  );
  const isOneProduct = dryName === dueName || dryName === "";
  const ofTwo = isOneProduct
    ? `${dueName} can't be watered in: its time is over before ${isAtOdds ? "it may be watered" : "the work ends"}.`
    : `${dryName} must stay dry longer than ${dueName} can wait for water.`;
  const said = {
    rule: "no-common-watering-time",
    source,
    what: thirst?.what ?? ofTwo,
    figure: [pairFigure(pair, timeZone), ...(thirst === undefined ? [] : [thirst.figure])].join(" "),
    citation,
    about: [...new Set([...third.map(({ applied }) => applied.label.productName), ...namesOf(pair)])],
  } as const;
  if (!takesPart(pair, needs)) return takeCare({ ...said, toDo: nowThatItIsDown(pair, dueName, timeZone) });
  const isAlone = isOneProduct && thirst === undefined;
  return hold(answerableBy, { ...said, toDo: isAlone ? (firstOfAll(pair, needs, timeZone) ?? toDoAlone(isAtOdds)) : keptApart(pair, third, timeZone) });
}

function toDoAlone(isAtOdds: boolean): string {
  return isAtOdds ? "Read its label again; its own times are at odds." : "Put it down last, or split the visit.";
}

/** What is down and wants water gets it before this visit; for what is only down to stay dry this visit's products wait. */
function keptApart({ dry, due }: TightestPair, third: readonly WateringNeed[], timeZone: string): string {
  if (dry === undefined || due === undefined) return "";
  const wanting = [...third, due].map(({ applied }) => applied);
  const own = wanting.find((applied) => !isOfOtherWork(applied));
  if (isOfOtherWork(dry.applied) && !isOfOtherWork(due.applied) && own !== undefined) return `Put ${appliedName(own, timeZone)} down after ${endWords(dry.end, timeZone)}.`;
  const apart = third.length === 0 ? `${namedOnce([dry.applied, due.applied], timeZone)} down on different days` : `${namedOnce(third.map(({ applied }) => applied), timeZone)} down on another day`;
  return waterInFirst(wanting, [dry.applied], timeZone) ?? `Split the visit: put ${apart}.`;
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

/** The hours that leave too little time, of all that are on file. */
export interface ShortHours {
  readonly inTheWay: WateringHours;
  readonly onFile: WateringHours;
}

/**
 * The hold where watering hours leave none of the time that the labels leave, or less than the stations need, whole
 * stations on different days included. The hours may change where they are not law, so the weakest authority says who
 * answers. It wants care where all is down already.
 */
export function hoursLeaveNoTime(
  pair: TightestPair,
  { inTheWay: hours, onFile }: ShortHours,
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
  const anew = stated(onFile.localRules).length === 0 ? "set the controller anew, " : "set the controller anew within the town's rule, ";
  const byHours = `Put the product down on a day before a watering day, ${hours.controller === "none" ? "" : anew}or split the visit.`;
  return hold(answerableBy, { ...words, toDo: firstOfAll(pair, needs, timeZone) ?? byHours });
}

/** What the customer may do about what is down already: not the rules of a town, but a controller may be left for once. */
function outsideTheHours(pair: TightestPair, hours: WateringHours, needs: readonly WateringNeed[], timeZone: string): string {
  const names = namedOnce((pair.due === undefined ? needs : [pair.due]).map(({ applied }) => applied), timeZone);
  const isLaw = authoritiesOfHours(hours).some(({ basis }) => basis === "law");
  const late = pair.due === undefined ? "over several goes, or with sprinklers that take less time." : LATE;
  return isLaw ? `Have ${names} watered in ${late}` : `Ask the customer to have ${names} watered in by hand before this visit. Where that can't be, have it watered in ${late}`;
}
