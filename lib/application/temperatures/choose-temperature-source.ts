import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { conflict, notFound } from "#application/refusal";
import { chooseTemperatureSourceSchema } from "#application/temperatures/choose-temperature-source.schema";
import { sourceInUse } from "#application/temperatures/kept-temperatures";
import { useCase } from "#application/use-case";

/** Chooses the source of daily temperatures by which the company's curves are drawn. Refused where nothing is kept of it. */
export const chooseTemperatureSource = useCase("temperatures/choose-temperature-source", chooseTemperatureSourceSchema, async (work, { source }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const kept = await work.tx.dailyTemperature.findFirst({ where: { companyId, source }, select: { source: true } });
  if (kept === null) return notFound("source of temperatures");
  const before = await sourceInUse(work);
  if (before === source) return conflict(`The curves are drawn by ${source} already.`);
  await work.tx.company.update({ where: { companyId }, data: { temperatureSource: source } });
  await writeDeed(work, null, { deed: "temperature-source-chosen", details: { before, after: source } });
  return accept({ source });
});
