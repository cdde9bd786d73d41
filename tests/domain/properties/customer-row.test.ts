import { describe, expect, test } from "vitest";
import { CUSTOMER_COLUMN_IDS, type CustomerCells } from "#domain/properties/customer-columns";
import { addressKey, customerKey, readCustomerRow } from "#domain/properties/customer-row";
import { of } from "#domain/quantities/quantity";

const EMPTY = Object.fromEntries(CUSTOMER_COLUMN_IDS.map((column) => [column, ""])) as CustomerCells;
const WHOLE: CustomerCells = {
  ...EMPTY,
  customer: "Avery Thorn", phone: "(219) 555-0121", email: "Avery@Thorn.example", street: "4 Sorrel Lane", city: "Millbrook", state: "indiana", zip: "46304",
  lawnSize: "8,500 sq ft", grass: "KBG / rye", mowingDay: "Tue", gate: "36 in; code 4471", dog: "yes", notes: "Rings first",
};

function complaintsOf(cells: Partial<CustomerCells>) {
  const answer = readCustomerRow({ ...WHOLE, ...cells });
  return answer.ok ? [] : answer.refusal;
}

test("a whole line is read into facts", () => {
  expect(readCustomerRow(WHOLE)).toEqual({
    ok: true,
    value: {
      name: "Avery Thorn", phone: "219-555-0121", email: "avery@thorn.example", street: "4 Sorrel Lane", city: "Millbrook", state: "IN", zip: "46304",
      lawn: { area: of("sq ft", 8500n), grasses: { grasses: ["Kentucky bluegrass", "perennial ryegrass"], assumed: false } },
      lotArea: null, mowingDay: 2, gate: { code: "4471", width: of("in", 36n), words: null }, dogNote: "Dog on the property", note: "Rings first",
    },
  });
});

test("a line with nothing but who and where is enough, and nothing is filled in", () => {
  const { customer, street, city, state, zip } = WHOLE;
  expect(readCustomerRow({ ...EMPTY, customer, street, city, state, zip })).toMatchObject({
    ok: true,
    value: { phone: null, email: null, lawn: null, lotArea: null, mowingDay: null, dogNote: null, note: null },
  });
});

test("a customer who mows on no fixed day is taken for one", () => {
  expect(readCustomerRow({ ...WHOLE, mowingDay: "varies" })).toMatchObject({ ok: true, value: { mowingDay: "no-fixed-day" } });
});

test("a lot goes on file as a lot, the lawn stays unmeasured, and the grass goes into the notes", () => {
  expect(readCustomerRow({ ...WHOLE, lawnSize: "1/4 acre" }, "lot")).toMatchObject({
    ok: true,
    value: { lawn: null, lotArea: of("acre", "0.25"), note: "Rings first Grass, as listed: KBG / rye." },
  });
});

test("an empty line gets a complaint for each cell that is needed, in the order of the columns", () => {
  const answer = readCustomerRow(EMPTY);
  expect(answer.ok ? [] : answer.refusal.map(({ column, found }) => [column, found])).toEqual([
    ["customer", "nothing"], ["street", "nothing"], ["city", "nothing"], ["state", "nothing"], ["zip", "nothing"],
  ]);
});

describe("each cell's complaint says what was found and what would be accepted", () => {
  test.each([
    ["phone", "219-555-012"], ["phone", "call wife"], ["email", "avery at thorn"], ["email", "a@b.example, c@d.example"], ["state", "Illinoise"], ["zip", "463"],
    ["zip", "46304-1"], ["lawnSize", "12k sq ft?"], ["grass", "fescue"], ["mowingDay", "T"], ["gate", "36"],
  ] as const)("%s: %j", (column, found) => {
    const complaints = complaintsOf({ [column]: found });
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toMatchObject({ column, found, asksLotOrTurf: false });
    expect(complaints[0]?.allowed).not.toBe("");
    expect(complaints[0]?.sentence).toMatch(/\.$/u);
  });

  test("several cells at once", () => {
    expect(complaintsOf({ zip: "1", phone: "x", mowingDay: "T" }).map(({ column }) => column)).toEqual(["phone", "zip", "mowingDay"]);
  });

  test("a size in acres asks whether it is the lot or the turf", () => {
    expect(complaintsOf({ lawnSize: "0.2 ac" })).toMatchObject([{ column: "lawnSize", asksLotOrTurf: true }]);
  });

  test("a lawn with a size and no grass is asked for its grass", () => {
    expect(complaintsOf({ grass: "" })).toMatchObject([{ column: "grass", found: "nothing" }]);
  });

  test("a size that can't be read hides no fault of the grass, and one that is asked about waits with it", () => {
    expect(complaintsOf({ lawnSize: "12k sq ft?", grass: "fescue" }).map(({ column }) => column)).toEqual(["lawnSize", "grass"]);
    expect(complaintsOf({ lawnSize: "1/4 acre", grass: "fescue" }).map(({ column }) => column)).toEqual(["lawnSize"]);
  });

  test("four digits are told about the zero that a spreadsheet drops", () => {
    expect(complaintsOf({ zip: "6304" })[0]?.sentence).toContain("06304");
  });

  test("a cell that is too long", () => {
    expect(complaintsOf({ city: "x".repeat(201) })).toMatchObject([{ column: "city" }]);
    expect(complaintsOf({ notes: "x".repeat(2000) })).toEqual([]);
  });
});

test.each([["no", null], ["NONE", null], ["-", null], ["Y", "Dog on the property"], ["Biscuit, friendly", "Biscuit, friendly"]])("a dog's cell %j", (text, dogNote) => {
  expect(readCustomerRow({ ...WHOLE, dog: text })).toMatchObject({ ok: true, value: { dogNote } });
});

test("one property is known whatever its case, points and the last four digits of its ZIP code", () => {
  expect(addressKey("4  Sorrel Ln.", "46304-1102")).toBe(addressKey("4 sorrel ln", "46304"));
  expect(addressKey("4 Sorrel Lane", "46304")).not.toBe(addressKey("4 Sorrel Lane", "46383"));
});

test("one customer is known by name and phone; without a phone nobody can tell", () => {
  expect(customerKey("Avery  Thorn", "+1 (219) 555-0121")).toBe(customerKey("avery thorn", "219-555-0121"));
  expect(customerKey("Avery Thorn", "219-555-0122")).not.toBe(customerKey("Avery Thorn", "219-555-0121"));
  expect(customerKey("Avery Thorn", null)).toBeUndefined();
  expect(customerKey("Avery Thorn", "")).toBeUndefined();
});
