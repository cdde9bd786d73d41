import { accept } from "#domain/foundation/outcome";
import { type TypedPiece } from "#domain/properties/lawn-pieces";
import { writeDeed } from "#application/audit-trail";
import { changeZoneSchema } from "#application/properties/change-zone.schema";
import { grassesOf } from "#application/properties/zone-fields.schema";
import { badField, conflict, notFound } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";

/** Whether a lawn's water stands on file, as an edge or as a drawing. */
async function hasWater(work: Work, { zoneId, pieces }: { readonly zoneId: string; readonly pieces: unknown }): Promise<boolean> {
  if ((pieces as readonly TypedPiece[]).some(({ use }) => use === "water")) return true;
  return (await work.tx.waterEdge.count({ where: { companyId: work.company.companyId, zoneId, removedAt: null } })) > 0;
}

/**
 * Changes a lawn's name, its grasses, or whether there is water beside it. The loser of a race is told. While water is on
 * file there is some, and another answer is refused.
 */
export const changeZone = useCase("properties/change-zone", changeZoneSchema, async (work, { zoneId, version, ...form }) => {
  const key = { companyId: work.company.companyId, zoneId };
  const before = await work.tx.zone.findUnique({ where: { companyId_zoneId: key } });
  if (before?.removedAt !== null) return notFound("lawn");
  const { name, waterBeside } = form;
  if (waterBeside !== "yes" && (await hasWater(work, before))) {
    return badField("waterBeside", "Water is on file beside this lawn. Take it off the lawn first, and out of the drawing.");
  }
  const after = { name, grasses: grassesOf(form), grassesAssumed: form.grassesKnown === "assumed", waterBeside };
  const { count } = await work.tx.zone.updateMany({
    where: { ...key, version, removedAt: null },
    data: { ...after, version: { increment: 1 } },
  });
  if (count === 0) return conflict("Someone else has changed this lawn since you opened the page. Load it again to see both.");
  const was = { name: before.name, grasses: before.grasses, grassesAssumed: before.grassesAssumed, waterBeside: before.waterBeside };
  await writeDeed(work, zoneId, { deed: "zone-changed", details: { before: was, after } });
  return accept({ version: version + 1, propertyId: before.propertyId });
});
