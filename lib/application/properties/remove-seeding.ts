import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { removeSeedingSchema } from "#application/properties/remove-seeding.schema";
import { seedingOf } from "#application/properties/seedings-on-file";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Takes seed or sod off a lawn, for what was entered by mistake or was planned and given up. Its row stays. */
export const removeSeeding = useCase("properties/remove-seeding", removeSeedingSchema, async (work, { seedingId }) => {
  const key = { companyId: work.company.companyId, seedingId };
  const row = await work.tx.seeding.findUnique({ where: { companyId_seedingId: key } });
  if (row === null) return notFound("seeding");
  const { count } = await work.tx.seeding.updateMany({ where: { ...key, removedAt: null }, data: { removedAt: work.now, version: { increment: 1 } } });
  if (count === 0) return conflict("This was taken off already.");
  await writeDeed(work, seedingId, { deed: "seeding-removed", details: { ...seedingOf(row) } });
  return accept(null);
});
