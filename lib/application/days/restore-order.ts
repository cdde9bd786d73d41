import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { restoreOrderSchema } from "#application/days/restore-order.schema";
import { dayUnderChange, NO_SUCH_DAY, settleOrder, visitUnderChange } from "#application/days/route-day-stops";
import { conflict } from "#application/refusal";
import { useCase } from "#application/use-case";

const CHANGED_SINCE = "The day has changed since, so it is left as it now is. Load the page again to see it.";

/** Gives a truck's day the order back that it had: the same visits, those that were taken off meanwhile included. */
export const restoreOrder = useCase("days/restore-order", restoreOrderSchema, async (work, { routeDayId, version, order }) => {
  const day = await dayUnderChange(work, routeDayId);
  if (day === undefined) return NO_SUCH_DAY;
  const isWhole = new Set(order).size === order.length && day.stops.every(({ visitId }) => order.includes(visitId));
  if (day.version !== version || !isWhole) return conflict(CHANGED_SINCE);
  const missing = order.filter((id) => !day.stops.some(({ visitId }) => visitId === id));
  for (const visitId of missing) {
    const found = await visitUnderChange(work, visitId);
    if (!found.ok) return found;
    if (found.value.stop !== null) return conflict(CHANGED_SINCE);
    await work.tx.stop.create({ data: { companyId: work.company.companyId, visitId, routeDayId, position: order.indexOf(visitId) + 1 } });
  }
  const settled = await settleOrder(work, routeDayId, order);
  await writeDeed(work, routeDayId, { deed: "order-restored", details: { date: day.date, truck: day.truck, stops: order.length } });
  return accept({ date: day.date, ...settled });
});
