import { type CalendarDate } from "#domain/foundation/calendar-date";
import { accept, type Outcome, refuse } from "#domain/foundation/outcome";
import { type Quantity } from "#domain/quantities/quantity";
import { type Dimension } from "#domain/quantities/units";
import { type AmountOfLot } from "#domain/stock/posting";

/** A lot at one location, as far as the order of taking depends on it. */
export interface LotOnHand {
  readonly lotId: string;
  readonly expiresOn: CalendarDate | null;
  /** Which lot came first, as any number that grows with time. */
  readonly receivedOrder: number;
  /** Canonical units; below zero where more was used than the books had. */
  readonly amount: bigint;
}

/** More is wanted than is there. */
export interface TooLittle {
  readonly kind: "too-little";
  readonly missing: Quantity<Dimension>;
}

/** The order in which lots are taken: the first to expire first, those without an expiry last, else as they came. */
export function inTakingOrder<Lot extends LotOnHand>(lots: readonly Lot[]): readonly Lot[] {
  return [...lots].sort((left, right) => {
    if (left.expiresOn !== right.expiresOn) {
      if (left.expiresOn === null) return 1;
      if (right.expiresOn === null) return -1;
      return left.expiresOn < right.expiresOn ? -1 : 1;
    }
    return left.receivedOrder - right.receivedOrder;
  });
}

/**
 * Which lots to take for an amount: first expired, first out. Lots with nothing left, or below zero, give nothing.
 * Refuses ("too-little") with what is missing when all of them together are too little. An expired lot is still taken
 * first: whether it may be used at all is for the label and the person to say, and is shown where it is planned.
 */
export function takeFirstExpired<D extends Dimension>(
  lots: readonly LotOnHand[],
  wanted: Quantity<D>,
): Outcome<readonly AmountOfLot[], TooLittle> {
  const taken: AmountOfLot[] = [];
  let missing = wanted.amount;
  for (const lot of inTakingOrder(lots)) {
    if (missing === 0n) break;
    if (lot.amount <= 0n) continue;
    const amount = lot.amount < missing ? lot.amount : missing;
    taken.push({ lotId: lot.lotId, quantity: { dimension: wanted.dimension, amount } });
    missing -= amount;
  }
  if (missing > 0n) return refuse({ kind: "too-little", missing: { dimension: wanted.dimension, amount: missing } });
  return accept(taken);
}
