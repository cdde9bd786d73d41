import { accept } from "#domain/foundation/outcome";
import { type PriceOfLot } from "#domain/stock/cost-of-product";
import { lotsWithPrices } from "#application/stock/lots-with-prices";
import { readPricesSchema } from "#application/stock/read-prices.schema";
import { notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** What a container of a lot cost. */
export interface PricedLotOfProduct {
  readonly lotId: string;
  readonly price: PriceOfLot;
}

/** What was paid for the lots of one product. Whoever may ask this may see what visits cost; the crew may not. */
export const readPrices = useCase("stock/read-prices", readPricesSchema, async (work, { productId }) => {
  const { companyId } = work.company;
  const product = await work.tx.product.findUnique({ where: { companyId_productId: { companyId, productId } }, select: { productId: true } });
  if (product === null) return notFound("product");
  const lots = await work.tx.lot.findMany({ where: { companyId, productId }, orderBy: [{ createdAt: "asc" }, { lotId: "asc" }], select: { lotId: true } });
  const priced: readonly PricedLotOfProduct[] = await lotsWithPrices(work, lots);
  return accept({ lots: priced });
});
