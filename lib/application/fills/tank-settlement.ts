import { isCleanSince } from "#domain/mixing/clean-out";
import { inFillingOrder, settleTank, type TankSettled } from "#domain/mixing/tank-books";
import { type LotInFill } from "#domain/mixing/tank-fill";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { type PostingKind, postingOf, type Transfer } from "#domain/stock/posting";
import { fillsInBooks } from "#application/fills/fills-in-books";
import { openStreetOf } from "#application/fills/open-streets";
import { type MissingFromTankWent } from "#application/fills/record-tank-reading.schema";
import { conflict, type UseCaseRefusal } from "#application/refusal";
import { type LotNamed, lotsNamed } from "#application/stock/lots-at";
import { postStock } from "#application/stock/post-stock";
import { locationOfTank, singularLocation } from "#application/stock/stock-locations";
import { type Work } from "#application/use-case";

/** One lot in a tank: what the books had of it at that moment and what was found. Canonical units of the product. */
interface LotSettled extends LotNamed {
  readonly lotId: string;
  readonly inTheBooks: bigint;
  readonly found: bigint;
  /** What has to leave the tank for the books to follow; below nothing where it has to come in. */
  readonly leaves: bigint;
}

/** What a reading or a clean-out does to the books of a tank, before it is written. */
export interface TankToSettle extends TankSettled {
  readonly equipmentId: string;
  readonly at: Date;
  readonly isClean: boolean;
  readonly lots: readonly LotSettled[];
  /** The streets of the visits that these fills were made for and that nobody has recorded. */
  readonly openStreets: readonly string[];
}

const KIND_OF: Readonly<Record<MissingFromTankWent, PostingKind>> = { loss: "lose", rinsate: "lose", "count-difference": "count" };

/** True when a reading or a clean-out of this tank stands from later than this; one in the same minute as well, where that is asked. */
export async function isSettledLater(work: Work, equipmentId: string, at: Date, sameMinute: boolean): Promise<boolean> {
  const { companyId } = work.company;
  const after = sameMinute ? { gte: at } : { gt: at };
  const readings = await work.tx.tankReading.count({ where: { companyId, equipmentId, readAt: after } });
  return readings > 0 || (await work.tx.cleanOut.count({ where: { companyId, equipmentId, cleanedAt: after } })) > 0;
}

/**
 * Holds what was found in a tank at some moment against its books: in gallons, fill by fill, and in every lot. Writes nothing.
 * Where what was found belongs to no fill on the books, nobody knows what it is, and no lot is touched.
 */
export async function tankToSettle(work: Work, equipmentId: string, at: Date, found: Quantity<"volume">): Promise<TankToSettle> {
  const { companyId } = work.company;
  const rows = await work.tx.fill.findMany({ where: { companyId, equipmentId } });
  const fills = [...(await fillsInBooks(work, rows)).values()];
  const last = fills.filter(({ filledAt }) => filledAt < at.getTime()).toSorted(inFillingOrder).at(-1);
  const cleanOut = await work.tx.cleanOut.findFirst({ where: { companyId, equipmentId, cleanedAt: { lt: at } }, orderBy: { cleanedAt: "desc" }, select: { cleanedAt: true } });
  const isClean = isCleanSince(cleanOut === null ? undefined : { cleanedAt: cleanOut.cleanedAt.getTime() }, last);
  const settled = settleTank(fills, at.getTime(), found, isClean);
  const isUnknown = settled.ofNoFill.amount > 0n && !isClean;
  const lots = isUnknown ? [] : await lotsSettled(work, equipmentId, settled);
  const concerned = new Set(settled.fills.filter(({ inTheBooks }) => inTheBooks.amount > 0n).map(({ fillId }) => fillId));
  const plannedFor = rows.filter(({ fillId }) => concerned.has(fillId)).flatMap(({ plannedVisitIds }) => plannedVisitIds);
  return { ...settled, equipmentId, at, isClean, lots, openStreets: [...(await openStreetOf(work, plannedFor)).values()] };
}

async function lotsSettled(work: Work, equipmentId: string, { lotsThen, lotsNow, lotsBefore, isFilledSince }: TankSettled): Promise<readonly LotSettled[]> {
  const { companyId } = work.company;
  const tanks = await work.tx.stockLocation.findMany({ where: { companyId, kind: "tank", equipmentId }, select: { stockLocationId: true } });
  const balances = await work.tx.stockBalance.findMany({ where: { companyId, stockLocationId: { in: tanks.map(({ stockLocationId }) => stockLocationId) } } });
  // Where the tank was filled since, what was carried in or out by hand can't be told from what came with the later fill.
  const inTank: readonly LotInFill[] = isFilledSince ? lotsBefore : balances;
  const ids = [...new Set([...inTank, ...lotsThen, ...lotsNow].map(({ lotId }) => lotId))];
  const lots = await lotsNamed(work, ids);
  return [...lots]
    .map(([lotId, lot]): LotSettled => {
      const leaves = amountOf(inTank, lotId) - amountOf(lotsNow, lotId);
      const found = amountOf(lotsThen, lotId);
      return { ...lot, lotId, inTheBooks: found + leaves, found, leaves };
    })
    .filter(({ inTheBooks, found, leaves }) => inTheBooks !== 0n || found !== 0n || leaves !== 0n)
    .toSorted((one, other) => one.productName.localeCompare(other.productName, "en") || one.lotNumber.localeCompare(other.lotNumber, "en"));
}

function amountOf(lots: readonly LotInFill[], lotId: string): bigint {
  return lots.reduce((total, lot) => total + (lot.lotId === lotId ? lot.amount : 0n), 0n);
}

/** True when something is in the books that was not found, so that somebody has to say where it went. */
export function hasMissing({ lots }: Pick<TankToSettle, "lots">): boolean {
  return lots.some(({ leaves }) => leaves > 0n);
}

/** A posting of a difference as it stands: none where the books agreed lot by lot. */
interface DifferencePosted {
  readonly stockPostingId: string | null;
  /** Where what was missing went; null where nothing was. */
  readonly wentToId: string | null;
}

/**
 * Posts what the books of a tank have otherwise than it was found, in one posting: what is missing goes where it was said,
 * what is there beyond the books comes from count difference. The company's row must be locked.
 */
export async function postDifference(
  work: Work,
  { requestId, note }: { readonly requestId: string; readonly note: string | null },
  { equipmentId, at, lots }: TankToSettle,
  went: MissingFromTankWent | null,
): Promise<Outcome<DifferencePosted, UseCaseRefusal>> {
  const moving = lots.filter(({ leaves }) => leaves !== 0n);
  if (moving.length === 0) return accept({ stockPostingId: null, wentToId: null });
  const tankId = await locationOfTank(work, equipmentId);
  if (tankId === undefined) return conflict("This sprayer is not on file any more. Load the page again.");
  const wentTo = hasMissing({ lots }) ? (went ?? "count-difference") : "count-difference";
  const wentToId = await singularLocation(work, wentTo);
  const countDifferenceId = await singularLocation(work, "count-difference");
  const transfers = moving.map(({ lotId, dimension, leaves }): Transfer =>
    leaves > 0n
      ? { lotId, quantity: fromAmount(dimension, leaves), from: tankId, to: wentToId }
      : { lotId, quantity: fromAmount(dimension, -leaves), from: countDifferenceId, to: tankId },
  );
  const kind = KIND_OF[wentTo];
  const posted = await postStock(work, { kind, requestId, happenedAt: at, note }, () => Promise.resolve(accept(postingOf(kind, transfers))));
  if (!posted.ok) return posted;
  if (posted.value.isRepeat) return conflict("This form was sent before for something else. Load the page again.");
  return accept({ stockPostingId: posted.value.stockPostingId, wentToId: hasMissing({ lots }) ? wentToId : null });
}

/** Writes what is left of each fill from now on. */
export async function writeRests(
  work: Work,
  { fills, at }: TankToSettle,
  source: { readonly tankReadingId: string } | { readonly cleanOutId: string },
  wentToId: string | null,
): Promise<void> {
  const { companyId } = work.company;
  await work.tx.fillRest.createMany({
    data: fills.map(({ fillId, inTheBooks, left }) => ({
      ...{ companyId, fillRestId: work.newId(), fillId, settledAt: at, inTheBooks: inTheBooks.amount, remaining: left.amount },
      ...source,
      wentToId: left.amount < inTheBooks.amount ? wentToId : null,
    })),
  });
}
