import { afterAll, beforeAll, expect, test } from "vitest";
import { addSeeding } from "#application/properties/add-seeding";
import { changeSeeding } from "#application/properties/change-seeding";
import { removeSeeding } from "#application/properties/remove-seeding";
import { removeZone } from "#application/properties/remove-zone";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aSeeding, aZone, seedingForm } from "../../support/ground";
import { countedId, openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("what was planned is done, on another day and by another method, and the trail has both", async () => {
  const { zoneId, propertyId } = await aZone(house, company);
  const { key } = company.owner;
  const { seedingId } = valueOf(await addSeeding(house, key, { zoneId, date: "2026-04-20", kind: "new-lawn", method: "unknown", standing: "planned" }));
  const changed = valueOf(await changeSeeding(house, key, { seedingId, version: 1, date: "2026-04-13", kind: "new-lawn", method: "slit", standing: "done" }));
  expect(changed).toEqual({ version: 2, propertyId, zoneId });
  expect(await house.ask("select date::text, kind, method, standing, version from seeding where seeding_id = $1", [seedingId])).toEqual([
    { date: "2026-04-13", kind: "new-lawn", method: "slit", standing: "done", version: 2 },
  ]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "seeding-changed",
    details: { lawn: "A Front", before: { date: "2026-04-20", method: "unknown", standing: "planned" }, after: { date: "2026-04-13", method: "slit", standing: "done" } },
  });
});

test("its own day is free for it, that of another seeding of the kind is not; seed that was sod loses its method", async () => {
  const { seedingId, zoneId } = await aSeeding(house, company);
  const { key } = company.owner;
  valueOf(await addSeeding(house, key, { zoneId, ...seedingForm(), date: "2026-03-20" }));
  expect(await changeSeeding(house, key, { seedingId, version: 1, ...seedingForm(), date: "2026-03-20" })).toMatchObject({ refusal: { fields: { date: A_SENTENCE } } });
  expect(await changeSeeding(house, key, { seedingId, version: 1, ...seedingForm(), date: "2026-04-15" })).toMatchObject({ refusal: { fields: { date: A_SENTENCE } } });
  valueOf(await changeSeeding(house, key, { seedingId, version: 1, ...seedingForm(), kind: "sod", method: "unknown" }));
  expect(await house.ask("select kind, method from seeding where seeding_id = $1", [seedingId])).toEqual([{ kind: "sod", method: null }]);
});

test("the loser of a race is told, and what is taken off, of a lawn off the plan or of nobody is not there", async () => {
  const { seedingId, zoneId } = await aSeeding(house, company);
  const { key } = company.owner;
  const form = { seedingId, version: 1, ...seedingForm() };
  expect(await changeSeeding(house, key, { ...form, version: 2 })).toMatchObject({ refusal: { kind: "conflict" } });
  const other = await aSeeding(house, await aCompany(house, "Other Turf"));
  for (const stranger of [countedId(999_999), other.seedingId]) {
    expect(await changeSeeding(house, key, { ...form, seedingId: stranger })).toMatchObject({ refusal: { kind: "not-found" } });
  }
  valueOf(await removeZone(house, key, { zoneId }));
  expect(await changeSeeding(house, key, form)).toMatchObject({ refusal: { kind: "not-found" } });
  const off = await aSeeding(house, company);
  valueOf(await removeSeeding(house, key, { seedingId: off.seedingId }));
  expect(await changeSeeding(house, key, { ...form, seedingId: off.seedingId, version: 2 })).toMatchObject({ refusal: { kind: "not-found" } });
});
