import { describe, expect, test } from "vitest";
import { massInVolume, percentByWeight } from "#domain/quantities/active-ingredient";
import { densityOf } from "#domain/quantities/density";
import { rateOf } from "#domain/quantities/rate";
import { type ActiveIngredient, type LabelFacts } from "#domain/label/label-facts";
import { checkIngredients, uncountableIn, uncountableWords } from "#domain/mixing/ingredient-checks";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { BARRIER, FEED, holdsOf, IRON, LAWN, ticketOf } from "../../support/ticket";

const TWENTY: ActiveIngredient = { name: "velodiamine", concentration: percentByWeight("20"), modeOfAction: "none" };
const spray = (activeIngredients: LabelFacts["activeIngredients"], more: Partial<LabelFacts> = {}): TicketTreatment => ({
  ...IRON,
  label: { ...IRON.label, analysis: "none", density: "unknown", activeIngredients, ...more },
});
/** Barrier Nine under a label that limits nothing over time. */
const unlimited: TicketTreatment = { ...BARRIER, use: { ...BARRIER.use, seasonLimits: "none" } };
const RULE = "hold active-ingredient-not-countable";
const findingsOf = (treatments: readonly TicketTreatment[]) => ticketOf({ treatments }).findings.filter(({ rule }) => rule === "active-ingredient-not-countable");

test("an ingredient by weight of what is poured holds without the density, and says what to enter", () => {
  expect(findingsOf([unlimited, spray([TWENTY])])).toEqual([
    {
      level: "hold",
      answerableBy: "office",
      rule: "active-ingredient-not-countable",
      source: "house",
      what: "How much velodiamine goes down with Rustwater Iron can't be counted.",
      figure: "Rustwater Iron is measured by volume, and its label states what is in it by weight; its density is not on file.",
      toDo: "Enter its density from the label or the safety data sheet.",
      about: ["Rustwater Iron"],
    },
  ]);
  expect(holdsOf({ treatments: [unlimited, spray([TWENTY], { density: densityOf("11", "lb per gal") })] })).toEqual([]);
  expect(holdsOf({ treatments: [unlimited, spray([{ ...TWENTY, concentration: massInVolume("4", "lb per gal") }])] })).toEqual([]);
});

test("a product says it once, however many of its ingredients, lawns and lines it is of", () => {
  const lawns = [LAWN, { ...LAWN, zoneId: "back", letter: "B", name: "Back" }];
  const two = spray([TWENTY, { ...TWENTY, name: "norbatine" }]);
  const { findings } = ticketOf({ lawns, treatments: [two, { ...two, line: 9, zoneIds: ["back"], rate: rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft") }] });
  expect(findings.filter(({ rule }) => rule === "active-ingredient-not-countable").map(({ what }) => what)).toEqual(["How much velodiamine and norbatine goes down with Rustwater Iron can't be counted."]);
});

describe("what a limit over time says is not said again", () => {
  test("on the same lawns, of the ingredient that it limits", () => {
    const both = holdsOf({ treatments: [BARRIER, spray([TWENTY])] });
    expect(both).toContain("hold season-limit-undecided");
    expect(both).not.toContain(RULE);
    // Of another ingredient the limit says nothing.
    expect(findingsOf([BARRIER, spray([TWENTY, { ...TWENTY, name: "norbatine" }])]).map(({ what }) => what)).toEqual(["How much norbatine goes down with Rustwater Iron can't be counted."]);
  });

  test("a limit on other lawns, or of a label that names the ingredient otherwise, says nothing of it", () => {
    const lawns = [LAWN, { ...LAWN, zoneId: "back", letter: "B", name: "Back" }];
    expect(holdsOf({ lawns, treatments: [{ ...BARRIER, zoneIds: ["back"] }, spray([TWENTY])] })).toContain(RULE);
    const otherwise = { ...BARRIER, label: { ...BARRIER.label, activeIngredients: [{ ...TWENTY, name: "norbatine" }] } };
    expect(holdsOf({ treatments: [otherwise, spray([TWENTY])] })).toContain(RULE);
  });

  test("a limit by the acid says it where the acid can't be counted either", () => {
    const limit = (activeIngredient: string): TicketTreatment["use"]["seasonLimits"] => ({
      limits: [{ activeIngredient, most: rateOf("active-ingredient-mass-per-area", "2", "lb per acre"), period: "calendar-year" }],
      basis: "label",
      source: "label of Rustwater Iron",
    });
    const salt = (equivalent: ActiveIngredient["concentration"]): TicketTreatment => {
      const treatment = spray([{ ...TWENTY, name: "Velodate, dimethylamine salt", acid: { name: "Velodate", equivalent } }]);
      return { ...treatment, use: { ...treatment.use, seasonLimits: limit("Velodate") } };
    };
    const undecided = holdsOf({ treatments: [salt(percentByWeight("16"))] });
    expect(undecided).toContain("hold season-limit-undecided");
    expect(undecided).not.toContain(RULE);
    // Counted by its acid the limit is decided, and what the salt weighs is still not known.
    expect(holdsOf({ treatments: [salt(massInVolume("1.5", "lb per gal"))] })).toEqual([RULE]);
  });
});

test("ingredients that nobody has read are said by the label's check alone", () => {
  expect(holdsOf({ treatments: [spray("unknown")] })).toEqual(["hold ingredients-not-read"]);
  expect(checkIngredients(FEED, [FEED])).toEqual([]);
});

test("what stands between is a density, whichever way round", () => {
  const dense: TicketTreatment = { ...FEED, label: { ...FEED.label, activeIngredients: [{ ...TWENTY, concentration: massInVolume("4", "lb per gal") }, TWENTY] } };
  expect(uncountableIn(dense).map(({ concentration }) => concentration.kind)).toEqual(["mass-in-volume"]);
  expect(uncountableIn(spray([TWENTY])).map(({ name }) => name)).toEqual(["velodiamine"]);
  expect(uncountableWords("Harrowgate 32", "mass")).toBe("Harrowgate 32 is measured by weight, and its label states what is in it by volume; its density is not on file.");
});
