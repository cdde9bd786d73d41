import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { addSeedingSchema } from "#application/properties/add-seeding.schema";
import { acceptSeeding, seedingColumns, seedingOf } from "#application/properties/seedings-on-file";
import { notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Writes down seed or sod on a lawn, done or planned. A lawn may have several, for labels count from each of them. */
export const addSeeding = useCase("properties/add-seeding", addSeedingSchema, async (work, { zoneId, ...form }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const zone = await work.tx.zone.findUnique({ where: { companyId_zoneId: { companyId, zoneId } } });
  if (zone?.removedAt !== null) return notFound("lawn");
  const accepted = await acceptSeeding(work, zoneId, form);
  if (!accepted.ok) return accepted;
  const seedingId = work.newId();
  const columns = seedingColumns(form);
  await work.tx.seeding.create({ data: { companyId, seedingId, zoneId, ...columns, createdAt: work.now } });
  await writeDeed(work, seedingId, { deed: "seeding-added", details: { lawn: `${zone.letter} ${zone.name}`, ...seedingOf(columns) } });
  return accept({ seedingId, propertyId: zone.propertyId });
});
