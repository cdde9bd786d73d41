import { expect, test } from "vitest";
import { KEPT_APART_WORDS, readKeptApartWords } from "#domain/label/kept-apart-words";

test.each(["all others", "All other products", "any other product", "everything else", "other", "any other chemicals", "products"])("%s: everything", (from) => {
  expect(readKeptApartWords(from)).toEqual({ kind: "everything" });
});

test.each([
  ["fertilizers", "fertilizer", "any"],
  ["Liquid fertilizer", "fertilizer", "liquid"],
  ["any dry fertilizers", "fertilizer", "granular"],
  ["Other herbicides", "herbicide", "any"],
  ["all other herbicide products", "herbicide", "any"],
  ["weed killers", "herbicide", "any"],
  ["insecticides", "insecticide", "any"],
  ["fungicide", "fungicide", "any"],
  ["Pesticides.", "pesticide", "any"],
  ["surfactants", "surfactant", "any"],
] as const)("%s: %s, %s", (from, of, form) => {
  expect(readKeptApartWords(from)).toEqual({ kind: "class", of, form });
});

test.each([
  ["Iron", "iron"],
  ["Fe", "iron"],
  ["Iron-containing products", "iron"],
  ["products containing iron", "iron"],
  ["nitrogen", "nitrogen"],
  ["phosphorus", "phosphate"],
  ["potassium", "potash"],
])("%s: by a guarantee of %s too", (from, guaranteed) => {
  expect(readKeptApartWords(from)).toMatchObject({ kind: "thing", guaranteed });
});

test("lime is met under its other names, and has no guarantee", () => {
  for (const from of ["Lime", "limestone", "Lime products"]) expect(readKeptApartWords(from)).toMatchObject({ kind: "thing", names: expect.arrayContaining(["lime", "limestone", "calcium carbonate", "dolomitic"]) as unknown });
  expect(readKeptApartWords("lime")).not.toHaveProperty("guaranteed");
});

test("what feeds are made of", () => {
  expect(readKeptApartWords("Urea")).toEqual({ kind: "made-of", name: "urea" });
  expect(readKeptApartWords("ferrous sulfate")).toEqual({ kind: "made-of", name: "ferrous sulfate", guaranteed: "iron" });
});

test("a name stays whole", () => {
  expect(readKeptApartWords("All Green  32")).toEqual({ kind: "name", name: "all green 32" });
  expect(readKeptApartWords("other 2,4-D products")).toEqual({ kind: "name", name: "2,4-d" });
  expect(readKeptApartWords("potassium salts of fatty acids")).toEqual({ kind: "name", name: "potassium salts of fatty acids" });
});

test.each(["Alkaline materials", "Phenoxy herbicides", "Group 4 herbicides", "adjuvants", "oils", "pyrethroids", "2,4-D esters", "amine salts", "all others except iron", ""])("%s is no name", (from) => {
  expect(readKeptApartWords(from)).toBeUndefined();
});

test("the words that are offered are read", () => {
  for (const word of KEPT_APART_WORDS.split(", ")) expect(["class", "thing", "everything"], word).toContain(readKeptApartWords(word)?.kind);
});
