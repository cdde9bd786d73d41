import { afterAll, beforeAll, expect, test } from "vitest";
import { addSoilTest } from "#application/properties/add-soil-test";
import { removeZone } from "#application/properties/remove-zone";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aZone, soilTestForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("keeps the laboratory's own words beside what they mean", async () => {
  const { zoneId } = await aZone(house, company);
  const { soilTestId } = valueOf(await addSoilTest(house, company.owner.key, soilTestForm(zoneId)));
  expect(await house.ask("select sampled_on::text, laboratory, phosphorus_word, phosphorus from soil_test where soil_test_id = $1", [soilTestId])).toEqual([
    { sampled_on: "2026-03-20", laboratory: "Prairie Soil Lab", phosphorus_word: "Very low", phosphorus: "deficient" },
  ]);
});

test("a day that has not come and a lawn that is off the plan are refused", async () => {
  const { zoneId } = await aZone(house, company);
  expect(await addSoilTest(house, company.owner.key, { ...soilTestForm(zoneId), sampledOn: "2026-04-15" })).toMatchObject({ refusal: { fields: { sampledOn: A_SENTENCE } } });
  valueOf(await removeZone(house, company.owner.key, { zoneId }));
  expect(await addSoilTest(house, company.owner.key, soilTestForm(zoneId))).toMatchObject({ refusal: { kind: "not-found" } });
});
