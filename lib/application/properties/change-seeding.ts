import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { changeSeedingSchema } from "#application/properties/change-seeding.schema";
import { acceptSeeding, seedingColumns, seedingOf } from "#application/properties/seedings-on-file";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Changes seed or sod of a lawn: that what was planned is done, or what was known of it. The loser of a race is told. */
export const changeSeeding = useCase("properties/change-seeding", changeSeedingSchema, async (work, { seedingId, version, ...form }) => {
  const key = { companyId: work.company.companyId, seedingId };
  await lockCompany(work.tx);
  const before = await work.tx.seeding.findUnique({ where: { companyId_seedingId: key } });
  if (before?.removedAt !== null) return notFound("seeding");
  const { zoneId } = before;
  const zone = await work.tx.zone.findUnique({ where: { companyId_zoneId: { companyId: key.companyId, zoneId } } });
  if (zone?.removedAt !== null) return notFound("lawn");
  const accepted = await acceptSeeding(work, zoneId, form, seedingId);
  if (!accepted.ok) return accepted;
  const columns = seedingColumns(form);
  const { count } = await work.tx.seeding.updateMany({ where: { ...key, version, removedAt: null }, data: { ...columns, version: { increment: 1 } } });
  if (count === 0) return conflict("Someone else has changed this since you opened the page. Load it again to see both.");
  await writeDeed(work, seedingId, {
    deed: "seeding-changed",
    details: { lawn: `${zone.letter} ${zone.name}`, before: seedingOf(before), after: seedingOf(columns) },
  });
  return accept({ version: version + 1, propertyId: zone.propertyId, zoneId });
});
