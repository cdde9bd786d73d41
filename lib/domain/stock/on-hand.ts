import { type EntryOfStock, holdsStock, type LocationKind } from "#domain/stock/posting";

/** How much of a lot the entries leave at a location, in canonical units; below zero where more left than came. */
export interface Balance {
  readonly lotId: string;
  readonly stockLocationId: string;
  readonly amount: bigint;
}

/** Every balance worked out anew from the entries, those at zero too: what the kept balances are held against. */
export function balancesOf(entries: readonly EntryOfStock[]): readonly Balance[] {
  const balances = new Map<string, Balance>();
  for (const { lotId, stockLocationId, amount } of entries) {
    const key = `${lotId} ${stockLocationId}`;
    balances.set(key, { lotId, stockLocationId, amount: (balances.get(key)?.amount ?? 0n) + amount });
  }
  return [...balances.values()];
}

/** The sum of balances. */
export function totalOf(balances: readonly Pick<Balance, "amount">[]): bigint {
  return balances.reduce((sum, { amount }) => sum + amount, 0n);
}

/** The balances that a posting would leave below zero. A planned movement is refused for them; a fact is not. */
export function leftBelowZero(before: readonly Balance[], entries: readonly EntryOfStock[]): readonly Balance[] {
  const leaving = new Set(entries.filter(({ amount }) => amount < 0n).map((entry) => `${entry.lotId} ${entry.stockLocationId}`));
  return balancesOf([...before, ...entries]).filter((balance) => balance.amount < 0n && leaving.has(`${balance.lotId} ${balance.stockLocationId}`));
}

/** An entry of one product with where and when it happened. */
export interface DatedEntry {
  readonly amount: bigint;
  readonly locationKind: LocationKind;
  readonly happenedAt: Date;
}

/** opening + received - used - waste - difference = closing, in canonical units of the product. */
export interface PeriodBalance {
  readonly opening: bigint;
  /** What came from suppliers, less what went back to them. */
  readonly received: bigint;
  /** What went onto lawns. */
  readonly used: bigint;
  /** What was lost or rinsed out. */
  readonly waste: bigint;
  /** What counts found missing; below zero where they found more. */
  readonly difference: bigint;
  readonly closing: bigint;
}

/**
 * The balance of a product over a period, from all of its entries: from `from` on and before `until`. Opening and
 * closing are what shop, trucks and tanks held then.
 */
export function balanceOfPeriod(entries: readonly DatedEntry[], from: Date, until: Date): PeriodBalance {
  const within = entries.filter(({ happenedAt }) => happenedAt >= from && happenedAt < until);
  const sumOf = (some: readonly DatedEntry[], isCounted: (kind: LocationKind) => boolean) =>
    totalOf(some.filter(({ locationKind }) => isCounted(locationKind)));
  return {
    opening: sumOf(entries.filter(({ happenedAt }) => happenedAt < from), holdsStock),
    received: -sumOf(within, (kind) => kind === "supplier"),
    used: sumOf(within, (kind) => kind === "lawn"),
    waste: sumOf(within, (kind) => kind === "loss" || kind === "rinsate"),
    difference: sumOf(within, (kind) => kind === "count-difference"),
    closing: sumOf(entries.filter(({ happenedAt }) => happenedAt < until), holdsStock),
  };
}
