import { expect, test } from "vitest";
import { finestOf, finestTools, groundsMeasured, toolFor, withTools } from "#domain/mixing/measuring-tool";
import { exactly, settle } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { day } from "../../support/domain-answers";
import { BARRIER, CUP, FEED, IRON, LAWN, PAST, QUESTION, SCALE, SPRAYER, SPREADER } from "../../support/ticket";

const PITCHER = { name: "one-ounce pitcher", mark: exactly("fl oz", "1") } as const;
const JUG = { name: "four-ounce jug", mark: exactly("fl oz", "4") } as const;
const TOOLS = [CUP, JUG, SCALE, PITCHER];
const ground = (squareFeet: bigint) => of("sq ft", squareFeet);
const perThousand = (fluidOunces: string) => rateOf("product-volume-per-area", fluidOunces, "fl oz per 1,000 sq ft");
/** The tool for iron at so many fluid ounces per 1,000 sq ft; its label says 1 to 2. */
const ofIron = (squareFeet: readonly bigint[], rate = "1.5", tools: Parameters<typeof toolFor>[0] = TOOLS) => {
  const tool = toolFor(tools, { ...IRON, rate: perThousand(rate) }, squareFeet.map(ground));
  return tool === "none" ? tool : tool.name;
};

test("the coarsest marks that keep the amount within 2 % of the plan", () => {
  // 12, 30, 1.5 and 49.5 fl oz: 50 are 1.0 % more, and 48 or 52 of the jug are 3 % and 5 % off.
  expect([ofIron([8000n]), ofIron([20_000n]), ofIron([1000n]), ofIron([33_000n])]).toEqual([JUG.name, PITCHER.name, CUP.name, PITCHER.name]);
  // 200.1 fl oz: 200 of the jug are as good as it.
  expect(ofIron([133_400n])).toBe(JUG.name);
});

test("every amount has to come near its plan, not only their sum", () => {
  expect(ofIron([8000n, 8000n])).toBe(JUG.name);
  expect(ofIron([8000n, 1000n])).toBe(CUP.name);
});

test("where no tool comes near enough the finest one is taken, and of equals the first", () => {
  expect(ofIron([100n])).toBe(CUP.name);
  expect(ofIron([100n], "1.5", [JUG, PITCHER])).toBe(PITCHER.name);
  expect(ofIron([20_000n], "1.5", [{ ...CUP, name: "first" }, { ...CUP, name: "second" }])).toBe("first");
});

test("a mark that would leave the label's range is passed over, below and above", () => {
  // 50.4 fl oz at the lowest rate: 50 of the pitcher are below it, 50.5 of the cup are not.
  expect(ofIron([50_400n], "1")).toBe(CUP.name);
  // 99.4 fl oz at the highest rate: 100 would pass it and 96 are 3 % less; 99 of the pitcher are 0.4 % less.
  expect(ofIron([49_700n], "2")).toBe(PITCHER.name);
  // A plan below the label is held for it, and not measured by its lowest rate.
  expect(ofIron([100_800n], "0.5")).toBe(PITCHER.name);
});

test("a tool measures what the rate counts, and without one there is none", () => {
  expect(toolFor(TOOLS, FEED, [ground(4000n)])).toBe(SCALE);
  expect(ofIron([8000n], "1.5", [SCALE])).toBe("none");
  expect(toolFor([], FEED, [ground(4000n)])).toBe("none");
});

test("without ground every tool keeps the plan, so that the coarsest one is named", () => {
  expect([ofIron([]), ofIron([0n])]).toEqual([JUG.name, JUG.name]);
});

test("granular product is measured lawn by lawn, a spray load by load", () => {
  const areas = [ground(40_000n), ground(60_000n)];
  expect(groundsMeasured(SPREADER, areas)).toEqual(areas);
  // 1.5 gal per 1,000 sq ft are 150 gal on both, two loads of a 100 gal tank.
  expect(groundsMeasured(SPRAYER, areas).map((one) => settle(one, "nearest"))).toEqual([ground(50_000n)]);
  expect(groundsMeasured(SPRAYER, [ground(40_000n)])).toEqual([ground(40_000n)]);
  expect(groundsMeasured(SPRAYER, [])).toEqual([]);
  expect(groundsMeasured({ ...SPRAYER, capacity: of("gal", 0n) }, areas)).toEqual([ground(100_000n)]);
});

test("a fill for several visits is measured by the finest tool that they take", () => {
  expect(finestOf([JUG, CUP, PITCHER])).toBe(CUP);
  expect(finestOf([])).toBeUndefined();
  const toolOf = finestTools([{ ...IRON, tool: JUG }, { ...IRON, tool: PITCHER }, { ...IRON, tool: "none" }, { ...FEED, tool: "none" }]);
  expect([toolOf(IRON.productId), toolOf(FEED.productId), toolOf("another")]).toEqual([PITCHER, undefined, undefined]);
});

test("a tool is chosen as its product is rounded: where nothing may be rounded up, one that rounds down near enough", () => {
  const pound = { name: "one-pound scale", mark: exactly("lb", "1") } as const;
  const fine = { name: "fine scale", mark: exactly("lb", "0.05") } as const;
  // 2.97 lb on 2,000 sq ft are 5.94 lb: 6 lb are 1 % more. Where a season's limit lets no more than the plan go down, 5 lb are 16 % less.
  const rate = rateOf("product-mass-per-area", "2.97", "lb per 1,000 sq ft");
  const had = (pounds: string) => ({ ...PAST, on: day("2026-03-20"), activeIngredients: [{ name: "velodiamine", rate: rateOf("active-ingredient-mass-per-area", pounds, "lb per acre"), modeOfAction: "none" as const }] });
  const question = (before: string) => ({ ...QUESTION, lawns: [{ ...LAWN, history: [had(before)] }], treatments: [{ ...BARRIER, rate, tool: "none" as const }] });
  const toolNames = (before: string) => withTools(question(before), [pound, fine]).treatments.map(({ tool }) => (tool === "none" ? tool : tool.name));
  expect(toolNames("0.1")).toEqual([pound.name]);
  expect(toolNames("0.9")).toEqual([fine.name]);
  expect(withTools(question("0.1"), []).treatments.map(({ tool }) => tool)).toEqual(["none"]);
});
