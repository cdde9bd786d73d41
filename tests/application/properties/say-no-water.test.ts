import { afterAll, beforeAll, expect, test } from "vitest";
import { addWaterEdge } from "#application/properties/add-water-edge";
import { addZone } from "#application/properties/add-zone";
import { removeZone } from "#application/properties/remove-zone";
import { sayNoWater } from "#application/properties/say-no-water";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aClient, RECTANGLE, zoneForm } from "../../support/ground";
import { countedId, openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("answers for the lawns of which nobody has said it, once, and for no other", async () => {
  const { propertyId } = await aClient(house, company);
  const lawn = async (name: string, waterBeside: "none" | "yes" | "not-known") =>
    valueOf(await addZone(house, company.owner.key, { propertyId, ...zoneForm(), name, waterBeside, measure: { kind: "piece", piece: RECTANGLE } })).zoneId;
  await lawn("Front", "not-known");
  const pondId = await lawn("To the pond", "not-known");
  await lawn("Creek side", "yes");
  await lawn("Side", "none");
  const goneId = await lawn("Gone", "not-known");
  valueOf(await removeZone(house, company.owner.key, { zoneId: goneId }));
  valueOf(await addWaterEdge(house, company.owner.key, { zoneId: pondId, name: "Pond", length: "", width: "" }));
  const elsewhere = await aClient(house, company);
  valueOf(await addZone(house, company.owner.key, { propertyId: elsewhere.propertyId, ...zoneForm(), name: "Elsewhere", waterBeside: "not-known", measure: { kind: "piece", piece: RECTANGLE } }));
  expect(valueOf(await sayNoWater(house, company.owner.key, { propertyId }))).toEqual({ lawns: 1 });
  expect(await house.ask("select name, water_beside, version from zone where company_id = $1 order by name", [company.companyId])).toEqual([
    { name: "Creek side", water_beside: "yes", version: 1 },
    { name: "Elsewhere", water_beside: "not-known", version: 1 },
    { name: "Front", water_beside: "none", version: 2 },
    { name: "Gone", water_beside: "not-known", version: 2 },
    { name: "Side", water_beside: "none", version: 1 },
    { name: "To the pond", water_beside: "yes", version: 1 },
  ]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "no-water-said", subject_id: propertyId, details: { lawns: ["A Front"] } });
  expect(await sayNoWater(house, company.owner.key, { propertyId })).toMatchObject({ refusal: { kind: "conflict" } });
});

test("a property of nobody is none", async () => {
  expect(await sayNoWater(house, company.owner.key, { propertyId: countedId(999_999) })).toMatchObject({ refusal: { kind: "not-found" } });
});
