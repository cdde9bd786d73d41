import { invariant } from "#domain/foundation/invariant";
import { type Quantity } from "#domain/quantities/quantity";
import { type Dimension } from "#domain/quantities/units";

/** Why something moved. */
export type PostingKind = "receive" | "move" | "fill" | "apply" | "return" | "lose" | "count";

/** The kinds of locations: the first three hold stock, the others are where it comes from or goes. */
export const LOCATION_KINDS = ["shop", "truck", "tank", "supplier", "lawn", "rinsate", "loss", "count-difference"] as const;
export type LocationKind = (typeof LOCATION_KINDS)[number];

/** True for a location where stock is on hand. */
export function holdsStock(kind: LocationKind): boolean {
  return kind === "shop" || kind === "truck" || kind === "tank";
}

/** One line of a posting: so much of a lot comes to a location, or leaves it (below zero). Canonical units of the product's dimension. */
export interface EntryOfStock {
  readonly lotId: string;
  readonly stockLocationId: string;
  readonly amount: bigint;
  /** Whole cents that one container cost, where a delivery brought it; null or left out where nobody knows. */
  readonly paidPerContainerCents?: bigint | null;
}

/** A movement of stock. What leaves one location comes to another, so that its entries add up to nothing, lot by lot. */
export interface Posting {
  readonly kind: PostingKind;
  readonly entries: readonly EntryOfStock[];
}

/** So much of one lot. */
export interface AmountOfLot {
  readonly lotId: string;
  readonly quantity: Quantity<Dimension>;
}

/** So much of one lot from one location to another. */
export interface Transfer extends AmountOfLot {
  readonly from: string;
  readonly to: string;
}

/** True when the entries add up to nothing for each lot. */
export function isBalanced(entries: readonly EntryOfStock[]): boolean {
  const sums = new Map<string, bigint>();
  for (const { lotId, amount } of entries) sums.set(lotId, (sums.get(lotId) ?? 0n) + amount);
  return [...sums.values()].every((sum) => sum === 0n);
}

/** One entry for each lot and location, those that come to nothing left out. */
function mergeEntries(entries: readonly EntryOfStock[]): readonly EntryOfStock[] {
  const merged = new Map<string, EntryOfStock>();
  for (const entry of entries) {
    const key = `${entry.lotId} ${entry.stockLocationId}`;
    const before = merged.get(key);
    merged.set(key, before === undefined ? entry : { ...entry, amount: before.amount + entry.amount });
  }
  return [...merged.values()].filter(({ amount }) => amount !== 0n);
}

/** Makes the posting of some transfers. Throws when one goes nowhere or when nothing moves at all. */
export function postingOf(kind: PostingKind, transfers: readonly Transfer[]): Posting {
  const entries = transfers.flatMap(({ lotId, quantity, from, to }): readonly EntryOfStock[] => {
    invariant(from !== to, "stock moves from one location to another");
    return [
      { lotId, stockLocationId: from, amount: -quantity.amount },
      { lotId, stockLocationId: to, amount: quantity.amount },
    ];
  });
  const merged = mergeEntries(entries);
  invariant(merged.length > 0, "a posting moves something");
  invariant(isBalanced(merged), "a posting balances");
  return { kind, entries: merged };
}

/** So much of one lot that a delivery brought, with the whole cents that one container cost; null where nobody knows. */
export interface ReceivedLot extends AmountOfLot {
  readonly paidPerContainerCents: bigint | null;
}

/**
 * A delivery: from the supplier to where it is put, each lot once. What was paid stands with what came, not with what
 * left. Throws for a lot that is named twice, and as {@link postingOf} does.
 */
export function receivePosting(supplier: string, to: string, lots: readonly ReceivedLot[]): Posting {
  const paidFor = new Map(lots.map(({ lotId, paidPerContainerCents }) => [lotId, paidPerContainerCents]));
  invariant(paidFor.size === lots.length, "a delivery names each of its lots once");
  const { kind, entries } = postingOf("receive", lots.map(({ lotId, quantity }) => ({ lotId, quantity, from: supplier, to })));
  return { kind, entries: entries.map((entry) => (entry.amount > 0n ? { ...entry, paidPerContainerCents: paidFor.get(entry.lotId) ?? null } : entry)) };
}

/** What is carried from one location to another: shop to truck, and back. Throws as {@link postingOf} does. */
export function movePosting(from: string, to: string, lots: readonly AmountOfLot[]): Posting {
  return postingOf("move", lots.map((lot) => ({ ...lot, from, to })));
}

/**
 * What goes into a tank or hopper; a lot may come from the truck and another from the shop. Throws as {@link postingOf}
 * does.
 */
export function fillPosting(tank: string, lots: readonly (AmountOfLot & { readonly from: string })[]): Posting {
  return postingOf("fill", lots.map((lot) => ({ ...lot, to: tank })));
}

/** What went onto a lawn: out of a tank, or straight from the bag on the truck. Throws as {@link postingOf} does. */
export function applyPosting(lawn: string, lots: readonly (AmountOfLot & { readonly from: string })[]): Posting {
  return postingOf("apply", lots.map((lot) => ({ ...lot, to: lawn })));
}

/**
 * What came back out of a tank or a hopper into the shop or the truck, fit for use. Throws as {@link postingOf} does.
 */
export function returnPosting(tank: string, to: string, lots: readonly AmountOfLot[]): Posting {
  return postingOf("return", lots.map((lot) => ({ ...lot, from: tank, to })));
}

/**
 * What is gone without having done its work: spilled, torn, disposed of (to `loss`), or rinsed out (to `rinsate`).
 * Throws as {@link postingOf} does.
 */
export function losePosting(from: string, goneTo: string, lots: readonly AmountOfLot[]): Posting {
  return postingOf("lose", lots.map((lot) => ({ ...lot, from, to: goneTo })));
}

/** What was counted at a location, beside what the books say is there, which may be below zero. */
export interface CountOfLot {
  readonly lotId: string;
  readonly inTheBooks: bigint;
  readonly counted: Quantity<Dimension>;
}

/** The difference between a count and the books, against `countDifference`; none when every count agrees. */
export function countPosting(location: string, countDifference: string, counts: readonly CountOfLot[]): Posting | "as in the books" {
  const entries = counts.flatMap(({ lotId, inTheBooks, counted }): readonly EntryOfStock[] => {
    const difference = counted.amount - inTheBooks;
    return [
      { lotId, stockLocationId: location, amount: difference },
      { lotId, stockLocationId: countDifference, amount: -difference },
    ];
  });
  const merged = mergeEntries(entries);
  return merged.length === 0 ? "as in the books" : { kind: "count", entries: merged };
}
