import { afterAll, beforeAll, expect, test } from "vitest";
import { addRound } from "#application/programs/add-round";
import { putOnProgram } from "#application/programs/put-on-program";
import { changeClient } from "#application/properties/change-client";
import { addZone } from "#application/properties/add-zone";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { countingHouse } from "../../support/counted-queries";
import { aClient, aZone, zoneForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { aProgram, aRound, roundForm } from "../../support/season";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const put = (programId: string, ...propertyIds: string[]) =>
  putOnProgram(house, company.owner.key, { programId, properties: Object.fromEntries(propertyIds.map((id) => [id, "yes" as const])) });

test("each property gets one visit of each round, with every treatment on all its lawns and minutes by their area", async () => {
  const { programId, roundId } = await aRound(house, company);
  const [one, other] = [await aZone(house, company), await aZone(house, company)];
  const second = valueOf(await addZone(house, company.owner.key, { propertyId: one.propertyId, ...zoneForm(), name: "Back", measure: { kind: "area", area: "3,600 sq ft" } }));
  expect(valueOf(await put(programId, one.propertyId, other.propertyId))).toEqual({ programId, properties: 2, visits: 2 });
  const visits = await house.ask(
    "select property_id, name, state, opens_on::text, service_minutes, second_look_after_days from visit where round_id = $1 order by service_minutes", [roundId],
  );
  const same = { name: "Spring feed", state: "planned", opens_on: "2026-04-06", second_look_after_days: null };
  // 2,400 sq ft take 8 + 9.6 minutes, 6,000 sq ft take 8 + 24.
  expect(visits).toEqual([{ property_id: other.propertyId, service_minutes: 18, ...same }, { property_id: one.propertyId, service_minutes: 32, ...same }]);
  const zones = await house.ask<{ zone_id: string }>("select z.zone_id from visit_task_zone z join visit v using (company_id, visit_id) where v.property_id = $1 order by zone_id", [one.propertyId]);
  expect(zones.map(({ zone_id }) => zone_id)).toEqual([one.zoneId, second.zoneId].sort());
  const [task] = await house.ask("select t.kind, t.rate_text, t.equipment_id from visit_task t join visit v using (company_id, visit_id) where v.property_id = $1", [one.propertyId]);
  expect(task).toEqual({ kind: "treatment", rate_text: "2.5 lb/1,000 sq ft", equipment_id: null });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "properties-put-on-program", details: { properties: 2, visits: 2 } });
});

test("pressed twice it makes nothing twice, and a round added later is made up for", async () => {
  const { programId, productId } = await aRound(house, company);
  const { propertyId } = await aZone(house, company);
  valueOf(await put(programId, propertyId));
  const before = await house.books();
  expect(await put(programId, propertyId)).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await house.books()).toEqual(before);
  valueOf(await addRound(house, company.owner.key, { ...roundForm(programId, productId), name: "Summer", opensOn: "2026-06-01", closesOn: "2026-06-20" }));
  expect(valueOf(await put(programId, propertyId))).toMatchObject({ properties: 1, visits: 1 });
});

test("three rounds ask the database as often as one: their products and labels are read once", async () => {
  const callsFor = async (rounds: number) => {
    const { programId, productId } = await aRound(house, company);
    const { propertyId } = await aZone(house, company);
    for (let round = 2; round <= rounds; round += 1) {
      valueOf(await addRound(house, company.owner.key, { ...roundForm(programId, productId), name: `Round ${String(round)}`, opensOn: `2026-0${String(4 + round)}-01`, closesOn: `2026-0${String(4 + round)}-20` }));
    }
    const counting = countingHouse(house);
    expect(valueOf(await putOnProgram(counting.house, company.owner.key, { programId, properties: { [propertyId]: "yes" } }))).toMatchObject({ visits: rounds });
    return counting.count();
  };
  expect(await callsFor(3)).toBe(await callsFor(1));
});

test("two at once make one enrollment", async () => {
  const { programId, roundId } = await aRound(house, company);
  const { propertyId } = await aZone(house, company);
  const answers = await Promise.all([put(programId, propertyId), put(programId, propertyId)]);
  expect(answers.map(({ ok }) => ok).sort()).toEqual([false, true]);
  expect(await house.ask("select count(*)::int from visit where round_id = $1", [roundId])).toEqual([{ count: 1 }]);
});

test("a round whose window has closed makes no visit, and a program without another is refused", async () => {
  const { programId, roundId, productId } = await aRound(house, company);
  const { propertyId } = await aZone(house, company);
  await house.ask("update round set closes_on = '2026-04-13' where round_id = $1", [roundId]);
  expect(await put(programId, propertyId)).toMatchObject({ refusal: { kind: "conflict" } });
  valueOf(await addRound(house, company.owner.key, { ...roundForm(programId, productId), name: "Today only", opensOn: "2026-04-14", closesOn: "2026-04-14" }));
  valueOf(await put(programId, propertyId));
  expect(await house.ask("select name from visit where property_id = $1", [propertyId])).toEqual([{ name: "Today only" }]);
  expect(await put(await aProgram(house, company), propertyId)).toMatchObject({ refusal: { kind: "conflict" } });
});

test("a property without a lawn, or of a customer who is not served, is named and nothing is written", async () => {
  const { programId } = await aRound(house, company);
  const good = await aZone(house, company);
  const bare = await aClient(house, company);
  const paused = await aZone(house, company);
  const [row] = await house.ask<{ client_id: string; street: string }>("select client_id, street from property where property_id = $1", [paused.propertyId]);
  valueOf(await changeClient(house, company.owner.key, { clientId: row?.client_id ?? "", version: 1, name: "Avery Thorn", phone: "", email: "", standing: "paused" }));
  const before = await house.books();
  expect(await put(programId, good.propertyId, bare.propertyId)).toMatchObject({ refusal: { fields: { properties: expect.stringContaining("No lawn is measured") as string } } });
  expect(await put(programId, good.propertyId, paused.propertyId)).toMatchObject({ refusal: { fields: { properties: expect.stringContaining(row?.street ?? "?") as string } } });
  expect(await put(programId, house.newId())).toMatchObject({ refusal: { kind: "not-found" } });
  expect(await put(programId)).toMatchObject({ refusal: { kind: "bad-input" } });
  expect(await house.books()).toEqual(before);
});
