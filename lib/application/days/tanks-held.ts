import { calendarDateIn } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { isCleanSince } from "#domain/mixing/clean-out";
import { leftBy } from "#domain/mixing/tank-books";
import { type LastHeld } from "#domain/mixing/tank-plan-question";
import { fromAmount } from "#domain/quantities/quantity";
import { type FillOfTank, fillsInBooks } from "#application/fills/fills-in-books";
import { labelsOfProducts } from "#application/products/stored-label";
import { type Work } from "#application/use-case";

interface FillInTank {
  readonly fill_id: string;
  readonly is_last: boolean;
}

interface OpenVisit {
  readonly visit_id: string;
  /** The day whose route it is on; null where it is on none. */
  readonly date: string | null;
}

/**
 * What each sprayer's tank held last by the books: the latest fill on record, what went in, and what is left of it with the
 * rests of the same mix that were measured below it. Where the tank's stock has been posted away nothing is left. A sprayer
 * that was cleaned out since its latest fill is clean. One without a fill and without a clean-out on record is not among
 * them: nobody knows what it held. While visits that a fill was made for are neither recorded nor among those of the day,
 * what is left of it is not known, unless the tank was measured on their day or later: then it is what was found.
 * A fill that was drawn from is under way until all of its visits are done. The number of queries does not hang on that of
 * fills.
 */
export async function tanksHeld(work: Work, visitIdsOfDay: readonly string[]): Promise<ReadonlyMap<string, LastHeld>> {
  const { companyId } = work.company;
  const inTanks = await work.tx.$queryRaw<FillInTank[]>`
    WITH last AS (SELECT DISTINCT ON (equipment_id) fill_id FROM fill WHERE company_id = ${companyId}::uuid ORDER BY equipment_id, filled_at DESC, number DESC),
      reading AS (SELECT DISTINCT ON (equipment_id) tank_reading_id FROM tank_reading WHERE company_id = ${companyId}::uuid ORDER BY equipment_id, read_at DESC)
    SELECT fill_id, true AS is_last FROM last
    UNION ALL
    SELECT r.fill_id, false FROM fill_rest r JOIN reading USING (tank_reading_id)
    WHERE r.company_id = ${companyId}::uuid AND r.remaining > 0 AND r.fill_id NOT IN (SELECT fill_id FROM last)`;
  const lastIds = new Set(inTanks.flatMap((one) => (one.is_last ? [one.fill_id] : [])));
  const rows = await work.tx.fill.findMany({ where: { companyId, fillId: { in: inTanks.map((one) => one.fill_id) } } });
  const fills = [...(await fillsInBooks(work, rows)).values()];
  const last = fills.filter(({ fillId }) => lastIds.has(fillId));
  const labels = await labelsOfProducts(work.tx, companyId, [...new Set(last.flatMap(({ products }) => products.map(({ productId }) => productId)))]);
  const open = await openVisits(work, last.flatMap(({ row }) => row.plannedVisitIds));
  const cleanOuts = await work.tx.cleanOut.groupBy({ by: ["equipmentId"], where: { companyId }, _max: { cleanedAt: true } });
  const lastOf = new Map(last.map((fill) => [fill.row.equipmentId, fill]));
  const clean = cleanOuts.filter(({ equipmentId, _max: { cleanedAt } }) => cleanedAt !== null && isCleanSince({ cleanedAt: cleanedAt.getTime() }, lastOf.get(equipmentId)));
  const fillsOf = groupedBy(fills, ({ row }) => row.equipmentId);
  const ofDay = new Set(visitIdsOfDay);
  return new Map<string, LastHeld>([
    ...last.map((fill): readonly [string, LastHeld] => {
      const alike = (fillsOf.get(fill.row.equipmentId) ?? []).filter((one) => isSameMix(one, fill));
      const left = alike.reduce((total, one) => total + leftBy(one, Infinity).amount, 0n);
      return [
        fill.row.equipmentId,
        {
          name: `fill ${String(fill.number)}`,
          finished: fill.finished,
          left: isOpen(work, fill, open, ofDay) ? "unknown" : fromAmount("volume", left),
          isUnderWay: fill.draws.length > 0 && open.some(({ visit_id: visitId }) => fill.row.plannedVisitIds.includes(visitId)),
          products: fill.products.map(({ productId, name, amount }) => ({ productId, productName: name, label: labels.get(productId)?.confirmed?.facts ?? "unknown", amount })),
        },
      ];
    }),
    ...clean.map(({ equipmentId }): readonly [string, LastHeld] => [equipmentId, "clean"]),
  ]);
}

/** The visits that nobody has recorded, with their day. */
async function openVisits(work: Work, visitIds: readonly string[]): Promise<readonly OpenVisit[]> {
  const { companyId } = work.company;
  if (visitIds.length === 0) return [];
  return work.tx.$queryRaw<OpenVisit[]>`
    SELECT v.visit_id, to_char(d.date, 'YYYY-MM-DD') AS date
    FROM visit v
    LEFT JOIN stop s ON s.company_id = v.company_id AND s.visit_id = v.visit_id
    LEFT JOIN route_day d ON d.company_id = s.company_id AND d.route_day_id = s.route_day_id
    WHERE v.company_id = ${companyId}::uuid AND v.visit_id = ANY(${[...visitIds]}::uuid[]) AND v.state = 'planned'`;
}

/** True where visits of a fill may have taken from it what nobody knows of. A tank that was measured had given it by then. */
function isOpen({ company }: Work, { row, rests }: FillOfTank, open: readonly OpenVisit[], ofDay: ReadonlySet<string>): boolean {
  const own = new Set(row.plannedVisitIds);
  const rest = rests.at(-1);
  const measuredOn = rest === undefined ? null : calendarDateIn(company.timeZone, rest.settledAt);
  return open.some(({ visit_id: visitId, date }) => own.has(visitId) && !ofDay.has(visitId) && (measuredOn === null || (date !== null && date > measuredOn)));
}

/** The same products, as strong to the last canonical unit. */
function isSameMix(one: FillOfTank, other: FillOfTank): boolean {
  return (
    one.products.length === other.products.length &&
    one.products.every(({ productId, amount }) => other.products.some((product) => product.productId === productId && product.amount.amount * one.finished.amount === amount.amount * other.finished.amount))
  );
}
