import { afterAll, beforeAll, expect, test } from "vitest";
import { addWaterEdge } from "#application/properties/add-water-edge";
import { removeWaterEdge } from "#application/properties/remove-water-edge";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aZone } from "../../support/ground";
import { countedId, openHouse, type TestHouse } from "../../support/house";
import { of } from "#domain/quantities/quantity";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("what was measured is kept exactly, and what was not stays unknown", async () => {
  const { zoneId } = await aZone(house, company);
  valueOf(await addWaterEdge(house, company.owner.key, { zoneId, name: "Pond", length: "60 ft 6 in", width: "15" }));
  valueOf(await addWaterEdge(house, company.owner.key, { zoneId, name: "Ditch", length: "", width: "" }));
  expect(await house.ask("select name, length, width from water_edge where zone_id = $1 order by name", [zoneId])).toEqual([
    { name: "Ditch", length: null, width: null },
    { name: "Pond", length: String(of("ft", "60.5").amount), width: String(of("ft", 15n).amount) },
  ]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "water-edge-added", details: { name: "Ditch", length: "unknown", width: "unknown" } });
});

test("water that is entered answers whether there is any, and stays the answer when it is taken off", async () => {
  const { zoneId } = await aZone(house, company);
  const answer = async () => (await house.ask("select water_beside from zone where zone_id = $1", [zoneId]))[0];
  expect(await answer()).toEqual({ water_beside: "none" });
  const { waterEdgeId } = valueOf(await addWaterEdge(house, company.owner.key, { zoneId, name: "Pond", length: "", width: "" }));
  expect(await answer()).toEqual({ water_beside: "yes" });
  valueOf(await removeWaterEdge(house, company.owner.key, { waterEdgeId }));
  expect(await answer()).toEqual({ water_beside: "yes" });
});

test("a width of nothing, a name of nothing and a lawn of nobody are refused", async () => {
  const { zoneId } = await aZone(house, company);
  const edge = { zoneId, name: "Pond", length: "", width: "" };
  expect(await addWaterEdge(house, company.owner.key, { ...edge, width: "0 ft" })).toMatchObject({ refusal: { fields: { width: A_SENTENCE } } });
  expect(await addWaterEdge(house, company.owner.key, { ...edge, name: "" })).toMatchObject({ refusal: { fields: { name: A_SENTENCE } } });
  expect(await addWaterEdge(house, company.owner.key, { ...edge, zoneId: countedId(999_999) })).toMatchObject({ refusal: { kind: "not-found" } });
});
