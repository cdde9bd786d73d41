import { accept, type Outcome, refuse } from "#domain/foundation/outcome";
import { areOverArea, type LabelUse, useNamed } from "#domain/label/label-facts";
import { parseShare } from "#domain/quantities/share";
import { readPlannedRate } from "#domain/scheduling/planned-rate";
import { labelsOfProducts, type LabelsRead } from "#application/products/stored-label";
import { type UseCaseRefusal } from "#application/refusal";
import { type Work } from "#application/use-case";

/** A treatment as a form asks for it; `row` says where on the form, so that a refusal finds its field. */
export interface TreatmentAsked {
  readonly row: string;
  readonly productId: string;
  readonly labelUse: string;
  readonly rate: string;
  /** Of spot work its share of the lawn; empty: all over the lawn. */
  readonly spotShare: string;
  readonly reason: string;
}

/** A treatment as its columns hold it. */
export interface TreatmentColumns {
  readonly productId: string;
  readonly labelUse: string;
  readonly rateBasis: string;
  readonly rateAmount: bigint;
  readonly ratePer: bigint;
  readonly rateText: string;
  /** In hundredths of a percent; null: all over the lawn. */
  readonly spotShareBasisPoints: number | null;
  readonly reason: string;
}

type Fields = Readonly<Record<string, string>>;

interface ProductToPlan {
  readonly name: string;
  readonly retiredAt: Date | null;
}

/** Products as far as a plan asks of them, with their labels. */
export interface ProductsToPlan {
  readonly productOf: ReadonlyMap<string, ProductToPlan>;
  readonly labels: LabelsRead;
}

/** Reads them for any number of treatments at once. */
export async function productsToPlan(work: Work, asked: readonly Pick<TreatmentAsked, "productId">[]): Promise<ProductsToPlan> {
  const { companyId } = work.company;
  const productIds = [...new Set(asked.map(({ productId }) => productId))];
  const products = await work.tx.product.findMany({ where: { companyId, productId: { in: productIds } }, select: { productId: true, name: true, retiredAt: true } });
  return { productOf: new Map(products.map((product) => [product.productId, product])), labels: await labelsOfProducts(work.tx, companyId, productIds) };
}

/** Reads the products of some treatments and holds these against their labels. */
export async function treatmentColumns(work: Work, list: string, asked: readonly TreatmentAsked[]): Promise<Outcome<readonly TreatmentColumns[], UseCaseRefusal>> {
  return columnsByLabels(await productsToPlan(work, asked), list, asked);
}

/**
 * Holds treatments against the confirmed labels of their products and reads their rates. Refused at its own field: a
 * product that is not in the shed, was retired or has no confirmed label, a use that the label does not have, a rate
 * that is no rate of that use or lies above its highest, a share that is none, and the same use of a product twice.
 */
export function columnsByLabels({ productOf, labels }: ProductsToPlan, list: string, asked: readonly TreatmentAsked[]): Outcome<readonly TreatmentColumns[], UseCaseRefusal> {
  const fields: Record<string, string> = {};
  const columns: TreatmentColumns[] = [];
  for (const each of asked) {
    const product = productOf.get(each.productId);
    const label = labels.get(each.productId)?.confirmed?.facts;
    const read = readOne(each, product, label, columns);
    if (read.ok) columns.push(read.value);
    else for (const [field, sentence] of Object.entries(read.refusal)) fields[`${list}.${each.row}.${field}`] = sentence;
  }
  if (Object.keys(fields).length === 0) return accept(columns);
  return refuse({ kind: "bad-input", sentence: "Nothing was saved. Please look at the marked fields.", fields });
}

type ConfirmedFacts = Parameters<typeof useNamed>[0];

function readOne(
  { productId, labelUse, rate, spotShare, reason }: TreatmentAsked,
  product: ProductToPlan | undefined,
  label: ConfirmedFacts | undefined,
  before: readonly TreatmentColumns[],
): Outcome<TreatmentColumns, Fields> {
  if (product === undefined) return refuse({ productUse: "This product is not in the shed." });
  if (product.retiredAt !== null) return refuse({ productUse: `${product.name} was retired.` });
  if (label === undefined) return refuse({ productUse: `Nobody has confirmed the label of ${product.name}. Nothing is planned from an unread label.` });
  const use = useNamed(label, labelUse);
  if (use === undefined) return refuse({ productUse: `The label of ${product.name} has no use named ${labelUse}.` });
  if (before.some((other) => other.productId === productId && other.labelUse === labelUse)) return refuse({ productUse: `${product.name}, ${labelUse} stands here twice.` });
  const read = readPlannedRate("rate", rate, use.rates);
  const share = readShare(spotShare, use);
  if (!read.ok || !share.ok) return refuse({ ...(read.ok ? {} : { rate: read.refusal.sentence }), ...(share.ok ? {} : { spotShare: share.refusal }) });
  const { basis, amount, per } = read.value.rate;
  return accept({ productId, labelUse, rateBasis: basis, rateAmount: amount, ratePer: per, rateText: read.value.typed, spotShareBasisPoints: share.value, reason });
}

/** A rate in the finished spray says nothing of ground, so that the plan must: nobody guesses how much of a lawn has weeds. */
function readShare(typed: string, { rates }: LabelUse): Outcome<number | null, string> {
  if (typed.trim() === "") return areOverArea(rates) ? accept(null) : refuse("This rate is for each gallon of spray. Say how much of the lawn gets it, such as 5%; 100% for all of it.");
  const share = parseShare("spotShare", typed);
  return share.ok ? share : refuse(share.refusal.sentence);
}
