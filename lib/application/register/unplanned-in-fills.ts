import { type LabelFacts } from "#domain/label/label-facts";
import { type TreatedLawn } from "#domain/mixing/treated-area";
import { type LabelPutDown } from "#domain/register/put-down";
import { NOT_PLANNED } from "#domain/register/record-content";
import { labelInUse, labelsOfProducts } from "#application/products/stored-label";
import { type FillAtHand } from "#application/register/drawn-from-fills";
import { type ProductPutDown, type RecordPlan } from "#application/register/record-plan";
import { type Work } from "#application/use-case";

/** What of a visit came out of fills together, as a form has it. */
export interface DrawAsked {
  /** The key by which the form names its first mix. */
  readonly key: string;
  /** All products that were planned to come out of them. */
  readonly planned: readonly ProductPutDown[];
  readonly lawns: readonly TreatedLawn[];
  readonly fills: readonly FillAtHand[];
}

/**
 * The products that fills hold beyond what was planned to come out of them, for each draw of any, with a line
 * of their own after those of the plan. What came out of a tank went onto the lawns, planned or not: their label's facts go
 * with them where they are on file, and the use where the label has only one.
 */
export async function unplannedInFills(work: Work, { treatments }: RecordPlan, draws: readonly DrawAsked[]): Promise<ReadonlyMap<string, readonly ProductPutDown[]>> {
  const { companyId } = work.company;
  const besideOf = new Map(draws.map((draw) => [draw.key, productsBeside(draw)]));
  const productIds = [...new Set([...besideOf.values()].flat())];
  if (productIds.length === 0) return new Map();
  const products = await work.tx.product.findMany({ where: { companyId, productId: { in: productIds } }, orderBy: [{ name: "asc" }, { productId: "asc" }] });
  const labels = await labelsOfProducts(work.tx, companyId, productIds);
  let line = treatments.reduce((last, treatment) => Math.max(last, treatment.line), 0);
  return new Map(
    draws.map(({ key, planned, lawns }) => {
      const [first] = planned;
      const [equipmentName, spot] = [first?.equipmentName ?? "", first?.spot];
      const beside = products.filter(({ productId }) => besideOf.get(key)?.includes(productId) === true);
      const putDown = beside.map(({ productId, name, countedBy }): ProductPutDown => {
        line += 1;
        const label = labelPutDown(labelInUse(labels.get(productId))?.facts);
        return { line, productId, productName: name, countedBy: countedBy as ProductPutDown["countedBy"], rateText: NOT_PLANNED, reason: NOT_PLANNED, ...(spot === undefined ? {} : { spot }), equipmentName, label, lawns };
      });
      return [key, putDown];
    }),
  );
}

function productsBeside({ planned, fills }: DrawAsked): readonly string[] {
  const held = fills.flatMap(({ lots, productOfLot }) => lots.flatMap(({ lotId }) => productOfLot.get(lotId) ?? []));
  return [...new Set(held)].filter((productId) => !planned.some((one) => one.productId === productId));
}

function labelPutDown(label: LabelFacts | undefined): LabelPutDown {
  if (label === undefined) return "not-on-file";
  const [use, another] = label.uses;
  return { label, use: use === undefined || another !== undefined ? "not-known" : use };
}
