import { accept, type Outcome } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { addEquipmentSchema, type EquipmentForm } from "#application/equipment/add-equipment.schema";
import { nominalOfForm } from "#application/equipment/nominal-of-form";
import { holdUpOfForm } from "#application/equipment/sprayer-hold-up";
import { amountOf, amountOrNone } from "#application/equipment/typed-amount";
import { badField, notFound, type UseCaseRefusal } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";

/** A complaint when the truck chosen for a piece of gear is not of this company, or is stood down. */
export async function refuseTruck(work: Work, vehicleId: string | null) {
  if (vehicleId === null) return undefined;
  const { companyId } = work.company;
  const vehicle = await work.tx.vehicle.findUnique({ where: { companyId_vehicleId: { companyId, vehicleId } } });
  if (vehicle === null) return notFound("truck");
  return vehicle.stoodDownAt === null ? undefined : badField("vehicleId", `Truck ${String(vehicle.number)} is stood down. Choose another, or none.`);
}

/** The measures of a piece of gear in canonical units, as the form gives them. */
export function measuresOfForm(form: EquipmentForm): Outcome<
  { readonly capacity: bigint; readonly holdUp: bigint | null; readonly hasDeflector: boolean | null; readonly swath: bigint | null },
  UseCaseRefusal
> {
  const swath = amountOrNone("swath", form.swath, "length");
  if ("holdUp" in form) {
    const holdUp = holdUpOfForm(form);
    if (!holdUp.ok) return holdUp;
    return accept({ capacity: amountOf("capacity", form.capacity, "volume"), holdUp: holdUp.value, hasDeflector: null, swath });
  }
  const hasDeflector = form.deflector === "nobody-looked" ? null : form.deflector === "yes";
  return accept({ capacity: amountOf("capacity", form.capacity, "mass"), holdUp: null, hasDeflector, swath });
}

/** Adds a sprayer or a spreader, on a truck or at the shop. A sprayer's tank is a location of stock from then on. */
export const addEquipment = useCase("equipment/add-equipment", addEquipmentSchema, async (work, form) => {
  const { companyId } = work.company;
  const { kind, name, vehicleId } = form;
  const refused = await refuseTruck(work, vehicleId);
  if (refused !== undefined) return refused;
  const measures = measuresOfForm(form);
  if (!measures.ok) return measures;
  const nominal = await nominalOfForm(work, form, measures.value.swath);
  if (!nominal.ok) return nominal;
  const equipmentId = work.newId();
  await work.tx.equipment.create({ data: { companyId, equipmentId, vehicleId, name, kind, ...measures.value, nominal: nominal.value, createdAt: work.now } });
  if ("holdUp" in form) {
    await work.tx.stockLocation.create({ data: { companyId, stockLocationId: work.newId(), kind: "tank", name, equipmentId, createdAt: work.now } });
  }
  await writeDeed(work, equipmentId, { deed: "equipment-added", details: { ...form } });
  return accept({ equipmentId });
});
