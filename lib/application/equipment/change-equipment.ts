import { accept } from "#domain/foundation/outcome";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { writeDeed } from "#application/audit-trail";
import { measuresOfForm, refuseTruck } from "#application/equipment/add-equipment";
import { changeEquipmentSchema } from "#application/equipment/change-equipment.schema";
import { nominalOfForm } from "#application/equipment/nominal-of-form";
import { keptOrTyped, shown, shownOrNone } from "#application/equipment/typed-amount";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/**
 * Changes a piece of gear: name, truck, measures, deflector, nominal figures. Its kind stays what it is, because calibrations were made
 * with it. A measure that the form gives back as it was shown stays as it is, unrounded.
 */
export const changeEquipment = useCase("equipment/change-equipment", changeEquipmentSchema, async (work, { equipmentId, version, ...form }) => {
  const { companyId } = work.company;
  const before = await work.tx.equipment.findUnique({ where: { companyId_equipmentId: { companyId, equipmentId } } });
  if (before === null) return notFound("gear");
  if (before.stoodDownAt !== null) return conflict("This gear is stood down; it is changed no more.");
  if (before.kind !== form.kind) return conflict("The kind of gear can't be changed. Stand this one down and add the other.");
  const refused = await refuseTruck(work, form.vehicleId);
  if (refused !== undefined) return refused;
  const measures = measuresOfForm(form);
  if (!measures.ok) return measures;
  const { capacity, holdUp, hasDeflector } = measures.value;
  const swath = keptOrTyped("length", before.swath, form.swath, () => measures.value.swath);
  const nominal = await nominalOfForm(work, form, swath);
  if (!nominal.ok) return nominal;
  const dimension = isSprayer(form.kind) ? "volume" : "mass";
  const { count } = await work.tx.equipment.updateMany({
    where: { companyId, equipmentId, version },
    data: {
      name: form.name,
      vehicleId: form.vehicleId,
      capacity: keptOrTyped(dimension, before.capacity, form.capacity, () => capacity),
      holdUp: "holdUp" in form && form.holdUp !== "" ? keptOrTyped("volume", before.holdUp, form.holdUp, () => holdUp) : holdUp,
      hasDeflector,
      swath,
      nominal: nominal.value,
      version: { increment: 1 },
    },
  });
  if (count === 0) return conflict("Someone else has changed this gear since you opened the page. Load it again to see both.");
  await work.tx.stockLocation.updateMany({ where: { companyId, equipmentId }, data: { name: form.name } });
  const told = {
    name: before.name,
    vehicleId: before.vehicleId,
    capacity: shown(dimension, before.capacity),
    holdUp: shownOrNone("volume", before.holdUp),
    hasDeflector: before.hasDeflector,
    swath: shownOrNone("length", before.swath),
    nominal: before.nominal,
  };
  await writeDeed(work, equipmentId, { deed: "equipment-changed", details: { before: told, after: form } });
  return accept({ version: version + 1 });
});
