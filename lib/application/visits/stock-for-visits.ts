import { groupedBy } from "#domain/foundation/grouping";
import { isCleanSince } from "#domain/mixing/clean-out";
import { type Work } from "#application/use-case";

/** Amounts by product, in canonical units of its own dimension. */
export type AmountOfProduct = ReadonlyMap<string, bigint>;

/** What there is for some visits. */
export interface StockForVisits {
  /** What the shop and the trucks hold of each product: it can be measured out for any visit. */
  readonly onHand: AmountOfProduct;
  /** By visit, what is in a tank that was filled for it. It is mixed, and nothing to be measured out for another visit. */
  readonly mixedFor: ReadonlyMap<string, AmountOfProduct>;
}

/**
 * Reads with a fixed number of queries what there is of some products for some visits. A tank counts for the visits that a
 * fill in it was made for, until it is cleaned out; of what went into it only what the books still have in it.
 */
export async function stockForVisits(work: Work, visitIds: readonly string[], productIds: readonly string[]): Promise<StockForVisits> {
  const { companyId } = work.company;
  const lots = await work.tx.lot.findMany({ where: { companyId, productId: { in: [...productIds] } } });
  const places = await work.tx.stockLocation.findMany({ where: { companyId, kind: { in: ["shop", "truck", "tank"] } } });
  const balances = await work.tx.stockBalance.findMany({
    where: { companyId, lotId: { in: lots.map(({ lotId }) => lotId) }, stockLocationId: { in: places.map(({ stockLocationId }) => stockLocationId) } },
  });
  const productOfLot = new Map(lots.map(({ lotId, productId }) => [lotId, productId]));
  const placeOf = new Map(places.map((place) => [place.stockLocationId, place]));
  const amounts = balances.map(({ lotId, stockLocationId, amount }) => ({ productId: productOfLot.get(lotId) ?? "", amount, place: placeOf.get(stockLocationId) }));
  const tanksFor = await tanksFilledFor(work, visitIds);
  const inTanks = amounts.filter(({ place }) => place?.kind === "tank");
  return {
    onHand: sumsOf(amounts.filter(({ place }) => place?.kind !== "tank")),
    mixedFor: new Map([...tanksFor].map(([visitId, tanks]) => [visitId, sumsOf(inTanks.filter(({ place }) => tanks.has(place?.equipmentId ?? "")))])),
  };
}

/** What there is for one visit: what can be measured out for it, and what is mixed for it already. */
export function availableFor({ onHand, mixedFor }: StockForVisits, visitId: string): AmountOfProduct {
  const mixed = mixedFor.get(visitId) ?? new Map<string, bigint>();
  return sumsOf([...onHand, ...mixed].map(([productId, amount]) => ({ productId, amount })));
}

function sumsOf(amounts: readonly { readonly productId: string; readonly amount: bigint }[]): AmountOfProduct {
  const byProduct = groupedBy(amounts, ({ productId }) => productId);
  return new Map([...byProduct].map(([productId, own]) => [productId, own.reduce((sum, { amount }) => sum + amount, 0n)]));
}

/** The tanks that were filled for each visit and were not cleaned out since. */
async function tanksFilledFor(work: Work, visitIds: readonly string[]): Promise<ReadonlyMap<string, ReadonlySet<string>>> {
  const { companyId } = work.company;
  const fills = await work.tx.fill.findMany({
    where: { companyId, plannedVisitIds: { hasSome: [...visitIds] } },
    select: { number: true, equipmentId: true, filledAt: true, plannedVisitIds: true },
  });
  const cleanOuts = await work.tx.cleanOut.groupBy({ by: ["equipmentId"], where: { companyId, equipmentId: { in: fills.map(({ equipmentId }) => equipmentId) } }, _max: { cleanedAt: true } });
  const cleanOutOf = new Map(cleanOuts.flatMap(({ equipmentId, _max: { cleanedAt } }) => (cleanedAt === null ? [] : [[equipmentId, { cleanedAt: cleanedAt.getTime() }] as const])));
  const inTank = fills.filter(({ number, equipmentId, filledAt }) => !isCleanSince(cleanOutOf.get(equipmentId), { number, filledAt: filledAt.getTime() }));
  return new Map(visitIds.map((visitId) => [visitId, new Set(inTank.flatMap(({ plannedVisitIds, equipmentId }) => (plannedVisitIds.includes(visitId) ? [equipmentId] : [])))]));
}
