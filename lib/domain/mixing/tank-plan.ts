import { groupedBy } from "#domain/foundation/grouping";
import { invariant } from "#domain/foundation/invariant";
import { fromAmount, ratio } from "#domain/quantities/quantity";
import { rational, toNumber } from "#domain/quantities/rational";
import { amountOfMarks } from "#domain/quantities/rounding";
import { roundedInFill } from "#domain/mixing/fill-rounding";
import { mixesOfRoute } from "#domain/mixing/mixes-of-route";
import { type BeforeRun } from "#domain/mixing/begin-of-run";
import { contentsAfter, type SizedFill, type SizedRun, type SizingFrame, sizeRun } from "#domain/mixing/sized-run";
import { mixFill, underAMark } from "#domain/mixing/tank-fill";
import { levelsAlong, type TankAction, type TankLevel } from "#domain/mixing/tank-levels";
import { type AboardAtStop, type FillOfRoute, type FillPlace, type TankPlan } from "#domain/mixing/tank-plan-answer";
import { type LastHeld, type TankPlanQuestion, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { allIn, isFor, morningOf, restsAtBegin, toolsOf } from "#domain/mixing/tank-rests";
import { rinsateAlong } from "#domain/mixing/rinsate-aboard";
import { type RunOfMix, runsOfTanks } from "#domain/mixing/tank-runs";
import { addWeight, checkPayload, type HeaviestLoad, unweighedRests, waterShareOf, waterWeight } from "#domain/mixing/truck-weight";
import { type TicketSprayer } from "#domain/mixing/ticket-question";

/** The runs of one sprayer with what is in its tank at every stop. */
export interface PlannedTank {
  readonly gear: TicketSprayer;
  readonly runs: readonly SizedRun[];
  readonly levels: readonly TankLevel[];
  /** By run, the rinsate that is aboard when it ends. */
  readonly rinsateAtEnds: readonly bigint[];
}

/**
 * The tank plan of a truck's route: which fill serves which stops and how much of it is mixed (see sizeFills), where
 * each tank is filled (first at the shop, later where there is water, else back at the shop; there too where a mark or more of
 * another mix is still in it), what is in it at every
 * stop, what lies between two mixes, and what the truck weighs. A run's mix is what the ground of its stops takes, plus
 * what stays in the line where nothing pushes it out; only the fill is rounded to the gauge. Of several tanks the one
 * used first gets the room on the truck. Throws unless the load is known at every stop.
 */
export function planTanks(question: TankPlanQuestion): TankPlan {
  // Spray volume out of the tank is spray volume on the lawns: what pump and hose hold only decides which mix a lawn gets first.
  const { stops, truck, dryWeights } = question;
  invariant(dryWeights.length === stops.length, "the load is known at every stop");
  const frame: SizingFrame = { question, weights: dryWeights.map(({ amount }) => amount) };
  const runsByTank = runsOfTanks(stops);
  const runsOf = [...runsByTank.values()];
  const unused = question.tanksAboard.filter(({ equipmentId }) => !runsByTank.has(equipmentId));
  for (const { equipmentId } of unused) addUnused(frame, equipmentId);
  for (const runs of runsOf) {
    addRests(frame, runs, 1n);
    addRidingAlong(frame, runs, 1n);
  }
  const tanks = runsOf.map((runs) => planTank(frame, runs));
  const lettered = letters(tanks);
  const heaviest = heaviestOf(frame);
  const lettersOf = lettersOfRuns(lettered);
  const mixes = tanks.flatMap((tank) => mixesOfRoute(question, tank, lettersOf));
  const fills = lettered.map(({ fill, run, letter }) => fillOf(stops, fill, run, letter));
  return {
    fills,
    mixes: mixes.map(({ mix }) => mix),
    aboard: aboardAt(stops, tanks, lettered),
    heaviest,
    found: [...[...checkPayload(heaviest, truck), ...unweighedRests(question, unused)].map((finding) => ({ visitId: null, finding })), ...mixes.flatMap(({ found }) => found), ...lettered.flatMap((one, index) => saidOfFill(one, fills[index]))],
  };
}

/** What a sprayer that no stop uses has in it weighs all day, as far as the books know it. Its mix is taken to weigh what water does (common practice). */
function addUnused({ question: { lastHeld, settings }, weights }: SizingFrame, equipmentId: string): void {
  const held = lastHeld.get(equipmentId);
  const left = held === undefined || typeof held === "string" ? "unknown" : allIn(held, settings);
  if (left === "unknown") return;
  addWeight(weights, waterWeight(left.amount, rational(1n)), 0, weights.length);
}

function planTank(frame: SizingFrame, runs: readonly RunOfMix[]): PlannedTank {
  const { stops, lastHeld } = frame.question;
  const gear = gearOf(runs);
  const { held: inMorning, later } = morningOf(lastHeld.get(gear.equipmentId) ?? "unknown", runs);
  const madeFor = new Map(later.map((one) => [one, runs.find((run) => isFor(one, run))]));
  const sized: SizedRun[] = [];
  let before: BeforeRun = { last: inMorning, below: [], made: [], lineHoldsLast: holdsLastInMorning(frame.question, gear, inMorning), isFirst: true, leavesRest: false };
  addRidingAlong(frame, runs, -1n);
  for (const run of runs) {
    const next = sizeRun(frame, run, { ...before, made: later.filter((one) => madeFor.get(one) === run) });
    sized.push(next);
    before = { last: next.real, below: contentsAfter(next).slice(1), made: [], lineHoldsLast: next.inLine !== 0n, isFirst: false, leavesRest: leavesRest(frame.question, next) };
  }
  const [first] = sized;
  addRests(frame, runs, -1n);
  const { rides, atEnds } = rinsateAlong(sized.map(({ rinsate, fills }) => ({ rinsate, fillsAtShop: fills.filter((fill) => placeOf(stops, fill).at === "shop") })), stops.length);
  for (const { volume, until } of rides) addWeight(frame.weights, -waterWeight(volume, rational(1n)), until, frame.weights.length);
  const levels = levelsAlong(stops.length, first === undefined ? 0n : inMorningOf(first), sized.flatMap((run, index) => actionsOf(stops, run, sized[index - 1])));
  addSpray(frame.weights, sized, levels);
  return { gear, runs: sized, levels, rinsateAtEnds: atEnds };
}

/**
 * Whether pump and hose hold the last mix in the morning: where nothing pushes it out, where nobody knows how much water
 * pushes it out, and while the fill is drawn from for visits that are still to be done. Else the house pushed it out.
 */
function holdsLastInMorning({ settings }: TankPlanQuestion, { holdUp }: TicketSprayer, held: LastHeld): boolean {
  return settings.lineAtTheEnd === "left-as-it-is" || holdUp === "unknown" || (typeof held !== "string" && held.isUnderWay);
}

function gearOf([first]: readonly RunOfMix[]): TicketSprayer {
  invariant(first !== undefined, "a tank is there for a mix");
  return first.gear;
}

/** What of a tank's first mix is in it when the truck leaves. */
function inMorningOf({ already, filledAlong }: SizedRun): bigint {
  return filledAlong.reduce((rest, { volume }) => rest - volume, already);
}

/** What happens to a tank in a run, in order; what the run before left is taken out on the way to it. */
function actionsOf(stops: readonly TreatedStop[], { fills, run, filledAlong }: SizedRun, before: SizedRun | undefined): readonly TankAction[] {
  const begin = run.draws[0]?.stopIndex ?? 0;
  const timeOf = (fill: SizedFill): Pick<TankAction, "stopIndex" | "when"> => {
    const { at } = placeOf(stops, fill);
    const stopIndex = at === "shop-before-leaving" ? 0 : fill.beginsAt;
    return { stopIndex, when: at === "stop" || fill.isMidway || before?.run.draws.at(-1)?.stopIndex === stopIndex ? "at-the-stop" : "on-the-way" };
  };
  const [first] = fills;
  const emptied: readonly TankAction[] = before === undefined ? [] : [{ ...(first === undefined ? { stopIndex: begin, when: "at-the-stop" } : timeOf(first)), change: -before.left }];
  const made = filledAlong.map(({ stopIndex, volume }): TankAction => ({ stopIndex, when: stops[stopIndex]?.water === "yes" || before?.run.draws.at(-1)?.stopIndex === stopIndex ? "at-the-stop" : "on-the-way", change: volume }));
  const actions = [
    ...emptied,
    ...made,
    ...fills.flatMap((fill): readonly TankAction[] => {
      const { stopIndex, when } = timeOf(fill);
      // The line takes the fill's mix where that is made, and what was in the tank before where it is sprayed first.
      const toLine = fill.toLine < fill.mixed ? fill.toLine : fill.mixed;
      return [{ stopIndex, when, change: fill.mixed - toLine }, { stopIndex: fill.beginsAt, when: "at-the-stop", change: toLine - fill.toLine }, ...fill.parts.map(({ stopIndex: place, volume }): TankAction => ({ stopIndex: place, when: "at-the-stop", change: -volume }))];
    }),
  ];
  return actions.toSorted((one, other) => one.stopIndex - other.stopIndex || Number(one.when === "at-the-stop") - Number(other.when === "at-the-stop"));
}

function waterShares(stops: number, runs: readonly SizedRun[]): readonly ReturnType<typeof rational>[] {
  let current = 0;
  return Array.from({ length: stops }, (_unused, index) => {
    while ((runs[current + 1]?.run.draws[0]?.stopIndex ?? Infinity) <= index) current += 1;
    return waterShareOf(runs[current]?.run.products ?? []);
  });
}

/**
 * Keeps room for what is left of each run, or gives it back: less than a mark of the gauge, which rides on from the run's
 * last stop to the next run. A tank that is planned later would find it taken by the ones before.
 */
function addRests({ question: { stops, settings }, weights }: SizingFrame, runs: readonly RunOfMix[], times: 1n | -1n): void {
  const rest = times * waterWeight(amountOfMarks(settings.tankMark, 1n).amount, rational(1n));
  for (const [index, { draws }] of runs.entries()) {
    const until = runs[index + 1]?.draws[0]?.stopIndex ?? stops.length;
    addWeight(weights, rest, (draws.at(-1)?.stopIndex ?? 0) + 1, until);
  }
}

/** Keeps room for what rides in a tank while others are planned, until it is planned itself: of a fill less than a mark past stops that take nothing, and what it held in the morning. */
function addRidingAlong(frame: SizingFrame, runs: readonly RunOfMix[], times: 1n | -1n): void {
  const rest = times * waterWeight(amountOfMarks(frame.question.settings.tankMark, 1n).amount, rational(1n));
  for (const { draws } of runs) {
    for (const [index, { stopIndex }] of draws.slice(1).entries()) addWeight(frame.weights, rest, (draws[index]?.stopIndex ?? 0) + 1, stopIndex);
  }
  addHeld(frame, runs, times);
}

/** Keeps room for what a tank holds of its first mix in the morning, as far as the books know it, until it is drawn; or gives it back. */
function addHeld({ question: { lastHeld, stops, settings }, weights }: SizingFrame, runs: readonly RunOfMix[], times: 1n | -1n): void {
  const [first, next] = runs;
  if (first === undefined) return;
  const { held } = morningOf(lastHeld.get(first.gear.equipmentId) ?? "unknown", runs);
  const already = typeof held === "string" ? "unknown" : restsAtBegin(held, [], first, settings).already;
  if (typeof already === "string") return;
  let [left, from] = [already.amount, 0];
  for (const { stopIndex, finished } of first.draws) {
    addWeight(weights, times * waterWeight(left, waterShareOf(first.products)), from, stopIndex + 1);
    from = stopIndex + 1;
    left = left > finished.amount ? left - finished.amount : 0n;
  }
  addWeight(weights, times * waterWeight(left, waterShareOf(first.products)), from, next?.draws[0]?.stopIndex ?? stops.length);
}

/** Whether so much of a mix is left that it can't be let out on the road. */
function leavesRest({ settings }: TankPlanQuestion, { left }: SizedRun): boolean {
  return left >= amountOfMarks(settings.tankMark, 1n).amount;
}

/** What of a run is left rides on the way to where the next one is filled, and weighs as its own mix does. */
function addSpray(weights: bigint[], runs: readonly SizedRun[], levels: readonly TankLevel[]): void {
  const shares = waterShares(levels.length, runs);
  const restTo = new Map(runs.slice(1).map((run, index) => [run.run.draws[0]?.stopIndex, runs[index]] as const));
  for (const [index, { highest }] of levels.entries()) {
    const before = restTo.get(index);
    const rest = before === undefined ? 0n : waterWeight(before.left, waterShareOf(before.run.products));
    const own = waterWeight(highest, shares[index] ?? rational(1n));
    weights[index] = (weights[index] ?? 0n) + (rest > own ? rest : own);
  }
}

function heaviestOf({ question: { stops }, weights }: SizingFrame): HeaviestLoad {
  const most = weights.reduce((heaviest, weight) => (weight > heaviest ? weight : heaviest), 0n);
  return { weight: fromAmount("mass", most), visitId: most === 0n ? null : (stops[weights.indexOf(most)]?.visitId ?? null) };
}

/** A fill with its letter. */
export interface LetteredFill {
  readonly fill: SizedFill;
  readonly run: SizedRun;
  readonly letter: string;
}

function letters(tanks: readonly PlannedTank[]): readonly LetteredFill[] {
  const all = tanks.flatMap(({ runs }) => runs.flatMap((run) => run.fills.filter(({ mixed }) => mixed > 0n).map((fill) => ({ fill, run }))));
  const turn = ({ isBeforeLeaving }: SizedFill) => (isBeforeLeaving ? 0 : 1);
  return all
    .toSorted((one, other) => turn(one.fill) - turn(other.fill) || one.fill.beginsAt - other.fill.beginsAt)
    .map(({ fill, run }, index) => ({ fill, run, letter: letterOf(index) }));
}

function lettersOfRuns(lettered: readonly LetteredFill[]): ReadonlyMap<SizedRun, readonly string[]> {
  return new Map([...groupedBy(lettered, ({ run }) => run)].map(([run, own]) => [run, own.map(({ letter }) => letter)]));
}

const LETTERS = 26;

function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % LETTERS));
  return index < LETTERS ? last : `${letterOf(Math.floor(index / LETTERS) - 1)}${last}`;
}

function placeOf(stops: readonly TreatedStop[], { isBeforeLeaving, beginsAt, isMidway, emptiesAtShop }: SizedFill): FillPlace {
  if (isBeforeLeaving) return { at: "shop-before-leaving" };
  const stop = stops[beginsAt];
  const visitId = stop?.visitId ?? "";
  return stop?.water === "yes" && !emptiesAtShop ? { at: "stop", visitId, isMidway } : { at: "shop", visitId, isMidway };
}

function fillOf(stops: readonly TreatedStop[], fill: SizedFill, { run }: SizedRun, letter: string): FillOfRoute {
  const finished = fromAmount("volume", fill.mixed);
  return {
    letter,
    finished,
    ...mixFill(run, finished, toolsOf(run)),
    gear: run.gear,
    place: placeOf(stops, fill),
    visitIds: [...new Set(fill.parts.map(({ visitId }) => visitId))],
    parts: fill.parts.map(({ visitId, volume }) => ({ visitId, finished: fromAmount("volume", volume) })),
    toLine: fromAmount("volume", fill.toLine),
  };
}

/** What a fill takes less of than its tool shows, and what marks make of its products, said at the first stop that it concerns. */
function saidOfFill({ fill, run, letter }: LetteredFill, measured: FillOfRoute | undefined): TankPlan["found"] {
  if (measured === undefined) return [];
  const { finished, products, visitIds } = measured;
  const name = `fill ${letter}`;
  const isFirst = run.fills.find(({ mixed }) => mixed > 0n) === fill;
  return [...underAMark(products, name).map((finding) => ({ visitId: visitIds[0] ?? null, finding })), ...roundedInFill(run, { name, finished, products, visitIds }, isFirst)];
}

function aboardAt(stops: readonly TreatedStop[], tanks: readonly PlannedTank[], lettered: readonly LetteredFill[]): readonly AboardAtStop[] {
  const begunAt = groupedBy(lettered, ({ fill }) => fill.beginsAt);
  return stops.map(({ visitId }, index) => {
    const own = tanks.flatMap(({ gear, levels }) => (levels[index] === undefined ? [] : [{ gear, level: levels[index] }]));
    const shares = own.map(({ gear, level }) => Math.min(1, toNumber(ratio(fromAmount("volume", level.highest), gear.capacity))));
    return {
      visitId,
      share: shares.length === 0 ? null : Math.max(...shares),
      letters: begunAt.get(index)?.map(({ letter }) => letter) ?? [],
      tanks: own.map(({ gear, level }) => ({ gearName: gear.name, arrives: fromAmount("volume", level.arrives), leaves: fromAmount("volume", level.leaves) })),
    };
  });
}
