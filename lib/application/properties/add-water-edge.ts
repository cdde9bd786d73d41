import { accept } from "#domain/foundation/outcome";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { writeDeed } from "#application/audit-trail";
import { addWaterEdgeSchema } from "#application/properties/add-water-edge.schema";
import { notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** A length as the audit trail writes it. */
function lengthWords(amount: bigint | null): string {
  return amount === null ? "unknown" : formatQuantityIn({ dimension: "length", amount }, "ft", 1);
}

/** Writes down that a lawn lies at water, which answers whether there is any. What nobody measured stays unknown: a check then says so instead of guessing. */
export const addWaterEdge = useCase("properties/add-water-edge", addWaterEdgeSchema, async (work, { zoneId, name, length, width }) => {
  const { companyId } = work.company;
  const zone = await work.tx.zone.findUnique({ where: { companyId_zoneId: { companyId, zoneId } } });
  if (zone?.removedAt !== null) return notFound("lawn");
  const waterEdgeId = work.newId();
  await work.tx.waterEdge.create({ data: { companyId, waterEdgeId, zoneId, name, length, width, createdAt: work.now } });
  await work.tx.zone.update({ where: { companyId_zoneId: { companyId, zoneId } }, data: { waterBeside: "yes" } });
  await writeDeed(work, waterEdgeId, { deed: "water-edge-added", details: { name, length: lengthWords(length), width: lengthWords(width) } });
  return accept({ waterEdgeId, propertyId: zone.propertyId });
});
