import { describe, expect, test } from "vitest";
import { percentByWeight } from "#domain/quantities/active-ingredient";
import { isMeant, type MeantProduct } from "#domain/mixing/kept-apart-meaning";
import { FEED_LABEL, IRON_LABEL } from "../../support/ticket";

const active = (name: string, group?: string) => ({ name, concentration: percentByWeight("40"), modeOfAction: group === undefined ? ("unknown" as const) : { group } });
const FACTS = { form: "liquid", formulation: "soluble liquid", epaRegistrationNumber: "none", analysis: "none" } as const;
const BARE: MeantProduct = { productName: "Otherwise 5", activeIngredients: [], serviceTypes: ["other"], classFacts: FACTS };
const UNLABELED: MeantProduct = { ...BARE, activeIngredients: "unknown", classFacts: "unknown" };
const FEED: MeantProduct = { ...BARE, serviceTypes: ["fertilizer"], classFacts: FEED_LABEL };
const IRON: MeantProduct = { ...FEED, classFacts: IRON_LABEL };
const WEED: MeantProduct = { ...BARE, activeIngredients: [active("dicamba", "Group 4 herbicide")], classFacts: { ...FACTS, epaRegistrationNumber: { number: "DEMO-0000-4" } } };
const said = (from: string, product: MeantProduct) => {
  const meant = isMeant(from, product);
  return typeof meant === "string" ? meant : meant.missing;
};
const named = (productName: string): MeantProduct => ({ ...BARE, productName });

test("everything is meant by all others, and a name that is nobody's by nothing", () => {
  expect([said("any other product", UNLABELED), said("Harrowgate 32", BARE), said("Otherwise", BARE)]).toEqual(["yes", "no", "yes"]);
});

test("words that are no name mean what nobody can say", () => {
  expect(isMeant("alkaline materials", BARE)).toEqual({ missing: 'which products "alkaline materials" are is not on file', toDo: 'Enter the names of products or ingredients in place of "alkaline materials".' });
});

test("names: the product's, its ingredients' and their acids', under all names that an ingredient has", () => {
  expect(said("dicamba", WEED)).toBe("yes");
  expect(said("2,4-D", WEED)).toBe("no");
  const chemical = { ...active("Dimethylamine salt of 2,4-dichlorophenoxyacetic acid"), acid: { name: "2,4-Dichlorophenoxyacetic acid" } };
  expect(said("2,4-D", { ...WEED, activeIngredients: [chemical] })).toBe("yes");
  expect(said("2,4-D", { ...WEED, activeIngredients: "unknown" })).toBe("the active ingredients of Otherwise 5 are not on file");
  const untold = active("Amine salt of ferrolinic acid", "Group 4 herbicide");
  expect(said("2,4-D", { ...WEED, activeIngredients: [untold] })).toBe("Amine salt of ferrolinic acid in Otherwise 5 is under no common name");
  expect(said("prodiamine", { ...WEED, activeIngredients: [untold] })).toBe("no");
});

test.each(["Pell Lime", "Pelletized Limestone", "Dolomitic Fines", "Calcium Carbonate"])("lime means %s", (name) => {
  expect([said("Lime", named(name)), said("limestone", named(name))]).toEqual(["yes", "yes"]);
});

test("a nutrient is meant by what guarantees it, whatever it is called; an analysis that nobody read leaves it open", () => {
  expect([said("iron", IRON), said("iron", FEED), said("iron", BARE), said("iron", named("Ferrous Tonic"))]).toEqual(["yes", "no", "no", "yes"]);
  expect([said("nitrogen", FEED), said("phosphorus", FEED), said("potash", FEED)]).toEqual(["yes", "no", "no"]);
  expect(said("iron", { ...BARE, classFacts: { ...FACTS, analysis: "unknown" } })).toBe("the analysis of Otherwise 5 is not on file");
  expect(said("iron", { ...BARE, classFacts: "unknown" })).toBe("the label of Otherwise 5 is not on file");
});

test("what a fertilizer is made of is not on file, unless it says so in its name", () => {
  const open = "what the nutrients of Otherwise 5 are made of is not on file";
  expect([said("urea", FEED), said("urea", BARE), said("ferrous sulfate", IRON), said("ferrous sulfate", FEED)]).toEqual([open, "no", open, "no"]);
  expect(said("urea", { ...FEED, productName: "Fieldrow Urea 46" })).toBe("yes");
});

describe("classes", () => {
  test("a fertilizer has an analysis; where nobody read that, what it was put down for tells", () => {
    expect([said("fertilizers", FEED), said("fertilizers", WEED), said("fertilizers", { ...FEED, classFacts: FACTS })]).toEqual(["yes", "no", "no"]);
    expect([said("fertilizers", UNLABELED), said("fertilizers", { ...UNLABELED, serviceTypes: ["fertilizer"] })]).toEqual(["the label of Otherwise 5 is not on file", "yes"]);
    expect([said("liquid fertilizers", IRON), said("liquid fertilizers", FEED), said("granular fertilizers", FEED)]).toEqual(["yes", "no", "yes"]);
    expect(said("liquid fertilizers", { ...UNLABELED, serviceTypes: ["fertilizer"] })).toBe("the label of Otherwise 5 is not on file");
  });

  test("a pesticide has active ingredients or a registration number", () => {
    expect([said("pesticides", WEED), said("pesticides", { ...WEED, activeIngredients: [] }), said("pesticides", FEED)]).toEqual(["yes", "yes", "no"]);
    expect(said("pesticides", { ...BARE, activeIngredients: "unknown" })).toBe("the active ingredients of Otherwise 5 are not on file");
    expect(said("pesticides", { ...BARE, classFacts: { ...FACTS, epaRegistrationNumber: "unknown" } })).toBe("whether Otherwise 5 has an EPA registration number is not on file");
    expect(said("pesticides", { ...UNLABELED, activeIngredients: [] })).toBe("the label of Otherwise 5 is not on file");
  });

  test("its kind is told by its groups, or by what its label is used for", () => {
    expect([said("herbicides", WEED), said("insecticides", WEED), said("herbicides", FEED)]).toEqual(["yes", "no", "no"]);
    const ungrouped = { ...WEED, activeIngredients: [active("oxathrin", "Group 3")] };
    expect(said("herbicides", ungrouped)).toBe("what kind of pesticide Otherwise 5 is is not on file");
    const forInsects = { ...ungrouped, serviceTypes: ["insect control"] };
    expect([said("herbicides", forInsects), said("insecticides", forInsects), said("fungicides", forInsects)]).toEqual(["no", "yes", "no"]);
    expect([said("herbicides", { ...UNLABELED, serviceTypes: ["broadleaf weed control"] }), said("fungicides", UNLABELED)]).toEqual(["yes", "the label of Otherwise 5 is not on file"]);
    expect(said("fungicides", { ...WEED, activeIngredients: "unknown" })).toBe("the active ingredients of Otherwise 5 are not on file");
  });

  test("a surfactant is made as one", () => {
    expect([said("surfactants", { ...BARE, classFacts: { ...FACTS, formulation: "surfactant" } }), said("surfactants", WEED), said("surfactants", UNLABELED)]).toEqual(["yes", "no", "the label of Otherwise 5 is not on file"]);
  });
});
