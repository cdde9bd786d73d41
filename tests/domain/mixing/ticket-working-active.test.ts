import { expect, test } from "vitest";
import { massInVolume, percentByWeight } from "#domain/quantities/active-ingredient";
import { densityOf } from "#domain/quantities/density";
import { type LabelFacts } from "#domain/label/label-facts";
import { activeWorkings } from "#domain/mixing/ticket-working-active";
import { faultsOf } from "../../support/read-working";
import { BARRIER, FEED, IRON, QUESTION, ticketOf } from "../../support/ticket";

function workingsOf(treatments: (typeof QUESTION)["treatments"]) {
  const question = { ...QUESTION, treatments };
  const all = activeWorkings(question, ticketOf(question));
  expect(all.flatMap(({ working }) => faultsOf(working))).toEqual([]);
  return all;
}

const withActive = (label: LabelFacts, concentration: ReturnType<typeof percentByWeight>, name = "Velodiamine"): LabelFacts => ({ ...label, activeIngredients: [{ name, concentration, modeOfAction: "none" }] });

test("what is spread: its percent of the weight, per acre of what is treated", () => {
  // By hand: 6 lb × 0.37% = 0.0222 lb on 2,000 sq ft is 0.4835 lb on an acre.
  expect(workingsOf([BARRIER])).toMatchObject([
    { zoneId: "front", lawnName: "Front", ingredient: "velodiamine", words: "0.484 lb per acre", working: { steps: ["6 lb × 0.37% = 0.0222 lb", "0.0222 lb ÷ 2,000 sq ft × 43,560 sq ft = 0.48352 lb"], result: "0.484 lb per acre" } },
  ]);
});

test("one ingredient of two products is added up, however its name is written", () => {
  const label = withActive(IRON.label, massInVolume("4", "lb per gal"));
  const [both, ...others] = workingsOf([BARRIER, { ...IRON, label }]);
  expect(others).toEqual([]);
  expect(both?.working.steps).toEqual(["6 lb × 0.37% = 0.0222 lb", "3 fl oz ÷ 128 fl oz × 4 lb = 0.09375 lb", "0.0222 lb + 0.09375 lb = 0.11595 lb", "0.11595 lb ÷ 2,000 sq ft × 43,560 sq ft = 2.5254 lb"]);
});

test("a liquid by weight takes its density, a weight by volume too", () => {
  expect(workingsOf([{ ...IRON, label: withActive(IRON.label, percentByWeight("10")) }])[0]?.working.steps.slice(0, 2)).toEqual(["3 fl oz ÷ 128 fl oz × 11 lb = 0.25781 lb", "0.25781 lb × 10% = 0.025781 lb"]);
  const dense = { ...withActive(FEED.label, massInVolume("4", "lb per gal")), density: densityOf("10", "lb per gal") };
  expect(workingsOf([{ ...FEED, label: dense }])[0]?.working.steps[0]).toBe("5 lb ÷ 10 lb × 4 lb = 2 lb");
});

test("without the density that it takes nothing is said, nor without an ingredient", () => {
  expect(workingsOf([{ ...IRON, label: { ...withActive(IRON.label, percentByWeight("10")), density: "unknown" } }])).toEqual([]);
  expect(workingsOf([FEED])).toEqual([]);
});

test("spot work counts on its spots, and adds up with what goes all over", () => {
  const label = withActive(IRON.label, massInVolume("4", "lb per gal"));
  const spots = { ...IRON, label, spot: { shareBasisPoints: 1000 }, tool: "none" } as const;
  // By hand: a tenth of 2,000 sq ft takes 0.3 fl oz; 0.009375 lb on 200 sq ft is 2.0419 lb on an acre, and 0.48352 lb are all over.
  expect(workingsOf([spots])[0]?.working.steps).toEqual(["0.3 fl oz ÷ 128 fl oz × 4 lb = 0.009375 lb", "0.009375 lb ÷ 200 sq ft × 43,560 sq ft = 2.0419 lb"]);
  const [both] = workingsOf([BARRIER, spots]);
  expect(both?.working.steps.slice(-3)).toEqual(["0.0222 lb ÷ 2,000 sq ft × 43,560 sq ft = 0.48352 lb", "0.009375 lb ÷ 200 sq ft × 43,560 sq ft = 2.0419 lb", "0.48352 lb + 2.0419 lb = 2.5254 lb"]);
  expect(both?.words).toBe("2.53 lb per acre");
});
