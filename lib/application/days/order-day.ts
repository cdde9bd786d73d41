import { type CalendarDate } from "#domain/foundation/calendar-date";
import { invariant } from "#domain/foundation/invariant";
import { accept } from "#domain/foundation/outcome";
import { checkDayRoute } from "#domain/routing/check-day-route";
import { orderDay as orderStops } from "#domain/routing/order-day";
import { writeDeed } from "#application/audit-trail";
import { orderDaySchema } from "#application/days/order-day.schema";
import { dayUnderChange, NO_SUCH_DAY, type RetimedDay, settleOrder } from "#application/days/route-day-stops";
import { questionOfDay, shopPosition } from "#application/days/travel-of-day";
import { conflict } from "#application/refusal";
import { useCase } from "#application/use-case";

/** A visit that found no place in the day, and why. */
export interface VisitWithoutPlace {
  readonly visitId: string;
  readonly street: string;
  readonly sentence: string;
}

/** What ordering a day came to: a new order, or nothing but the visits that find no place in any. */
export type OrderedDay =
  | { readonly kind: "does-not-fit"; readonly date: CalendarDate; readonly leftOut: readonly VisitWithoutPlace[] }
  | ({ readonly kind: "ordered"; readonly date: CalendarDate; readonly leftOut: readonly VisitWithoutPlace[]; readonly orderBefore: readonly string[] } & RetimedDay);

/**
 * Puts a truck's stops in a good order and times them: windows and pinned places are kept, and where somebody has been
 * already keeps its place. When visits find no place it changes nothing and names them, unless it was asked to take them
 * off the day. The answer has the order as it was. Refuses a day without stops and one whose positions are not on file.
 */
export const orderDay = useCase("days/order-day", orderDaySchema, async (work, { routeDayId, version, withoutPlace }) => {
  const day = await dayUnderChange(work, routeDayId);
  if (day === undefined) return NO_SUCH_DAY;
  if (day.version !== version) return conflict("Someone else has changed this truck's day since you opened the page. Load it again to see it.");
  if (day.stops.length === 0) return conflict(`${day.truck} has no stops to put in order.`);
  const asked = questionOfDay(await shopPosition(work), day, day.stops);
  if (asked.kind === "missing") return conflict(`The day was left as it is. ${asked.sentences.join(" ")}`);
  const orderBefore = day.stops.map(({ visitId }) => visitId);
  const ordered = orderStops(asked.question, asked.travel, orderBefore);
  invariant(ordered.ok, "a day on file can be put in order");
  const complaints = checkDayRoute(asked.question, asked.travel, ordered.value);
  invariant(complaints.length === 0, `the order found holds: ${complaints.join(" ")}`);
  const leftOut = ordered.value.leftOut.map(({ stopId, sentence }): VisitWithoutPlace => {
    const street = day.stops.find(({ visitId }) => visitId === stopId)?.street ?? "";
    return { visitId: stopId, street, sentence };
  });
  if (leftOut.length > 0 && withoutPlace === "tell") return accept<OrderedDay>({ kind: "does-not-fit", date: day.date, leftOut });
  const { companyId } = work.company;
  const planned = new Set(day.stops.filter(({ isPlanned }) => isPlanned).map(({ visitId }) => visitId));
  const goesOff = leftOut.map(({ visitId }) => visitId).filter((visitId) => planned.has(visitId));
  await work.tx.stop.deleteMany({ where: { companyId, routeDayId, visitId: { in: goesOff } } });
  const settled = await settleOrder(work, routeDayId, ordered.value.stops.map(({ stopId }) => stopId));
  await writeDeed(work, routeDayId, { deed: "day-ordered", details: { date: day.date, truck: day.truck, stops: ordered.value.stops.length, takenOff: goesOff.length } });
  return accept<OrderedDay>({ kind: "ordered", date: day.date, leftOut, orderBefore, ...settled });
});
