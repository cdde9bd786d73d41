import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { linkLawns, rateWords, testColumns } from "#application/properties/add-station";
import { changeStationSchema } from "#application/properties/change-station.schema";
import { hasTest } from "#application/properties/station-fields.schema";
import { badField, conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/**
 * Changes a station: its number, its name, its lawns, its longest run, or its test. A form without a new test keeps the
 * one on file. One that is gone from the controller stays on record.
 */
export const changeStation = useCase("properties/change-station", changeStationSchema, async (work, { stationId, version, ...form }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const before = await work.tx.station.findUnique({ where: { companyId_stationId: { companyId, stationId } } });
  if (before?.removedAt !== null) return notFound("station");
  const { propertyId } = before;
  const same = await work.tx.station.findFirst({ where: { companyId, propertyId, number: form.number, removedAt: null, stationId: { not: stationId } } });
  if (same !== null && !form.isGone) return badField("number", `Station ${String(form.number)} is on file already: ${same.name}.`);
  const { testDepth, testMinutes, testedOn, testCans, testWindMph } = before;
  const test = hasTest(form) ? testColumns(form) : { testDepth, testMinutes, testedOn, testCans, testWindMph };
  const { number, name, longestRun } = form;
  const { count } = await work.tx.station.updateMany({
    where: { companyId, stationId, version, removedAt: null },
    data: { number, name, ...test, longestRunMinutes: longestRun, removedAt: form.isGone ? work.now : null, version: { increment: 1 } },
  });
  if (count === 0) return conflict("Someone else has changed this station since you opened the page. Load it again to see both.");
  const linked = await linkLawns(work, { stationId, propertyId }, form.isGone ? {} : form.waters);
  if (!linked.ok) return linked;
  await writeDeed(work, stationId, {
    deed: "station-changed",
    details: {
      before: { number: before.number, name: before.name, test: rateWords(before), longestRunMinutes: before.longestRunMinutes },
      after: { number, name, test: rateWords(test), longestRunMinutes: longestRun, waters: linked.value, isGone: form.isGone },
    },
  });
  return accept({ version: version + 1, propertyId });
});
