// Nitrogen from a feed, as crews work it by hand: pounds of product times the first number of the grade over 100.
import { expect } from "vitest";
import { formatRate } from "#domain/quantities/format-rate";
import { rateOf } from "#domain/quantities/rate";
import { plannedNitrogen } from "#domain/scheduling/planned-rate";
import { gradeOf } from "#domain/turf/nutrients";
import { type PublishedStatement } from "../../support/published-check";

export const PLANNED_NITROGEN_CHECKS = (
  [
    ["32", "2.5", "0.8 lb per 1,000 sq ft"],
    ["20", "5", "1 lb per 1,000 sq ft"],
    ["46", "1", "0.46 lb per 1,000 sq ft"],
  ] as const
).map(([nitrogen, pounds, brought]): PublishedStatement => ({
  row: ["elsewhere.14", "fertilizer.1"],
  says: `a ${nitrogen}% feed at ${pounds} lb per 1,000 sq ft brings ${brought} of nitrogen`,
  source: "common practice",
  status: "memory",
  holds: () => {
    const facts = { productName: "a feed", analysis: { grade: gradeOf(nitrogen, "0", "0"), release: { kind: "not-stated" } as const }, density: "unknown" } as const;
    const answer = plannedNitrogen(rateOf("product-mass-per-area", pounds, "lb per 1,000 sq ft"), facts);
    expect(answer.ok && formatRate(answer.value.nitrogen, "us")).toBe(brought);
  },
}));
