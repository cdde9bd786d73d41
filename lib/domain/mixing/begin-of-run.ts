import { listWords } from "#domain/foundation/list-words";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { amountOfMarks } from "#domain/quantities/rounding";
import { type ChangeOfMix, mixInTank, type MixInTank } from "#domain/mixing/mix-change";
import { changeOfRun, type TankContents } from "#domain/mixing/tank-contents";
import { type FilledBefore, type FilledLater, type HeldMix, type LastHeld, type RestInTank, type TankPlanQuestion } from "#domain/mixing/tank-plan-question";
import { type FilledAlong, filledAlong, leftOfAll, type RestsAtBegin, restsAtBegin } from "#domain/mixing/tank-rests";
import { type DrawOfStop, type RunOfMix } from "#domain/mixing/tank-runs";
import { type TicketSprayer } from "#domain/mixing/ticket-question";

/** What pump and hose hold when a mix begins, and what becomes of it. */
export type LineAtBegin =
  /** Water of the last rinse: it is run out until the mix comes. */
  | "water"
  | "holds-this-mix"
  /** The last mix, which may go on the next lawn first. */
  | "runs-on"
  /** The last mix, which is run out into a container first. */
  | "flushed"
  | "not-known";

/** What one sprayer held before a run. */
export interface BeforeRun {
  readonly last: LastHeld | MixInTank;
  /** Of a mix of the same day: what was in the tank before it since its last clean-out. */
  readonly below: TankContents;
  /** The fills that the crew made for the run that day already, in their order, beside what the tank held last. */
  readonly made: readonly FilledLater[];
  /** Whether pump and hose hold the last mix; not where water pushed it out. */
  readonly lineHoldsLast: boolean;
  readonly isFirst: boolean;
  /** Whether so much is left of it that it can't be let out at a stop: a mark of the gauge or more. */
  readonly leavesRest: boolean;
}

/** The mix of a run where the tank holds it already. */
export interface MixOnHand {
  /** The fills of it, the latest first. */
  readonly fills: readonly [MixInTank, ...MixInTank[]];
  /** What the latest of them was filled onto since the last clean-out. */
  readonly onto: TankContents;
}

/** What lies between the mix before a run and its own, and what is in the tank already. */
export interface BeginOfRun {
  /** What the tank held before. */
  readonly last: MixInTank | "clean" | "unknown";
  /** Whether that is this very mix, of which the rest is used first. */
  readonly isSameAsLast: boolean;
  /** What was in the tank before that since its last clean-out. */
  readonly below: TankContents;
  readonly change: ChangeOfMix | null;
  /** Whether the mix before is one of the same day, so that a clean-out between the two is a step of the day's own plan. */
  readonly followsMixOfThatDay: boolean;
  readonly isCleanOutOnFile: boolean;
  readonly line: LineAtBegin;
  readonly onHand: MixOnHand | null;
  /** Of the run's own mix in the tank by the books; nothing where they don't know it. */
  readonly already: bigint;
  /** What of that the crew filled in on the way. */
  readonly filledAlong: readonly FilledAlong[];
  /** By what names the books have what is in the tank; null where they have nothing. */
  readonly restName: string | null;
  /** What has to be out of the tank first by the books: of another mix, or that they don't know of this one. */
  readonly leftOfLast: LeftOfLast;
  /** Of other mixes under this one by the books, a mark of the gauge or more of each, or nobody knows how much. */
  readonly under: readonly RestInTank[];
}

/** What is left of a mix, or why the books can't say it. */
export type LeftOfLast = Quantity<"volume"> | "unknown" | "more-than-it-holds";

/** What a run begins with: what the crew filled for it already, else what the day or the run before left in the tank. */
export function beginOfRun(question: TankPlanQuestion, run: RunOfMix, before: BeforeRun): BeginOfRun {
  const held = typeof before.last !== "string" && "left" in before.last ? before.last : null;
  const rests = restsAtBegin(held, before.made, run, question.settings);
  const top = before.made.at(-1) ?? held;
  const [latest, ...earlier] = rests.own;
  const onHand: MixOnHand | null = top === null || latest === undefined ? null : { fills: [mixInTank(latest), ...earlier.map(mixInTank)], onto: contentsOf(top.filledOnto) };
  // A run whose fill is made already still follows the run before it in pump and hose.
  const onBooks = onHand !== null && held === null ? null : top;
  return { ...betweenMixes(question, run, before, onBooks, onHand !== null && onBooks !== null), onHand, ...leftAtBegin(question, run, before.made, rests) };
}

/** @param onBooks the fill that the run follows by the books; null where it follows another run, a clean-out or nobody knows what */
function betweenMixes(
  { stops, cleanOuts }: TankPlanQuestion,
  run: RunOfMix,
  { last: before, below: belowOfDay, lineHoldsLast, isFirst }: BeforeRun,
  onBooks: HeldMix | null,
  isSameAsLast: boolean,
): Omit<BeginOfRun, "onHand" | keyof LeftAtBegin> {
  const { gear, draws } = run;
  const first = draws[0];
  const none = { isSameAsLast: false, below: [], change: null, followsMixOfThatDay: !isFirst, isCleanOutOnFile: false };
  const isCleanOutOnFile = cleanOuts !== "unknown" && first !== undefined && cleanOuts.get(gear.equipmentId)?.has(first.visitId) === true;
  if (before === "clean" || first === undefined) return { ...none, last: "clean", line: "water" };
  if (before === "unknown") return { ...none, last: before, isCleanOutOnFile, line: isCleanOutOnFile ? "water" : "not-known" };
  const last = onBooks === null ? withoutBooks(before) : mixInTank(onBooks);
  const below = onBooks === null ? belowOfDay : contentsOf(onBooks.filledOnto);
  if (isSameAsLast) return { ...none, last, isSameAsLast, below, line: lineHoldsLast ? "holds-this-mix" : "water" };
  const change = changeOfRun([last, ...below], run, stops);
  const line = isCleanOutOnFile || !lineHoldsLast ? "water" : lineAfter(last, change, gear, first);
  return { ...none, last, below, change, followsMixOfThatDay: !isFirst || onBooks?.isOfThatDay === true, isCleanOutOnFile, line };
}

function withoutBooks(last: HeldMix | MixInTank): MixInTank {
  return "left" in last ? mixInTank(last) : last;
}

/** What a tank was filled onto, as the next mix asks about it. */
export function contentsOf(before: FilledBefore): TankContents {
  return before.map((one) => (one === "unknown" ? one : mixInTank(one)));
}

/** What becomes of a last mix in the line. How strong one is that was mixed for one visit alone nobody knows, nor whether it may run on. */
function lineAfter({ products }: MixInTank, change: ChangeOfMix, gear: TicketSprayer, first: DrawOfStop): LineAtBegin {
  if (runsOn(change, gear, first)) return "runs-on";
  return change.cleaning !== "clean-out" && products.some(({ concentration }) => concentration === "unknown") ? "not-known" : "flushed";
}

/** The last mix may go on the next lawn, and the lawn takes all of it: what is left in the hose for the one after is not looked into. */
function runsOn({ mayRunOn }: ChangeOfMix, { holdUp }: TicketSprayer, { finished }: DrawOfStop): boolean {
  return mayRunOn && holdUp !== "unknown" && holdUp.amount <= finished.amount;
}

type LeftAtBegin = Pick<BeginOfRun, "already" | "filledAlong" | "restName" | "leftOfLast" | "under">;

/** Less than a mark of the gauge of another mix is let out on the way and written down nowhere. */
function leftAtBegin({ settings }: TankPlanQuestion, run: RunOfMix, made: readonly FilledLater[], { own, already, others }: RestsAtBegin): LeftAtBegin {
  if (own.length === 0) return { already: 0n, filledAlong: [], restName: nameOf(others), leftOfLast: leftOfAll(others), under: [] };
  const mark = amountOfMarks(settings.tankMark, 1n).amount;
  const under = others.filter(({ left }) => left === "unknown" || left.amount >= mark);
  if (typeof already === "string") return { already: 0n, filledAlong: [], restName: nameOf(own), leftOfLast: already, under };
  const ownMade = made.filter((one) => own.includes(one));
  const inMorning = ownMade.reduce((rest, { left }) => rest - (left === "unknown" ? 0n : left.amount), already.amount);
  return { already: already.amount, filledAlong: filledAlong(run, inMorning, ownMade), restName: nameOf(own), leftOfLast: fromAmount("volume", 0n), under };
}

function nameOf(rests: readonly RestInTank[]): string | null {
  const some = rests.filter(({ left }) => left === "unknown" || left.amount > 0n);
  const named = some.length > 0 ? some : rests.slice(0, 1);
  return named.length === 0 ? null : listWords(named.map(({ name }) => name));
}
