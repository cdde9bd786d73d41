import { describe, expect, test } from "vitest";
import { NUTRIENTS_IN_BAG_EXAMPLE, NUTRIENTS_OF_PRODUCT_EXAMPLE, nutrientsInBagWorksheet, nutrientsOfProductWorksheet, PRODUCT_FOR_NUTRIENT_EXAMPLE, productForNutrientWorksheet } from "#domain/worksheets/nutrients";
import { answersOf, firstSentence, refusedFields, stepsOf, worked } from "../../support/worked";

const forNutrient = PRODUCT_FOR_NUTRIENT_EXAMPLE.typed;

describe("product for a nutrient", () => {
  test("comes out step by step, with bags and gallons where they are asked", () => {
    const outcome = productForNutrientWorksheet({ ...forNutrient, bag: "15 lb", density: "10.65 lb per gal", slow: "7%" });
    expect(answersOf(outcome)).toEqual(["21.43 lb", "2.01 gal", "2 bags"]);
    expect(stepsOf(outcome)).toEqual([
      "Product for one pound of N: 100 ÷ 28 = 3.57 lb.",
      "Product rate: 3.57 × 1 lb per 1,000 sq ft = 3.57 lb per 1,000 sq ft.",
      "Product for the area: 3.57 lb per 1,000 sq ft × 6,000 ÷ 1,000 = 21.43 lb.",
      "By volume: 21.43 lb ÷ the density = 2.01 gal, which is 42.92 fl oz per 1,000 sq ft.",
      "Bags: 21.43 lb ÷ 15 lb = 1.43, so 2 whole bags; 8.57 lb is left over.",
      "Slow-release share of the nitrogen: 7 ÷ 28 = 25%.",
    ]);
    expect(worked(outcome).tables[0]?.rows.map(([name]) => name)).toEqual(["N", "of it quick-release", "of it slow-release", "P2O5", "K2O"]);
    expect(worked(outcome).findings).toEqual([]);
  });

  test("one whole bag has nothing left over", () => {
    expect(stepsOf(productForNutrientWorksheet({ ...forNutrient, grade: "10-0-0", bag: "60" })).at(-1)).toBe("Bags: 60 lb ÷ 60 lb = 1, so 1 whole bag.");
  });

  test("potash has its own percent, and much nitrogen with it is a matter for care", () => {
    const outcome = productForNutrientWorksheet({ ...forNutrient, nutrient: "K2O", target: "1" });
    expect(answersOf(outcome)).toEqual(["100 lb"]);
    expect(worked(outcome).findings).toMatchObject([{ level: "take-care", rule: "nitrogen-in-one-application" }]);
  });

  test("all that is wrong is refused at once, by field", () => {
    const outcome = productForNutrientWorksheet({ grade: "28-3", nutrient: "Fe", target: "1 oz/1,000", area: "", bag: "50 oz", density: "heavy", slow: "200" });
    expect(refusedFields(outcome)).toEqual(["grade", "nutrient", "target", "area", "bag", "density", "slow"]);
  });

  test("a grade without the nutrient, and more slow nitrogen than nitrogen, are refused at their fields", () => {
    expect(refusedFields(productForNutrientWorksheet({ ...forNutrient, grade: "0-0-50" }))).toEqual(["grade"]);
    expect(refusedFields(productForNutrientWorksheet({ ...forNutrient, slow: "40" }))).toEqual(["slow"]);
    expect(firstSentence(productForNutrientWorksheet({ ...forNutrient, grade: "" }))).toBe("Give the grade on the bag, such as 28-3-6.");
  });
});

describe("nutrients of a product", () => {
  test("come out for a rate by weight", () => {
    const outcome = nutrientsOfProductWorksheet(NUTRIENTS_OF_PRODUCT_EXAMPLE.typed);
    expect(answersOf(outcome)).toEqual(["1 lb", "4 oz wt", "8 oz wt"]);
    expect(stepsOf(outcome)[0]).toBe("N: 6¼ lb per 1,000 sq ft × 16% = 1 lb per 1,000 sq ft.");
  });

  test("a rate by volume needs the density", () => {
    const typed = { grade: "4-0-0", rate: "6 fl oz/1,000", area: "1,000", density: "", slow: "" };
    expect(refusedFields(nutrientsOfProductWorksheet(typed))).toEqual(["density"]);
    const outcome = nutrientsOfProductWorksheet({ ...typed, density: "10.68 lb/gal" });
    expect(stepsOf(outcome)[0]).toBe("N: 6 fl oz per 1,000 sq ft × 4% × the density = 0.02 lb per 1,000 sq ft.");
    expect(refusedFields(nutrientsOfProductWorksheet({ ...typed, density: "10.68 lb/gal", slow: "5" }))).toEqual(["slow"]);
  });
});

describe("what is in a bag", () => {
  test("is percent of its weight, and is enough for an area", () => {
    const outcome = nutrientsInBagWorksheet({ ...NUTRIENTS_IN_BAG_EXAMPLE.typed, target: "1" });
    expect(answersOf(outcome)).toEqual(["4 lb", "2.4 lb", "1.6 lb", "4,000 sq ft"]);
    expect(stepsOf(outcome)).toHaveLength(4);
  });

  test("a bag without nitrogen treats no area with it", () => {
    expect(answersOf(nutrientsInBagWorksheet({ grade: "0-0-50", bag: "50 lb", target: "1" }))).toEqual(["0 oz wt", "0 oz wt", "25 lb"]);
    expect(refusedFields(nutrientsInBagWorksheet({ grade: "60-50-0", bag: "0 lb", target: "x" }))).toEqual(["grade", "bag", "target"]);
  });
});
