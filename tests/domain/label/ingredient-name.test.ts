import { expect, test } from "vitest";
import { countsToward, isNamedIn, isSameIngredient } from "#domain/label/ingredient-name";

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

test.each([
  ["2,4-D", { name: "2,4-D, dimethylamine salt", acid: { name: "2,4-d" } }, "by-acid"],
  ["2,4-D, dimethylamine salt", { name: "2,4-D, dimethylamine salt", acid: { name: "2,4-D" } }, "as-itself"],
  ["2,4-D", { name: "2,4-D" }, "as-itself"],
  ["2,4-D", { name: "2,4-D, dimethylamine salt" }, "undecided"],
  ["2,4-D", { name: "Dimethylamine salt of 2,4-D" }, "undecided"],
  ["2,4-D, dimethylamine salt", { name: "2,4-D, 2-ethylhexyl ester" }, "undecided"],
  ["2,4-D, dimethylamine salt", { name: "Amine 4", acid: { name: "2,4-D" } }, "undecided"],
  ["2,4-D, dimethylamine salt", { name: "2,4-D" }, "undecided"],
  ["Velodiamine", { name: "Velodiamine (an invented name)" }, "undecided"],
  ["Velodiamine (an invented name)", { name: "velodiamine" }, "undecided"],
  ["2,4-D", { name: "2,4-DB" }, "not"],
  ["2,4-D", { name: "Dicamba, dimethylamine salt" }, "not"],
  ["2,4-D, dimethylamine salt", { name: "Dicamba, dimethylamine salt", acid: { name: "Dicamba" } }, "not"],
] as const)("towards a limit of %s counts %j: %s", (limited, active, counts) => {
  expect(countsToward(limited, active)).toBe(counts);
});
