import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { nameOfTruck, refuseTakenNumber } from "#application/equipment/add-vehicle";
import { changeVehicleSchema } from "#application/equipment/change-vehicle.schema";
import { amountOrNone, keptOrTyped, quantityOf, shownOrNone } from "#application/equipment/typed-amount";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Changes a truck's number, name, the most that may be loaded, or what rides along every day. The loser of a race is told, not overwritten. */
export const changeVehicle = useCase("equipment/change-vehicle", changeVehicleSchema, async (work, { vehicleId, version, number, name, payload, staysAboard }) => {
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
      staysAboard: keptOrTyped("mass", before.staysAboard, staysAboard, () => (staysAboard === "" ? null : quantityOf("staysAboard", staysAboard, "mass").amount)),
      version: { increment: 1 },
    },
  });
  if (count === 0) return conflict("Someone else has changed this truck since you opened the page. Load it again to see both.");
  await work.tx.stockLocation.updateMany({ where: { companyId, vehicleId }, data: { name: nameOfTruck(number) } });
  await writeDeed(work, vehicleId, {
    deed: "vehicle-changed",
    details: {
      before: { number: before.number, name: before.name, payload: shownOrNone("mass", before.payload) ?? "", staysAboard: shownOrNone("mass", before.staysAboard) ?? "" },
      after: { number, name, payload, staysAboard },
    },
  });
  return accept({ version: version + 1 });
});
