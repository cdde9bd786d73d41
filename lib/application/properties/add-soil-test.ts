import { calendarDateIn } from "#domain/foundation/calendar-date";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { addSoilTestSchema } from "#application/properties/add-soil-test.schema";
import { badField, notFound } from "#application/refusal";
import { dayOf } from "#application/stored-day";
import { useCase } from "#application/use-case";

/** Enters what a laboratory said of a lawn's soil, in its own words. A later test is a new entry. */
export const addSoilTest = useCase("properties/add-soil-test", addSoilTestSchema, async (work, form) => {
  const { companyId } = work.company;
  const { zoneId, sampledOn, laboratory, phosphorusWord, phosphorus } = form;
  const zone = await work.tx.zone.findUnique({ where: { companyId_zoneId: { companyId, zoneId } } });
  if (zone?.removedAt !== null) return notFound("lawn");
  if (sampledOn > calendarDateIn(work.company.timeZone, work.now.getTime())) return badField("sampledOn", "This day has not come yet.");
  const soilTestId = work.newId();
  await work.tx.soilTest.create({
    data: { companyId, soilTestId, zoneId, sampledOn: dayOf(sampledOn), laboratory, phosphorusWord, phosphorus, createdAt: work.now },
  });
  await writeDeed(work, soilTestId, { deed: "soil-test-added", details: { sampledOn, laboratory, phosphorus } });
  return accept({ soilTestId, propertyId: zone.propertyId });
});
