import { z } from "zod";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { accept } from "#domain/foundation/outcome";
import { houseSettingsOf } from "#application/companies/house-settings";
import { idField } from "#application/field.schema";
import { calibrationsOnFile, equipmentOnFile, latestOf, vehiclesOnFile } from "#application/equipment/gear-on-file";
import { notFound } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";

async function operatorsToChoose(work: Work) {
  const people = await work.tx.person.findMany({ where: { companyId: work.company.companyId, leftOn: null }, orderBy: { name: "asc" } });
  return people.map(({ personId, name }) => ({ personId, name }));
}

async function productsToChoose(work: Work) {
  const products = await work.tx.product.findMany({
    where: { companyId: work.company.companyId, form: "granular", retiredAt: null },
    orderBy: { name: "asc" },
  });
  return products.map(({ productId, name }) => ({ productId, name }));
}

/**
 * One piece of gear with all its calibrations, the newest first, each operator's latest with its standing, and who and
 * what a next calibration can be of: the people of the crew, and for a spreader the granular products.
 */
export const readEquipment = useCase("equipment/read-equipment", z.object({ equipmentId: idField }), async (work, { equipmentId }) => {
  const [equipment] = await equipmentOnFile(work, equipmentId);
  if (equipment === undefined) return notFound("gear");
  const made = await calibrationsOnFile(work, [equipment]);
  return accept({
    today: calendarDateIn(work.company.timeZone, work.now.getTime()),
    equipment,
    vehicles: await vehiclesOnFile(work),
    latest: latestOf(work, equipmentId, made, await houseSettingsOf(work)),
    calibrations: [...made].reverse(),
    operators: await operatorsToChoose(work),
    products: isSprayer(equipment.kind) ? [] : await productsToChoose(work),
  });
});
