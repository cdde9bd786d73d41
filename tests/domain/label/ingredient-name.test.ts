import { expect, test } from "vitest";
import { isNamedIn, isSameIngredient } from "#domain/label/ingredient-name";

test("names of ingredients are the same whatever their capitals", () => {
  expect(isSameIngredient("Velodiamine ", "velodiamine")).toBe(true);
  expect(isSameIngredient("velodiamine", "velodiamine ester")).toBe(false);
});

test.each([
  ["iron", "Rustwater Iron", true],
  ["iron", "Iron-plus", true],
  ["Iron", "iron", true],
  ["iron", "Environ Feed", false],
  ["iron", "Ironwood", false],
  ["iron", "Environ and Iron", true],
  ["lime", "Lime sulfur", true],
  ["2,4-D", "2,4-D, dimethylamine salt", true],
  ["2,4-D", "dimethylamine salt of 2,4-D", true],
  ["2,4-D", "2,4-DB", false],
  ["2,4-D", "12,4-D", false],
  ["fine  lime", "Fine lime", true],
  ["", "anything", false],
])("%s in %s: %s", (wanted, name, expected) => {
  expect(isNamedIn(wanted, name)).toBe(expected);
});
