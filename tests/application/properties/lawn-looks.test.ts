import { expect, test } from "vitest";
import { bloomOfLawn, lastWatering, looksOfZones } from "#application/properties/lawn-looks";
import { lookAtLawns } from "#application/visits/look-at-lawns";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { of } from "#domain/quantities/quantity";
import { aCompany, valueOf } from "../../support/crew";
import { aFedVisit, inWorkOf, lookForm } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

test("the looks of lawns come by lawn, the latest first, in the company's time and with the name of who saw it", async () => {
  const fed = await aFedVisit(house, company, day);
  const look = async (change: Parameters<typeof lookForm>[3]) => valueOf(await lookAtLawns(house, company.owner.key, lookForm(house, fed, company.owner.personId, change)));
  await look({});
  await look({ seenOn: "2026-04-13", seenAt: "23:30", lawns: { [fed.frontId]: "no" }, said: {} });
  const looks = await inWorkOf(house, company, (work) => looksOfZones(work, [fed.frontId, fed.backId]));
  expect(looks.get(fed.frontId)?.map(({ words, seenOn }) => [seenOn, words])).toEqual([
    ["2026-04-14", `Seen in bloom on Apr 14, 2026, 7:15 am, by ${company.owner.name}: Clover along the walk.`],
    // Half past eleven at night in Indiana is the next day in universal time.
    ["2026-04-13", `Seen without flowers on Apr 13, 2026, 11:30 pm, by ${company.owner.name}.`],
  ]);
  expect(looks.get(fed.backId)).toMatchObject([{ zoneId: fed.backId, blooms: "no", said: null, watering: null }]);
  const other = await aCompany(house, "Other Turf");
  expect((await inWorkOf(house, other, (work) => looksOfZones(work, [fed.frontId]))).size).toBe(0);
});

test("what a mix ticket asks of a day is answered with the look behind it", async () => {
  const fed = await aFedVisit(house, company, day);
  valueOf(await lookAtLawns(house, company.owner.key, lookForm(house, fed, company.owner.personId)));
  const looks = await inWorkOf(house, company, (work) => looksOfZones(work, [fed.frontId, fed.backId]));
  const of = (zoneId: string, on: string) => bloomOfLawn(looks.get(zoneId) ?? [], on as CalendarDate);
  expect(of(fed.frontId, "2026-05-20").inBloom).toBe("yes");
  expect(of(fed.backId, "2026-04-14")).toEqual({ inBloom: "no", bloomSeen: `Seen without flowers on Apr 14, 2026, 7:15 am, by ${company.owner.name}.` });
  expect(of(fed.backId, "2026-04-15").inBloom).toBe("unknown");
  expect(bloomOfLawn([], "2026-04-14" as CalendarDate)).toEqual({ inBloom: "unknown", bloomSeen: null });
});

test("water that was told of comes with its look, and the last of it by when it was done", async () => {
  const fed = await aFedVisit(house, company, day);
  const water = { wateredBy: "sprinklers", waterToldBy: "customer", lawns: {}, said: {}, watered: { [fed.frontId]: "yes" } } as const;
  const tell = async (wateredOn: string, waterDepth: string) =>
    valueOf(await lookAtLawns(house, company.owner.key, lookForm(house, fed, company.owner.personId, { ...water, wateredOn, wateredAt: "18:00", waterDepth })));
  await tell("2026-04-13", "1/2 in");
  await tell("2026-04-12", "");
  const looks = (await inWorkOf(house, company, (work) => looksOfZones(work, [fed.frontId, fed.backId]))).get(fed.frontId) ?? [];
  expect(lastWatering(looks)).toEqual({
    wateredAtEpochMilliseconds: Date.parse("2026-04-13T22:00Z"), wateredBy: "sprinklers", toldBy: "customer", depth: of("in", "0.5"),
    words: "Watered in by sprinklers on Apr 13, 2026, 6 pm, with ½ in, as the customer told.",
  });
  expect(looks.map(({ watering }) => watering?.depth)).toContain("not-stated");
  expect(lastWatering([])).toBeNull();
});
