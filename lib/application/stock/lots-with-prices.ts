import { groupedBy } from "#domain/foundation/grouping";
import { paidForDelivery, type PriceOfLot, priceOfLot } from "#domain/stock/cost-of-product";
import { type PostingKind } from "#domain/stock/posting";
import { type Work } from "#application/use-case";

/** One delivery of a lot with all that was said of its price. */
interface PricedDelivery {
  readonly stockPostingId: string;
  readonly line: number;
  readonly lotId: string;
  /** Canonical units of the product's dimension. */
  readonly amount: bigint;
  /** What was said with the delivery, in whole cents for one container. */
  readonly paidWithDelivery: bigint | null;
  /** What was said since, in order. */
  readonly since: readonly { readonly number: number; readonly paidPerContainerCents: bigint | null; readonly said: string | null; readonly statedAt: Date; readonly personId: string }[];
  /** What counts: the last of them. */
  readonly paidPerContainerCents: bigint | null;
}

/** All deliveries of some lots, the earliest first, with two queries for any number of them. Only for those who may read prices. */
export async function deliveriesOfLots(work: Pick<Work, "tx" | "company">, lotIds: readonly string[]): Promise<readonly PricedDelivery[]> {
  const { companyId } = work.company;
  const kind: PostingKind = "receive";
  const ofLots = { companyId, lotId: { in: [...lotIds] }, amount: { gt: 0 }, posting: { kind } };
  const entries = await work.tx.stockEntry.findMany({
    where: ofLots,
    orderBy: [{ posting: { happenedAt: "asc" } }, { posting: { enteredAt: "asc" } }, { stockPostingId: "asc" }, { line: "asc" }],
    select: { stockPostingId: true, line: true, lotId: true, amount: true, paidPerContainerCents: true },
  });
  const statements = await work.tx.deliveryPrice.findMany({ where: { companyId, entry: { lotId: { in: [...lotIds] } } }, orderBy: { number: "asc" } });
  const statementsOf = groupedBy(statements, ({ stockPostingId, line }) => `${stockPostingId} ${String(line)}`);
  return entries.map(({ paidPerContainerCents: paidWithDelivery, ...entry }) => {
    const since = statementsOf.get(`${entry.stockPostingId} ${String(entry.line)}`) ?? [];
    return { ...entry, paidWithDelivery, since, paidPerContainerCents: paidForDelivery(paidWithDelivery, since) };
  });
}

/** The lots with what one container of each cost, from all of its deliveries. Only for those who may read prices. */
export async function lotsWithPrices<Lot extends { readonly lotId: string }>(work: Pick<Work, "tx" | "company">, lots: readonly Lot[]): Promise<readonly (Lot & { readonly price: PriceOfLot })[]> {
  const deliveries = await deliveriesOfLots(work, lots.map(({ lotId }) => lotId));
  const deliveriesOf = groupedBy(deliveries, ({ lotId }) => lotId);
  return lots.map((lot) => ({ ...lot, price: priceOfLot(deliveriesOf.get(lot.lotId) ?? []) }));
}
