import { canonicalAmountOf, type Measure } from "#domain/quantities/exact-quantity";
import { fromAmount, largest, type Quantity, smallest } from "#domain/quantities/quantity";
import { addRational, compareRational, divideRational, multiplyRational, type Rational, rational, roundToWhole, subtractRational, ZERO } from "#domain/quantities/rational";
import { amountOfMarks } from "#domain/quantities/rounding";
import { type ProductRate, type SprayRate } from "#domain/label/label-facts";
import { type DrawOfStop } from "#domain/mixing/tank-runs";
import { type TicketSprayer } from "#domain/mixing/ticket-question";

/** The water that a tank is rinsed with: how many times, each time how much, and all of it. */
export interface Rinse {
  readonly times: number;
  readonly waterEach: Quantity<"volume">;
  readonly water: Quantity<"volume">;
}

/** A tenth of the tank, run through pump and hose: common practice for clean-outs, from memory. */
const PART_OF_TANK = rational(1n, 10n);
/** A rinse thins what stays behind; three of them are a clean-out. Common practice, from memory; a label's own way wins. */
const RINSES = { rinse: 1, "clean-out": 3 } as const;

/**
 * The water for a rinse or a clean-out: each time a tenth of the tank or, where pump and hose hold more, as much as
 * they hold, up to the gauge's next mark and never more than the tank. What pump and hose hold must have been measured:
 * with an unknown hold-up the tenth stands and may not reach the tip, which the ticket's own check says. Common
 * practice, from memory.
 */
export function rinseOf({ capacity, holdUp }: Pick<TicketSprayer, "capacity" | "holdUp">, cleaning: "rinse" | "clean-out", tankMark: Measure<"volume">): Rinse {
  const tenth = fromAmount("volume", roundToWhole(multiplyRational(rational(capacity.amount), PART_OF_TANK), "up"));
  const wanted = holdUp === "unknown" ? tenth : largest(tenth, holdUp);
  const marks = roundToWhole(divideRational(rational(wanted.amount), canonicalAmountOf(tankMark)), "up");
  const waterEach = smallest(amountOfMarks(tankMark, marks), capacity);
  const times = RINSES[cleaning];
  return { times, waterEach, water: fromAmount("volume", waterEach.amount * BigInt(times)) };
}

/** One stop that a mix is sprayed at, with what may still be sprayed of it there. */
export interface SiteForRinsate {
  readonly visitId: string;
  /** In finished spray of this mix. */
  room: bigint;
}

/** What of another mix comes out of pump and hose at a stop before its own does, and how strong each product is in it. */
export interface RunOnFirst {
  readonly volume: bigint;
  readonly strengths: ReadonlyMap<string, SprayRate>;
}

/**
 * How much more of a mix, as finished spray, the ground of a stop may get within the label's highest rates: what those
 * allow there, less what went down already, over how strong the mix is; the least of its products. It counts with what is
 * really in the tank, which marks of a tool can make stronger than the plan. A stop where the highest rates would pass a
 * season's limit or the law's nitrogen or phosphate has room up to the plan at the most: its treatments come with the
 * planned rate for their highest (treatmentsForRounding).
 *
 * @param strengths of the mix, by product
 * @param first what the stop gets in place of so much of the mix; null where the mix comes at once
 */
export function roomAtStop({ finished, ground, treatments }: Pick<DrawOfStop, "finished" | "ground" | "treatments">, strengths: ReadonlyMap<string, SprayRate>, first: RunOnFirst | null): bigint {
  const rooms = treatments.map(({ productId, rate, use }) => {
    const high: ProductRate = use.rates.high;
    const strength = strengthIn(strengths, productId);
    if (high.basis !== rate.basis || strength.numerator === 0n) return ZERO;
    const own = multiplyRational(strength, rational(finished.amount - (first?.volume ?? 0n)));
    const down = first === null ? own : addRational(own, multiplyRational(strengthIn(first.strengths, productId), rational(first.volume)));
    return divideRational(subtractRational(rational(high.amount * ground.amount, high.per), down), strength);
  });
  const least = rooms.reduce((one, other) => (compareRational(other, one) < 0 ? other : one), rooms[0] ?? ZERO);
  return compareRational(least, ZERO) <= 0 ? 0n : roundToWhole(least, "down");
}

function strengthIn(strengths: ReadonlyMap<string, SprayRate>, productId: string): Rational {
  const strength = strengths.get(productId);
  return strength === undefined ? ZERO : rational(strength.amount, strength.per);
}

/** Where what is left of a mix goes with its rinse water. */
export interface RinsateWay {
  /** Stops that this mix is labeled for and that have room within its rates, with how much of the undiluted mix each may get. */
  readonly sites: readonly { readonly visitId: string; readonly mix: Quantity<"volume"> }[];
  /** What no stop has room for, of the undiluted mix: to the shop's rinsate tank. */
  readonly toShop: Quantity<"volume">;
}

/**
 * Shares what is left of a mix out over the stops that still have room for it, from the given one on; what a stop takes is
 * taken from its room, so that no two rinses count on the same ground. `cursor` moves on past the stops that are full.
 */
export function placeRinsate(left: bigint, sites: readonly SiteForRinsate[], cursor: { at: number }): RinsateWay {
  const taken: { readonly visitId: string; readonly mix: Quantity<"volume"> }[] = [];
  let rest = left;
  while (rest > 0n) {
    const site = sites[cursor.at];
    if (site === undefined) break;
    const part = site.room < rest ? site.room : rest;
    if (part > 0n) taken.push({ visitId: site.visitId, mix: fromAmount("volume", part) });
    site.room -= part;
    rest -= part;
    if (rest > 0n) cursor.at += 1;
  }
  return { sites: taken, toShop: fromAmount("volume", rest) };
}
