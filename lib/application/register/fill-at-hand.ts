import { groupedBy } from "#domain/foundation/grouping";
import { fromAmount } from "#domain/quantities/quantity";
import { type FillAtHand } from "#application/register/really-used";
import { type Work } from "#application/use-case";

/** Fills with what is left of them in their tanks, by id; those that the company does not have are left out. */
export async function fillsAtHand(work: Pick<Work, "tx" | "company">, fillIds: readonly string[]): Promise<ReadonlyMap<string, FillAtHand>> {
  const { companyId } = work.company;
  if (fillIds.length === 0) return new Map();
  const fills = await work.tx.fill.findMany({ where: { companyId, fillId: { in: [...fillIds] } } });
  const tanks = await work.tx.stockLocation.findMany({ where: { companyId, kind: "tank", equipmentId: { in: fills.map(({ equipmentId }) => equipmentId) } } });
  const draws = groupedBy(await work.tx.fillDraw.findMany({ where: { companyId, fillId: { in: [...fillIds] } } }), ({ fillId }) => fillId);
  const entries = await work.tx.stockEntry.findMany({
    where: { companyId, stockPostingId: { in: fills.map(({ stockPostingId }) => stockPostingId) }, stockLocationId: { in: tanks.map(({ stockLocationId }) => stockLocationId) } },
    orderBy: { line: "asc" },
  });
  const lots = await work.tx.lot.findMany({ where: { companyId, lotId: { in: entries.map(({ lotId }) => lotId) } } });
  const productOfLot = new Map(lots.map(({ lotId, productId }) => [lotId, productId]));
  const numberOfLot = new Map(lots.map(({ lotId, number }) => [lotId, number]));
  const entriesOf = groupedBy(entries, ({ stockPostingId }) => stockPostingId);
  return new Map(
    fills.flatMap(({ fillId, number, mixingPlace, equipmentId, finishedVolume, stockPostingId }): readonly (readonly [string, FillAtHand])[] => {
      const tank = tanks.find((one) => one.equipmentId === equipmentId);
      if (tank === undefined) return [];
      const drawn = (draws.get(fillId) ?? []).reduce((total, { volume }) => total + volume, 0n);
      return [
        [
          fillId,
          {
            ...{ fillId, number, mixingPlace, productOfLot, numberOfLot, tankLocationId: tank.stockLocationId },
            finished: fromAmount("volume", finishedVolume),
            lots: (entriesOf.get(stockPostingId) ?? []).map(({ lotId, amount }) => ({ lotId, amount })),
            drawn: fromAmount("volume", drawn),
          },
        ],
      ];
    }),
  );
}
