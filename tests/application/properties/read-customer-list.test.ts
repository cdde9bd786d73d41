import { afterAll, beforeAll, expect, test } from "vitest";
import { readCustomerList } from "#application/properties/read-customer-list";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


const read = (text: string) => readCustomerList(house, company.owner.key, { text });

test.each([
  ["commas and quotes", "\uFEFFCustomer,Street,Gate\r\n\"Thorn, Avery\",4 Sorrel Lane,36\" wide\r\n\r\nNoor Tansley,5 Sorrel Lane\r\n"],
  ["semicolons", "Customer;Street;Gate\nThorn, Avery;4 Sorrel Lane;36\" wide\n;;\nNoor Tansley;5 Sorrel Lane\n"],
  ["tabs", "Customer\tStreet\tGate\nThorn, Avery\t4 Sorrel Lane\t36\" wide\n\nNoor Tansley\t5 Sorrel Lane"],
])("%s: lines keep the numbers that they have in a spreadsheet, and columns are offered", async (_name, text) => {
  expect(valueOf(await read(text))).toMatchObject({
    heads: ["Customer", "Street", "Gate"],
    lines: [
      { number: 2, cells: ["Thorn, Avery", "4 Sorrel Lane", "36\" wide"] },
      { number: 4, cells: ["Noor Tansley", "5 Sorrel Lane"] },
    ],
    places: { customer: 0, street: 1, gate: 2 },
  });
});

test.each([
  ["nothing", " \n "],
  ["only a line of names", "Customer,Street"],
  ["a quotation without an end", "Customer,Street\n\"Avery,4 Sorrel Lane"],
  ["too many rows", `Customer\n${"Avery\n".repeat(501)}`],
  ["too long a text", "x".repeat(400_001)],
])("%s is refused at the field", async (_name, text) => {
  expect(await read(text)).toMatchObject({ refusal: { kind: "bad-input", fields: { text: A_SENTENCE } } });
});
