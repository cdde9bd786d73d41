import { describe, expect, test } from "vitest";
import { massInVolume, percentByWeight } from "#domain/quantities/active-ingredient";
import { densityOf } from "#domain/quantities/density";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { type LabelFacts } from "#domain/label/label-facts";
import { ticketRate } from "#domain/mixing/stated-rate";
import { activeWorkings } from "#domain/mixing/ticket-working-active";
import { faultsOf } from "../../support/read-working";
import { BARRIER, FEED, IRON, LAWN, QUESTION, SPRAYER, ticketOf } from "../../support/ticket";

function workingsOf(treatments: (typeof QUESTION)["treatments"], lawns = QUESTION.lawns) {
  const question = { ...QUESTION, treatments, lawns };
  const all = activeWorkings(question, ticketOf(question));
  expect(all.flatMap(({ working }) => faultsOf(working))).toEqual([]);
  return all;
}

const withActive = (label: LabelFacts, concentration: ReturnType<typeof percentByWeight>, name = "Velodiamine"): LabelFacts => ({ ...label, activeIngredients: [{ name, concentration, modeOfAction: "none" }] });

test("what is spread: its percent of the weight, per acre of what is treated", () => {
  // By hand: 6 lb × 0.37% = 0.0222 lb on 2,000 sq ft is 0.4835 lb on an acre.
  expect(workingsOf([BARRIER])).toMatchObject([
    { zoneId: "front", lawnName: "Front", ingredient: "velodiamine", counted: "all", words: "0.484 lb per acre", working: { steps: ["6 lb × 0.37% = 0.0222 lb", "0.0222 lb ÷ 2,000 sq ft × 43,560 sq ft = 0.48352 lb"], result: "0.484 lb per acre" } },
  ]);
});

test("what is left of a tank counts on no lawn", () => {
  // By hand: 100 sq ft take 0.15 of 0.2 gal at 2.5 fl oz a gallon, 0.375 fl oz of 2 lb a gallon: 2.5523 lb on an acre, and not 3.4.
  const strength = rateOf("product-volume-per-spray-volume", "2.5", "fl oz per gal");
  const stated = ticketRate(strength, { ...IRON.use, rates: { basis: strength.basis, low: strength, high: strength } }, SPRAYER);
  const label = withActive(IRON.label, massInVolume("2", "lb per gal"));
  const [active] = workingsOf([{ ...IRON, ...stated, label, tool: { name: "tenth cup", mark: exactly("fl oz", "0.1") }, spot: { shareBasisPoints: 500 } }]);
  expect(active).toMatchObject({ words: "2.55 lb per acre", working: { inputs: [{ figure: "0.375 fl oz" }, {}, { figure: "100 sq ft" }] } });
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

describe("what can't be counted", () => {
  const byWeight = { ...withActive(IRON.label, percentByWeight("20")), density: "unknown" } as const;

  test("without the density that it takes an ingredient is named as not countable", () => {
    expect(workingsOf([{ ...IRON, label: byWeight }])).toMatchObject([
      {
        ingredient: "Velodiamine",
        counted: "nothing",
        words: "not countable: density of Rustwater Iron",
        working: {
          inputs: [{ figure: "3 fl oz" }, { figure: "20% of its weight" }],
          steps: ["Rustwater Iron is measured by volume, and its label states what is in it by weight; its density is not on file. It is not counted."],
          result: "not countable: density of Rustwater Iron",
        },
      },
    ]);
    const dense = withActive(FEED.label, massInVolume("4", "lb per gal"));
    expect(workingsOf([{ ...FEED, label: dense }])[0]?.working.steps).toEqual(["Harrowgate 32 is measured by weight, and its label states what is in it by volume; its density is not on file. It is not counted."]);
  });

  test("it takes nothing off what another product brings: that is at least so much", () => {
    const [both, ...others] = workingsOf([BARRIER, { ...IRON, label: byWeight }]);
    expect(others).toEqual([]);
    expect(both).toMatchObject({ counted: "in-part", words: "at least 0.484 lb per acre", working: { result: "at least 0.484 lb per acre", source: "the label of Barrier Nine; the label of Rustwater Iron" } });
    expect(both?.working.steps).toEqual([
      "Rustwater Iron is measured by volume, and its label states what is in it by weight; its density is not on file. It is not counted.",
      "6 lb × 0.37% = 0.0222 lb",
      "0.0222 lb ÷ 2,000 sq ft × 43,560 sq ft = 0.48352 lb",
    ]);
  });

  test("a product whose ingredients nobody has read may have it too", () => {
    const unread = { ...FEED, label: { ...FEED.label, activeIngredients: "unknown" } } as const;
    expect(workingsOf([BARRIER, unread])).toMatchObject([{ counted: "in-part", words: "at least 0.484 lb per acre", working: { steps: ["Nobody has read which active ingredients Harrowgate 32 has. It is not counted.", "6 lb × 0.37% = 0.0222 lb", expect.anything()] } }]);
    expect(workingsOf([unread])).toEqual([]);
  });

  test("nothing is said of a lawn where nothing of it goes down, nor without an ingredient", () => {
    const drowned = { ...LAWN, waterBeside: "yes" as const, waterEdges: [{ name: "the pond", length: of("ft", 500n), width: of("ft", 4n) }] };
    expect(workingsOf([{ ...IRON, label: byWeight }], [drowned])).toEqual([]);
    expect(workingsOf([FEED])).toEqual([]);
  });
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

test("another product on more ground takes nothing off, and one that brings it there too adds its own rate", () => {
  const label = withActive(IRON.label, massInVolume("4", "lb per gal"));
  const clear = (treatment: typeof FEED, feet: bigint) => ({ ...treatment, use: { ...treatment.use, distanceToWater: { withDeflector: of("ft", feet), otherwise: of("ft", feet), basis: "label", source: "label" } as const } });
  const beside = { ...LAWN, area: of("sq ft", 10_000n), waterBeside: "yes" as const, waterEdges: [{ name: "the pond", length: of("ft", 200n), width: "unknown" as const }] };
  const spray = clear({ ...IRON, label }, 15n);
  // By hand: 1.5 fl oz per 1,000 sq ft of 4 lb per gal are 1.5 × 43.56 ÷ 128 × 4 = 2.0419 lb per acre, whatever else is spread on 9,400 sq ft.
  for (const treatments of [[spray], [spray, clear(FEED, 3n)]]) expect(workingsOf(treatments, [beside]).map(({ words }) => words)).toEqual(["2.04 lb per acre"]);
  // Barrier Nine: 28 lb, not rounded up because of its season's limit, × 0.37% on its 9,400 sq ft are 0.48009 lb per acre more.
  const [both] = workingsOf([spray, clear(BARRIER, 3n)], [beside]);
  expect(both).toMatchObject({ words: "2.52 lb per acre", working: { steps: expect.arrayContaining(["0.48009 lb + 2.0419 lb = 2.522 lb"]) as object } });
});
