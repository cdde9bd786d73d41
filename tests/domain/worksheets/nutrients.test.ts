import { describe, expect, test } from "vitest";
import { NUTRIENTS_IN_BAG_EXAMPLE, NUTRIENTS_OF_PRODUCT_EXAMPLE, nutrientsInBagWorksheet, nutrientsOfProductWorksheet, PRODUCT_FOR_NUTRIENT_EXAMPLE, productForNutrientWorksheet } from "#domain/worksheets/nutrients";
import { answersOf, firstSentence, refusedFields, stepsOf, worked } from "../../support/worked";

const forNutrient = PRODUCT_FOR_NUTRIENT_EXAMPLE.typed;

describe("product for a nutrient", () => {
  test("comes out step by step, with bags and gallons where they are asked", () => {
    const outcome = productForNutrientWorksheet({ ...forNutrient, bag: "15 lb", density: "10.65 lb per gal", slow: "7%" });
    expect(answersOf(outcome)).toEqual(["21.43 lb", "2.01 gal", "2 bags"]);
    expect(stepsOf(outcome).slice(0, 8)).toEqual([
      "Product for one pound of N: 100 ÷ 28 = 3.5714 lb.",
      "Product rate: 3.5714 lb × 1 lb = 3.5714 lb per 1,000 sq ft.",
      "Product for the area: 6,000 sq ft ÷ 1,000 sq ft × 3.5714 lb = 21.4286 lb.",
      "By volume: 21.4286 lb ÷ 10.65 lb × 1 gal = 2.0121 gal.",
      "By volume on 1,000 sq ft: 3.5714 lb ÷ 10.65 lb × 128 fl oz = 42.9242 fl oz.",
      "Bags: 21.4286 lb ÷ 15 lb = 1.4286, so 2 whole bags.",
      "Left over of 2: 15 lb × 2 = 30 lb; 30 lb − 21.4286 lb = 8.5714 lb.",
      "N: 3.5714 lb × 28% = 1 lb per 1,000 sq ft.",
    ]);
    expect(worked(outcome).tables[0]?.rows.map(([name]) => name)).toEqual(["N", "of it quick-release", "of it slow-release", "P2O5", "K2O"]);
    expect(worked(outcome).findings).toEqual([]);
  });

  test("slow nitrogen is said with one sign, whatever was typed behind it", () => {
    for (const slow of ["7", "7%", "7 percent"]) {
      expect(worked(productForNutrientWorksheet({ ...forNutrient, slow })).working.inputs).toContainEqual({ name: "Slow-release nitrogen, percent of the product", figure: "7%", from: "the label" });
    }
  });

  test("one whole bag has nothing left over", () => {
    expect(stepsOf(productForNutrientWorksheet({ ...forNutrient, grade: "10-0-0", bag: "60" }))).toContain("Bags: 60 lb ÷ 60 lb = 1, so 1 whole bag.");
  });

  test("a bag of less than can be kept is nothing, and is refused", () => {
    expect(refusedFields(productForNutrientWorksheet({ ...forNutrient, bag: "0.000000001 g" }))).toEqual(["bag"]);
  });

  test("potash has its own percent, and much nitrogen with it is a matter for care", () => {
    const outcome = productForNutrientWorksheet({ ...forNutrient, nutrient: "K2O", target: "1" });
    expect(answersOf(outcome)).toEqual(["100 lb"]);
    expect(worked(outcome).findings).toMatchObject([{ level: "take-care", rule: "nitrogen-in-one-application" }]);
  });

  test("iron is a target like the others, where the label states it", () => {
    const outcome = productForNutrientWorksheet({ ...forNutrient, grade: "12-0-0-6Fe", nutrient: "Fe", target: "0.3" });
    expect(answersOf(outcome)).toEqual(["30 lb"]);
    expect(stepsOf(outcome)[0]).toBe("Product for one pound of Fe: 100 ÷ 6 = 16.6667 lb.");
    expect(worked(outcome).tables[0]?.rows).toContainEqual(["Fe", "0.3", "1.8 lb"]);
    expect(refusedFields(productForNutrientWorksheet({ ...forNutrient, nutrient: "Fe" }))).toEqual(["grade"]);
    expect(refusedFields(productForNutrientWorksheet({ ...forNutrient, grade: "12-0-0-0Fe", nutrient: "Fe" }))).toEqual(["grade"]);
  });

  test("all that is wrong is refused at once, by field", () => {
    const outcome = productForNutrientWorksheet({ grade: "28-3", nutrient: "Mg", target: "1 oz/1,000", area: "", bag: "50 oz", density: "1065 lb per gal", slow: "200" });
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
    expect(stepsOf(outcome)[0]).toBe("N: 6¼ lb × 16% = 1 lb per 1,000 sq ft.");
  });

  test("iron is delivered where the label states it", () => {
    const outcome = nutrientsOfProductWorksheet({ ...NUTRIENTS_OF_PRODUCT_EXAMPLE.typed, grade: "12-0-0-6Fe", rate: "5 lb per 1,000 sq ft" });
    expect(answersOf(outcome)).toEqual(["9.6 oz wt", "0 oz wt", "0 oz wt", "4.8 oz wt"]);
    expect(stepsOf(outcome)).toContain("Fe: 5 lb × 6% = 0.3 lb per 1,000 sq ft.");
    expect(worked(outcome).working.result).toContain("0.3 lb per 1,000 sq ft of Fe.");
    expect(answersOf(nutrientsInBagWorksheet({ grade: "12-0-0-6Fe", bag: "50 lb", target: "" })).at(-1)).toBe("3 lb");
  });

  test("a rate by volume needs the density", () => {
    const typed = { grade: "4-0-0", rate: "6 fl oz/1,000", area: "1,000", density: "", slow: "" };
    expect(refusedFields(nutrientsOfProductWorksheet(typed))).toEqual(["density"]);
    expect(refusedFields(nutrientsOfProductWorksheet({ ...typed, density: "1.28 lb/gal" }))).toEqual(["density"]);
    const outcome = nutrientsOfProductWorksheet({ ...typed, density: "10.68 lb/gal" });
    expect(stepsOf(outcome)).toEqual([
      "By weight: 6 fl oz ÷ 128 fl oz × 10.68 lb = 0.50063 lb per 1,000 sq ft.",
      "N: 0.50063 lb × 4% = 0.020025 lb per 1,000 sq ft.",
      "N on the area: 1,000 sq ft ÷ 1,000 sq ft × 0.020025 lb = 0.020025 lb.",
      "N on the area, in ounces: 0.020025 lb × 16 oz wt = 0.3204 oz wt.",
    ]);
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
