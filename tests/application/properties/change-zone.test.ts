import { afterAll, beforeAll, expect, test } from "vitest";
import { changeZone } from "#application/properties/change-zone";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aZone, zoneForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("writes name and grasses; the measure stays", async () => {
  const { zoneId } = await aZone(house, company);
  const form = { zoneId, version: 1, ...zoneForm(), name: "Street", grass: "tall fescue", secondGrass: "tall fescue", grassesKnown: "assumed" } as const;
  valueOf(await changeZone(house, company.owner.key, form));
  expect(await house.ask("select name, grasses, grasses_assumed, area_origin, version from zone where zone_id = $1", [zoneId])).toEqual([
    { name: "Street", grasses: ["tall fescue"], grasses_assumed: true, area_origin: "measured", version: 2 },
  ]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "zone-changed", details: { before: { name: "Front" }, after: { name: "Street" } } });
  expect(await changeZone(house, company.owner.key, form)).toMatchObject({ refusal: { kind: "conflict" } });
});
