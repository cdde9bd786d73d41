import { booksBeforeFill, type BooksBeforeFill } from "#domain/mixing/fill-by-gauge";
import { fromAmount } from "#domain/quantities/quantity";
import { fillsInBooks } from "#application/fills/fills-in-books";
import { openStreetOf } from "#application/fills/open-streets";
import { type Work } from "#application/use-case";

/** The books of a tank before a fill, with what they lack. */
export interface TankBeforeFill extends BooksBeforeFill {
  /** The streets of the visits that its fills were made for and that nobody has recorded. */
  readonly openStreets: readonly string[];
}

/** What the books have in a sprayer's tank before something is filled in at a moment. */
export async function tankBeforeFill(work: Work, equipmentId: string, at: Date): Promise<TankBeforeFill> {
  const { companyId } = work.company;
  const cleanOut = await work.tx.cleanOut.findFirst({ where: { companyId, equipmentId, cleanedAt: { lte: at } }, orderBy: { cleanedAt: "desc" }, select: { cleanedAt: true } });
  const rows = await work.tx.fill.findMany({ where: { companyId, equipmentId, filledAt: { lte: at, ...(cleanOut === null ? {} : { gte: cleanOut.cleanedAt }) } } });
  const fills = [...(await fillsInBooks(work, rows)).values()];
  const reading = await work.tx.tankReading.findFirst({ where: { companyId, equipmentId, readAt: { lte: at } }, orderBy: { readAt: "desc" }, select: { volume: true } });
  const books = booksBeforeFill({ at: at.getTime(), fills, cleanedAt: cleanOut?.cleanedAt.getTime(), lastFound: reading === null ? undefined : fromAmount("volume", reading.volume) });
  const plannedFor = rows.filter(({ fillId }) => books.fillIds.includes(fillId)).flatMap(({ plannedVisitIds }) => plannedVisitIds);
  return { ...books, openStreets: [...(await openStreetOf(work, plannedFor)).values()] };
}
