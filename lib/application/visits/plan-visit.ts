import { lockCompany } from "#adapters/postgres/company-work";
import { accept, type Outcome, refuse } from "#domain/foundation/outcome";
import { fromAmount, sum } from "#domain/quantities/quantity";
import { serviceMinutesOf } from "#domain/scheduling/service-time";
import { houseSettingsOf } from "#application/companies/house-settings";
import { writeDeed } from "#application/audit-trail";
import { oneTreatmentWords } from "#application/programs/add-round";
import { treatmentColumns, type TreatmentColumns } from "#application/programs/treatment-columns";
import { conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { dayOf } from "#application/stored-day";
import { useCase, type Work } from "#application/use-case";
import { planVisitSchema } from "#application/visits/plan-visit.schema";
import { type TaskAsked } from "#application/visits/task-fields.schema";

interface TaskOfVisit {
  readonly kind: TaskAsked["kind"];
  readonly reason: string;
  readonly zoneIds: readonly string[];
  readonly treatment: TreatmentColumns | null;
}

/** The tasks in the form's order, their treatments held against the labels and their lawns against the property. */
async function tasksOf(work: Work, tasks: readonly TaskAsked[], lawnIds: ReadonlySet<string>): Promise<Outcome<readonly TaskOfVisit[], UseCaseRefusal>> {
  const strange = tasks.filter(({ zoneIds }) => zoneIds.some((zoneId) => !lawnIds.has(zoneId)));
  if (strange.length > 0) {
    const fields = Object.fromEntries(strange.map(({ row }) => [`tasks.${row}.lawns`, "A lawn of these is not on this property's plan any more."]));
    return refuse({ kind: "bad-input", sentence: "Nothing was saved. Please look at the marked fields.", fields });
  }
  const treatments = tasks.filter((task) => task.kind === "treatment");
  const columns = await treatmentColumns(work, "tasks", treatments);
  if (!columns.ok) return columns;
  const columnsOf = new Map(treatments.map(({ row }, index) => [row, columns.value[index]]));
  return accept(tasks.map(({ kind, row, reason, zoneIds }) => ({ kind, reason, zoneIds, treatment: columnsOf.get(row) ?? null })));
}

async function writeTasks(work: Work, visitId: string, tasks: readonly TaskOfVisit[]): Promise<void> {
  const { companyId } = work.company;
  await work.tx.visitTask.createMany({
    data: tasks.map(({ kind, reason, treatment }, index) => ({ companyId, visitId, line: index + 1, kind, reason, ...treatment })),
  });
  await work.tx.visitTaskZone.createMany({
    data: tasks.flatMap(({ zoneIds }, index) => zoneIds.map((zoneId) => ({ companyId, visitId, line: index + 1, zoneId }))),
  });
}

/** Plans one visit by hand, outside any program: a call-back, spot work, a look. Sent twice it is planned once. */
export const planVisit = useCase("visits/plan-visit", planVisitSchema, async (work, form) => {
  const { companyId } = work.company;
  const { requestId: visitId, propertyId, name, opensOn, closesOn, customerFrom, customerUntil, secondLook, tasks } = form;
  await lockCompany(work.tx);
  const standing = await work.tx.visit.findUnique({ where: { companyId_visitId: { companyId, visitId } } });
  if (standing !== null) {
    return standing.propertyId === propertyId ? accept({ visitId, propertyId }) : conflict("This form was sent before. Load the page again for another visit.");
  }
  const property = await work.tx.property.findUnique({ where: { companyId_propertyId: { companyId, propertyId } } });
  if (property === null) return notFound("property");
  const zones = await work.tx.zone.findMany({ where: { companyId, propertyId, removedAt: null }, select: { zoneId: true, area: true } });
  const planned = await tasksOf(work, tasks, new Set(zones.map(({ zoneId }) => zoneId)));
  if (!planned.ok) return planned;
  const worked = new Set(tasks.flatMap(({ zoneIds }) => zoneIds));
  const area = sum("area", zones.filter(({ zoneId }) => worked.has(zoneId)).map((zone) => fromAmount("area", zone.area)));
  await work.tx.visit.create({
    data: {
      ...{ companyId, visitId, propertyId, name, opensOn: dayOf(opensOn), closesOn: dayOf(closesOn), secondLookAfterDays: secondLook },
      ...{ windowFromMinute: customerFrom, windowUntilMinute: customerUntil, createdAt: work.now },
      serviceMinutes: serviceMinutesOf(area, await houseSettingsOf(work)),
    },
  });
  await writeTasks(work, visitId, planned.value);
  const words = planned.value.map(({ reason, treatment }) => (treatment === null ? `look: ${reason}` : oneTreatmentWords(treatment)));
  await writeDeed(work, visitId, { deed: "visit-planned", details: { street: property.street, name, opensOn, closesOn, tasks: words } });
  return accept({ visitId, propertyId });
});
