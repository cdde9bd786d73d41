import { fromAmount } from "#domain/quantities/quantity";
import { type FillAtHand } from "#application/register/really-used";
import { type Work } from "#application/use-case";

/** A fill with what is left of it in its tank. Undefined when the company has none of that id. */
export async function fillAtHand(work: Pick<Work, "tx" | "company">, fillId: string): Promise<FillAtHand | undefined> {
  const { companyId } = work.company;
  const fill = await work.tx.fill.findUnique({ where: { companyId_fillId: { companyId, fillId } } });
  if (fill === null) return undefined;
  const draws = await work.tx.fillDraw.findMany({ where: { companyId, fillId } });
  const tank = await work.tx.stockLocation.findFirst({ where: { companyId, equipmentId: fill.equipmentId, kind: "tank" } });
  if (tank === null) return undefined;
  const entries = await work.tx.stockEntry.findMany({ where: { companyId, stockPostingId: fill.stockPostingId, stockLocationId: tank.stockLocationId } });
  const lots = await work.tx.lot.findMany({ where: { companyId, lotId: { in: entries.map(({ lotId }) => lotId) } } });
  return {
    fillId,
    number: fill.number,
    mixingPlace: fill.mixingPlace,
    tankLocationId: tank.stockLocationId,
    productOfLot: new Map(lots.map(({ lotId, productId }) => [lotId, productId])),
    finished: fromAmount("volume", fill.finishedVolume),
    lots: entries.map(({ lotId, amount }) => ({ lotId, amount })),
    drawn: fromAmount("volume", draws.reduce((total, { volume }) => total + volume, 0n)),
  };
}
