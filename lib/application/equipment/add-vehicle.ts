import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { addVehicleSchema } from "#application/equipment/add-vehicle.schema";
import { amountOrNone, quantityOf } from "#application/equipment/typed-amount";
import { badField } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";

/** A complaint when another truck has, or had, this number: papers of past years name trucks by it. */
export async function refuseTakenNumber(work: Work, number: number, ownId: string | null) {
  const { companyId } = work.company;
  const other = await work.tx.vehicle.findUnique({ where: { companyId_number: { companyId, number } } });
  if (other === null || other.vehicleId === ownId) return undefined;
  const sentence = other.stoodDownAt === null ? `Truck ${String(number)} is ${other.name}.` : `Truck ${String(number)} was ${other.name}, and past papers name it.`;
  return badField("number", `${sentence} Give another number.`);
}

/** The name of the place of stock that a truck is. */
export function nameOfTruck(number: number): string {
  return `Truck ${String(number)}`;
}

/** Adds a truck. It is a location of stock from then on. */
export const addVehicle = useCase("equipment/add-vehicle", addVehicleSchema, async (work, { number, name, payload, staysAboard }) => {
  const { companyId } = work.company;
  const taken = await refuseTakenNumber(work, number, null);
  if (taken !== undefined) return taken;
  const vehicleId = work.newId();
  await work.tx.vehicle.create({
    data: { companyId, vehicleId, number, name, payload: amountOrNone("payload", payload, "mass"), staysAboard: staysAboard === "" ? null : quantityOf("staysAboard", staysAboard, "mass").amount, createdAt: work.now },
  });
  await work.tx.stockLocation.create({
    data: { companyId, stockLocationId: work.newId(), kind: "truck", name: nameOfTruck(number), vehicleId, createdAt: work.now },
  });
  await writeDeed(work, vehicleId, { deed: "vehicle-added", details: { number, name, payload, staysAboard } });
  return accept({ vehicleId });
});
