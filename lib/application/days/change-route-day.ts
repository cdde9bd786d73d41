import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { changeRouteDaySchema } from "#application/days/change-route-day.schema";
import { dayUnderChange, NO_SUCH_DAY, operatorOf, settleOrder } from "#application/days/route-day-stops";
import { conflict } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Changes who applies or a truck's hours; the stops are timed anew. The loser of a race is told, not overwritten. */
export const changeRouteDay = useCase("days/change-route-day", changeRouteDaySchema, async (work, { routeDayId, version, operatorId, startsAt, endsAt }) => {
  const day = await dayUnderChange(work, routeDayId);
  if (day === undefined) return NO_SUCH_DAY;
  if (day.version !== version) return conflict("Someone else has changed this truck's day since you opened the page. Load it again to see it.");
  const operator = await operatorOf(work, operatorId);
  if (!operator.ok) return operator;
  const { companyId } = work.company;
  await work.tx.routeDay.update({
    where: { companyId_routeDayId: { companyId, routeDayId } },
    data: { operatorId, startsAtMinute: startsAt, endsAtMinute: endsAt },
  });
  const settled = await settleOrder(work, routeDayId);
  await writeDeed(work, routeDayId, {
    deed: "route-day-changed",
    details: {
      before: { operatorId: day.operatorId, startsAtMinute: day.startsAtMinute, endsAtMinute: day.endsAtMinute },
      after: { operatorId, startsAtMinute: startsAt, endsAtMinute: endsAt },
    },
  });
  return accept({ version: settled.version, date: day.date });
});
