import { expect, test } from "vitest";
import { filledSince, isCleanSince, labeledSiteCounts, RINSATE_WENT, rinsateWords, wentOfRinsate } from "#domain/mixing/clean-out";

const at = (cleanedAt: number) => ({ cleanedAt });
const fill = (filledAt: number) => ({ number: 7, filledAt });

test("a tank is clean from its clean-out to its next fill, and one of the same minute came before the fill", () => {
  expect(isCleanSince(at(2), fill(1))).toBe(true);
  expect(isCleanSince(at(1), fill(1))).toBe(false);
  expect(isCleanSince(at(1), fill(2))).toBe(false);
});

test("a tank that was never filled is clean after a clean-out and not known to be before", () => {
  expect(isCleanSince(at(1), undefined)).toBe(true);
  expect(isCleanSince(undefined, undefined)).toBe(false);
  expect(isCleanSince(undefined, fill(1))).toBe(false);
});

test("a clean-out before the last fill says which fill is in the tank", () => {
  expect(filledSince("Sprayer", at(1), fill(2))).toMatchObject([
    { level: "take-care", rule: "filled-since-clean-out", what: "Sprayer has been filled since this clean-out.", figure: "Fill 7 is what the tank held last; it is not cleaned out." },
  ]);
  expect(filledSince("Sprayer", at(3), fill(2))).toEqual([]);
  expect(filledSince("Sprayer", at(3), undefined)).toEqual([]);
});

test("where the rinsate went is said in words for each way", () => {
  expect(RINSATE_WENT.map((went) => rinsateWords(went, "12 Elm St"))).toEqual(["onto 12 Elm St, within the label", "into the shop's rinsate tank", "elsewhere: 12 Elm St"]);
});

test("what the tank held goes to rinsate, and to loss where it went elsewhere; a labeled site counts against its label", () => {
  expect(RINSATE_WENT.map(wentOfRinsate)).toEqual(["rinsate", "rinsate", "loss"]);
  expect(RINSATE_WENT.map((went) => labeledSiteCounts(went).map(({ level, rule }) => [level, rule]))).toEqual([[["note", "rinsate-on-labeled-site"]], [], []]);
});
