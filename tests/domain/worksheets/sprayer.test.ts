import { expect, test } from "vitest";
import { BOOM_EXAMPLE, boomWorksheet, GUN_EXAMPLE, gunWorksheet, SMALL_AREA_EXAMPLE, smallAreaWorksheet } from "#domain/worksheets/sprayer";
import { answersOf, firstSentence, refusedFields, stepsOf, worked } from "../../support/worked";

test("a boom's rate is a nozzle's flow over the ground that it covers", () => {
  const outcome = boomWorksheet(BOOM_EXAMPLE.typed);
  expect(answersOf(outcome)).toEqual(["1.99 gal per 1,000 sq ft", "86.8 gal per acre"]);
  expect(stepsOf(outcome).at(-1)).toBe("Per acre: 1.9926 gal ÷ 1,000 sq ft × 43,560 sq ft = 86.7969 gal per acre.");
});

test("water that stands for a denser spray is corrected, and the wanted rate judged", () => {
  const outcome = boomWorksheet({ ...BOOM_EXAMPLE.typed, density: "10.65 lb per gal", wanted: "2 gal/1,000" });
  expect(stepsOf(outcome)).toContain("Water was caught, and the spray is denser: 1.9926 gal ÷ 1.1297 = 1.7639 gal per 1,000 sq ft.");
  expect(worked(outcome).findings).toMatchObject([{ rule: "calibration-off-the-wanted-rate" }]);
  expect(worked(outcome).working.result).toContain("1.76 gal per 1,000 sq ft, 76.83 gal per acre");
});

test("a worn nozzle among several is found", () => {
  const { findings } = worked(boomWorksheet({ ...BOOM_EXAMPLE.typed, caught: "100 fl oz\n101 fl oz\n140 fl oz" }));
  expect(findings.length).toBeGreaterThan(0);
});

test("on 1/128 acre the fluid ounces are the gallons per acre", () => {
  const outcome = smallAreaWorksheet(SMALL_AREA_EXAMPLE.typed);
  expect(answersOf(outcome)).toEqual(["0.574 gal per 1,000 sq ft", "25 gal per acre"]);
  expect(stepsOf(outcome)[2]).toMatch(/^On 1\/128 acre/u);
  expect(stepsOf(smallAreaWorksheet({ ...SMALL_AREA_EXAMPLE.typed, area: "340 sq ft" }))[2]).toMatch(/^On 1\/128 acre/u);
  expect(stepsOf(smallAreaWorksheet({ ...SMALL_AREA_EXAMPLE.typed, area: "1,000 sq ft" })).join(" ")).not.toContain("1/128");
});

test("a gun's rate is its flow for as long as the area takes", () => {
  expect(answersOf(gunWorksheet(GUN_EXAMPLE.typed))[0]).toBe("1.4 gal per 1,000 sq ft");
  expect(worked(gunWorksheet(GUN_EXAMPLE.typed)).findings).toMatchObject([{ rule: "calibration-of-few-gun-runs" }]);
  expect(worked(gunWorksheet({ ...GUN_EXAMPLE.typed, areaSeconds: "50\n50\n50" })).findings).toEqual([]);
});

test("what is missing is refused together, and what can't be read by its field", () => {
  expect(refusedFields(boomWorksheet({ caught: "", caughtSeconds: "", nozzleSpacing: "", course: "", courseSeconds: "", wanted: "2 lb", density: "x" }))).toEqual(["caught", "caughtSeconds", "nozzleSpacing", "course", "courseSeconds", "wanted", "density"]);
  expect(refusedFields(boomWorksheet({ ...BOOM_EXAMPLE.typed, density: "specific gravity 106.5" }))).toEqual(["density"]);
  expect(refusedFields(gunWorksheet({ ...GUN_EXAMPLE.typed, areaSeconds: "0" }))).toEqual(["areaSeconds"]);
  expect(firstSentence(smallAreaWorksheet({ ...SMALL_AREA_EXAMPLE.typed, used: "25 oz" }))).toContain("Write oz wt or fl oz");
});
