import { afterAll, beforeAll, expect, test } from "vitest";
import { importCustomers } from "#application/properties/import-customers";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aRow } from "../../support/ground";
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


async function counts() {
  const [row] = await house.ask<{ clients: string; properties: string; zones: string }>(
    "select (select count(*) from client) as clients, (select count(*) from property) as properties, (select count(*) from zone) as zones",
  );
  return { clients: Number(row?.clients), properties: Number(row?.properties), zones: Number(row?.zones) };
}

test("sixty rows are imported in one go, and pressing twice imports once with the same answer", async () => {
  const listId = house.newId();
  const rows = Array.from({ length: 60 }, (_, index) =>
    aRow(index + 2, { customer: `Customer ${String(index)}`, phone: `219-555-01${String(index).padStart(2, "0")}`, lawnSize: index % 2 === 0 ? "8,500 sq ft" : "", grass: "KBG" }),
  );
  const before = await counts();
  const answers = await Promise.all([importCustomers(house, company.owner.key, { listId, rows }), importCustomers(house, company.owner.key, { listId, rows })]);
  for (const answer of answers) expect(answer).toEqual({ ok: true, value: { customers: 60, properties: 60, lawns: 30 } });
  expect(await counts()).toEqual({ clients: before.clients + 60, properties: before.properties + 60, zones: before.zones + 30 });
  expect((await trailOf(house, company.companyId)).filter(({ subject_id }) => subject_id === listId)).toHaveLength(1);
});

test("what a row says is stored: the turf as imported, a lot as a lot, the position of the ZIP code, gate, dog and day", async () => {
  const turf = aRow(2, { lawnSize: "8,500 sq ft", grass: "tall fescue?", gate: "36 in, code 4471, side gate", dog: "Biscuit", mowingDay: "Tue", notes: "Rings first" });
  const lot = { ...aRow(3, { lawnSize: "1/4 acre", zip: "00001", customer: "Someone Else", phone: "" }), sizeMeaning: "lot" as const };
  valueOf(await importCustomers(house, company.owner.key, { listId: house.newId(), rows: [turf, lot] }));
  const columns = "property_id, lot_area, position_origin, access_note, gate_code, narrowest_gate, dog_note, mowing_weekday, note";
  const [first] = await house.ask<{ property_id: string }>(`select ${columns} from property where street = $1`, [turf.cells.street]);
  expect(first).toMatchObject({
    lot_area: null, position_origin: "zip-centroid", access_note: "side gate", gate_code: "4471", narrowest_gate: String(of("in", 36n).amount), dog_note: "Biscuit", mowing_weekday: 2, note: "Rings first",
  });
  expect(await house.ask("select letter, grasses, grasses_assumed, area, area_origin from zone where property_id = $1", [first?.property_id])).toEqual([
    { letter: "A", grasses: ["tall fescue"], grasses_assumed: true, area: String(of("sq ft", 8500n).amount), area_origin: "imported" },
  ]);
  const [second] = await house.ask<{ property_id: string }>(`select ${columns} from property where street = $1`, [lot.cells.street]);
  expect(second).toMatchObject({ lot_area: String(of("acre", "0.25").amount), position_origin: null });
  expect(await house.ask("select 1 as one from zone where property_id = $1", [second?.property_id])).toEqual([]);
});

test("the same name and phone are one customer with two properties, in one list and in the next; without a phone nobody can tell", async () => {
  const named = { customer: "Two Houses", phone: "(219) 555-0190" };
  const first = valueOf(await importCustomers(house, company.owner.key, { listId: house.newId(), rows: [aRow(2, named), aRow(3, { ...named, phone: "219.555.0190", email: "two@houses.example" })] }));
  expect(first).toMatchObject({ customers: 1, properties: 2 });
  expect(valueOf(await importCustomers(house, company.owner.key, { listId: house.newId(), rows: [aRow(2, named)] }))).toMatchObject({ customers: 0, properties: 1 });
  const nameless = { customer: "No Phone", phone: "" };
  expect(valueOf(await importCustomers(house, company.owner.key, { listId: house.newId(), rows: [aRow(2, nameless), aRow(3, nameless)] }))).toMatchObject({ customers: 2, properties: 2 });
  expect(await house.ask("select email from client where name = $1", ["Two Houses"])).toEqual([{ email: "two@houses.example" }]);
});

test("one bad cell and nothing is imported; the answer names row and column", async () => {
  const before = await house.books();
  const answer = await importCustomers(house, company.owner.key, { listId: house.newId(), rows: [aRow(2), aRow(14, { zip: "463" }), aRow(15, { lawnSize: "1/4 acre" })] });
  expect(answer).toMatchObject({ refusal: { kind: "bad-input", fields: { "14.zip": A_SENTENCE, "15.lawnSize": A_SENTENCE } } });
  expect(await house.books()).toEqual(before);
});
