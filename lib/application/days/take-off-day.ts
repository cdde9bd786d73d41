import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { takeOffDaySchema } from "#application/days/take-off-day.schema";
import { dayUnderChange, NO_SUCH_DAY, settleOrder, visitUnderChange } from "#application/days/route-day-stops";
import { conflict } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Takes a visit off its truck's day: it is open again. The answer has the order as it was, so that it can go back. */
export const takeOffDay = useCase("days/take-off-day", takeOffDaySchema, async (work, { visitId }) => {
  const { companyId } = work.company;
  const seen = await work.tx.stop.findUnique({ where: { companyId_visitId: { companyId, visitId } } });
  const day = seen === null ? undefined : await dayUnderChange(work, seen.routeDayId);
  const found = await visitUnderChange(work, visitId);
  if (!found.ok) return found;
  const { stop } = found.value;
  if (stop === null) return conflict("This visit is on no truck's day any more. Load the page again.");
  if (day === undefined) return NO_SUCH_DAY;
  if (stop.routeDayId !== day.routeDayId) return conflict("Someone else has just moved this visit. Load the page again to see where it is.");
  await work.tx.stop.delete({ where: { companyId_visitId: { companyId, visitId } } });
  const { version } = await settleOrder(work, day.routeDayId);
  await writeDeed(work, visitId, { deed: "visit-taken-off", details: { date: day.date, truck: day.truck, position: stop.position } });
  return accept({ date: day.date, routeDayId: day.routeDayId, version, orderBefore: day.stops.map((one) => one.visitId) });
});
