import { type Finding } from "#domain/foundation/finding";
import { fromAmount, type Quantity, sum } from "#domain/quantities/quantity";
import { addUpFill, type FillAddedUp, fillDifference } from "#domain/mixing/tank-day";
import { lotsLeftIn, type LotInFill } from "#domain/mixing/tank-fill";

/** What a visit took of a fill, and when the visit ended, in milliseconds since 1970. */
export interface DrawInBooks {
  readonly visitId: string;
  readonly sprayed: Quantity<"volume">;
  readonly endedAt: number;
  /** The rest whose missing spray it explains, where it was written down after the tank had been measured; null: out of the tank. */
  readonly fillRestId: string | null;
}

/** What was found left of a fill when its tank was measured or cleaned out. From then on the books follow it. */
export interface RestOfFill {
  readonly fillRestId: string;
  /** Milliseconds since 1970. */
  readonly settledAt: number;
  readonly inTheBooks: Quantity<"volume">;
  readonly left: Quantity<"volume">;
}

/** A fill of a tank with everything that happened to it since. */
export interface FillInBooks {
  readonly fillId: string;
  readonly number: number;
  /** Milliseconds since 1970. */
  readonly filledAt: number;
  readonly finished: Quantity<"volume">;
  readonly lots: readonly LotInFill[];
  readonly draws: readonly DrawInBooks[];
  /** The first one first; none while the tank was neither measured nor cleaned out since. */
  readonly rests: readonly RestOfFill[];
  /** Everything that went in was carried out of the tank by hand. */
  readonly isPostedAway: boolean;
}

/** Sorts fills of a tank in the order in which they were made: the minute, then the number. */
export function inFillingOrder(one: Pick<FillInBooks, "filledAt" | "number">, other: Pick<FillInBooks, "filledAt" | "number">): number {
  return one.filledAt - other.filledAt || one.number - other.number;
}

/**
 * How much of a fill is gone from its tank by some moment (milliseconds since 1970), in canonical units: what was
 * drawn, or what was gone when the tank was measured and what was drawn since. Below nothing where more was found in
 * the tank than ever went in, above the fill where more was sprayed than it held.
 */
export function goneBy({ finished, draws, rests }: FillInBooks, until: number): bigint {
  const rest = rests.at(-1);
  const since = sprayedIn(draws.filter(({ endedAt }) => endedAt <= until && (rest === undefined || endedAt > rest.settledAt)));
  return since.amount + (rest === undefined ? 0n : finished.amount - rest.left.amount);
}

function sprayedIn(draws: readonly DrawInBooks[]): Quantity<"volume"> {
  return sum("volume", draws.map(({ sprayed }) => sprayed));
}

/** What is left of a fill by the books at some moment (milliseconds since 1970), never below nothing. */
export function leftBy(fill: FillInBooks, until: number): Quantity<"volume"> {
  const left = fill.finished.amount - goneBy(fill, until);
  return fromAmount("volume", fill.isPostedAway || left < 0n ? 0n : left);
}

/** Where the spray of a visit came from by the books. */
export interface SourceOfDraw {
  /**
   * Out of the tank; or, where the tank was measured or cleaned out after the visit, out of what was missing the first time
   * after it, up to so much: a visit written down late explains a part of that.
   */
  readonly from: "tank" | { readonly fillRestId: string; readonly missing: Quantity<"volume"> };
  /** What was gone before it, for the running total: below nothing as in {@link goneBy}. */
  readonly drawn: { readonly dimension: "volume"; readonly amount: bigint };
}

/**
 * Where a draw of a visit that ended at this moment (milliseconds since 1970) comes from, when it is written down now.
 */
export function sourceOfDraw(fill: FillInBooks, endedAt: number): SourceOfDraw {
  const next = fill.rests.findIndex(({ settledAt }) => settledAt >= endedAt);
  const rest = fill.rests[next];
  if (rest === undefined) return { from: "tank", drawn: { dimension: "volume", amount: goneBy(fill, Infinity) } };
  // What was found before the visit still counts: it can't have taken what was not there any more.
  const drawn = { dimension: "volume" as const, amount: goneBy({ ...fill, rests: fill.rests.slice(0, next) }, rest.settledAt) };
  const explained = sprayedIn(fill.draws.filter(({ fillRestId }) => fillRestId === rest.fillRestId));
  const missing = rest.inTheBooks.amount - rest.left.amount - explained.amount;
  return { from: { fillRestId: rest.fillRestId, missing: fromAmount("volume", missing < 0n ? 0n : missing) }, drawn };
}

/** How a fill adds up with what was found of it; a difference that was posted asks for nothing more. */
export function addUpInBooks(fill: FillInBooks): FillAddedUp {
  const name = `fill ${String(fill.number)}`;
  const left = leftBy(fill, Infinity);
  const rest = fill.rests.at(-1);
  if (rest === undefined) {
    const added = addUpFill({ ...fill, name }, fill.draws, "not-measured");
    return { ...added, left };
  }
  return { ...addUpFill({ ...fill, name }, fill.draws, left), findings: drawnAboveRest(fill, name) };
}

/** What was drawn of a fill since its tank was measured, as far as it is more than was found then. */
function drawnAboveRest(fill: FillInBooks, name: string): readonly Finding[] {
  const excess = goneBy(fill, Infinity) - fill.finished.amount;
  return excess <= 0n ? [] : fillDifference(name, { kind: "excess", volume: fromAmount("volume", excess) });
}

/** One fill as a reading or a clean-out leaves it. */
export interface FillSettled {
  readonly fillId: string;
  readonly number: number;
  readonly inTheBooks: Quantity<"volume">;
  readonly left: Quantity<"volume">;
}

/** A tank as a reading or a clean-out leaves it. */
export interface TankSettled {
  /** What the books had in it at that moment. */
  readonly inTheBooks: Quantity<"volume">;
  /** The fills that it concerns, the first one first. */
  readonly fills: readonly FillSettled[];
  /** What was found in a tank that by the books holds no fill: nobody knows of what, or the water of a clean-out. */
  readonly ofNoFill: Quantity<"volume">;
  /** What of each lot was in the tank at that moment by what was found. */
  readonly lotsThen: readonly LotInFill[];
  /** What of each lot has to be in the tank now, with what was filled in and drawn since. */
  readonly lotsNow: readonly LotInFill[];
  /** The same by the books as they are before this is written. */
  readonly lotsBefore: readonly LotInFill[];
  /** The tank was filled at or after that moment. */
  readonly isFilledSince: boolean;
}

/**
 * What a tank holds after somebody measured it, or emptied it, at some moment. One in the same minute as a fill came before
 * it. Nobody can tell the fills in a tank apart: what is missing is missing from the first one first, since what was filled
 * in last is what the tank holds, and what is there beyond the books is of the last one, at its mix. A tank that was cleaned
 * out and not filled since holds no fill.
 * @param at milliseconds since 1970, not before the latest rest of these fills
 */
export function settleTank(fills: readonly FillInBooks[], at: number, found: Quantity<"volume">, isClean: boolean): TankSettled {
  const own = fills.filter(({ filledAt }) => filledAt < at).toSorted(inFillingOrder);
  const books = own.map((fill) => ({ fill, inTheBooks: leftBy(fill, at) }));
  const inTheBooks = books.reduce((total, one) => total + one.inTheBooks.amount, 0n);
  const ofFills = isClean ? 0n : found.amount;
  let missing = inTheBooks > ofFills ? inTheBooks - ofFills : 0n;
  const excess = ofFills > inTheBooks ? ofFills - inTheBooks : 0n;
  const settled = books.map(({ fill, inTheBooks: had }, index) => {
    const gone = had.amount < missing ? had.amount : missing;
    missing -= gone;
    const left = fromAmount("volume", had.amount - gone + (index === books.length - 1 ? excess : 0n));
    const after: FillInBooks = { ...fill, isPostedAway: false, rests: [...fill.rests, { fillRestId: "", settledAt: at, inTheBooks: had, left }] };
    return { fill, had, left, after };
  });
  const since = fills.filter(({ filledAt }) => filledAt >= at);
  const isKnown = ({ fill, had, left }: (typeof settled)[number]) => fill.rests.length > 0 && had.amount === 0n && left.amount === 0n;
  return {
    inTheBooks: fromAmount("volume", inTheBooks),
    fills: settled.filter((one) => !isKnown(one)).map(({ fill, had, left }) => ({ fillId: fill.fillId, number: fill.number, inTheBooks: had, left })),
    ofNoFill: fromAmount("volume", isClean || own.length === 0 ? found.amount : 0n),
    lotsThen: sumOfLots(settled.map(({ after }) => lotsLeftIn(after, goneBy(after, at)))),
    lotsNow: sumOfLots([...settled.map(({ after }) => lotsInTank(after)), ...since.map(lotsInTank)]),
    lotsBefore: sumOfLots(fills.map(lotsInTank)),
    isFilledSince: since.length > 0,
  };
}

/** What of each lot of a fill is in its tank now by the books. */
export function lotsInTank(fill: FillInBooks): readonly LotInFill[] {
  return fill.isPostedAway ? [] : lotsLeftIn(fill, goneBy(fill, Infinity));
}

/** Lots together: what came in several parts is one lot. */
export function sumOfLots(lots: readonly (readonly LotInFill[])[]): readonly LotInFill[] {
  const sums = new Map<string, bigint>();
  for (const { lotId, amount } of lots.flat()) sums.set(lotId, (sums.get(lotId) ?? 0n) + amount);
  return [...sums].map(([lotId, amount]) => ({ lotId, amount }));
}
