import { expect, test } from "vitest";
import { countsToward, isIngredientNamed, isNamedIn, isSameIngredient, mayBeUnderAnotherName } from "#domain/label/ingredient-name";

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
  ["2,4-D", { name: "2,4-dichlorophenoxyacetic acid" }, "as-itself"],
  ["2,4-D", { name: "(2,4-Dichlorophenoxy) acetic acid" }, "as-itself"],
  ["2,4-D", { name: "2, 4\u2011D acid" }, "as-itself"],
  ["2,4-Dichlorophenoxyacetic acid", { name: "2,4-D" }, "as-itself"],
  ["2,4-D", { name: "Dimethylamine salt of 2,4-dichlorophenoxyacetic acid", acid: { name: "2,4-Dichlorophenoxyacetic acid" } }, "by-acid"],
  ["2,4-D", { name: "Dimethylamine salt of 2,4-dichlorophenoxyacetic acid" }, "undecided"],
  ["2,4-D", { name: "2-ethylhexyl 2,4-dichlorophenoxyacetate" }, "undecided"],
  ["2,4-D", { name: "Dimethylamine salt of 4-(2,4-dichlorophenoxy)butyric acid" }, "not"],
  ["MCPP-p", { name: "Mecoprop-P" }, "as-itself"],
  ["Mecoprop-p", { name: "Dimethylamine salt of (+)-R-2-(2-methyl-4-chlorophenoxy)propionic acid", acid: { name: "(+)-(R)-2-(2-methyl-4-chlorophenoxy) propionic acid" } }, "by-acid"],
  ["MCPP", { name: "Mecoprop-p" }, "undecided"],
  ["MCPP", { name: "(R)-2-(2-methyl-4-chlorophenoxy)propionic acid" }, "undecided"],
  ["MCPP-p", { name: "Dimethylamine salt of mecoprop" }, "undecided"],
  ["Dicamba", { name: "Dimethylamine salt of 3,6-dichloro-o-anisic acid", acid: { name: "3,6-dichloro-o-anisic acid" } }, "by-acid"],
  ["Triclopyr", { name: "[(3,5,6-trichloro-2-pyridinyl)oxy]acetic acid, butoxyethyl ester" }, "undecided"],
  ["Clopyralid", { name: "4-amino-3,6-dichloro-2-pyridinecarboxylic acid" }, "not"],
  ["Glyphosate", { name: "N-(phosphonomethyl)glycine, isopropylamine salt" }, "undecided"],
  ["2,4-D", { name: "Dicamba, dimethylamine salt" }, "not"],
  ["2,4-D, dimethylamine salt", { name: "Dicamba, dimethylamine salt", acid: { name: "Dicamba" } }, "not"],
] as const)("towards a limit of %s counts %j: %s", (limited, active, counts) => {
  expect(countsToward(limited, active)).toBe(counts);
});

test.each([
  ["2,4-D", { name: "2,4-dichlorophenoxyacetic acid, dimethylamine salt" }, true],
  ["2,4-D", { name: "Amine 4", acid: { name: "2,4-Dichlorophenoxyacetic acid" } }, true],
  ["MCPP", { name: "mecoprop-p" }, true],
  ["2,4-D", { name: "2,4-DB" }, false],
  ["Dicamba", { name: "2,4-D" }, false],
  ["velodiamine", { name: "Velodiamine, an invented salt" }, true],
] as const)("%s is a name of %j: %s", (wanted, active, expected) => {
  expect(isIngredientNamed(wanted, active)).toBe(expected);
});

const UNTOLD = { name: "Dimethylamine salt of ferrolinic acid", modeOfAction: { group: "Group 4 herbicide" } } as const;

test("a salt of group 4 under no name that is known here may be any ingredient of that group", () => {
  expect(mayBeUnderAnotherName("2,4-D", UNTOLD, [])).toBe(true);
  expect(mayBeUnderAnotherName("2,4-D", { ...UNTOLD, modeOfAction: { group: "4" } }, [])).toBe(true);
  expect(mayBeUnderAnotherName("2,4-D", { ...UNTOLD, modeOfAction: { group: "Groups 4/26" } }, [])).toBe(true);
  for (const group of ["Group 3 herbicide", "IRAC 4", "Group 14"]) expect(mayBeUnderAnotherName("2,4-D", { ...UNTOLD, modeOfAction: { group } }, []), group).toBe(false);
  expect(mayBeUnderAnotherName("Glyphosate", UNTOLD, [])).toBe(false);
  expect(mayBeUnderAnotherName("2,4-D", { ...UNTOLD, name: "Ferrolin" }, [])).toBe(false);
  expect(mayBeUnderAnotherName("2,4-D", { ...UNTOLD, name: "Dicamba, dimethylamine salt" }, [])).toBe(false);
  expect(mayBeUnderAnotherName("2,4-D", { ...UNTOLD, acid: { name: "Dicamba" } }, [])).toBe(false);
});

test("of a name that is not known here, the label that has it tells the group", () => {
  const own = (modeOfAction: (typeof UNTOLD)["modeOfAction"] | "unknown" | { readonly group: "Group 3" }) => [{ name: "Velodiamine", modeOfAction }];
  expect(mayBeUnderAnotherName("velodiamine", UNTOLD, own({ group: "Group 3" }))).toBe(false);
  expect(mayBeUnderAnotherName("velodiamine", UNTOLD, own(UNTOLD.modeOfAction))).toBe(true);
  expect(mayBeUnderAnotherName("velodiamine", UNTOLD, own("unknown"))).toBe(true);
  expect(mayBeUnderAnotherName("velodiamine", UNTOLD, "unknown")).toBe(true);
  expect(mayBeUnderAnotherName("velodiamine", UNTOLD, [])).toBe(false);
});
