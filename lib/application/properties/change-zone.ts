import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { changeZoneSchema } from "#application/properties/change-zone.schema";
import { grassesOf } from "#application/properties/zone-fields.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Changes a lawn's name or its grasses. The loser of a race is told. */
export const changeZone = useCase("properties/change-zone", changeZoneSchema, async (work, { zoneId, version, ...form }) => {
  const key = { companyId: work.company.companyId, zoneId };
  const before = await work.tx.zone.findUnique({ where: { companyId_zoneId: key } });
  if (before?.removedAt !== null) return notFound("lawn");
  const after = { name: form.name, grasses: grassesOf(form), grassesAssumed: form.grassesKnown === "assumed" };
  const { count } = await work.tx.zone.updateMany({
    where: { ...key, version, removedAt: null },
    data: { ...after, version: { increment: 1 } },
  });
  if (count === 0) return conflict("Someone else has changed this lawn since you opened the page. Load it again to see both.");
  const was = { name: before.name, grasses: before.grasses, grassesAssumed: before.grassesAssumed };
  await writeDeed(work, zoneId, { deed: "zone-changed", details: { before: was, after } });
  return accept({ version: version + 1, propertyId: before.propertyId });
});
