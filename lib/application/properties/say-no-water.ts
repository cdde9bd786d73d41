import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { sayNoWaterSchema } from "#application/properties/say-no-water.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/**
 * Says of all lawns of a property of which nobody has said it that there is no water beside them: somebody looked. A lawn whose
 * water is on file, or of which it was said before, keeps its answer.
 */
export const sayNoWater = useCase("properties/say-no-water", sayNoWaterSchema, async (work, { propertyId }) => {
  await lockCompany(work.tx);
  const { companyId } = work.company;
  const property = await work.tx.property.findUnique({ where: { companyId_propertyId: { companyId, propertyId } } });
  if (property === null) return notFound("property");
  const notKnown = { companyId, propertyId, removedAt: null, waterBeside: "not-known" };
  const lawns = await work.tx.zone.findMany({ where: notKnown, select: { letter: true, name: true }, orderBy: { letter: "asc" } });
  if (lawns.length === 0) return conflict("Of every lawn of this property it is on file whether there is water beside it.");
  await work.tx.zone.updateMany({ where: notKnown, data: { waterBeside: "none", version: { increment: 1 } } });
  await writeDeed(work, propertyId, { deed: "no-water-said", details: { lawns: lawns.map(({ letter, name }) => `${letter} ${name}`) } });
  return accept({ lawns: lawns.length });
});
