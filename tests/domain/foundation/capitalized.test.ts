import { expect, test } from "vitest";
import { capitalized } from "#domain/foundation/capitalized";

test.each([["a scale", "A scale"], ["Fill 7", "Fill 7"], ["7 lawns", "7 lawns"], ["", ""]])("%s begins a sentence as %s", (words, begun) => {
  expect(capitalized(words)).toBe(begun);
});
