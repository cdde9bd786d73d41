import { afterAll, beforeAll, expect, test } from "vitest";
import { addClient } from "#application/properties/add-client";
import { checkCustomerList } from "#application/properties/check-customer-list";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aRow, clientForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("each row is judged by itself, against the rows above it and against what is on file; nothing is stored", async () => {
  const onFile = clientForm();
  valueOf(await addClient(house, company.owner.key, onFile));
  const good = aRow(2);
  const rows = [good, aRow(3, { street: good.cells.street, notes: "again" }), aRow(4, { street: onFile.street, zip: onFile.zip }), aRow(5, { zip: "463", lawnSize: "1/4 acre" })];
  const before = await house.books();
  const { verdicts } = valueOf(await checkCustomerList(house, company.owner.key, { rows }));
  expect(verdicts).toMatchObject([
    { number: 2, kind: "good", row: { street: good.cells.street } },
    { number: 3, kind: "complaints", complaints: [{ column: "street", sentence: saying("Row 2") }] },
    { number: 4, kind: "complaints", complaints: [{ column: "street", sentence: saying("on file already") }] },
    { number: 5, kind: "complaints", complaints: [{ column: "zip" }, { column: "lawnSize", asksLotOrTurf: true }] },
  ]);
  expect(await house.books()).toEqual(before);
});

test("only the rows that are asked for are judged, and the others still count as neighbors", async () => {
  const good = aRow(2);
  const rows = [good, aRow(3, { zip: "" }), aRow(4, { street: good.cells.street })];
  const { verdicts } = valueOf(await checkCustomerList(house, company.owner.key, { rows, only: [4] }));
  expect(verdicts).toMatchObject([{ number: 4, kind: "complaints" }]);
  expect(valueOf(await checkCustomerList(house, company.owner.key, { rows: [aRow(3, { lawnSize: "1/4 acre" })].map((row) => ({ ...row, sizeMeaning: "lot" as const })) })).verdicts).toMatchObject([
    { kind: "good", row: { lawn: null } },
  ]);
});
