import { describe, expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { bagWords, granularWorkings, hopperWords, markInputs } from "#domain/mixing/ticket-working-granular";
import { faultsOf } from "../../support/read-working";
import { CUP, granularOf, IRON, LAWN, QUESTION, SCALE, SPREADER, ticketOf, withFeed } from "../../support/ticket";

const LARGE = { lawns: [{ ...LAWN, area: of("sq ft", 5180n) }] };
const BAG = { container: "bag", size: of("lb", 5n) } as const;

function workingsOf(asked: Parameters<typeof granularOf>[0] = {}, bag?: typeof BAG) {
  const question = { ...QUESTION, ...LARGE, ...withFeed({}), ...asked };
  const mix = granularOf(question);
  const workings = mix === undefined ? undefined : granularWorkings(mix, question, ticketOf(question), bag);
  if (workings === undefined) throw new Error("The feed is spread.");
  return workings;
}

test("from the area to the mark, and whose rates they are", () => {
  // By hand: 5,180 ÷ 1,000 × 2.5 lb is 12.95 lb, 51.8 quarter pounds, so 52 of them, 13 lb.
  const amount = workingsOf().lawns[0]?.amount;
  expect(amount?.steps).toEqual(["5,180 sq ft ÷ 1,000 sq ft × 2½ lb = 12.95 lb", "12.95 lb ÷ ¼ lb = 51.8 marks, to the nearest 52", "52 × ¼ lb = 13 lb"]);
  expect(amount?.inputs.map(({ from }) => from)).toEqual(["of A Front", "planned at 2.5 lb per 1,000 sq ft", "quarter-pound scale"]);
  expect(amount?.source).toContain("the label of Harrowgate 32, Lawns: 2 lb to 3 lb per 1,000 sq ft");
});

test("each pass, and what the rate becomes", () => {
  const [lawn] = workingsOf().lawns;
  expect(lawn?.perPass).toMatchObject({ steps: ["13 lb ÷ 2 = 6½ lb"], result: "6½ lb" });
  expect(lawn?.perPass.source).toContain("UMass Extension");
  expect(lawn?.rate).toMatchObject({ steps: ["13 lb ÷ 5,180 sq ft × 1,000 sq ft = 2.5097 lb"], result: "2.51 lb per 1,000 sq ft" });
  const [single] = workingsOf({ settings: { ...QUESTION.settings, granularPasses: "one-with-overlap" } }).lawns;
  expect(single?.perPass).toMatchObject({ steps: ["13 lb ÷ 1 = 13 lb"] });
});

test("a lawn where nothing goes down has no rate, and nothing to spread has no working", () => {
  expect(workingsOf({ lawns: [{ ...LAWN, area: of("sq ft", 0n) }] }).lawns[0]?.rate).toBeUndefined();
  const mix = granularOf(withFeed({}));
  expect(mix && granularWorkings(mix, { ...QUESTION, treatments: [IRON] }, ticketOf())).toBeUndefined();
});

describe("in all", () => {
  test("bags of the lot that is opened first", () => {
    const { bags, total } = workingsOf({}, BAG);
    expect(total.result).toBe("13 lb");
    expect(bags).toMatchObject({ steps: ["13 lb ÷ 5 lb = 2.6, which is 2 whole", "2 × 5 lb = 10 lb", "13 lb − 10 lb = 3 lb"], result: "2 bags of 5 lb and 3 lb" });
    expect(faultsOf(bags ?? total)).toEqual([]);
    expect(workingsOf({}).bags).toBeUndefined();
    expect(bagWords(of("lb", 3n), BAG)).toBe("out of 1 bag of 5 lb");
  });

  test("hopper fills, up to a whole one", () => {
    const gear = { ...SPREADER, capacity: of("lb", 8n) };
    expect(workingsOf(withFeed({ gear })).hopper).toMatchObject({ steps: ["13 lb ÷ 8 lb = 1.625, up to 2"], result: "Filled 2 times at least" });
    expect(workingsOf(withFeed({ gear: { ...SPREADER, capacity: of("lb", 0n) } })).hopper).toBeUndefined();
    expect(hopperWords(1n)).toBe("Filled once");
  });
});

test("the setting is its calibration's, against what a pass should put down", () => {
  expect(workingsOf().setting).toMatchObject({
    steps: ["2½ lb ÷ 2 = 1¼ lb per 1,000 sq ft in a pass is wanted", "1¼ lb × 2 = 2½ lb per 1,000 sq ft is what the passes at this setting put down"],
    result: "Setting 14, puts down 1¼ lb per 1,000 sq ft in a pass",
  });
  expect(workingsOf().setting?.source).toContain("Spreader, calibrated by Rowan Ash");
  expect(workingsOf(withFeed({ gear: { ...SPREADER, setting: "not-calibrated" } })).setting).toBeUndefined();
  const { setting } = SPREADER;
  if (setting === "not-calibrated") throw new Error("The spreader is calibrated.");
  const formulaFor = (basis: NonNullable<typeof setting.basis>) => workingsOf(withFeed({ gear: { ...SPREADER, setting: { ...setting, basis } } })).setting?.formula;
  expect(formulaFor("calibration")).toMatch(/came nearest/u);
  expect(formulaFor("between-tests")).toMatch(/straight line between/u);
  expect(formulaFor("nominal")).toMatch(/bag states/u);
});

test("no mark where no tool measures it, and a cup is no scale", () => {
  expect(workingsOf(withFeed({ tool: CUP })).lawns[0]?.amount.inputs.map(({ name }) => name)).toEqual(["Treated area", "Rate"]);
  expect(markInputs(SCALE, () => "¼ lb")).toEqual([{ name: "One mark", figure: "¼ lb", from: "quarter-pound scale" }]);
});
