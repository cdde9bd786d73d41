import { groupedBy } from "#domain/foundation/grouping";
import { type LotNamed, lotsNamed } from "#application/stock/lots-at";
import { type Work } from "#application/use-case";

/** So much of a lot that left a tank with a reading or a clean-out. */
export interface MovedFromTank extends Pick<LotNamed, "productName" | "lotNumber" | "dimension"> {
  /** Canonical units; below nothing where it came in. */
  readonly leaves: bigint;
}

/** What these postings took out of tanks, by posting, and brought into them. */
export async function movedFromTanks(work: Pick<Work, "tx" | "company">, stockPostingIds: readonly string[]): Promise<ReadonlyMap<string, readonly MovedFromTank[]>> {
  const { companyId } = work.company;
  if (stockPostingIds.length === 0) return new Map();
  const tanks = await work.tx.stockLocation.findMany({ where: { companyId, kind: "tank" }, select: { stockLocationId: true } });
  const entries = await work.tx.stockEntry.findMany({
    where: { companyId, stockPostingId: { in: [...stockPostingIds] }, stockLocationId: { in: tanks.map(({ stockLocationId }) => stockLocationId) } },
    orderBy: { line: "asc" },
  });
  const lotOf = await lotsNamed(work, entries.map(({ lotId }) => lotId));
  const moved = entries.flatMap(({ stockPostingId, lotId, amount }) => {
    const lot = lotOf.get(lotId);
    if (lot === undefined) return [];
    const { productName, lotNumber, dimension } = lot;
    return [{ stockPostingId, one: { productName, lotNumber, dimension, leaves: -amount } }];
  });
  return new Map([...groupedBy(moved, ({ stockPostingId }) => stockPostingId)].map(([id, own]) => [id, own.map(({ one }) => one)]));
}

/** What left the books of the tanks with these clean-outs, by clean-out; one that found nothing has none. */
export async function movedByCleanOuts(work: Pick<Work, "tx" | "company">, cleanOutIds: readonly string[]): Promise<ReadonlyMap<string, readonly MovedFromTank[]>> {
  const rows = await work.tx.cleanOut.findMany({ where: { companyId: work.company.companyId, cleanOutId: { in: [...cleanOutIds] } }, select: { cleanOutId: true, stockPostingId: true } });
  const moved = await movedFromTanks(work, rows.flatMap(({ stockPostingId }) => stockPostingId ?? []));
  return new Map(rows.map(({ cleanOutId, stockPostingId }) => [cleanOutId, moved.get(stockPostingId ?? "") ?? []]));
}
