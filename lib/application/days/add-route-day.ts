import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { addRouteDaySchema } from "#application/days/add-route-day.schema";
import { comingHighColumns, comingHighsOf } from "#application/days/coming-highs";
import { operatorOf } from "#application/days/route-day-stops";
import { badField, notFound } from "#application/refusal";
import { dayOf } from "#application/stored-day";
import { useCase } from "#application/use-case";

/** Sends a truck out on a day, with who applies and its hours. The day's forecast, once entered, is the same for all trucks. */
export const addRouteDay = useCase("days/add-route-day", addRouteDaySchema, async (work, { date, vehicleId, operatorId, startsAt, endsAt }) => {
  await lockCompany(work.tx);
  const { companyId } = work.company;
  const vehicle = await work.tx.vehicle.findUnique({ where: { companyId_vehicleId: { companyId, vehicleId } } });
  if (vehicle === null) return notFound("truck");
  const truck = `Truck ${String(vehicle.number)}`;
  if (vehicle.stoodDownAt !== null) return badField("vehicleId", `${truck} is stood down. Choose another.`);
  const others = await work.tx.routeDay.findMany({ where: { companyId, date: dayOf(date) } });
  if (others.some((other) => other.vehicleId === vehicleId)) return badField("vehicleId", `${truck} is on this day already.`);
  const operator = await operatorOf(work, operatorId);
  if (!operator.ok) return operator;
  const routeDayId = work.newId();
  const forecast = others.find(({ forecastHighF }) => forecastHighF !== null);
  await work.tx.routeDay.create({
    data: {
      companyId,
      routeDayId,
      date: dayOf(date),
      vehicleId,
      operatorId,
      startsAtMinute: startsAt,
      endsAtMinute: endsAt,
      forecastHighF: forecast?.forecastHighF ?? null,
      forecastSource: forecast?.forecastSource ?? null,
      ...comingHighColumns(forecast === undefined ? [] : comingHighsOf(forecast)),
      createdAt: work.now,
    },
  });
  await writeDeed(work, routeDayId, { deed: "route-day-added", details: { date, truck, operator: operator.value.name, startsAtMinute: startsAt, endsAtMinute: endsAt } });
  return accept({ routeDayId, date });
});
