import { lockCompany } from "#adapters/postgres/company-work";
import { positionOfZip } from "#adapters/zip-codes";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { settleOrder } from "#application/days/route-day-stops";
import { setShopPositionSchema } from "#application/days/set-shop-position.schema";
import { badField } from "#application/refusal";
import { singularLocation } from "#application/stock/stock-locations";
import { dayOf } from "#application/stored-day";
import { useCase } from "#application/use-case";

/**
 * Says where the shop is, by its latitude and longitude or by the middle of its ZIP code's area. Trucks start and end
 * there, so the days from today on are timed anew.
 */
export const setShopPosition = useCase("days/set-shop-position", setShopPositionSchema, async (work, { zip, latitude, longitude }) => {
  const position = latitude !== null && longitude !== null ? { latitude, longitude } : positionOfZip(zip);
  if (position === undefined) return badField("zip", "This ZIP code has no area on file. Give latitude and longitude instead.");
  await lockCompany(work.tx);
  const { companyId, timeZone } = work.company;
  const stockLocationId = await singularLocation(work, "shop");
  await work.tx.stockLocation.update({ where: { companyId_stockLocationId: { companyId, stockLocationId } }, data: position });
  const today = calendarDateIn(timeZone, work.now.getTime());
  const days = await work.tx.routeDay.findMany({ where: { companyId, date: { gte: dayOf(today) } }, select: { routeDayId: true } });
  for (const { routeDayId } of days) await settleOrder(work, routeDayId);
  await writeDeed(work, stockLocationId, { deed: "shop-position-set", details: { ...position, zip: latitude === null ? zip : "" } });
  return accept(position);
});
