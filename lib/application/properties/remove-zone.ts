import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { removeZoneSchema } from "#application/properties/remove-zone.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Takes a lawn off the plan. Its row stays for what was put down there, and its letter becomes free. */
export const removeZone = useCase("properties/remove-zone", removeZoneSchema, async (work, { zoneId }) => {
  const key = { companyId: work.company.companyId, zoneId };
  const zone = await work.tx.zone.findUnique({ where: { companyId_zoneId: key } });
  if (zone === null) return notFound("lawn");
  const { count } = await work.tx.zone.updateMany({ where: { ...key, removedAt: null }, data: { removedAt: work.now, version: { increment: 1 } } });
  if (count === 0) return conflict("This lawn was taken off the plan already.");
  await work.tx.stationZone.deleteMany({ where: key });
  await writeDeed(work, zoneId, { deed: "zone-removed", details: { letter: zone.letter, name: zone.name } });
  return accept({ propertyId: zone.propertyId });
});
