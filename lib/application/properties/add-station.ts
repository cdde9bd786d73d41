import { lockCompany } from "#adapters/postgres/company-work";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { invariant } from "#domain/foundation/invariant";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { depthPerHour, readStationTest } from "#domain/equipment/station-test";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { writeDeed } from "#application/audit-trail";
import { addStationSchema } from "#application/properties/add-station.schema";
import { badField, notFound, type UseCaseRefusal } from "#application/refusal";
import { dayOf } from "#application/stored-day";
import { useCase, type Work } from "#application/use-case";

interface TestForm {
  readonly depths: string;
  readonly minutes: string;
  readonly wind: string;
  readonly testedOn: CalendarDate | null;
}

/** The columns of a test that the schema has found whole, or of none. */
export function testColumns({ depths, minutes, wind, testedOn }: TestForm) {
  if (testedOn === null) return { testDepth: null, testMinutes: null, testedOn: null, testCans: [], testWindMph: null };
  const test = readStationTest({ depths, minutes, wind });
  invariant(test.ok, "the schema has read this test");
  const { cans, averageDepth, windMph } = test.value;
  return {
    testDepth: averageDepth.amount,
    testMinutes: test.value.minutes,
    testedOn: dayOf(testedOn),
    testCans: cans.map(({ amount }) => amount),
    testWindMph: windMph === "not-taken" ? null : windMph,
  };
}

/** A station's rate as the audit trail writes it. */
export function rateWords(columns: { readonly testDepth: bigint | null; readonly testMinutes: number | null }): string {
  const { testDepth, testMinutes } = columns;
  if (testDepth === null || testMinutes === null) return "not tested";
  return `${formatQuantityIn(depthPerHour({ averageDepth: { dimension: "length", amount: testDepth }, minutes: testMinutes }), "in", 2)} per hour`;
}

/** Links a station to the lawns that are ticked and to no others. Refused where a lawn is not of this property. */
export async function linkLawns(
  work: Work,
  station: { readonly stationId: string; readonly propertyId: string },
  waters: Readonly<Record<string, unknown>>,
): Promise<Outcome<readonly string[], UseCaseRefusal>> {
  const { companyId } = work.company;
  const { stationId, propertyId } = station;
  const wanted = Object.entries(waters).filter(([, tick]) => tick === "yes").map(([zoneId]) => zoneId);
  const zones = await work.tx.zone.findMany({ where: { companyId, propertyId, zoneId: { in: wanted }, removedAt: null }, select: { zoneId: true, letter: true } });
  if (zones.length < wanted.length) return badField("waters", "One of these lawns is no longer on the plan. Load the page again.");
  await work.tx.stationZone.deleteMany({ where: { companyId, stationId } });
  await work.tx.stationZone.createMany({ data: zones.map(({ zoneId }) => ({ companyId, stationId, zoneId })) });
  return accept(zones.map(({ letter }) => letter).sort());
}

/** Adds a station of the customer's irrigation with the lawns that it waters. Without a catch-can test it has no rate. */
export const addStation = useCase("properties/add-station", addStationSchema, async (work, form) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const { propertyId, number, name, longestRun } = form;
  const property = await work.tx.property.findUnique({ where: { companyId_propertyId: { companyId, propertyId } } });
  if (property === null) return notFound("property");
  const same = await work.tx.station.findFirst({ where: { companyId, propertyId, number, removedAt: null } });
  if (same !== null) return badField("number", `Station ${String(number)} is on file already: ${same.name}.`);
  const stationId = work.newId();
  const test = testColumns(form);
  await work.tx.station.create({ data: { companyId, stationId, propertyId, number, name, ...test, longestRunMinutes: longestRun, createdAt: work.now } });
  const linked = await linkLawns(work, { stationId, propertyId }, form.waters);
  if (!linked.ok) return linked;
  await writeDeed(work, stationId, { deed: "station-added", details: { number, name, test: rateWords(test) } });
  return accept({ stationId, propertyId });
});
