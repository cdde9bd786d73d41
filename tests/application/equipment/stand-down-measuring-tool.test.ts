import { afterAll, beforeAll, expect, test } from "vitest";
import { listEquipment } from "#application/equipment/list-equipment";
import { standDownMeasuringTool } from "#application/equipment/stand-down-measuring-tool";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aMeasuringTool } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";
import { saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("stands down once, and is listed no more", async () => {
  const measuringToolId = await aMeasuringTool(house, company);
  const listed = async () => valueOf(await listEquipment(house, company.owner.key, {})).measuringTools;
  expect(await listed()).toEqual([{ measuringToolId, name: "Half-ounce cup", dimension: "volume", mark: "0.5 fl oz" }]);
  const standDown = () => standDownMeasuringTool(house, company.owner.key, { measuringToolId });
  valueOf(await standDown());
  expect(await listed()).toEqual([]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "measuring-tool-stood-down", details: { mark: "0.5 fl oz" } });
  expect(await standDown()).toMatchObject({ refusal: { kind: "conflict", sentence: saying("already") } });
});
