import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { standDownVehicleSchema } from "#application/equipment/stand-down-vehicle.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Stands a truck down: it is planned no more and stays in the books. Its gear has to be moved off it first. */
export const standDownVehicle = useCase("equipment/stand-down-vehicle", standDownVehicleSchema, async (work, { vehicleId }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const vehicle = await work.tx.vehicle.findUnique({ where: { companyId_vehicleId: { companyId, vehicleId } } });
  if (vehicle === null) return notFound("truck");
  if (vehicle.stoodDownAt !== null) return conflict("This truck is stood down already.");
  const aboard = await work.tx.equipment.findMany({ where: { companyId, vehicleId, stoodDownAt: null }, orderBy: { name: "asc" } });
  if (aboard.length > 0) {
    return conflict(`On it ${aboard.length === 1 ? "is" : "are"} still ${aboard.map(({ name }) => name).join(", ")}. Move the gear to another truck, or stand it down, first.`);
  }
  await work.tx.vehicle.updateMany({ where: { companyId, vehicleId }, data: { stoodDownAt: work.now, version: { increment: 1 } } });
  await writeDeed(work, vehicleId, { deed: "vehicle-stood-down", details: { number: vehicle.number, name: vehicle.name } });
  return accept(null);
});
