import { describe, expect, test } from "vitest";
import { cellsOf, CUSTOMER_COLUMN_IDS, NEEDED_COLUMNS, offerColumns } from "#domain/properties/customer-columns";

test("a list whose heads are the columns' own words finds every column at its place", () => {
  const heads = ["Customer", "Phone", "Email", "Street", "City", "State", "ZIP", "Lawn size", "Grass", "Mowing day", "Gate", "Dog", "Notes"];
  expect(offerColumns(heads)).toEqual(Object.fromEntries(CUSTOMER_COLUMN_IDS.map((column, place) => [column, place])));
});

describe("heads are matched loosely", () => {
  test.each([
    ["CLIENT NAME", "customer"], ["e-mail", "email"], ["Service Address", "street"], ["Zip Code", "zip"], ["sq. ft.", "lawnSize"],
    ["Turf type", "grass"], ["mow_day", "mowingDay"], ["Gate code", "gate"], ["Pets?", "dog"], ["Comments", "notes"],
  ])("%s is offered as %s", (head, column) => {
    expect(offerColumns(["Something else", head])).toEqual({ [column]: 1 });
  });

  test("a size that the head itself calls the lot's is not offered as the lawn's", () => {
    expect(offerColumns(["Lot size", "Acreage"])).toEqual({});
  });

  test("two heads of one meaning give one column, and the better word takes it", () => {
    expect(offerColumns(["Name", "Customer"])).toEqual({ customer: 1 });
  });
});

test("cells come under their columns, with line ends and control characters as one space, and short lines end early", () => {
  const cells = cellsOf([" Avery\nThorn ", "4 Sorrel\u0007 Lane"], { customer: 0, street: 1, zip: 5 });
  expect(cells).toMatchObject({ customer: "Avery Thorn", street: "4 Sorrel Lane", zip: "", city: "" });
  expect(Object.keys(cells)).toEqual([...CUSTOMER_COLUMN_IDS]);
  expect(NEEDED_COLUMNS.every((column) => column in cells)).toBe(true);
});
