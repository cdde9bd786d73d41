import { groupedBy } from "#domain/foundation/grouping";
import { type DeliveryOfLot, type PriceOfLot, priceOfLot } from "#domain/stock/cost-of-product";
import { type PostingKind } from "#domain/stock/posting";
import { type Work } from "#application/use-case";

/** The lots with what one container of each cost, from all of its deliveries. Only for those who may read prices. */
export async function lotsWithPrices<Lot extends { readonly lotId: string }>(work: Pick<Work, "tx" | "company">, lots: readonly Lot[]): Promise<readonly (Lot & { readonly price: PriceOfLot })[]> {
  const { companyId } = work.company;
  const kind: PostingKind = "receive";
  const entries = await work.tx.stockEntry.findMany({
    where: { companyId, lotId: { in: lots.map(({ lotId }) => lotId) }, amount: { gt: 0 }, posting: { kind } },
    select: { lotId: true, amount: true, paidPerContainerCents: true },
  });
  const deliveriesOf: ReadonlyMap<string, readonly DeliveryOfLot[]> = groupedBy(entries, ({ lotId }) => lotId);
  return lots.map((lot) => ({ ...lot, price: priceOfLot(deliveriesOf.get(lot.lotId) ?? []) }));
}
