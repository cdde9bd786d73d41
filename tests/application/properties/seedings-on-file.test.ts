import { afterAll, beforeAll, expect, test } from "vitest";
import { addSeeding } from "#application/properties/add-seeding";
import { acceptSeeding, seedingColumns, seedingOf, seedingsOfZones } from "#application/properties/seedings-on-file";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { inWorkOf } from "../../support/crew-day";
import { aSeeding, aZone, seedingForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const form = (date: string) => ({ ...seedingForm(), date: date as CalendarDate });

test("a row and a seeding say the same, with a method for seed and none for sod", () => {
  expect(seedingOf(seedingColumns(form("2026-04-03")))).toEqual(form("2026-04-03"));
  expect(seedingOf(seedingColumns({ ...form("2026-04-03"), kind: "sod", method: "unknown" }))).toEqual({ kind: "sod", date: "2026-04-03", standing: "done" });
});

test("the seed of some lawns by lawn, the latest first; a plan whose day has passed is overdue from the next day on", async () => {
  const { zoneId, seedingId } = await aSeeding(house, company);
  const bare = await aZone(house, company);
  const planned = valueOf(await addSeeding(house, company.owner.key, { zoneId, ...form("2026-04-14"), standing: "planned" }));
  const read = (day: string) => inWorkOf(house, company, (work) => seedingsOfZones({ ...work, now: new Date(`${day}T15:00:00Z`) }, [zoneId, bare.zoneId]));
  const onTheDay = await read("2026-04-14");
  expect(onTheDay.get(zoneId)?.map((each) => [each.seedingId, each.isOverdue])).toEqual([[planned.seedingId, false], [seedingId, false]]);
  expect(onTheDay.get(bare.zoneId)).toBeUndefined();
  expect((await read("2026-04-15")).get(zoneId)?.map(({ isOverdue }) => isOverdue)).toEqual([true, false]);
});

test("a form is let through whose day fits, and whose like is not on file but as itself", async () => {
  const { zoneId, seedingId } = await aSeeding(house, company);
  const isAccepted = (one: Parameters<typeof acceptSeeding>[2], ownId?: string) => inWorkOf(house, company, async (work) => (await acceptSeeding(work, zoneId, one, ownId)).ok);
  expect(await isAccepted(form("2026-04-03"))).toBe(false);
  expect(await isAccepted(form("2026-04-03"), seedingId)).toBe(true);
  expect(await isAccepted({ ...form("2026-04-03"), kind: "new-lawn" })).toBe(true);
  expect(await isAccepted(form("2026-04-14"))).toBe(true);
  expect(await isAccepted(form("2026-04-15"))).toBe(false);
  expect(await isAccepted({ ...form("2026-04-14"), standing: "planned" })).toBe(true);
  expect(await isAccepted({ ...form("2026-04-13"), standing: "planned" })).toBe(false);
});
