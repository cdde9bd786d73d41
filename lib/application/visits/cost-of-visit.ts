import { groupedBy } from "#domain/foundation/grouping";
import { invariant } from "#domain/foundation/invariant";
import { fromAmount } from "#domain/quantities/quantity";
import { neededTreatments } from "#domain/mixing/mix-ticket";
import { type CostOfNamedProduct, costOfProduct, costOfTaken } from "#domain/stock/cost-of-product";
import { totalOf } from "#domain/stock/on-hand";
import { may } from "#application/permission";
import { stockOfProducts } from "#application/stock/list-stock";
import { lotsWithPrices } from "#application/stock/lots-with-prices";
import { type VisitRow } from "#application/visits/visit-rows";
import { type TicketOutcome, type VisitTicket } from "#application/visits/visit-ticket";
import { type Work } from "#application/use-case";

/** What the products of a visit cost: by the lots that will be opened for it, or by those that its record took down. */
export interface CostOfVisit {
  readonly basis: "lots-to-open" | "lots-put-down";
  readonly products: readonly CostOfNamedProduct[];
}

/** A visit as far as its cost hangs on it. */
export interface VisitToCost {
  readonly visit: Pick<VisitRow, "state">;
  readonly outcome: TicketOutcome;
  readonly record: { readonly registerEntryId: string } | undefined;
}

/**
 * What the products of a visit cost. Undefined for whoever may not see prices, for a visit that puts no product down,
 * and where nothing can be worked out. It is read anew each time and kept nowhere: a ticket and a record say what goes
 * on the lawn, not what it cost.
 */
export async function costOfVisit(work: Work, { visit, outcome, record }: VisitToCost): Promise<CostOfVisit | undefined> {
  if (!may(work.member.role, "stock/read-prices")) return undefined;
  if (record !== undefined) return someProducts("lots-put-down", await putDown(work, record.registerEntryId));
  if (visit.state !== "planned" || !outcome.ok) return undefined;
  return someProducts("lots-to-open", await toOpen(work, outcome.value));
}

function someProducts(basis: CostOfVisit["basis"], products: readonly CostOfNamedProduct[]): CostOfVisit | undefined {
  return products.length === 0 ? undefined : { basis, products };
}

/** Of each product all that the visit takes, in whatever tanks and passes. However many products there are, their lots and prices are asked for once. */
async function toOpen(work: Work, { question, ticket }: VisitTicket): Promise<readonly CostOfNamedProduct[]> {
  const needed = neededProducts(neededTreatments(ticket.mixes, question.treatments));
  if (needed.length === 0) return [];
  const stocks = await stockOfProducts(work, needed.map(({ productId }) => productId));
  const lots = await lotsWithPrices(work, stocks.flatMap(({ productId, lots: own }) => own.map((lot) => ({ ...lot, productId }))));
  const lotsOf = groupedBy(lots, ({ productId }) => productId);
  return needed.map(({ productId, productName, quantity }): CostOfNamedProduct => {
    // A retired product of which nothing is left has no stock to ask; its lots are none.
    const isCountedOtherwise = stocks.some((stock) => stock.productId === productId && stock.dimension !== quantity.dimension);
    return { productId, productName, quantity, cost: isCountedOtherwise ? "counted-by-another-measure" : costOfProduct(quantity, lotsOf.get(productId) ?? []) };
  });
}

/** The sums by product and measure, without what comes to nothing. */
function neededProducts(treatments: ReturnType<typeof neededTreatments>): readonly Omit<CostOfNamedProduct, "cost">[] {
  return [...groupedBy(treatments, ({ treatment: { productId }, amount }) => `${productId} ${amount.dimension}`).values()].flatMap((own) => {
    const [first] = own;
    invariant(first !== undefined, "a group has a member");
    const { productId, label } = first.treatment;
    const quantity = fromAmount(first.amount.dimension, totalOf(own.map(({ amount }) => amount)));
    return quantity.amount > 0n ? [{ productId, productName: label.productName, quantity }] : [];
  });
}

/** What the record took down, by lot, from its own movement of stock. */
async function putDown(work: Work, registerEntryId: string): Promise<readonly CostOfNamedProduct[]> {
  const { companyId } = work.company;
  const entry = await work.tx.registerEntry.findUnique({ where: { companyId_registerEntryId: { companyId, registerEntryId } }, select: { stockPostingId: true } });
  const stockPostingId = entry?.stockPostingId ?? null;
  if (stockPostingId === null) return [];
  const taken = await work.tx.stockEntry.findMany({ where: { companyId, stockPostingId, amount: { gt: 0 } }, orderBy: { line: "asc" } });
  const rows = await work.tx.lot.findMany({ where: { companyId, lotId: { in: taken.map(({ lotId }) => lotId) } } });
  const products = await work.tx.product.findMany({ where: { companyId, productId: { in: rows.map(({ productId }) => productId) } }, orderBy: [{ name: "asc" }, { productId: "asc" }] });
  const lots = await lotsWithPrices(work, rows);
  return products.map(({ productId, name, countedBy }): CostOfNamedProduct => {
    const dimension = countedBy as "mass" | "volume";
    const own = taken.flatMap(({ lotId, amount }) => lots.filter((lot) => lot.lotId === lotId && lot.productId === productId).map((lot) => ({ lot, amount })));
    return { productId, productName: name, quantity: fromAmount(dimension, totalOf(own)), cost: costOfTaken(dimension, own) };
  });
}
