import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { comingHighColumns } from "#application/days/coming-highs";
import { enterForecastSchema, LATER_HIGHS } from "#application/days/enter-forecast.schema";
import { conflict } from "#application/refusal";
import { dayOf } from "#application/stored-day";
import { useCase } from "#application/use-case";

/** Enters the forecast high of a day, those of the three days after as far as they are known, and where they are from, for every truck of that day. */
export const enterForecast = useCase("days/enter-forecast", enterForecastSchema, async (work, { date, highF, followingHighsF: following, source }) => {
  await lockCompany(work.tx);
  const followingHighsF = LATER_HIGHS.map((name) => following[name]);
  const { count } = await work.tx.routeDay.updateMany({
    where: { companyId: work.company.companyId, date: dayOf(date) },
    data: { forecastHighF: highF, ...comingHighColumns(followingHighsF), forecastSource: source },
  });
  if (count === 0) return conflict("No truck goes out on this day. Send one out first; the forecast belongs to its day.");
  await writeDeed(work, null, { deed: "forecast-entered", details: { date, highF, followingHighsF, source } });
  return accept({ trucks: count, date });
});
