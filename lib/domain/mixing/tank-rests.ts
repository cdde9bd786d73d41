import { isMoreThanPercent } from "#domain/equipment/repeats";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { rational } from "#domain/quantities/rational";
import { amountOfMarks } from "#domain/quantities/rounding";
import { isSameMix } from "#domain/mixing/mix-change";
import { type FilledLater, type HeldMix, type LastHeld, type RestInTank, type TankPlanSettings } from "#domain/mixing/tank-plan-question";
import { finestTools } from "#domain/mixing/measuring-tool";
import { NEAR_ENOUGH_PERCENT } from "#domain/mixing/rounded-rate";
import { type RunOfMix } from "#domain/mixing/tank-runs";
import { type TicketTool } from "#domain/mixing/ticket-question";

/** What a tank holds by the books when a run begins. */
export interface RestsAtBegin {
  /** The fills of the run's own mix that are on top, the latest first: of these its stops are sprayed first. */
  readonly own: readonly RestInTank[];
  /** How much that is together; unknown while one of them is, or where the books have more than the tank can hold. */
  readonly already: Quantity<"volume"> | "unknown" | "more-than-it-holds";
  /** The other mixes that are in it, or may be, the latest first. */
  readonly others: readonly RestInTank[];
}

/** What a tank holds in the morning, and what was filled in since that day for some of its runs. */
export interface MorningOfTank {
  readonly held: LastHeld;
  readonly later: readonly FilledLater[];
}

/** The tool by which a product of the run is measured: the finest of those that its visits take for it. */
export function toolsOf({ draws }: Pick<RunOfMix, "draws">): (productId: string) => TicketTool | undefined {
  return finestTools(draws.flatMap(({ treatments }) => treatments));
}

/**
 * How a tank's day begins. A fill that was made that day for visits of which none is sprayed out of this tank any more is
 * what the tank holds from the beginning, on top of all others.
 */
export function morningOf(held: LastHeld, runs: readonly Pick<RunOfMix, "draws">[]): MorningOfTank {
  if (typeof held === "string" || held.later === undefined) return { held, later: [] };
  const { later } = held;
  const last = later.at(-1);
  if (last === undefined || later.every((one) => runs.some((run) => isFor(one, run)))) return { held, later };
  return { held: { ...last, under: [...later.slice(0, -1).toReversed(), held, ...(held.under ?? [])] }, later: [] };
}

/** Whether a fill was made for one of a run's visits. */
export function isFor({ visitIds }: FilledLater, { draws }: Pick<RunOfMix, "draws">): boolean {
  return draws.some(({ visitId }) => visitIds.includes(visitId));
}

/** The house's mark of the gauge, of which less can't be told from nothing. */
type Gauge = Pick<TankPlanSettings, "tankMark">;

/** The fills in a tank, the latest first. Of an earlier one that has less than a mark of the gauge by the books nothing counts as there: many of them would add up to what nobody finds. */
function layersOf(held: HeldMix, { tankMark }: Gauge): readonly RestInTank[] {
  const mark = amountOfMarks(tankMark, 1n).amount;
  return [held, ...(held.under ?? []).map((one) => (one.left !== "unknown" && one.left.amount < mark ? { ...one, left: fromAmount("volume", 0n) } : one))];
}

/**
 * What is in a tank for a run: of its own mix all fills on top, whichever of them were measured, for they run together; what
 * is under another mix can't be had. Fills that come to more than tank and line hold together by no more than the gauge may be
 * wrong are a full tank, and by more an error of the books; those that were made for the run since went in as the ones before
 * were sprayed.
 * @param held what the tank holds before the day's first run; null for any other run
 * @param made the fills that the crew made for this run, in their order
 */
export function restsAtBegin(held: HeldMix | null, made: readonly FilledLater[], run: Pick<RunOfMix, "gear" | "products" | "draws">, gauge: Gauge): RestsAtBegin {
  const layers = [...made.toReversed(), ...(held === null ? [] : layersOf(held, gauge))];
  const firstOther = layers.findIndex((one) => !isSameMix(one, run.products, toolsOf(run)));
  const own = firstOther < 0 ? layers : layers.slice(0, firstOther);
  const inMorning = leftTogether(own.slice(made.length), run.gear, gauge);
  const since = leftOfAll(own.slice(0, made.length));
  const already = inMorning === "more-than-it-holds" || inMorning === "unknown" ? inMorning : since === "unknown" ? since : fromAmount("volume", inMorning.amount + since.amount);
  return { own, already, others: layers.slice(own.length) };
}

/** By how many marks of the gauge several fills together may be wrong: each was read before and after. A house rule. */
const MARKS_OFF = 3n;

function leftTogether(together: readonly RestInTank[], { capacity, holdUp }: RunOfMix["gear"], { tankMark }: Gauge): RestsAtBegin["already"] {
  const left = leftOfAll(together);
  const most = capacity.amount + (holdUp === "unknown" ? 0n : holdUp.amount);
  if (together.length < 2 || left === "unknown" || left.amount <= most) return left;
  const excess = left.amount - most;
  const isOffByGauge = excess <= amountOfMarks(tankMark, MARKS_OFF).amount || !isMoreThanPercent(rational(excess, most), NEAR_ENOUGH_PERCENT);
  return isOffByGauge ? fromAmount("volume", most) : "more-than-it-holds";
}

/** Where a fill that was made already goes into the tank, by the place of the stop in the route. */
export interface FilledAlong {
  readonly stopIndex: number;
  readonly volume: bigint;
}

/**
 * Where the crew filled in what they made for a run since: where what was in the tank does no more for the next stop, with
 * what may go into pump and hose; where it does for all of them, at the first of the fill's own stops.
 * @param made the run's own mix, in the order in which it was made
 */
export function filledAlong({ draws, gear: { holdUp } }: Pick<RunOfMix, "draws" | "gear">, inMorning: bigint, made: readonly FilledLater[]): readonly FilledAlong[] {
  let aboard = inMorning;
  return made.map(({ left, visitIds }) => {
    let taken = holdUp === "unknown" ? 0n : holdUp.amount;
    const short = draws.findIndex(({ finished }) => (taken += finished.amount) > aboard);
    const at = short >= 0 ? short : draws.findIndex(({ visitId }) => visitIds.includes(visitId));
    const volume = left === "unknown" ? 0n : left.amount;
    aboard += volume;
    return { stopIndex: draws[at]?.stopIndex ?? 0, volume };
  });
}

/** All that is in a tank by the books, of whatever mixes, and what was filled in since. */
export function allIn(held: HeldMix, gauge: Gauge): Quantity<"volume"> | "unknown" {
  return leftOfAll([...(held.later ?? []), ...layersOf(held, gauge)]);
}

/** What is left of several mixes together; unknown as soon as one of them is. */
export function leftOfAll(rests: readonly RestInTank[]): Quantity<"volume"> | "unknown" {
  let total = 0n;
  for (const { left } of rests) {
    if (left === "unknown") return "unknown";
    total += left.amount;
  }
  return fromAmount("volume", total);
}
