import { expect, test } from "vitest";
import { fillsOf, LAWN_OUTCOME_WORDS, LAWN_OUTCOMES, MEASURED_BY, MEASURED_BY_WORDS, type RecordedFill } from "#domain/register/record-content";

test("every way of measuring and every outcome has its words, and what nobody measured says so", () => {
  for (const measuredBy of MEASURED_BY) expect(MEASURED_BY_WORDS[measuredBy]).toMatch(/\S/u);
  expect(MEASURED_BY_WORDS["as-planned-not-measured"]).toBe("as planned, not measured");
  for (const outcome of LAWN_OUTCOMES) expect(LAWN_OUTCOME_WORDS[outcome]).toMatch(/\S/u);
});

test("a product came out of no fill, out of one, or out of that one and others in their order", () => {
  const fill = (number: number): RecordedFill => ({ fillId: `fill ${String(number)}`, number, sprayed: { dimension: "volume", amount: "1", words: "1 gal" }, mixingPlace: "Shop yard" });
  expect(fillsOf({ fill: null })).toEqual([]);
  expect(fillsOf({ fill: fill(3) })).toEqual([fill(3)]);
  expect(fillsOf({ fill: fill(3), furtherFills: [fill(5), fill(4)] }).map(({ number }) => number)).toEqual([3, 5, 4]);
});
