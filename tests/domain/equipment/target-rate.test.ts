import { expect, test } from "vitest";
import { judgeRate, SPRAYER_TOLERANCE, SPREADER_TOLERANCE } from "#domain/equipment/target-rate";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { rateOf } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";
import { saying } from "../../support/said";

const carrier = (gallons: string) => rateOf("carrier-volume-per-area", gallons, "gal per 1,000 sq ft");

test.each([
  ["2", 0, rational(0n)],
  ["2.1", 0, rational(1n, 20n)],
  ["1.9", 0, rational(-1n, 20n)],
  ["2.2", 1, rational(1n, 10n)],
  ["1.8", 1, rational(-1n, 10n)],
])("%s gal where 2 are wanted: %d findings", (found, findings, overWanted) => {
  const judged = judgeRate("the gun", carrier(found), carrier("2"), SPRAYER_TOLERANCE);
  expect(judged.findings).toHaveLength(findings);
  expect(judged.overWanted).toEqual(overWanted);
});

test("the finding says both rates and who says how near", () => {
  expect(judgeRate("the gun", carrier("1.8"), carrier("2"), SPRAYER_TOLERANCE).findings).toEqual([
    {
      level: "take-care",
      rule: "calibration-off-the-wanted-rate",
      source: "handbook",
      what: "the gun puts out 10% less than wanted.",
      figure: "It gives 1.8 gal per 1,000 sq ft; 2 gal per 1,000 sq ft is wanted, within 5%.",
      toDo: "Change the tip, the pressure, the setting or the pace, and calibrate again.",
      citation: saying("pesticidestewardship.org"),
      about: ["the gun"],
    },
  ]);
});

test("a spreader is judged by its own source, and a wanted rate of zero throws", () => {
  const pounds = (value: string) => rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");
  expect(judgeRate("the spreader", pounds("5.5"), pounds("5"), SPREADER_TOLERANCE).findings[0]?.citation).toContain("UMass");
  expect(() => judgeRate("the spreader", pounds("5"), pounds("0"), SPREADER_TOLERANCE)).toThrow(BrokenInvariant);
});
