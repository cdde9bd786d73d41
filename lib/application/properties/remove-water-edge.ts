import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { removeWaterEdgeSchema } from "#application/properties/remove-water-edge.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/**
 * Takes a water's edge off a lawn, for one that was entered by mistake or is measured anew. Its row stays, and
 * so does the answer that there is water: whoever took off a mistake says so of the lawn.
 */
export const removeWaterEdge = useCase("properties/remove-water-edge", removeWaterEdgeSchema, async (work, { waterEdgeId }) => {
  const key = { companyId: work.company.companyId, waterEdgeId };
  const edge = await work.tx.waterEdge.findUnique({ where: { companyId_waterEdgeId: key } });
  if (edge === null) return notFound("water's edge");
  const { count } = await work.tx.waterEdge.updateMany({ where: { ...key, removedAt: null }, data: { removedAt: work.now } });
  if (count === 0) return conflict("This water's edge was taken off already.");
  await writeDeed(work, waterEdgeId, { deed: "water-edge-removed", details: { name: edge.name } });
  return accept(null);
});
