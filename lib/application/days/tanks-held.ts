import { groupedBy } from "#domain/foundation/grouping";
import { isCleanSince } from "#domain/mixing/clean-out";
import { type LastHeld } from "#domain/mixing/tank-plan-question";
import { fromAmount } from "#domain/quantities/quantity";
import { labelsOfProducts } from "#application/products/stored-label";
import { type Work } from "#application/use-case";

interface LastFillRow {
  readonly fill_id: string;
  readonly equipment_id: string;
  readonly number: number;
  readonly finished_volume: string;
  readonly stock_posting_id: string;
  readonly drawn: string;
  readonly filled_at: Date;
  /** Visits that it was filled for and that nobody has recorded. */
  readonly open_visit_ids: readonly string[];
}

/**
 * What each sprayer's tank held last by the books: the latest fill on record, what went in, and what is left of it. Where
 * the tank's stock has been posted away nothing is left. A sprayer that was cleaned out since its latest fill is clean. One
 * without a fill and without a clean-out on record is not among them: nobody knows what it held. While visits that a fill
 * was made for are neither recorded nor among those of the day, what is left of it is not known. A fill that was drawn from
 * is under way until all of its visits are done. The number of queries does not hang on that of fills.
 */
export async function tanksHeld(work: Work, visitIdsOfDay: readonly string[]): Promise<ReadonlyMap<string, LastHeld>> {
  const { companyId } = work.company;
  const fills = await work.tx.$queryRaw<LastFillRow[]>`
    SELECT f.fill_id, f.equipment_id, f.number, f.filled_at, f.finished_volume::text, f.stock_posting_id,
      (SELECT COALESCE(sum(d.volume), 0)::text FROM fill_draw d WHERE d.company_id = f.company_id AND d.fill_id = f.fill_id) AS drawn,
      ARRAY(SELECT v.visit_id FROM visit v WHERE v.company_id = f.company_id AND v.visit_id = ANY(f.planned_visit_ids) AND v.state = 'planned') AS open_visit_ids
    FROM (SELECT DISTINCT ON (equipment_id) * FROM fill WHERE company_id = ${companyId}::uuid ORDER BY equipment_id, filled_at DESC, number DESC) f`;
  const cleanOuts = await work.tx.cleanOut.groupBy({ by: ["equipmentId"], where: { companyId }, _max: { cleanedAt: true } });
  const tanks = await work.tx.stockLocation.findMany({ where: { companyId, kind: "tank" } });
  const tankIds = tanks.map(({ stockLocationId }) => stockLocationId);
  const entries = await work.tx.stockEntry.findMany({
    where: { companyId, stockPostingId: { in: fills.map(({ stock_posting_id }) => stock_posting_id) }, stockLocationId: { in: tankIds } },
  });
  const lots = await work.tx.lot.findMany({ where: { companyId, lotId: { in: entries.map(({ lotId }) => lotId) } } });
  const products = await work.tx.product.findMany({ where: { companyId, productId: { in: lots.map(({ productId }) => productId) } } });
  const balances = await work.tx.stockBalance.findMany({ where: { companyId, stockLocationId: { in: tankIds }, lotId: { in: lots.map(({ lotId }) => lotId) } } });
  const labels = await labelsOfProducts(work.tx, companyId, products.map(({ productId }) => productId));
  const ofDay = new Set(visitIdsOfDay);
  const productOf = new Map(lots.map(({ lotId, productId }) => [lotId, productId]));
  const entriesOf = groupedBy(entries, ({ stockPostingId }) => stockPostingId);
  const lastFillOf = new Map(fills.map((fill) => [fill.equipment_id, { number: fill.number, filledAt: fill.filled_at.getTime() }]));
  const clean = cleanOuts.filter(({ equipmentId, _max: { cleanedAt } }) => cleanedAt !== null && isCleanSince({ cleanedAt: cleanedAt.getTime() }, lastFillOf.get(equipmentId)));
  return new Map<string, LastHeld>([
    ...fills.map((fill): readonly [string, LastHeld] => {
      const own = entriesOf.get(fill.stock_posting_id) ?? [];
      const amountOf = (productId: string) => own.reduce((total, { lotId, amount }) => total + (productOf.get(lotId) === productId ? amount : 0n), 0n);
      const isStillThere = balances.some(({ lotId, stockLocationId, amount }) => amount > 0n && own.some((entry) => entry.lotId === lotId && entry.stockLocationId === stockLocationId));
      const left = BigInt(fill.finished_volume) - BigInt(fill.drawn);
      return [
        fill.equipment_id,
        {
          name: `fill ${String(fill.number)}`,
          finished: fromAmount("volume", BigInt(fill.finished_volume)),
          left: fill.open_visit_ids.some((visitId) => !ofDay.has(visitId)) ? "unknown" : fromAmount("volume", isStillThere && left > 0n ? left : 0n),
          isUnderWay: BigInt(fill.drawn) > 0n && fill.open_visit_ids.length > 0,
          products: products
            .filter(({ productId }) => amountOf(productId) > 0n)
            .map(({ productId, name, countedBy }) => ({
              productId,
              productName: name,
              label: labels.get(productId)?.confirmed?.facts ?? "unknown",
              amount: fromAmount(countedBy === "mass" ? "mass" : "volume", amountOf(productId)),
            })),
        },
      ];
    }),
    ...clean.map(({ equipmentId }): readonly [string, LastHeld] => [equipmentId, "clean"]),
  ]);
}
