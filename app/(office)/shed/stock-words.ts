import { type LotOfStock, type StockOfProduct } from "#application/stock/list-stock";
import { type ProductOfShed } from "#application/products/list-products";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { formatMoney, fromCents } from "#domain/money/money";
import { type PriceOfLot } from "#domain/stock/cost-of-product";
import { amountInContainers, stockInWords } from "#domain/stock/container-words";

/** What is on hand, in whole containers where all of it comes in one kind: "11 bags of 50 lb and 23 lb". */
export function onHandWords(stock: StockOfProduct): string {
  const [first, ...others] = stock.lots;
  if (first === undefined) return "none";
  const isOneKind = others.every((lot) => lot.container === first.container && lot.containerSize === first.containerSize);
  if (!isOneKind) return stockInWords(stock.amount, stock.dimension);
  return amountInContainers(stock.amount, first.container, { dimension: stock.dimension, amount: first.containerSize });
}

/** An amount of one lot, in its containers. */
export function lotWords(lot: LotOfStock, dimension: StockOfProduct["dimension"], amount: bigint): string {
  return amountInContainers(amount, lot.container, { dimension, amount: lot.containerSize });
}

/** What one container of a lot cost: "$42.50 a bag". */
export function priceWords(price: PriceOfLot, container: LotOfStock["container"]): string {
  if (price.kind === "not-on-file") return "no price on file";
  if (price.kind === "not-for-every-delivery") return "not on file for each delivery";
  const words = `${formatMoney(price.perContainer)} a ${container}`;
  return price.isMean ? `${words}, the mean of its deliveries` : words;
}

/** What was said to be paid for one container of a delivery: "$42.50 a bag". */
export function paidWords(cents: bigint | null, container: LotOfStock["container"]): string {
  return cents === null ? "not on file" : `${formatMoney(fromCents(cents))} a ${container}`;
}

/** When the lots on hand expire, the first first. */
export function expiryWords(lots: readonly LotOfStock[]): string {
  const [first] = lots;
  if (first === undefined) return "";
  const count = lots.length === 1 ? "1 lot" : `${String(lots.length)} lots`;
  if (first.expiresOn === null) return `${count}, no expiry`;
  return `${count}, ${first.isExpired ? "expired on" : "first expires"} ${formatShortDate(first.expiresOn)}`;
}

/** How a product's label stands, in a few words. */
export function labelWords({ label, retiredAt }: ProductOfShed): string {
  if (retiredAt !== null) return "retired";
  if (label.latest === undefined) return "not entered";
  if (label.confirmed === undefined) return "not confirmed";
  const by = `confirmed by ${label.confirmed.confirmation?.by ?? ""}`;
  return label.latest.number === label.confirmed.number ? by : `${by}; a newer entry is not confirmed`;
}

/** True for a label that nothing can be planned with, or that waits for its reading back. */
export function waitsForReading({ label, retiredAt }: ProductOfShed): boolean {
  return retiredAt === null && (label.confirmed === undefined || label.latest?.number !== label.confirmed.number);
}
