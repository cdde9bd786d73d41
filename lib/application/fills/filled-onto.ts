import { type FilledMix } from "#domain/mixing/tank-plan-question";
import { type FillOfTank, fillsInBooks } from "#application/fills/fills-in-books";
import { type LabelsRead, labelsOfProducts } from "#application/products/stored-label";
import { type Work } from "#application/use-case";

/** A fill with what its tank held when it was made. */
export interface FilledOnto {
  readonly equipmentId: string;
  readonly filled: FilledMix;
  /** Clean where a clean-out lies between; unknown where nothing is on file before it. */
  readonly onto: FilledMix | "clean" | "unknown";
}

/** What a tank was filled with, in the words and by the labels of today. */
export function filledMixOf({ number, finished, products }: FillOfTank, labels: LabelsRead): FilledMix {
  return {
    name: `fill ${String(number)}`,
    finished,
    products: products.map(({ productId, name, amount }) => ({ productId, productName: name, label: labels.get(productId)?.confirmed?.facts ?? "unknown", amount })),
  };
}

interface BeforeFill {
  readonly fill_id: string;
  readonly onto_id: string | null;
  readonly is_after_clean_out: boolean;
}

/** Reads what some fills went onto, by fill, in the order in which they were made. A clean-out in the minute of a fill came before it. */
export async function filledOntoOf(work: Work, fillIds: readonly string[]): Promise<ReadonlyMap<string, FilledOnto>> {
  if (fillIds.length === 0) return new Map();
  const { companyId } = work.company;
  const before = await work.tx.$queryRaw<BeforeFill[]>`
    WITH own AS (
      SELECT f.fill_id, f.company_id, f.equipment_id, f.filled_at, f.number, lag(f.fill_id) OVER in_order AS onto_id, lag(f.filled_at) OVER in_order AS onto_at
      FROM fill f WHERE f.company_id = ${companyId}::uuid
      WINDOW in_order AS (PARTITION BY f.equipment_id ORDER BY f.filled_at, f.number))
    SELECT o.fill_id, o.onto_id,
      EXISTS (SELECT FROM clean_out c WHERE c.company_id = o.company_id AND c.equipment_id = o.equipment_id
        AND c.cleaned_at <= o.filled_at AND (o.onto_at IS NULL OR c.cleaned_at > o.onto_at)) AS is_after_clean_out
    FROM own o WHERE o.fill_id = ANY(${[...fillIds]}::uuid[]) ORDER BY o.filled_at, o.number`;
  const rows = await work.tx.fill.findMany({ where: { companyId, fillId: { in: before.flatMap((one) => [one.fill_id, ...(one.onto_id === null ? [] : [one.onto_id])]) } } });
  const fillOf = await fillsInBooks(work, rows);
  const labels = await labelsOfProducts(work.tx, companyId, [...new Set([...fillOf.values()].flatMap(({ products }) => products.map(({ productId }) => productId)))]);
  return new Map(
    before.flatMap(({ fill_id: fillId, onto_id: ontoId, is_after_clean_out: isAfterCleanOut }): readonly (readonly [string, FilledOnto])[] => {
      const fill = fillOf.get(fillId);
      const onto = ontoId === null ? undefined : fillOf.get(ontoId);
      if (fill === undefined) return [];
      return [[fillId, { equipmentId: fill.row.equipmentId, filled: filledMixOf(fill, labels), onto: isAfterCleanOut ? "clean" : onto === undefined ? "unknown" : filledMixOf(onto, labels) }]];
    }),
  );
}
