import { type z } from "zod";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { readLawn, type TypedPiece } from "#domain/properties/lawn-pieces";
import { writeDeed } from "#application/audit-trail";
import { areaWords, enteredColumns, measuredColumns } from "#application/properties/add-zone";
import { measureZoneSchema } from "#application/properties/measure-zone.schema";
import { badField, conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";

const MOST_PIECES = 40;

type Change = z.output<typeof measureZoneSchema>["change"];

/** The pieces of the lawn after one was put in or taken out. */
function piecesAfter(before: readonly TypedPiece[], change: Exclude<Change, { kind: "enter-area" }>): Outcome<readonly TypedPiece[], UseCaseRefusal> {
  const at = change.at === "new" ? before.length : change.at;
  const isThere = at < before.length;
  if (!isThere && (change.at !== "new" || change.kind === "remove-piece")) return notFound("piece of this lawn");
  if (change.kind === "remove-piece") {
    const left = before.filter((_, place) => place !== at);
    return left.some(({ use }) => use === "lawn") ? accept(left) : badField("change.at", "This is its only piece of lawn. Measure another first, or give its size as an area.");
  }
  if (at >= MOST_PIECES) return badField("change.piece.shape", `At most ${String(MOST_PIECES)} pieces make a lawn.`);
  return accept(isThere ? before.map((piece, place) => (place === at ? change.piece : piece)) : [...before, change.piece]);
}

/** The columns of the lawn after the change. */
function columnsAfter(work: Work, before: readonly TypedPiece[], change: Change) {
  if (change.kind === "enter-area") return accept(enteredColumns(change.area));
  const pieces = piecesAfter(before, change);
  if (!pieces.ok) return pieces;
  const lawn = readLawn(pieces.value);
  if (!lawn.ok) return badField(change.kind === "put-piece" ? "change.piece.use" : "change.at", lawn.refusal.sentence);
  return accept(measuredColumns(work, pieces.value, lawn.value.area.amount));
}

/**
 * Measures a lawn anew: puts a piece in (water that is drawn answers whether there is any), takes one out, or replaces all pieces by an area that somebody gave. The area
 * is always that of all its pieces. Whoever began from an older version of the lawn is told.
 */
export const measureZone = useCase("properties/measure-zone", measureZoneSchema, async (work, { zoneId, version, change }) => {
  const key = { companyId: work.company.companyId, zoneId };
  const before = await work.tx.zone.findUnique({ where: { companyId_zoneId: key } });
  if (before?.removedAt !== null) return notFound("lawn");
  if (before.version !== version) return conflict("Someone else has changed this lawn since you opened the page. Load it again to see both.");
  const after = columnsAfter(work, before.pieces as unknown as TypedPiece[], change);
  if (!after.ok) return after;
  const columns = after.value;
  const drawsWater = change.kind === "put-piece" && change.piece.use === "water";
  const { count } = await work.tx.zone.updateMany({
    where: { ...key, version, removedAt: null },
    data: { ...columns, ...(drawsWater ? { waterBeside: "yes" } : {}), version: { increment: 1 } },
  });
  if (count === 0) return conflict("Someone else has changed this lawn since you opened the page. Load it again to see both.");
  await writeDeed(work, zoneId, {
    deed: "zone-measured",
    details: {
      before: { area: areaWords(before.area), areaOrigin: before.areaOrigin, pieces: before.pieces },
      after: { area: areaWords(columns.area), areaOrigin: columns.areaOrigin, pieces: columns.pieces },
    },
  });
  return accept({ version: version + 1, propertyId: before.propertyId });
});
