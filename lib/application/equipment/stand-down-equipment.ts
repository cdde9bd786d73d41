import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { standDownEquipmentSchema } from "#application/equipment/stand-down-equipment.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Stands a piece of gear down: it is planned no more, and its calibrations stay in the books. */
export const standDownEquipment = useCase("equipment/stand-down-equipment", standDownEquipmentSchema, async (work, { equipmentId }) => {
  const { companyId } = work.company;
  const equipment = await work.tx.equipment.findUnique({ where: { companyId_equipmentId: { companyId, equipmentId } } });
  if (equipment === null) return notFound("gear");
  const { count } = await work.tx.equipment.updateMany({
    where: { companyId, equipmentId, stoodDownAt: null },
    data: { stoodDownAt: work.now, version: { increment: 1 } },
  });
  if (count === 0) return conflict("This gear is stood down already.");
  await writeDeed(work, equipmentId, { deed: "equipment-stood-down", details: { kind: equipment.kind, name: equipment.name } });
  return accept(null);
});
