import { accept } from "#domain/foundation/outcome";
import { type Container } from "#domain/stock/container-words";
import { type PriceOfLot, priceOfLot } from "#domain/stock/cost-of-product";
import { deliveriesOfLots } from "#application/stock/lots-with-prices";
import { readPricesSchema } from "#application/stock/read-prices.schema";
import { notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** What a container of a lot cost. */
export interface PricedLotOfProduct {
  readonly lotId: string;
  readonly price: PriceOfLot;
}

/** Who said what of a delivery's price, and when; the first one came with the delivery. */
export interface StatedPrice {
  /** 0 for what was said with the delivery, then counted up. */
  readonly number: number;
  readonly paidPerContainerCents: bigint | null;
  readonly said: string | null;
  readonly statedAt: Date;
  readonly statedBy: string;
}

/** A delivery of a product with what counts as paid for one of its containers, and everything that was said of it. */
export interface DeliveryOfProduct {
  readonly stockPostingId: string;
  readonly line: number;
  readonly receivedAt: Date;
  readonly lotNumber: string;
  readonly container: Container;
  readonly containerSize: bigint;
  readonly amount: bigint;
  readonly paidPerContainerCents: bigint | null;
  /** The first first. */
  readonly statements: readonly StatedPrice[];
}

/** What was paid for the lots and deliveries of one product, the newest delivery first. Whoever may ask this may see what visits cost; the crew may not. */
export const readPrices = useCase("stock/read-prices", readPricesSchema, async (work, { productId }) => {
  const { companyId } = work.company;
  const product = await work.tx.product.findUnique({ where: { companyId_productId: { companyId, productId } }, select: { productId: true } });
  if (product === null) return notFound("product");
  const lots = await work.tx.lot.findMany({ where: { companyId, productId }, orderBy: [{ createdAt: "asc" }, { lotId: "asc" }] });
  const found = await deliveriesOfLots(work, lots.map(({ lotId }) => lotId));
  const postings = await work.tx.stockPosting.findMany({ where: { companyId, stockPostingId: { in: found.map(({ stockPostingId }) => stockPostingId) } } });
  const people = await work.tx.person.findMany({ where: { companyId }, select: { personId: true, name: true } });
  const postingOf = new Map(postings.map((posting) => [posting.stockPostingId, posting]));
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  const lotOf = new Map(lots.map((lot) => [lot.lotId, lot]));
  const deliveries = found.flatMap((delivery): readonly DeliveryOfProduct[] => {
    const { stockPostingId, line, lotId, amount, paidWithDelivery, since, paidPerContainerCents } = delivery;
    const [posting, lot] = [postingOf.get(stockPostingId), lotOf.get(lotId)];
    if (posting === undefined || lot === undefined) return [];
    const said = (personId: string) => ({ statedBy: nameOf.get(personId) ?? "" });
    return [
      {
        ...{ stockPostingId, line, amount, paidPerContainerCents, receivedAt: posting.happenedAt },
        ...{ lotNumber: lot.number, container: lot.container as Container, containerSize: lot.containerSize },
        statements: [
          { paidPerContainerCents: paidWithDelivery, said: null, statedAt: posting.enteredAt, number: 0, ...said(posting.personId) },
          ...since.map((one) => ({ paidPerContainerCents: one.paidPerContainerCents, said: one.said, statedAt: one.statedAt, number: one.number, ...said(one.personId) })),
        ],
      },
    ];
  });
  const priced: readonly PricedLotOfProduct[] = lots.map(({ lotId }) => ({ lotId, price: priceOfLot(found.filter((one) => one.lotId === lotId)) }));
  return accept({ lots: priced, deliveries: deliveries.toReversed() });
});
