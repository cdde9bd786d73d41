import { expect, test } from "vitest";
import { SEED_EXAMPLE, seedWorksheet } from "#domain/worksheets/seed";
import { answersOf, refusedFields, stepsOf, worked } from "../../support/worked";

const typed = SEED_EXAMPLE.typed;

test("seed from the bag for pure live seed", () => {
  const outcome = seedWorksheet(typed);
  expect(answersOf(outcome)).toEqual(["52.08 lb", "2.6 lb per 1,000 sq ft"]);
  expect(stepsOf(outcome)).toEqual([
    "Pure live part: 48% × 80% = 38.4%.",
    "Pure live seed: 20,000 sq ft ÷ 1,000 sq ft × 1 lb = 20 lb.",
    "Seed from the bag: 20 lb ÷ 38.4% = 52.0833 lb.",
    "Its rate: 1 lb ÷ 38.4% = 2.6042 lb per 1,000 sq ft.",
    "In two directions, half each: 52.0833 lb ÷ 2 = 26.0417 lb; at half the rate: 2.6042 lb ÷ 2 = 1.3021 lb per 1,000 sq ft.",
  ]);
  expect(worked(outcome).tables).toMatchObject([{ caption: "Published rates on bare ground, pure live seed" }]);
});

test("overseeding takes half, and a price becomes one of pure live seed", () => {
  const outcome = seedWorksheet({ ...typed, use: "overseeding", purity: "96", germination: "75", price: "$2.50" });
  expect(answersOf(outcome)[0]).toBe("13.89 lb");
  expect(worked(outcome).tables).toMatchObject([{ caption: "Published rates on bare ground, pure live seed, and half of them for overseeding" }]);
  expect(stepsOf(outcome)[0]).toBe("Overseeding: 1 lb ÷ 2 = ½ lb per 1,000 sq ft.");
  expect(stepsOf(outcome).at(-1)).toBe("A pound of pure live seed costs: $2.5 ÷ 72% = $3.4722, or $3.47.");
});

test("a purity or germination that may be a part of one is asked about", () => {
  expect(refusedFields(seedWorksheet({ ...typed, purity: ".48", germination: "4/5" }))).toEqual(["purity", "germination"]);
  expect(answersOf(seedWorksheet({ ...typed, purity: "48 percent", germination: "80%" }))).toEqual(answersOf(seedWorksheet(typed)));
});

test("refused by field", () => {
  expect(refusedFields(seedWorksheet({ rate: "", use: "", area: "1 lb", purity: "101", germination: "most", price: "0" }))).toEqual(["rate", "use", "area", "purity", "germination", "price"]);
  expect(refusedFields(seedWorksheet({ ...typed, germination: "0" }))).toEqual(["germination"]);
});
