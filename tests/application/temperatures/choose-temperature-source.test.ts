import { afterAll, beforeAll, expect, test } from "vitest";
import { chooseTemperatureSource } from "#application/temperatures/choose-temperature-source";
import { readTemperatures } from "#application/temperatures/read-temperatures";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aSource } from "../../support/temperatures";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const choose = (source: string) => chooseTemperatureSource(house, company.owner.key, { source });
const inUse = async () => valueOf(await readTemperatures(house, company.owner.key, {})).sources.filter((one) => one.isInUse).map(({ source }) => source);

test("another source that has days is in use from then on, with one deed, and the company's own version stays", async () => {
  await aSource(house, company, "Airfield");
  await aSource(house, company, "Campus");
  const version = await house.ask("select version from company");
  expect(await inUse()).toEqual(["Airfield"]);
  valueOf(await choose("Campus"));
  expect(await inUse()).toEqual(["Campus"]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "temperature-source-chosen", details: { before: "Airfield", after: "Campus" } });
  expect(await house.ask("select version from company")).toEqual(version);
});

test("one without days, another company's, and the one in use are refused", async () => {
  const other = await aCompany(house, "Other Turf");
  await aSource(house, other, "Their yard");
  for (const source of ["Nowhere", "Their yard"]) expect(await choose(source)).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await choose("Campus")).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  expect(await choose(" ")).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  expect(await inUse()).toEqual(["Campus"]);
});
