import { afterAll, beforeAll, expect, test } from "vitest";
import { addSeeding } from "#application/properties/add-seeding";
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

const rowOf = async (seedingId: string) => (await house.ask("select date::text, kind, method, standing, removed_at, version from seeding where seeding_id = $1", [seedingId]))[0];

test("writes an overseeding down with its method, and says so", async () => {
  const { zoneId, propertyId } = await aZone(house, company);
  const added = valueOf(await addSeeding(house, company.owner.key, { zoneId, ...seedingForm() }));
  expect(added.propertyId).toBe(propertyId);
  expect(await rowOf(added.seedingId)).toEqual({ date: "2026-04-03", kind: "overseeding", method: "slit", standing: "done", removed_at: null, version: 1 });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "seeding-added", subject_id: added.seedingId, details: { lawn: "A Front", kind: "overseeding", method: "slit", date: "2026-04-03", standing: "done" },
  });
});

test("a lawn has several, done and planned; sod has no method, and a plan may be for today", async () => {
  const { zoneId } = await aSeeding(house, company);
  const { key } = company.owner;
  const { seedingId } = valueOf(await addSeeding(house, key, { zoneId, date: "2026-04-14", kind: "sod", method: "unknown", standing: "planned" }));
  valueOf(await addSeeding(house, key, { zoneId, date: "2026-09-10", kind: "overseeding", method: "unknown", standing: "planned" }));
  valueOf(await addSeeding(house, key, { zoneId, date: "2026-04-14", kind: "overseeding", method: "broadcast", standing: "done" }));
  expect(await rowOf(seedingId)).toMatchObject({ kind: "sod", method: null, standing: "planned" });
  expect(await house.ask("select count(*)::int as count from seeding where zone_id = $1", [zoneId])).toEqual([{ count: 4 }]);
});

test("a day that does not fit where it stands, a method of sod, the same again and half a form are refused, and nothing is written", async () => {
  const { zoneId } = await aSeeding(house, company);
  const before = await house.books();
  for (const [change, field] of [
    [{ date: "2026-04-15" }, "date"], [{ date: "2026-04-13", standing: "planned" }, "date"], [{ date: "" }, "date"], [{ date: "2026-02-30" }, "date"], [{}, "date"],
    [{ kind: "sod" }, "method"], [{ kind: "seed" }, "kind"], [{ method: "thrown" }, "method"], [{ standing: "hoped" }, "standing"],
  ] as const) {
    const form = { zoneId, ...seedingForm(), ...change } as Parameters<typeof addSeeding>[2];
    expect(await addSeeding(house, company.owner.key, form), JSON.stringify(change)).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  }
  expect(await house.books()).toEqual(before);
});

test("what was taken off may be entered anew", async () => {
  const { zoneId, seedingId } = await aSeeding(house, company);
  valueOf(await removeSeeding(house, company.owner.key, { seedingId }));
  valueOf(await addSeeding(house, company.owner.key, { zoneId, ...seedingForm() }));
});

test("a lawn off the plan, of nobody or of another company has none", async () => {
  const { zoneId } = await aZone(house, company);
  valueOf(await removeZone(house, company.owner.key, { zoneId }));
  const other = await aZone(house, await aCompany(house, "Other Turf"));
  for (const stranger of [zoneId, countedId(999_999), other.zoneId]) {
    expect(await addSeeding(house, company.owner.key, { zoneId: stranger, ...seedingForm() })).toMatchObject({ refusal: { kind: "not-found" } });
  }
});

test("the database itself keeps a method to seed, and words to those that are known", async () => {
  const { seedingId } = await aSeeding(house, company);
  for (const change of ["kind = 'sod'", "method = null", "method = 'thrown'", "kind = 'patch'", "standing = 'hoped'"]) {
    await expect(house.ask(`update seeding set ${change} where seeding_id = $1`, [seedingId]), change).rejects.toThrow(/check constraint/u);
  }
});
