import { describe, expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { ROUNDED_UP_TOO_MUCH, type Rounded, roundingSteps } from "#domain/mixing/ticket-working-rounding";
import { SCALE } from "../../support/ticket";

const steps = (change: Partial<Rounded>) =>
  roundingSteps({
    wanted: exactly("lb", "7.776"),
    amount: of("lb", "7.75"),
    marks: 31n,
    tool: SCALE,
    unit: "lb",
    byLabel: [{ words: "the label’s highest rate", most: exactly("lb", "9") }],
    byPlan: [{ words: "the planned rate", most: exactly("lb", "7.776") }],
    ...change,
  });

describe("to a mark", () => {
  test("the nearest", () => expect(steps({})).toEqual(["7.776 lb ÷ ¼ lb = 31.104 marks, to the nearest 31", "31 × ¼ lb = 7¾ lb"]));

  test("the one below where the label's highest rate is under the nearest", () => {
    const held = steps({ wanted: exactly("lb", "7.9"), byLabel: [{ words: "the label’s highest rate", most: exactly("lb", "7.95") }, { words: "its strength", most: exactly("lb", "8") }] });
    expect(held[1]).toBe("32 × ¼ lb = 8 lb, which is above the label’s highest rate, 7.95 lb; so 31");
    expect(held[2]).toBe("31 × ¼ lb = 7¾ lb");
  });

  test("the one below where the label would allow the nearest but the plan is the most", () => {
    const held = steps({ wanted: exactly("lb", "7.9"), byPlan: [{ words: "the planned rate", most: exactly("lb", "7.9") }] });
    expect(held[1]).toBe("32 × ¼ lb = 8 lb, which is above the planned rate, 7.9 lb; so 31");
  });
});

test("what keeps the plan's own rate the most may be a season's limit or either nutrient of the law", () => {
  for (const cause of ["season’s limit", "nitrogen", "phosphate"]) expect(ROUNDED_UP_TOO_MUCH).toContain(cause);
});

describe("not to a mark", () => {
  test("what is less than one mark stays as it is", () => {
    expect(steps({ wanted: exactly("lb", "0.1"), amount: of("lb", "0.1"), marks: null })).toEqual(["0.1 lb ÷ ¼ lb = 0.4 marks, to the nearest 0", "Less than one mark can be measured, so it is not rounded: 0.1 lb."]);
  });

  test("so does what only a limit keeps from the first mark", () => {
    const held = steps({ wanted: exactly("lb", "0.2"), amount: of("lb", "0.2"), marks: null, byLabel: [{ words: "the label’s highest rate", most: exactly("lb", "0.24") }] });
    expect(held[1]).toBe("1 × ¼ lb = ¼ lb, which is above the label’s highest rate, 0.24 lb");
    expect(held).toHaveLength(3);
  });

  test("without a tool, and brought down where the load is too small for it", () => {
    expect(steps({ tool: undefined, marks: null, amount: of("lb", "7.776") })).toEqual(["No tool on file measures it, so it is not rounded: 7.776 lb."]);
    expect(steps({ tool: undefined, marks: null, amount: of("lb", 7n), byLabel: [{ words: "its strength", most: exactly("lb", "7") }] })[0]).toBe("7.776 lb is above its strength, 7 lb.");
  });

  test("nothing is nothing", () => expect(steps({ wanted: exactly("lb", "0"), amount: of("lb", 0n), marks: 0n })).toEqual(["Nothing goes down."]));
});
