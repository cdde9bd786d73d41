import { expect, test } from "vitest";
import { fileNameOf, PAPER_KINDS, PAPER_WORDS } from "#domain/papers/issued-paper-data";
import { frameOf, INDIANA_SIGN, LOADING_LIST, signOf } from "../../support/sample-papers";

test("a file's name is plain letters, with the number where there is one", () => {
  expect(fileNameOf({ kind: "loading-list", paper: LOADING_LIST })).toBe("loading-list-ll-0414-2-tuesday-april-14-2026.pdf");
  expect(fileNameOf({ kind: "posting-sign", paper: { ...signOf(INDIANA_SIGN), frame: { ...frameOf("Sign"), date: "“Día” / \r\n" } } })).toBe("posting-sign-d-a.pdf");
});

test("every kind has its words", () => {
  expect(Object.keys(PAPER_WORDS).sort()).toEqual([...PAPER_KINDS].sort());
});
