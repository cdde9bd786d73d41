import { describe, expect, test } from "vitest";
import { answerFromConditions } from "#domain/turf/disease-risk";
import { SMITH_KERNS } from "#domain/turf/dollar-spot";

const met = { condition: "warm", found: 25, isMet: true };
const unmet = { condition: "wet", found: 2, isMet: false };

describe("an answer from conditions", () => {
  test.each([
    [[met, met], true],
    [[met, unmet], false],
    [[unmet], false],
    [[], false],
  ])("%o is favorable: %s", (conditions, isFavorable) => {
    expect(answerFromConditions(SMITH_KERNS, conditions)).toEqual({ model: SMITH_KERNS, conditions, isFavorable });
  });
});
