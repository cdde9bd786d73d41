import { type SprayRate } from "#domain/label/label-facts";
import { rational } from "#domain/quantities/rational";
import { amountOfMarks } from "#domain/quantities/rounding";
import { fromAmount } from "#domain/quantities/quantity";
import { type FillSize, sizeFills, type TankDraw, toLastMark } from "#domain/mixing/fill-sizes";
import { type BeforeRun, type BeginOfRun, beginOfRun } from "#domain/mixing/begin-of-run";
import { type ChangeOfMix, mixInTank, type MixInTank } from "#domain/mixing/mix-change";
import { onTopOf, type TankContents } from "#domain/mixing/tank-contents";
import { isWeaker, productsIn } from "#domain/mixing/tank-fill";
import { type Rinse, rinseOf } from "#domain/mixing/tank-rinse";
import { type TankPlanQuestion, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { type DrawOfStop, type RunOfMix } from "#domain/mixing/tank-runs";
import { addWeight, sprayWithin, waterShareOf, waterWeight, weightStaying } from "#domain/mixing/truck-weight";
import { toolsOf } from "#domain/mixing/tank-rests";

/** One filling as it was sized, in canonical units of volume. */
export interface SizedFill {
  /** Nothing where what was in the tank is enough. */
  readonly mixed: bigint;
  /** What of it fills pump and hose and goes on no lawn. */
  readonly toLine: bigint;
  readonly parts: readonly { readonly stopIndex: number; readonly visitId: string; readonly volume: bigint }[];
  /** The first stop that it serves, and whether part of that stop is sprayed before. */
  readonly beginsAt: number;
  readonly isMidway: boolean;
  readonly isBeforeLeaving: boolean;
  /** Whether the truck goes back to the shop for it even where there is water, because the tank still holds another mix that has to go there. */
  readonly emptiesAtShop: boolean;
}

/** A run of one mix with its fills, before they have letters. */
export interface SizedRun extends BeginOfRun {
  readonly run: RunOfMix;
  /** The mix as it is measured out: each product as strong as in the strongest of its fills. */
  readonly real: MixInTank;
  /** What the tank needs before this mix, and the water for it where that is not on file yet. */
  readonly cleaning: ChangeOfMix["cleaning"];
  readonly rinse: Rinse | null;
  /** Where it is filled first and therefore rinsed: at its first stop, whose water it takes, or at the shop. */
  readonly rinsedAt: "shop" | "first-stop";
  /** What comes out of a tank that is rinsed at a stop, with what pump and hose held: it rides along from there. */
  readonly rinsate: bigint;
  readonly fills: readonly SizedFill[];
  /** In the tank, after the last stop. */
  readonly left: bigint;
  /** Of this mix in pump and hose, after the last stop. */
  readonly inLine: bigint | "unknown";
  /** Clean water that pushes the mix out of the line at the last stop. */
  readonly pushOut: bigint;
  /** What of that water has to follow at the first stop already, because the mix is less than pump and hose hold. */
  readonly waterBehind: bigint;
  /** Where the truck has no room even for a mark, by its place in the route. */
  readonly noRoomAt: number | null;
  /** How many fills it would take if the truck could carry full tanks; none where the tank holds less than a mark. */
  readonly fillsByTankAlone: number;
  /** Whether the tank is filled first on the road, because the truck has no room for it when it leaves. */
  readonly waitsForRoom: boolean;
}

/** What every run of a plan is sized by. `weights` is what the truck carries on the way to each stop; what is planned is added to it. */
export interface SizingFrame {
  readonly question: TankPlanQuestion;
  readonly weights: bigint[];
}

/** The mix of a run as the next one asks about it. */
export function mixOf({ products, draws }: RunOfMix, name: string): MixInTank {
  const labels = new Map(draws[0]?.treatments.map(({ productId, label }) => [productId, label]));
  return { name, products: products.map((product) => ({ ...product, label: labels.get(product.productId) ?? "unknown" })) };
}

/** Sizes the fills of one run, and says what lies between the mix before and this one. */
export function sizeRun(frame: SizingFrame, run: RunOfMix, before: BeforeRun): SizedRun {
  const { gear } = run;
  const begin = beginOfRun(frame.question, run, before);
  const { toLine, pushOut } = lineOf(frame.question, run, begin);
  carryPushWater(frame, run, before.isFirst, pushOut);
  const rinsing = rinsingOf(frame.question, run, begin, before);
  addWeight(frame.weights, waterWeight(rinsing.rinsate, rational(1n)), run.draws[0]?.stopIndex ?? 0, frame.weights.length);
  const { tankLoads, tankMark } = frame.question.settings;
  const tank = toLastMark(gear.capacity, tankMark);
  const draws = drawsOf(frame, run, before.isFirst, toLine, tank);
  const sizes = sizeFills(draws, { mark: tankMark, most: mostAtDraws(frame, run, draws, tank), already: begin.already }, tankLoads);
  const byTank = frame.question.truck.payload === null ? sizes : sizeFills(draws, { mark: tankMark, most: draws.map(() => tank), already: begin.already }, "full-tanks-then-a-short-one");
  const held = gear.holdUp === "unknown" ? 0n : gear.holdUp.amount;
  const fills = sizes.kind === "sized" ? sizedFills(sizes.fills, draws, { ...before, leavesRest: before.leavesRest && begin.onHand === null }) : [];
  return {
    ...begin,
    ...rinsing,
    run,
    real: realMix(run, fills, begin),
    fills,
    pushOut,
    waterBehind: waterBehind(begin, fills, pushOut),
    inLine: gear.holdUp === "unknown" ? "unknown" : pushOut > 0n ? 0n : held,
    left: sizes.kind === "sized" ? sizes.left : 0n,
    noRoomAt: sizes.kind === "sized" ? null : (draws[sizes.draw]?.stopIndex ?? 0),
    fillsByTankAlone: byTank.kind === "sized" ? byTank.fills.length : 0,
    waitsForRoom: before.isFirst && fills[0]?.isBeforeLeaving === false,
  };
}

/**
 * What fills pump and hose and stays there, and the clean water that pushes the mix out of them instead. Water can't push
 * while a mark or more of the mix is still in the tank: then the line keeps it.
 */
function lineOf({ settings }: TankPlanQuestion, { gear, draws }: RunOfMix, { line, already }: BeginOfRun): { readonly toLine: bigint; readonly pushOut: bigint } {
  const held = gear.holdUp === "unknown" ? 0n : gear.holdUp.amount;
  const toLine = line !== "holds-this-mix" && line !== "runs-on" ? held : 0n;
  const needed = draws.reduce((total, { finished }) => total + finished.amount, toLine);
  const isPushed = settings.lineAtTheEnd === "pushed-out-with-water" && already - needed < amountOfMarks(settings.tankMark, 1n).amount;
  return isPushed ? { toLine: 0n, pushOut: held } : { toLine, pushOut: 0n };
}

/**
 * The mix of a run as its fills are measured out. They run into one another in tank, pump and hose, and into what was in
 * the tank of this very mix: each product counts as strong as in the strongest of them; as planned where nothing is filled.
 */
function realMix(run: RunOfMix, fills: readonly SizedFill[], { onHand }: Pick<SizedRun, "onHand">): MixInTank {
  const planned = mixOf(run, "");
  const filled = fills.flatMap(({ mixed }) => {
    const finished = fromAmount("volume", mixed);
    return mixed === 0n ? [] : [mixInTank({ name: "", finished, products: productsIn(run, finished, toolsOf(run)).map((product) => ({ ...product, label: "unknown" })) })];
  });
  const strongest = strongestOf([...filled, ...(onHand?.fills ?? [])]);
  return { ...planned, products: planned.products.map((product) => ({ ...product, concentration: strongest.get(product.productId) ?? product.concentration })) };
}

/** How strong each product is in the strongest of several fillings of one mix, as far as it is known. */
export function strongestOf(mixes: readonly MixInTank[]): ReadonlyMap<string, SprayRate> {
  const strongest = new Map<string, SprayRate>();
  for (const { productId, concentration } of mixes.flatMap(({ products }) => products)) {
    const known = strongest.get(productId);
    if (concentration === "unknown") continue;
    if (known === undefined || isWeaker(known, concentration)) strongest.set(productId, concentration);
  }
  return strongest;
}

/** All that is in the tank after a run since its last clean-out, recorded or planned, the run's own mix first. A rinse thins what was there and leaves it. */
export function contentsAfter({ real, last, below, onHand, isCleanOutOnFile, cleaning }: Pick<SizedRun, "real" | "last" | "below" | "onHand" | "isCleanOutOnFile" | "cleaning">): TankContents {
  if (onHand !== null) return onTopOf(real, onHand.onto);
  return typeof last === "string" || isCleanOutOnFile || cleaning === "clean-out" ? [real] : onTopOf(real, [last, ...below]);
}

/** What pump and hose hold more than there is of a mix that has to come through them; nothing where they hold it already or no fill was sized. */
function waterBehind({ line, already }: BeginOfRun, fills: readonly SizedFill[], pushOut: bigint): bigint {
  if (line === "holds-this-mix" || line === "runs-on" || fills.length === 0) return 0n;
  const short = fills.reduce((rest, { mixed }) => rest - mixed, pushOut - already);
  return short > 0n ? short : 0n;
}

/**
 * The rinse before a run and what is aboard after it. A tank is rinsed where it is filled next: at the shop, or at a stop with
 * water, so that no water for it rides along; at a stop what comes out has to ride on. What is left of a mix by a mark of the
 * gauge or more is taken to the shop, where the tank is rinsed then.
 */
function rinsingOf({ stops, settings }: TankPlanQuestion, { gear, draws }: RunOfMix, { last, change, line, isCleanOutOnFile, onHand }: BeginOfRun, { isFirst, leavesRest }: BeforeRun): Pick<SizedRun, "cleaning" | "rinse" | "rinsedAt" | "rinsate"> {
  // Where the crew filled the tank for it already, what came before that is done or left undone.
  const cleaning = onHand !== null ? "none" : last === "unknown" ? "clean-out" : (change?.cleaning ?? "none");
  const rinse = cleaning === "none" || isCleanOutOnFile ? null : rinseOf(gear, cleaning, settings.tankMark);
  if (isFirst || leavesRest || !hasWater(stops[draws[0]?.stopIndex ?? 0])) return { cleaning, rinse, rinsedAt: "shop", rinsate: 0n };
  const flushed = line === "flushed" && gear.holdUp !== "unknown" ? gear.holdUp.amount : 0n;
  return { cleaning, rinse, rinsedAt: "first-stop", rinsate: flushed + (rinse?.water.amount ?? 0n) };
}

/** Where the last stop has no water, what pushes the mix out rides along from the run's first fill on. */
function carryPushWater({ question: { stops }, weights }: SizingFrame, { draws }: RunOfMix, isFirst: boolean, pushOut: bigint): void {
  const last = draws.at(-1)?.stopIndex ?? 0;
  if (pushOut === 0n || hasWater(stops[last])) return;
  addWeight(weights, waterWeight(pushOut, rational(1n)), isFirst ? 0 : (draws[0]?.stopIndex ?? 0), last + 1);
}

interface OwnedDraw extends TankDraw {
  readonly stopIndex: number;
  readonly of: DrawOfStop | "none";
  /** What of it fills pump and hose before anything reaches the lawn. */
  readonly toLine: bigint;
}

/** The draws of a run with nothing drawn at the stops between them, because the tank rides past those too. */
function drawsOf({ question: { stops } }: SizingFrame, { draws }: RunOfMix, isFirst: boolean, lineVolume: bigint, tank: bigint): readonly OwnedDraw[] {
  const owned: OwnedDraw[] = [];
  let reached = isFirst ? 0 : (draws[0]?.stopIndex ?? 0);
  for (const [index, draw] of draws.entries()) {
    for (; reached < draw.stopIndex; reached += 1) owned.push({ stopIndex: reached, of: "none", toLine: 0n, volume: 0n, mayBeInterrupted: false });
    reached = draw.stopIndex + 1;
    const toLine = index === 0 ? lineVolume : 0n;
    const volume = draw.finished.amount + toLine;
    owned.push({ stopIndex: draw.stopIndex, of: draw, toLine, volume, mayBeInterrupted: hasWater(stops[draw.stopIndex]) || volume > tank });
  }
  return owned;
}

/** Whether a tank can be filled at a stop; not where nobody knows. */
export function hasWater(stop: TreatedStop | undefined): boolean {
  return stop?.water === "yes";
}

/** What a tank may hold on the way to each draw: its size, or less where the truck may carry no more. */
function mostAtDraws({ weights, question: { truck } }: SizingFrame, { products }: RunOfMix, draws: readonly OwnedDraw[], tank: bigint): readonly bigint[] {
  const { payload } = truck;
  if (payload === null) return draws.map(() => tank);
  const most = payload.amount - weightStaying(truck);
  const share = waterShareOf(products);
  return draws.map(({ stopIndex }) => {
    const within = sprayWithin(most - (weights[stopIndex] ?? 0n), share);
    return within === undefined || within > tank ? tank : within;
  });
}

/** The fills as the route has them. What fills the line is the first of the first draw, and of more than one fill where one is not enough. */
function sizedFills(fills: readonly FillSize[], draws: readonly OwnedDraw[], { isFirst, leavesRest }: BeforeRun): readonly SizedFill[] {
  let toFill = draws.reduce((total, { toLine }) => total + toLine, 0n);
  return fills.map(({ madeAt, mixed, parts }, index) => {
    let toLine = 0n;
    const served = parts.flatMap(({ draw, volume }) => {
      const { of, stopIndex } = draws[draw] ?? { of: "none", stopIndex: 0 };
      if (of === "none") return [];
      const first = toFill < volume ? toFill : volume;
      toFill -= first;
      toLine += first;
      return first === volume ? [] : [{ stopIndex, visitId: of.visitId, volume: volume - first }];
    });
    return {
      mixed,
      toLine,
      parts: served,
      beginsAt: served[0]?.stopIndex ?? draws[parts[0]?.draw ?? 0]?.stopIndex ?? 0,
      isMidway: index > 0 && fills[index - 1]?.parts.at(-1)?.draw === parts[0]?.draw,
      isBeforeLeaving: isFirst && index === 0 && madeAt === 0,
      emptiesAtShop: leavesRest && index === 0,
    };
  });
}
