import { type CalendarDate } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { type ContainerOnHand } from "#domain/mixing/products-to-load";
import { fromAmount } from "#domain/quantities/quantity";
import { type Container } from "#domain/stock/container-words";
import { inTakingOrder } from "#domain/stock/first-expired";
import { calendarDayOrNone } from "#application/stored-day";
import { type Work } from "#application/use-case";
import { type AnswerOnFile, answersOfVisits, type IssuedTicket, issuedTicketsOf } from "#application/visits/issued-ticket";

// What a day's screen asks of the books for all of its visits at once.

/** What is on file about some visits besides their plans. */
export interface DayFacts {
  readonly ticketOf: ReadonlyMap<string, IssuedTicket>;
  readonly recordOf: ReadonlyMap<string, { readonly registerEntryId: string; readonly number: number }>;
  readonly answersOf: ReadonlyMap<string, readonly AnswerOnFile[]>;
}

/** Reads tickets, records and answers of the visits with six queries. */
export async function readDayFacts(work: Work, visitIds: readonly string[]): Promise<DayFacts> {
  const { companyId } = work.company;
  const records = await work.tx.registerEntry.findMany({
    where: { companyId, visitId: { in: [...visitIds] }, kind: "record" },
    select: { visitId: true, registerEntryId: true, number: true },
    orderBy: { number: "asc" },
  });
  return {
    ticketOf: await issuedTicketsOf(work, visitIds),
    recordOf: new Map(records.map(({ visitId, registerEntryId, number }) => [visitId, { registerEntryId, number }])),
    answersOf: await answersOfVisits(work, visitIds),
  };
}

/** What each product comes in, as the lot in the shop or on a truck has it that is taken next. Two queries. */
export async function containersOnHand(work: Work, productIds: readonly string[], countedBy: ReadonlyMap<string, "mass" | "volume">): Promise<readonly ContainerOnHand[]> {
  const { companyId } = work.company;
  const lots = await work.tx.lot.findMany({ where: { companyId, productId: { in: [...productIds] } }, orderBy: [{ createdAt: "asc" }, { lotId: "asc" }] });
  const sums = await work.tx.$queryRaw<{ lot_id: string; amount: string }[]>`
    SELECT b.lot_id, sum(b.amount)::text AS amount FROM stock_balance b
    JOIN stock_location l ON l.company_id = b.company_id AND l.stock_location_id = b.stock_location_id
    WHERE b.company_id = ${companyId}::uuid AND b.lot_id = ANY(${lots.map(({ lotId }) => lotId)}::uuid[]) AND l.kind IN ('shop', 'truck')
    GROUP BY b.lot_id`;
  const amountOf = new Map(sums.map(({ lot_id, amount }) => [lot_id, BigInt(amount)]));
  const onHand = lots.map((lot, index) => ({
    ...lot,
    receivedOrder: index,
    expiresOn: calendarDayOrNone(lot.expiresOn) satisfies CalendarDate | null,
    amount: amountOf.get(lot.lotId) ?? 0n,
  }));
  const byProduct = groupedBy(onHand.filter(({ amount }) => amount > 0n), ({ productId }) => productId);
  return [...byProduct].flatMap(([productId, own]) => {
    const [next] = inTakingOrder(own);
    const dimension = countedBy.get(productId);
    if (next === undefined || dimension === undefined) return [];
    return [{ productId, container: next.container as Container, size: fromAmount(dimension, next.containerSize), lotNumber: next.number }];
  });
}
