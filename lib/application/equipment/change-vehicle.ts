import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { nameOfTruck, refuseTakenNumber } from "#application/equipment/add-vehicle";
import { changeVehicleSchema } from "#application/equipment/change-vehicle.schema";
import { amountOrNone, keptOrTyped, shownOrNone } from "#application/equipment/typed-amount";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Changes a truck's number, name, or the most that may be loaded. The loser of a race is told, not overwritten. */
export const changeVehicle = useCase("equipment/change-vehicle", changeVehicleSchema, async (work, { vehicleId, version, number, name, payload }) => {
  const { companyId } = work.company;
  const before = await work.tx.vehicle.findUnique({ where: { companyId_vehicleId: { companyId, vehicleId } } });
  if (before === null) return notFound("truck");
  if (before.stoodDownAt !== null) return conflict("This truck is stood down; it is changed no more.");
  const taken = await refuseTakenNumber(work, number, vehicleId);
  if (taken !== undefined) return taken;
  const { count } = await work.tx.vehicle.updateMany({
    where: { companyId, vehicleId, version },
    data: {
      number,
      name,
      payload: keptOrTyped("mass", before.payload, payload, () => amountOrNone("payload", payload, "mass")),
      version: { increment: 1 },
    },
  });
  if (count === 0) return conflict("Someone else has changed this truck since you opened the page. Load it again to see both.");
  await work.tx.stockLocation.updateMany({ where: { companyId, vehicleId }, data: { name: nameOfTruck(number) } });
  await writeDeed(work, vehicleId, {
    deed: "vehicle-changed",
    details: {
      before: { number: before.number, name: before.name, payload: shownOrNone("mass", before.payload) ?? "" },
      after: { number, name, payload },
    },
  });
  return accept({ version: version + 1 });
});
