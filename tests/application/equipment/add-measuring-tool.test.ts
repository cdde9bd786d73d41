import { afterAll, beforeAll, expect, test } from "vitest";
import { addMeasuringTool } from "#application/equipment/add-measuring-tool";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE, saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const add = (mark: string, name = "A tool") => addMeasuringTool(house, company.owner.key, { name, mark });

test.each([["0.5 fl oz", "volume"], ["0.25 lb", "mass"], ["1/8 oz wt", "mass"], ["0.01 gal", "volume"]])("a mark of %s is kept as typed, and is of %s", async (mark, dimension) => {
  const { measuringToolId } = valueOf(await add(mark));
  expect(await house.ask("select name, mark, dimension, stood_down_at from measuring_tool where measuring_tool_id = $1", [measuringToolId])).toEqual([
    { name: "A tool", mark, dimension, stood_down_at: null },
  ]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "measuring-tool-added", details: { mark } });
});

test("an ounce that could be either kind is asked about", async () => {
  expect(await add("0.5 oz")).toMatchObject({ refusal: { fields: { mark: saying("fluid ounces") } } });
});

test.each(["", "0 fl oz", "3 ft", "half"])("%j is no mark", async (mark) => {
  expect(await add(mark)).toMatchObject({ refusal: { kind: "bad-input", fields: { mark: A_SENTENCE } } });
});
