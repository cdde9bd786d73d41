import { expect, test } from "vitest";
import { LAWN_OUTCOME_WORDS, LAWN_OUTCOMES, MEASURED_BY, MEASURED_BY_WORDS } from "#domain/register/record-content";

test("every way of measuring and every outcome has its words, and what nobody measured says so", () => {
  for (const measuredBy of MEASURED_BY) expect(MEASURED_BY_WORDS[measuredBy]).toMatch(/\S/u);
  expect(MEASURED_BY_WORDS["as-planned-not-measured"]).toBe("as planned, not measured");
  for (const outcome of LAWN_OUTCOMES) expect(LAWN_OUTCOME_WORDS[outcome]).toMatch(/\S/u);
});
