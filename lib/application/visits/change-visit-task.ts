import { lockCompany } from "#adapters/postgres/company-work";
import { type Visit, type VisitTask } from "#adapters/postgres/generated/client";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { shareWords } from "#domain/quantities/share";
import { fromAmount, sum } from "#domain/quantities/quantity";
import { serviceMinutesOf } from "#domain/scheduling/service-time";
import { houseSettingsOf } from "#application/companies/house-settings";
import { writeDeed } from "#application/audit-trail";
import { treatmentColumns, type TreatmentColumns } from "#application/programs/treatment-columns";
import { badField, notFound, type UseCaseRefusal } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";
import { changeVisitTaskSchema } from "#application/visits/change-visit-task.schema";
import { visitToChange } from "#application/visits/visit-to-change";

/** The rate and the share as they would be now; a look has none and takes none. */
async function newRate(work: Work, task: VisitTask, rate: string, spotShare: string): Promise<Outcome<TreatmentColumns | null, UseCaseRefusal>> {
  const { productId, labelUse, reason } = task;
  if (productId === null || labelUse === null) {
    if (spotShare !== "") return badField("spotShare", "A look has no share.");
    return rate === "" ? accept(null) : badField("rate", "A look has no rate.");
  }
  const columns = await treatmentColumns(work, "task", [{ row: "0", productId, labelUse, rate, spotShare, reason }]);
  if (columns.ok) return accept(columns.value[0] ?? null);
  const { "task.0.spotShare": ofShare, ...others } = columns.refusal.kind === "bad-input" ? columns.refusal.fields : {};
  const [why] = Object.values(others);
  return ofShare !== undefined && why === undefined ? badField("spotShare", ofShare) : badField("rate", why ?? columns.refusal.sentence);
}

/** Puts the task on other lawns of the same property, and counts the visit's minutes anew from all that is worked. */
async function changeLawns(work: Work, visit: Visit, line: number, zoneIds: readonly string[]): Promise<Outcome<number, UseCaseRefusal>> {
  const { companyId, visitId, propertyId } = visit;
  const zones = await work.tx.zone.findMany({ where: { companyId, propertyId, removedAt: null }, select: { zoneId: true, area: true } });
  const known = new Set(zones.map(({ zoneId }) => zoneId));
  if (zoneIds.some((zoneId) => !known.has(zoneId))) return badField("lawns", "A lawn of these is not on this property's plan any more.");
  await work.tx.visitTaskZone.deleteMany({ where: { companyId, visitId, line } });
  await work.tx.visitTaskZone.createMany({ data: zoneIds.map((zoneId) => ({ companyId, visitId, line, zoneId })) });
  const taskZones = await work.tx.visitTaskZone.findMany({ where: { companyId, visitId }, select: { zoneId: true } });
  const worked = new Set(taskZones.map(({ zoneId }) => zoneId));
  const area = sum("area", zones.filter(({ zoneId }) => worked.has(zoneId)).map((zone) => fromAmount("area", zone.area)));
  return accept(serviceMinutesOf(area, await houseSettingsOf(work)));
}

/** What the audit trail says of spot work; nothing of what goes all over. */
function ofSpots(shareBasisPoints: number | null | undefined) {
  return typeof shareBasisPoints === "number" ? { spots: shareWords(shareBasisPoints) } : {};
}

/** Changes one task of a planned visit: its rate within the label, its share of the lawn, its lawns, and the equipment if that is known already. */
export const changeVisitTask = useCase("visits/change-visit-task", changeVisitTaskSchema, async (work, form) => {
  const { companyId } = work.company;
  const { visitId, version, line, rate, spotShare, lawns, equipmentId } = form;
  await lockCompany(work.tx);
  const visit = await visitToChange(work, visitId, version);
  if (!visit.ok) return visit;
  const key = { companyId_visitId_line: { companyId, visitId, line } };
  const task = await work.tx.visitTask.findUnique({ where: key });
  if (task === null) return notFound("task");
  const treatment = await newRate(work, task, rate, spotShare);
  if (!treatment.ok) return treatment;
  if (equipmentId !== null) {
    if (task.kind === "look") return badField("equipmentId", "A look takes no equipment.");
    const equipment = await work.tx.equipment.findUnique({ where: { companyId_equipmentId: { companyId, equipmentId } }, select: { stoodDownAt: true } });
    if (equipment?.stoodDownAt !== null) return badField("equipmentId", "Choose equipment that is in use.");
  }
  const lawnsBefore = await work.tx.visitTaskZone.findMany({ where: { companyId, visitId, line }, select: { zoneId: true }, orderBy: { zoneId: "asc" } });
  const serviceMinutes = await changeLawns(work, visit.value, line, lawns);
  if (!serviceMinutes.ok) return serviceMinutes;
  await work.tx.visitTask.update({ where: key, data: { ...treatment.value, equipmentId } });
  await work.tx.visit.update({ where: { companyId_visitId: { companyId, visitId } }, data: { serviceMinutes: serviceMinutes.value, version: { increment: 1 } } });
  const before = { line, rate: task.rateText, ...ofSpots(task.spotShareBasisPoints), lawns: lawnsBefore.map(({ zoneId }) => zoneId), equipmentId: task.equipmentId };
  const after = { line, rate: treatment.value?.rateText ?? null, ...ofSpots(treatment.value?.spotShareBasisPoints), lawns: lawns.toSorted(), equipmentId };
  await writeDeed(work, visitId, { deed: "visit-task-changed", details: { before, after } });
  return accept({ visitId, version: version + 1 });
});
