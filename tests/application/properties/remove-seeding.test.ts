import { afterAll, beforeAll, expect, test } from "vitest";
import { removeSeeding } from "#application/properties/remove-seeding";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aSeeding } from "../../support/ground";
import { countedId, openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("takes seed off a lawn and keeps its row; a second press is told, one of nobody or of another company is not there", async () => {
  const { seedingId } = await aSeeding(house, company);
  const { key } = company.owner;
  valueOf(await removeSeeding(house, key, { seedingId }));
  expect(await house.ask("select removed_at from seeding where seeding_id = $1", [seedingId])).toEqual([{ removed_at: house.now() }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "seeding-removed", subject_id: seedingId, details: { kind: "overseeding", date: "2026-04-03" } });
  expect(await removeSeeding(house, key, { seedingId })).toMatchObject({ refusal: { kind: "conflict" } });
  const other = await aSeeding(house, await aCompany(house, "Other Turf"));
  for (const stranger of [countedId(999_999), other.seedingId]) {
    expect(await removeSeeding(house, key, { seedingId: stranger })).toMatchObject({ refusal: { kind: "not-found" } });
  }
});
