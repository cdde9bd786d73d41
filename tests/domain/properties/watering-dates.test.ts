import { expect, test } from "vitest";
import { datesOfHouseNumber, isWateringDates, oddOrEven, wateringDatesOf } from "#domain/properties/watering-dates";

test.each([
  ["7 Heron Court", "odd"],
  ["40 Kiln Yard", "even"],
  ["120B Sorrel Lane", "even"],
  ["11-14 Mill Row", "odd"],
  ["  9 Elm", "odd"],
  ["1000000000000000000000000000000000000001 Long Road", "odd"],
  ["221-07 47th Avenue", "odd"],
  ["12B Elm", "even"],
  ["12 St James Road", "even"],
  ["3 2nd Street", "odd"],
  ["1st Street", undefined],
  ["22ND Street", undefined],
  ["3rd Street 12", undefined],
  ["15th Avenue 12", undefined],
  ["Old Mill Road", undefined],
  ["N 4532 County Road", undefined],
  ["", undefined],
] as const)("%s waters on %s dates", (street, dates) => expect(datesOfHouseNumber(street)).toBe(dates));

test("odd and even are what they say, and the house number decides where the rule goes by it", () => {
  expect([oddOrEven("odd", "40 Kiln Yard"), oddOrEven("even", "7 Heron Court")]).toEqual(["odd", "even"]);
  expect([oddOrEven("house-number", "40 Kiln Yard"), oddOrEven("house-number", "Old Mill Road")]).toEqual(["even", undefined]);
  expect(["odd", "even", "house-number", "135", ""].map(isWateringDates)).toEqual([true, true, true, false, false]);
  expect(["odd", "135", null].map(wateringDatesOf)).toEqual(["odd", null, null]);
});
