import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { placeVisitSchema } from "#application/days/place-visit.schema";
import { dayUnderChange, NO_SUCH_DAY, returnOf, settleOrder, visitUnderChange } from "#application/days/route-day-stops";
import { conflict } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Puts an open visit on a truck's day, after its other stops. */
export const placeVisit = useCase("days/place-visit", placeVisitSchema, async (work, { visitId, routeDayId }) => {
  const day = await dayUnderChange(work, routeDayId);
  if (day === undefined) return NO_SUCH_DAY;
  const found = await visitUnderChange(work, visitId);
  if (!found.ok) return found;
  if (found.value.stop !== null) return conflict("This visit is on a truck's day already. Load the page again to see which; move it there.");
  const before = await returnOf(work, day);
  const position = day.stops.length + 1;
  await work.tx.stop.create({ data: { companyId: work.company.companyId, visitId, routeDayId, position } });
  const { returnsAtMinute } = await settleOrder(work, routeDayId);
  await writeDeed(work, visitId, { deed: "visit-placed", details: { date: day.date, truck: day.truck, position } });
  return accept({ date: day.date, position, addsMinutes: before === null || returnsAtMinute === null ? null : returnsAtMinute - before });
});
