import { SPRAYER_KINDS } from "#domain/equipment/equipment-kind";
import { groupedBy } from "#domain/foundation/grouping";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { type FilledMix } from "#domain/mixing/tank-plan-question";
import { type LabelsRead } from "#application/products/stored-label";
import { type Work } from "#application/use-case";

/** What was sprayed at a visit out of no fill: mixed in the sprayer's tank for that visit alone, as its record has it. */
export interface MixedForVisit {
  readonly visitId: string;
  readonly equipmentId: string;
  /** When the visit ended, in milliseconds since 1970. */
  readonly endedAt: number;
  readonly street: string;
  readonly products: readonly { readonly productId: string; readonly productName: string; readonly amount: ProductAmount }[];
}

interface ProductRow {
  readonly equipment_id: string;
  readonly visit_id: string;
  readonly ended_at: Date;
  readonly street: string;
  readonly product_id: string;
  readonly product_name: string;
  readonly dimension: "mass" | "volume";
  readonly amount: string;
}

/**
 * What was mixed for one visit alone since some moment, the latest first. Records from before the sprayer's id was kept
 * in them name it: then that and what the visit was planned with count, both where they are two. One query.
 * @param since null: nothing is asked for, because no tank is known to have been clean before
 */
export async function mixedForVisits({ tx, company: { companyId } }: Work, since: Date | null): Promise<readonly MixedForVisit[]> {
  if (since === null) return [];
  const rows = await tx.$queryRaw<ProductRow[]>`
    WITH record AS MATERIALIZED (
      SELECT e.company_id, e.visit_id, e.ended_at, e.number, e.content::jsonb AS content FROM register_entry e
      WHERE e.company_id = ${companyId}::uuid AND e.kind = 'record' AND e.ended_at > ${since} AND e.content LIKE '%"fill":null%')
    SELECT q.equipment_id, r.visit_id, r.ended_at, r.content -> 'site' ->> 'street' AS street, t.one ->> 'productId' AS product_id,
      t.one ->> 'productName' AS product_name, t.one -> 'total' ->> 'dimension' AS dimension, t.one -> 'total' ->> 'amount' AS amount
    FROM record r
    CROSS JOIN LATERAL jsonb_array_elements(r.content -> 'treatments') t(one)
    LEFT JOIN visit_task p ON p.company_id = r.company_id AND p.visit_id = r.visit_id AND p.line = (t.one ->> 'line')::int
    JOIN equipment q ON q.company_id = r.company_id AND q.kind = ANY(${[...SPRAYER_KINDS]})
      AND CASE WHEN t.one ->> 'equipmentId' IS NULL THEN q.name = t.one ->> 'equipmentName' OR q.equipment_id = p.equipment_id ELSE q.equipment_id::text = t.one ->> 'equipmentId' END
    WHERE t.one -> 'fill' = 'null'::jsonb AND t.one -> 'total' ->> 'amount' <> '0'
    ORDER BY r.ended_at DESC, r.number DESC, (t.one ->> 'line')::int, q.equipment_id`;
  return [...groupedBy(rows, ({ visit_id: visitId, equipment_id: equipmentId }) => `${visitId} ${equipmentId}`).values()].flatMap((own) => {
    const [first] = own;
    if (first === undefined) return [];
    const products = own.map(({ product_id: productId, product_name: productName, dimension, amount }) => ({ productId, productName, amount: { dimension, amount: BigInt(amount) } }));
    return [{ visitId: first.visit_id, equipmentId: first.equipment_id, endedAt: first.ended_at.getTime(), street: first.street, products }];
  });
}

/** The same as a tank's next mix asks about it, by the labels of today. How strong it was no record says. */
export function mixAlone({ street, products }: MixedForVisit, labels: LabelsRead): FilledMix {
  return { name: `the mix of ${street}`, finished: "unknown", products: products.map((product) => ({ ...product, label: labels.get(product.productId)?.confirmed?.facts ?? "unknown" })) };
}
