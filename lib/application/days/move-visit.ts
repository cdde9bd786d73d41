import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { moveVisitSchema } from "#application/days/move-visit.schema";
import { dayUnderChange, NO_SUCH_DAY, returnOf, settleOrder, visitUnderChange } from "#application/days/route-day-stops";
import { conflict } from "#application/refusal";
import { useCase } from "#application/use-case";

/**
 * Moves a visit to a place in the order of its own truck or of another one, on whatever day; a place beyond the last is
 * the last. A pinned visit stays pinned, at its new place. The answer says where it was, so that it can go back.
 */
export const moveVisit = useCase("days/move-visit", moveVisitSchema, async (work, { visitId, routeDayId, position }) => {
  const day = await dayUnderChange(work, routeDayId);
  if (day === undefined) return NO_SUCH_DAY;
  const found = await visitUnderChange(work, visitId);
  if (!found.ok) return found;
  const { stop } = found.value;
  if (stop === null) return conflict("This visit is on no truck's day. Put it on one first.");
  const from = stop.routeDayId === routeDayId ? day : await dayUnderChange(work, stop.routeDayId);
  if (from === undefined) return NO_SUCH_DAY;
  const returnedBefore = await returnOf(work, day);
  const others = day.stops.map((other) => other.visitId).filter((other) => other !== visitId);
  const place = Math.min(position, others.length + 1);
  const order = [...others.slice(0, place - 1), visitId, ...others.slice(place - 1)];
  if (from !== day) {
    await work.tx.stop.update({ where: { companyId_visitId: { companyId: work.company.companyId, visitId } }, data: { routeDayId } });
    await settleOrder(work, from.routeDayId);
  }
  const { returnsAtMinute } = await settleOrder(work, routeDayId, order);
  await writeDeed(work, visitId, {
    deed: "visit-moved",
    details: { before: { date: from.date, truck: from.truck, position: stop.position }, after: { date: day.date, truck: day.truck, position: place } },
  });
  return accept({
    date: day.date,
    position: place,
    from: { routeDayId: from.routeDayId, date: from.date, position: stop.position },
    addsMinutes: returnedBefore === null || returnsAtMinute === null ? null : returnsAtMinute - returnedBefore,
  });
});
