import { describe, expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { amountInputs, deliveredWorkings, isFed, nutrientWords, percentWords, type ShownNutrient, weightLine } from "#domain/mixing/ticket-working-delivered";
import { decimal } from "#domain/quantities/rational";
import { gradeOf } from "#domain/turf/nutrients";
import { faultsOf } from "../../support/read-working";
import { BARRIER, FEED, IRON, IRON_LABEL, LAWN, QUESTION, ticketOf } from "../../support/ticket";

function workingsOf(treatments: (typeof QUESTION)["treatments"] = [FEED, IRON], lawns = QUESTION.lawns) {
  const question = { ...QUESTION, treatments, lawns };
  const all = deliveredWorkings(question, ticketOf(question));
  expect(all.flatMap(({ working }) => faultsOf(working))).toEqual([]);
  return (nutrient: ShownNutrient) => all.find((one) => one.nutrient === nutrient);
}

test("nitrogen of what is spread and of what is poured, over the treated area", () => {
  // By hand: 5 lb × 32% = 1.6 lb; 3 fl oz of 11 lb a gallon are 0.2578 lb, 6% of it 0.01547 lb; on 2,000 sq ft.
  expect(workingsOf()("nitrogen")).toMatchObject({
    words: "0.808 lb",
    working: {
      steps: [
        "5 lb × 32% = 1.6 lb",
        "3 fl oz ÷ 128 fl oz × 11 lb = 0.25781 lb",
        "0.25781 lb × 6% = 0.015469 lb",
        "1.6 lb + 0.015469 lb = 1.6155 lb",
        "1.6155 lb ÷ 2,000 sq ft × 1,000 sq ft = 0.80773 lb",
      ],
      result: "0.808 lb per 1,000 sq ft",
    },
  });
});

describe("quick and slow", () => {
  test("slow as the label states it, and quick what is left", () => {
    expect(workingsOf([FEED])("slowNitrogen")?.working.steps).toEqual(["5 lb × 16% = 0.8 lb", "0.8 lb ÷ 2,000 sq ft × 1,000 sq ft = 0.4 lb"]);
    expect(workingsOf([FEED])("quickNitrogen")?.working.steps.slice(0, 3)).toEqual(["5 lb × 32% = 1.6 lb", "5 lb × 16% = 0.8 lb", "1.6 lb − 0.8 lb = 0.8 lb"]);
  });

  test("a share of the nitrogen is taken of the nitrogen", () => {
    const { analysis } = FEED.label;
    if (analysis === "none" || analysis === "unknown") throw new Error("The feed has an analysis.");
    const label = { ...FEED.label, analysis: { ...analysis, release: { kind: "slow-percent-of-nitrogen", percent: decimal("25") } as const } };
    expect(workingsOf([{ ...FEED, label }])("slowNitrogen")?.working.steps.slice(0, 2)).toEqual(["5 lb × 32% = 1.6 lb", "1.6 lb × 25% = 0.4 lb"]);
  });

  test("what one label does not state has no sum, and says whose label it is", () => {
    const slow = workingsOf([FEED, BARRIER])("slowNitrogen");
    expect(slow).toMatchObject({ words: "not stated", working: { steps: ["The label of Barrier Nine does not state it."], result: "not stated" } });
  });
});

test("a product without it on more ground takes nothing off, and one that brings some there adds its own", () => {
  const clear = (treatment: typeof FEED, feet: bigint) => ({ ...treatment, use: { ...treatment.use, distanceToWater: { withDeflector: of("ft", feet), otherwise: of("ft", feet), basis: "label", source: "label" } as const } });
  const beside = { ...LAWN, area: of("sq ft", 10_000n), waterBeside: "yes" as const, waterEdges: [{ name: "the pond", length: of("ft", 200n), width: "unknown" as const }] };
  const gypsum = { ...FEED, line: 8, productId: "gypsum", label: { ...FEED.label, productName: "Gypsum", analysis: { grade: gradeOf("0", "0", "0"), release: { kind: "not-stated" } } as const } };
  const nitrogen = (treatments: (typeof QUESTION)["treatments"]) => workingsOf(treatments, [beside])("nitrogen");
  // By hand: 2.5 lb × 32% are 0.8 lb on 1,000 sq ft; 7,000 sq ft get it, and 9,400 the gypsum.
  expect(nitrogen([clear(FEED, 15n)])?.words).toBe("0.8 lb");
  expect(nitrogen([clear(FEED, 15n), clear(gypsum, 3n)])).toMatchObject({ words: "0.8 lb", working: { inputs: expect.arrayContaining([{ name: "Treated area", figure: "7,000 sq ft", from: "of Front, where Harrowgate 32 goes" }]) as object } });
  // Barrier Nine: 28¼ lb × 19% on its 9,400 sq ft are 0.57101 lb on 1,000.
  expect(nitrogen([clear(FEED, 15n), clear(BARRIER, 3n)])).toMatchObject({ words: "1.37 lb", working: { steps: expect.arrayContaining(["0.8 lb + 0.57101 lb = 1.371 lb"]) as object } });
});

test("rates of iron that differ read differently", () => {
  // By hand: 1 fl oz of 11 lb a gallon is 0.0859 lb, and 10% of it iron; with 1½ fl oz it is half as much more.
  const iron = (ounces: string) => workingsOf([{ ...IRON, rate: rateOf("product-volume-per-area", ounces, "fl oz per 1,000 sq ft") }])("iron")?.words;
  expect([iron("1"), iron("1.5"), iron("2")]).toEqual(["0.00859 lb", "0.0129 lb", "0.0172 lb"]);
});

test("spot work counts at its rate on the spots, as the law's most in an application does", () => {
  // By hand: ½ lb on a tenth of 2,000 sq ft, by the scale's marks; 19% of it is nitrogen.
  const spots = { ...BARRIER, spot: { shareBasisPoints: 1000 } } as const;
  expect(workingsOf([spots])("nitrogen")).toMatchObject({
    words: "0.475 lb",
    working: {
      inputs: expect.arrayContaining([{ name: "Treated area", figure: "200 sq ft", from: "of Front, spot work on 10% of it" }]) as object,
      steps: ["½ lb × 19% = 0.095 lb", "0.095 lb ÷ 200 sq ft × 1,000 sq ft = 0.475 lb"],
    },
  });
  // Where a spot lies within what goes all over, it gets both.
  expect(workingsOf([spots, FEED])("nitrogen")).toMatchObject({ words: "1.28 lb", working: { steps: expect.arrayContaining(["0.475 lb + 0.8 lb = 1.275 lb"]) as object } });
});

test("iron counts where it is stated, and none is none", () => {
  expect(workingsOf()("iron")?.words).toBe("0.0129 lb");
  expect(workingsOf()("phosphate")).toMatchObject({ words: "none", working: { result: "none" } });
  expect(workingsOf([FEED])("iron")?.words).toBe("not stated");
});

test("what can't be weighed is not counted, and says so", () => {
  const label = { ...IRON_LABEL, density: "unknown" } as const;
  expect(workingsOf([FEED, { ...IRON, label }])("nitrogen")?.working.steps[0]).toBe("The density of Rustwater Iron is not on file; its nutrients are stated by weight. It is not counted.");
});

test("the parts of which the lines are made", () => {
  expect(percentWords(decimal("0.37"))).toBe("0.37%");
  expect([exactly("lb", "0"), exactly("lb", "0.0004567"), "not-stated" as const].map(nutrientWords)).toEqual(["none", "0.000457 lb", "not stated"]);
  expect(weightLine(of("lb", 1n), "unknown")).toEqual({ mass: of("lb", 1n), lines: [] });
  expect(weightLine(of("gal", 1n), "unknown")).toBeUndefined();
  expect(amountInputs(IRON_LABEL, of("fl oz", 3n), true).map(({ figure }) => figure)).toEqual(["3 fl oz", "11 lb"]);
  expect(amountInputs(IRON_LABEL, of("fl oz", 3n), false)).toHaveLength(1);
  const ticket = ticketOf();
  expect(workingsOf()("nitrogen")?.working.inputs.find(({ name }) => name === "Treated area")?.figure).toBe("2,000 sq ft");
  expect(ticket.delivered.map(isFed)).toEqual([true]);
});
