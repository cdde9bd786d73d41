import { groupedBy } from "#domain/foundation/grouping";
import { isCleanSince } from "#domain/mixing/clean-out";
import { isOnTopFor } from "#domain/mixing/left-over-mix";
import { treatmentsForRounding } from "#domain/mixing/rounding-room";
import { tanksOf } from "#domain/mixing/spray-mix";
import { lotsInTank } from "#domain/mixing/tank-books";
import { type FilledMix } from "#domain/mixing/tank-plan-question";
import { isSprayed, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { settle } from "#domain/quantities/exact-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { filledMixOf } from "#application/fills/filled-onto";
import { type LeftOverFill, leftOverFills } from "#application/fills/left-over-fills";
import { type Work } from "#application/use-case";

/** Amounts by product, in canonical units of its own dimension. */
export type AmountOfProduct = ReadonlyMap<string, bigint>;

/** What there is for some visits. */
export interface StockForVisits {
  /** What the shop and the trucks hold of each product: it can be measured out for any visit. */
  readonly onHand: AmountOfProduct;
  /** By visit, what is in a tank that was filled for it. It is mixed, and nothing to be measured out for another visit. */
  readonly mixedFor: ReadonlyMap<string, AmountOfProduct>;
  /** What visits that are over left in tanks, tank by tank. */
  readonly leftOver: readonly LeftInTank[];
}

/** What is left in a tank. */
interface LeftInTank {
  readonly equipmentId: string;
  /** The visits that a fill in the tank was made for: it is counted for them already. */
  readonly countedFor: ReadonlySet<string>;
  /** Each with what the tank was filled with then and since. */
  readonly fills: readonly { readonly layers: readonly FilledMix[]; readonly amounts: AmountOfProduct }[];
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
  const leftOver = await leftOverFills(work, null);
  const inTanks = amounts.filter(({ place }) => place?.kind === "tank");
  return {
    onHand: sumsOf(amounts.filter(({ place }) => place?.kind !== "tank")),
    mixedFor: new Map([...tanksFor].map(([visitId, tanks]) => [visitId, sumsOf(inTanks.filter(({ place }) => tanks.has(place?.equipmentId ?? "")))])),
    leftOver: leftInTanks(leftOver, tanksFor),
  };
}

function leftInTanks(leftOver: readonly LeftOverFill[], tanksFor: ReadonlyMap<string, ReadonlySet<string>>): readonly LeftInTank[] {
  const tanks = groupedBy(leftOver, ({ fill }) => fill.row.equipmentId);
  return [...tanks].map(([equipmentId, own]) => ({
    equipmentId,
    countedFor: new Set([...tanksFor].flatMap(([visitId, equipmentIds]) => (equipmentIds.has(equipmentId) ? [visitId] : []))),
    fills: own.map(({ fill, onTop }) => ({
      layers: [fill, ...onTop].map((one) => filledMixOf(one, new Map())),
      amounts: sumsOf(lotsInTank(fill).map(({ lotId, amount }) => ({ productId: fill.productOfLot.get(lotId) ?? "", amount }))),
    })),
  }));
}

/**
 * The question of a visit with what earlier visits left of its mixes in its sprayers among what there is: the day's tank
 * plan takes that first. What is in a tank that was filled for the visit is counted already.
 */
export function withLeftOver(question: TicketQuestion, { leftOver }: StockForVisits, visitId: string): TicketQuestion {
  const tanks = leftOver.filter(({ countedFor }) => !countedFor.has(visitId));
  if (tanks.length === 0) return question;
  const mixes = tanksOf(treatmentsForRounding(question).filter(isSprayed));
  const more = sumsOf(tanks.flatMap(({ equipmentId, fills }) => {
    const own = mixes.filter((treatments) => treatments[0]?.gear.equipmentId === equipmentId);
    return fills.filter(({ layers }) => own.some((treatments) => isOnTopFor(layers, treatments))).flatMap(({ amounts }) => [...amounts].map(([productId, amount]) => ({ productId, amount })));
  }));
  if (more.size === 0) return question;
  return {
    ...question,
    treatments: question.treatments.map((treatment): TicketTreatment => {
      const { dimension, amount } = settle(treatment.onHand, "nearest");
      return { ...treatment, onHand: { dimension, amount: amount + (more.get(treatment.productId) ?? 0n) } as Quantity<"mass"> | Quantity<"volume"> };
    }),
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
