import { listWords } from "#domain/foundation/list-words";
import { invariant } from "#domain/foundation/invariant";
import { formatMoney, fromCents, type Money, multiplyMoney, sumMoney } from "#domain/money/money";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { fromAmount, type Quantity, smallest, subtract } from "#domain/quantities/quantity";
import { rational } from "#domain/quantities/rational";
import { type Dimension } from "#domain/quantities/units";
import { type LotOnHand, takeFirstExpired } from "#domain/stock/first-expired";

/** What one delivery brought of a lot, in canonical units, and the whole cents that one container cost. */
export interface DeliveryOfLot {
  readonly amount: bigint;
  readonly paidPerContainerCents: bigint | null;
}

/** What somebody said was paid for a delivery, with or after it; null says that nobody knows after all. */
export interface PriceStatement {
  /** Counted up for each delivery from 1. */
  readonly number: number;
  readonly paidPerContainerCents: bigint | null;
}

/** What counts as paid for a delivery: what was said last, and without a word since what was said with the delivery. */
export function paidForDelivery(withDelivery: bigint | null, since: readonly PriceStatement[]): bigint | null {
  const last = since.reduce<PriceStatement | undefined>((latest, one) => (latest === undefined || one.number > latest.number ? one : latest), undefined);
  return last === undefined ? withDelivery : last.paidPerContainerCents;
}

/**
 * What one container of a lot cost. A lot that came at several prices costs their mean, each by how much came at it,
 * since nobody can tell its containers apart. Where one of its deliveries has no price, neither has the lot: the others
 * are no reason to believe that this one cost the same.
 */
export type PriceOfLot =
  | { readonly kind: "on-file"; readonly perContainer: Money; readonly isMean: boolean }
  | { readonly kind: "not-on-file" }
  | { readonly kind: "not-for-every-delivery" };

/** The price of a lot from all of its deliveries, exactly: the mean by amounts. Throws for a delivery of nothing. */
export function priceOfLot(deliveries: readonly DeliveryOfLot[]): PriceOfLot {
  const priced = deliveries.flatMap(({ amount, paidPerContainerCents }) => (paidPerContainerCents === null ? [] : [{ amount, cents: paidPerContainerCents }]));
  if (priced.length === 0) return { kind: "not-on-file" };
  if (priced.length < deliveries.length) return { kind: "not-for-every-delivery" };
  const whole = priced.reduce((sum, { amount }) => sum + amount, 0n);
  invariant(priced.every(({ amount }) => amount > 0n), "a delivery brings something");
  const perContainer = sumMoney(priced.map(({ amount, cents }) => multiplyMoney(fromCents(cents), rational(amount, whole))));
  return { kind: "on-file", perContainer, isMean: new Set(priced.map(({ cents }) => cents)).size > 1 };
}

/** A lot as far as its cost depends on it. */
export interface LotWithPrice {
  readonly lotId: string;
  readonly number: string;
  /** What one container holds, in canonical units. */
  readonly containerSize: bigint;
  readonly price: PriceOfLot;
}

/** So much of a lot with its exact cost, or why nobody knows it. */
export interface CostOfLot {
  readonly lotId: string;
  readonly lotNumber: string;
  readonly quantity: Quantity<Dimension>;
  readonly cost: Money | Exclude<PriceOfLot["kind"], "on-file">;
}

/** What an amount of a product costs, lot by lot. */
export interface CostOfProduct {
  readonly lots: readonly CostOfLot[];
  /** More than all lots on hand have; nobody knows what it will cost. */
  readonly notOnHand: Quantity<Dimension>;
}

/** The exact cost of so much of one lot: the price of a container by the part of one that is taken. */
function costOfLot({ lotId, number, containerSize, price }: LotWithPrice, quantity: Quantity<Dimension>): CostOfLot {
  const cost = price.kind === "on-file" ? multiplyMoney(price.perContainer, rational(quantity.amount, containerSize)) : price.kind;
  return { lotId, lotNumber: number, quantity, cost };
}

/** What was taken of some lots, or will be, with its cost. Throws for less than nothing. */
export function costOfTaken(dimension: Dimension, taken: readonly { readonly lot: LotWithPrice; readonly amount: bigint }[]): CostOfProduct {
  const lots = taken.map(({ lot, amount }) => costOfLot(lot, fromAmount(dimension, amount)));
  return { lots, notOnHand: fromAmount(dimension, 0n) };
}

/**
 * What an amount of a product will cost by the lots that will be opened for it: the first to expire first. Exact; what
 * has no price, and what no lot has, stands beside it and is never counted as nothing. The lots are all of one product
 * and counted as the amount is. Throws for a container that holds nothing.
 */
export function costOfProduct(amount: Quantity<Dimension>, lots: readonly (LotOnHand & LotWithPrice)[]): CostOfProduct {
  const { dimension } = amount;
  const onHand = lots.reduce((sum, lot) => sum + (lot.amount > 0n ? lot.amount : 0n), 0n);
  const coming = smallest(amount, fromAmount(dimension, onHand));
  const taken = takeFirstExpired(lots, coming);
  invariant(taken.ok, "what is on hand can be taken");
  const parts = taken.value.flatMap(({ lotId, quantity }) => lots.filter((lot) => lot.lotId === lotId).map((lot) => ({ lot, amount: quantity.amount })));
  return { ...costOfTaken(dimension, parts), notOnHand: subtract(amount, coming) };
}

/** A product with what an amount of it costs; its cost can't be told where it is planned by another measure than it is counted by. */
export interface CostOfNamedProduct {
  readonly productId: string;
  readonly productName: string;
  readonly quantity: Quantity<Dimension>;
  readonly cost: CostOfProduct | "counted-by-another-measure";
}

/** The exact sum over products of what has a price; undefined where nothing has one, which is not the same as costing nothing. */
export function pricedSum(products: readonly CostOfNamedProduct[]): Money | undefined {
  const known = products.flatMap(({ cost }) => (cost === "counted-by-another-measure" ? [] : cost.lots.flatMap((lot) => (typeof lot.cost === "string" ? [] : [lot.cost]))));
  return known.length === 0 ? undefined : sumMoney(known);
}

/** What has no price, each as a part of a sentence: "3 lb of lot MG-1 has no price on file". */
export function unpricedWords({ productName, quantity, cost }: CostOfNamedProduct): readonly string[] {
  if (cost === "counted-by-another-measure") return [`${formatQuantity(quantity, "us")} of ${productName} is planned by another measure than it is counted by`];
  const lots = cost.lots.flatMap((lot): readonly string[] => {
    const what = `${formatQuantity(lot.quantity, "us")} of lot ${lot.lotNumber}`;
    if (lot.cost === "not-on-file") return [`${what} has no price on file`];
    return lot.cost === "not-for-every-delivery" ? [`${what} has no price on file for each of its deliveries`] : [];
  });
  return cost.notOnHand.amount === 0n ? lots : [...lots, `${formatQuantity(cost.notOnHand, "us")} of ${productName} is not on hand`];
}

/** One product's cost to the cent: "$12.34", "$12.34 and more" where a part of it has no price, "not known" where all has none. */
export function costWords(product: CostOfNamedProduct): string {
  const sum = pricedSum([product]);
  if (sum === undefined) return "not known";
  return unpricedWords(product).length === 0 ? formatMoney(sum) : `${formatMoney(sum)} and more`;
}

/** "Cost of product: $12.34; 3 lb of lot MG-1 has no price on file." Rounded to the cent here and nowhere before. */
export function costSentence(products: readonly CostOfNamedProduct[]): string {
  const sum = pricedSum(products);
  const open = products.flatMap(unpricedWords);
  return `Cost of product: ${sum === undefined ? "not known" : formatMoney(sum)}${open.length === 0 ? "" : `; ${listWords(open)}`}.`;
}
