import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { calendarDayOf } from "#application/stored-day";
import { useCase } from "#application/use-case";
import { callOffVisitSchema } from "#application/visits/call-off-visit.schema";
import { visitToChange } from "#application/visits/visit-to-change";

/** Calls a planned visit off: it is not done, for a reason that the audit trail keeps, and leaves its truck's day. */
export const callOffVisit = useCase("visits/call-off-visit", callOffVisitSchema, async (work, { visitId, version, reason }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const visit = await visitToChange(work, visitId, version);
  if (!visit.ok) return visit;
  const stop = await work.tx.stop.findUnique({ where: { companyId_visitId: { companyId, visitId } }, select: { routeDayId: true } });
  const day = stop === null ? null : await work.tx.routeDay.findUnique({ where: { companyId_routeDayId: { companyId, routeDayId: stop.routeDayId } }, select: { date: true } });
  await work.tx.stop.deleteMany({ where: { companyId, visitId } });
  await work.tx.visit.update({ where: { companyId_visitId: { companyId, visitId } }, data: { state: "not-done", version: { increment: 1 } } });
  const wasOn = day === null ? null : calendarDayOf(day.date);
  await writeDeed(work, visitId, { deed: "visit-called-off", details: { name: visit.value.name, reason, wasOn } });
  return accept({ visitId, propertyId: visit.value.propertyId });
});
