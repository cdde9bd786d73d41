import { afterAll, beforeAll, expect, test } from "vitest";
import { removeWaterEdge } from "#application/properties/remove-water-edge";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aWaterEdge } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("takes it off once; the row stays", async () => {
  const waterEdgeId = await aWaterEdge(house, company);
  valueOf(await removeWaterEdge(house, company.owner.key, { waterEdgeId }));
  expect(await house.ask("select name, removed_at from water_edge where water_edge_id = $1", [waterEdgeId])).toEqual([{ name: "Pond", removed_at: house.now() }]);
  expect(await removeWaterEdge(house, company.owner.key, { waterEdgeId })).toMatchObject({ refusal: { kind: "conflict" } });
});
