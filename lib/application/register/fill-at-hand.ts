import { type SourceOfDraw, sourceOfDraw } from "#domain/mixing/tank-books";
import { type FillOfTank, fillsInBooks } from "#application/fills/fills-in-books";
import { type FillAtHand, type SourceAtHand } from "#application/register/drawn-from-fills";
import { type LocationWork, singularLocation } from "#application/stock/stock-locations";

/**
 * Fills as they stand for a visit that ended at this moment, by id; those that the company does not have are left out. Out of
 * a tank that was measured or cleaned out after the visit nothing more is taken: what the visit took is part of what was
 * missing then, and beyond that it comes from count difference.
 */
export async function fillsAtHand(work: LocationWork, fillIds: readonly string[], endedAt: Date): Promise<ReadonlyMap<string, FillAtHand>> {
  const { companyId } = work.company;
  if (fillIds.length === 0) return new Map();
  const rows = await work.tx.fill.findMany({ where: { companyId, fillId: { in: [...fillIds] } } });
  const answer = new Map<string, FillAtHand>();
  for (const fill of (await fillsInBooks(work, rows)).values()) {
    if (fill.tankLocationId === null) continue;
    const { fillId, number, finished, lots, productOfLot, numberOfLot } = fill;
    const { from, drawn } = sourceOfDraw(fill, endedAt.getTime());
    const sources = from === "tank" ? [{ stockLocationId: fill.tankLocationId, upTo: null }] : await sourcesSettled(work, fill, from);
    answer.set(fillId, { fillId, number, finished, lots, productOfLot, numberOfLot, drawn, sources, fillRestId: from === "tank" ? null : from.fillRestId, mixingPlace: fill.row.mixingPlace });
  }
  return answer;
}

async function sourcesSettled(work: LocationWork, { rests }: FillOfTank, { fillRestId, missing }: Exclude<SourceOfDraw["from"], "tank">): Promise<readonly SourceAtHand[]> {
  const countDifferenceId = await singularLocation(work, "count-difference");
  const beyond = { stockLocationId: countDifferenceId, upTo: null };
  const missingWentToId = rests.find((rest) => rest.fillRestId === fillRestId)?.wentToId ?? null;
  return missingWentToId === null || missingWentToId === countDifferenceId ? [beyond] : [{ stockLocationId: missingWentToId, upTo: missing }, beyond];
}
