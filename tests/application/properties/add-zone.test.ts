import { afterAll, beforeAll, expect, test } from "vitest";
import { addZone } from "#application/properties/add-zone";
import { removeZone } from "#application/properties/remove-zone";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aClient, RECTANGLE, zoneForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { of } from "#domain/quantities/quantity";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("a lawn of one piece has its exact area, the day of the company, and the words as typed", async () => {
  const { propertyId } = await aClient(house, company);
  const { zoneId } = valueOf(await addZone(house, company.owner.key, { propertyId, ...zoneForm(), measure: { kind: "piece", piece: { ...RECTANGLE, width: "60'", radius: "9" } } }));
  const [row] = await house.ask("select letter, name, grasses, grasses_assumed, pieces, area, area_origin, measured_on::text from zone where zone_id = $1", [zoneId]);
  expect(row).toEqual({
    letter: "A", name: "Front", grasses: ["Kentucky bluegrass", "perennial ryegrass"], grasses_assumed: false,
    pieces: [{ use: "lawn", shape: "rectangle", name: "", x: "0", y: "0", turn: "0", length: "40 ft", width: "60'" }],
    area: String(of("sq ft", 2400n).amount), area_origin: "measured", measured_on: "2026-04-14",
  });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "zone-added", details: { letter: "A", area: "2,400 sq ft", areaOrigin: "measured" } });
});

test("a bare area is entered, and letters go on and are given again", async () => {
  const { propertyId } = await aClient(house, company);
  const add = async () => valueOf(await addZone(house, company.owner.key, { propertyId, ...zoneForm(), measure: { kind: "area", area: "1,200" } })).zoneId;
  const [first, second] = [await add(), await add()];
  valueOf(await removeZone(house, company.owner.key, { zoneId: first }));
  const third = await add();
  expect(await house.ask("select zone_id, letter, area, area_origin, measured_on, pieces from zone where property_id = $1 and removed_at is null order by letter", [propertyId])).toEqual([
    { zone_id: third, letter: "A", area: String(of("sq ft", 1200n).amount), area_origin: "entered", measured_on: null, pieces: [] },
    { zone_id: second, letter: "B", area: String(of("sq ft", 1200n).amount), area_origin: "entered", measured_on: null, pieces: [] },
  ]);
});

test("measures that make no lawn are refused at their fields, and nothing is written", async () => {
  const { propertyId } = await aClient(house, company);
  const before = await house.books();
  const form = { propertyId, ...zoneForm() };
  for (const [measure, field] of [
    [{ kind: "piece", piece: { ...RECTANGLE, width: "" } }, "measure.piece.width"],
    [{ kind: "piece", piece: { ...RECTANGLE, use: "cut-out" } }, "measure.piece.use"],
    [{ kind: "area", area: "" }, "measure.area"],
    [{ kind: "area", area: "5 gal" }, "measure.area"],
  ] as const) {
    expect(await addZone(house, company.owner.key, { ...form, measure }), field).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  }
  expect(await house.books()).toEqual(before);
});
