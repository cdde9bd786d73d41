import { afterAll, beforeAll, expect, test } from "vitest";
import { addWaterEdge } from "#application/properties/add-water-edge";
import { changeZone } from "#application/properties/change-zone";
import { measureZone } from "#application/properties/measure-zone";
import { removeWaterEdge } from "#application/properties/remove-water-edge";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aZone, zoneForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

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
  expect(await house.ask("select name, grasses, grasses_assumed, water_beside, area_origin, version from zone where zone_id = $1", [zoneId])).toEqual([
    { name: "Street", grasses: ["tall fescue"], grasses_assumed: true, water_beside: "none", area_origin: "measured", version: 2 },
  ]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "zone-changed", details: { before: { name: "Front" }, after: { name: "Street" } } });
  expect(await changeZone(house, company.owner.key, form)).toMatchObject({ refusal: { kind: "conflict" } });
});

test("whether there is water beside it is said and unsaid, and while water is on file there is some", async () => {
  const { zoneId } = await aZone(house, company);
  const form = { zoneId, ...zoneForm() } as const;
  const answer = async () => (await house.ask("select water_beside from zone where zone_id = $1", [zoneId]))[0];
  valueOf(await changeZone(house, company.owner.key, { ...form, version: 1, waterBeside: "not-known" }));
  expect(await answer()).toEqual({ water_beside: "not-known" });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "zone-changed", details: { before: { waterBeside: "none" }, after: { waterBeside: "not-known" } } });
  const { waterEdgeId } = valueOf(await addWaterEdge(house, company.owner.key, { zoneId, name: "Pond", length: "", width: "" }));
  for (const waterBeside of ["none", "not-known"] as const) {
    expect(await changeZone(house, company.owner.key, { ...form, version: 2, waterBeside })).toMatchObject({ refusal: { fields: { waterBeside: A_SENTENCE } } });
  }
  valueOf(await changeZone(house, company.owner.key, { ...form, version: 2, waterBeside: "yes" }));
  valueOf(await removeWaterEdge(house, company.owner.key, { waterEdgeId }));
  valueOf(await changeZone(house, company.owner.key, { ...form, version: 3, waterBeside: "none" }));
  expect(await answer()).toEqual({ water_beside: "none" });
});

test("water that is drawn beside a lawn answers too, until it is out of the drawing", async () => {
  const { zoneId } = await aZone(house, company);
  const form = { zoneId, ...zoneForm(), waterBeside: "none" } as const;
  const pond = { use: "water", shape: "circle", name: "pond", radius: "10 ft", x: "0", y: "80" } as const;
  valueOf(await measureZone(house, company.owner.key, { zoneId, version: 1, change: { kind: "put-piece", at: "new", piece: pond } }));
  expect(await house.ask("select water_beside from zone where zone_id = $1", [zoneId])).toEqual([{ water_beside: "yes" }]);
  expect(await changeZone(house, company.owner.key, { ...form, version: 2 })).toMatchObject({ refusal: { fields: { waterBeside: A_SENTENCE } } });
  valueOf(await measureZone(house, company.owner.key, { zoneId, version: 2, change: { kind: "remove-piece", at: "1" } }));
  valueOf(await changeZone(house, company.owner.key, { ...form, version: 3 }));
});
