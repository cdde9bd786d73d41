import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { pinVisitSchema } from "#application/days/pin-visit.schema";
import { visitUnderChange } from "#application/days/route-day-stops";
import { conflict } from "#application/refusal";
import { calendarDayOf } from "#application/stored-day";
import { useCase } from "#application/use-case";

/** Pins a visit to its place in the order, which ordering the day then keeps, or lets it go again. */
export const pinVisit = useCase("days/pin-visit", pinVisitSchema, async (work, { visitId, pin }) => {
  await lockCompany(work.tx);
  const found = await visitUnderChange(work, visitId);
  if (!found.ok) return found;
  const { stop } = found.value;
  if (stop === null) return conflict("This visit is on no truck's day. Put it on one first.");
  const { companyId } = work.company;
  const isPinned = pin === "pin";
  await work.tx.stop.update({ where: { companyId_visitId: { companyId, visitId } }, data: { isPinned } });
  const day = await work.tx.routeDay.update({
    where: { companyId_routeDayId: { companyId, routeDayId: stop.routeDayId } },
    data: { version: { increment: 1 } },
  });
  await writeDeed(work, visitId, { deed: "visit-pinned", details: { isPinned, position: stop.position } });
  return accept({ date: calendarDayOf(day.date), isPinned });
});
