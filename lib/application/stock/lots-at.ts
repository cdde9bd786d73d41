import { groupedBy } from "#domain/foundation/grouping";
import { type LotAtPlace } from "#domain/register/put-down";
import { calendarDayOrNone } from "#application/stored-day";
import { type Work } from "#application/use-case";

/** What a lot is called and how its product is counted. */
export interface LotNamed {
  readonly lotNumber: string;
  readonly productId: string;
  readonly productName: string;
  readonly dimension: "mass" | "volume";
}

/** These lots by id, each with its number and its product's name. */
export async function lotsNamed({ tx, company: { companyId } }: Pick<Work, "tx" | "company">, lotIds: readonly string[]): Promise<ReadonlyMap<string, LotNamed>> {
  const lots = await tx.lot.findMany({ where: { companyId, lotId: { in: [...lotIds] } } });
  const products = await tx.product.findMany({ where: { companyId, productId: { in: lots.map(({ productId }) => productId) } } });
  const productOf = new Map(products.map((product) => [product.productId, product]));
  return new Map(
    lots.map(({ lotId, number, productId }) => {
      const product = productOf.get(productId);
      return [lotId, { lotNumber: number, productId, productName: product?.name ?? "", dimension: product?.countedBy === "mass" ? "mass" : "volume" }];
    }),
  );
}

/** A lot at a location with its product. */
export interface LotOfProductAt extends LotAtPlace {
  readonly productId: string;
  readonly number: string;
  /** What one bag or jug of it holds, in canonical units. */
  readonly containerSize: bigint;
}

/**
 * Of these products every lot that the locations have on their books, and every other lot of them with nothing at the
 * first location: what was used came from somewhere, and the books must be able to say so.
 */
export async function lotsAt(work: Pick<Work, "tx" | "company">, stockLocationIds: readonly string[], productIds: readonly string[]): Promise<readonly LotOfProductAt[]> {
  const { companyId } = work.company;
  const lots = await work.tx.lot.findMany({ where: { companyId, productId: { in: [...productIds] } }, orderBy: [{ createdAt: "asc" }, { lotId: "asc" }] });
  const balances = await work.tx.stockBalance.findMany({
    where: { companyId, lotId: { in: lots.map(({ lotId }) => lotId) }, stockLocationId: { in: [...stockLocationIds] } },
  });
  const balancesOf = groupedBy(balances, ({ lotId }) => lotId);
  const [first] = stockLocationIds;
  return lots.flatMap(({ lotId, productId, number, expiresOn, containerSize }, receivedOrder) => {
    const own = balancesOf.get(lotId) ?? [];
    const lot = { lotId, productId, number, containerSize, expiresOn: calendarDayOrNone(expiresOn), receivedOrder };
    if (own.length === 0) return first === undefined ? [] : [{ ...lot, stockLocationId: first, amount: 0n }];
    return own.map(({ stockLocationId, amount }) => ({ ...lot, stockLocationId, amount }));
  });
}
