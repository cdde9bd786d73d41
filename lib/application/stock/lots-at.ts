import { type LotAtPlace } from "#domain/register/put-down";
import { calendarDayOrNone } from "#application/stored-day";
import { type Work } from "#application/use-case";

/** A lot at a location with its product. */
export interface LotOfProductAt extends LotAtPlace {
  readonly productId: string;
  readonly number: string;
}

/**
 * Every lot that the locations have on their books, and every lot of the company at the first of them where none of its
 * product is anywhere there: what was used came from somewhere, and the books must be able to say so.
 */
export async function lotsAt(work: Pick<Work, "tx" | "company">, stockLocationIds: readonly string[]): Promise<readonly LotOfProductAt[]> {
  const { companyId } = work.company;
  const lots = await work.tx.lot.findMany({ where: { companyId }, orderBy: [{ createdAt: "asc" }, { lotId: "asc" }] });
  const balances = await work.tx.stockBalance.findMany({ where: { companyId, stockLocationId: { in: [...stockLocationIds] } } });
  const [first] = stockLocationIds;
  return lots.flatMap(({ lotId, productId, number, expiresOn }, receivedOrder) => {
    const own = balances.filter((balance) => balance.lotId === lotId);
    const lot = { lotId, productId, number, expiresOn: calendarDayOrNone(expiresOn), receivedOrder };
    if (own.length === 0) return first === undefined ? [] : [{ ...lot, stockLocationId: first, amount: 0n }];
    return own.map(({ stockLocationId, amount }) => ({ ...lot, stockLocationId, amount }));
  });
}
