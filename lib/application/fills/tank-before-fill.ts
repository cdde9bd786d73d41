import { inTheBooksBefore } from "#domain/mixing/fill-by-gauge";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { fillsInBooks } from "#application/fills/fills-in-books";
import { type Work } from "#application/use-case";

/** What the books have in a sprayer's tank before something is filled in at a moment. */
export async function tankBeforeFill(work: Work, equipmentId: string, at: Date): Promise<Quantity<"volume">> {
  const { companyId } = work.company;
  const rows = await work.tx.fill.findMany({ where: { companyId, equipmentId, filledAt: { lte: at } } });
  const fills = [...(await fillsInBooks(work, rows)).values()];
  const cleanOut = await work.tx.cleanOut.findFirst({ where: { companyId, equipmentId, cleanedAt: { lte: at } }, orderBy: { cleanedAt: "desc" }, select: { cleanedAt: true } });
  const reading = await work.tx.tankReading.findFirst({ where: { companyId, equipmentId, readAt: { lte: at } }, orderBy: { readAt: "desc" }, select: { volume: true } });
  return inTheBooksBefore({ at: at.getTime(), fills, cleanedAt: cleanOut?.cleanedAt.getTime(), lastFound: reading === null ? undefined : fromAmount("volume", reading.volume) });
}
