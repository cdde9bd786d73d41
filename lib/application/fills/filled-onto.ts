import { type FilledBefore, type FilledMix } from "#domain/mixing/tank-plan-question";
import { type FillOfTank, fillsInBooks } from "#application/fills/fills-in-books";
import { type LabelsRead, labelsOfProducts } from "#application/products/stored-label";
import { type Work } from "#application/use-case";

/** A fill with what its tank held when it was made. */
export interface FilledOnto {
  readonly equipmentId: string;
  readonly filled: FilledMix;
  /** What was in the tank then since its last clean-out. */
  readonly onto: FilledBefore;
}

/** What a tank was filled with, in the words and by the labels of today. */
export function filledMixOf({ number, finished, products }: FillOfTank, labels: LabelsRead): FilledMix {
  return {
    name: `fill ${String(number)}`,
    finished,
    products: products.map(({ productId, name, amount }) => ({ productId, productName: name, label: labels.get(productId)?.confirmed?.facts ?? "unknown", amount })),
  };
}

/** The fills that a fill went on top of, by id, and whether a clean-out is on file before them. */
export interface FillsBelow {
  readonly fillIds: readonly string[];
  readonly isSinceCleanOut: boolean;
}

interface BelowFill {
  readonly fill_id: string;
  readonly below_ids: readonly string[] | null;
  readonly is_since_clean_out: boolean;
}

/**
 * Reads what was in the tank when each of some fills was made, the latest first: since the last clean-out of that sprayer, of
 * each product the latest fill that had it. A clean-out in the minute of a fill came before it. In one query, however many
 * fills there are; the fills are in the order in which they were made.
 */
export async function fillsBelow({ tx, company: { companyId } }: Work, fillIds: readonly string[]): Promise<ReadonlyMap<string, FillsBelow>> {
  if (fillIds.length === 0) return new Map();
  const rows = await tx.$queryRaw<BelowFill[]>`
    WITH asked AS (
      SELECT f.fill_id, f.equipment_id, f.filled_at, f.number,
        (SELECT max(c.cleaned_at) FROM clean_out c WHERE c.company_id = f.company_id AND c.equipment_id = f.equipment_id AND c.cleaned_at <= f.filled_at) AS cleaned_at
      FROM fill f WHERE f.company_id = ${companyId}::uuid AND f.fill_id = ANY(${[...fillIds]}::uuid[]))
    SELECT a.fill_id, a.cleaned_at IS NOT NULL AS is_since_clean_out,
      (SELECT array_agg(latest.fill_id ORDER BY latest.filled_at DESC, latest.number DESC) FROM (
        SELECT DISTINCT f.fill_id, f.filled_at, f.number FROM (
          SELECT DISTINCT ON (l.product_id) b.fill_id, b.filled_at, b.number
          FROM fill b
          JOIN stock_entry e ON e.company_id = b.company_id AND e.stock_posting_id = b.stock_posting_id
          JOIN lot l ON l.company_id = e.company_id AND l.lot_id = e.lot_id
          WHERE b.company_id = ${companyId}::uuid AND b.equipment_id = a.equipment_id
            AND (b.filled_at, b.number) < (a.filled_at, a.number) AND (a.cleaned_at IS NULL OR b.filled_at >= a.cleaned_at)
          ORDER BY l.product_id, b.filled_at DESC, b.number DESC) f) latest) AS below_ids
    FROM asked a ORDER BY a.filled_at, a.number`;
  return new Map(rows.map((row) => [row.fill_id, { fillIds: row.below_ids ?? [], isSinceCleanOut: row.is_since_clean_out }]));
}

/** The same with what went into each of them; unknown stands below them where no clean-out is on file. */
export function filledBeforeOf(below: FillsBelow | undefined, fillOf: ReadonlyMap<string, FillOfTank>, labels: LabelsRead): FilledBefore {
  const { fillIds, isSinceCleanOut } = below ?? { fillIds: [], isSinceCleanOut: false };
  const mixes = fillIds.flatMap((fillId) => {
    const fill = fillOf.get(fillId);
    return fill === undefined ? [] : [filledMixOf(fill, labels)];
  });
  return isSinceCleanOut ? mixes : [...mixes, "unknown"];
}

/** Reads what some fills went onto, by fill, in the order in which they were made. */
export async function filledOntoOf(work: Work, fillIds: readonly string[]): Promise<ReadonlyMap<string, FilledOnto>> {
  const before = await fillsBelow(work, fillIds);
  if (before.size === 0) return new Map();
  const { companyId } = work.company;
  const rows = await work.tx.fill.findMany({ where: { companyId, fillId: { in: [...new Set([...before].flatMap(([fillId, below]) => [fillId, ...below.fillIds]))] } } });
  const fillOf = await fillsInBooks(work, rows);
  const labels = await labelsOfProducts(work.tx, companyId, [...new Set([...fillOf.values()].flatMap(({ products }) => products.map(({ productId }) => productId)))]);
  return new Map(
    [...before].flatMap(([fillId, below]): readonly (readonly [string, FilledOnto])[] => {
      const fill = fillOf.get(fillId);
      return fill === undefined ? [] : [[fillId, { equipmentId: fill.row.equipmentId, filled: filledMixOf(fill, labels), onto: filledBeforeOf(below, fillOf, labels) }]];
    }),
  );
}
