import { expect, test } from "vitest";
import { sprayerWorking, spreaderWorking } from "#domain/equipment/calibration-working";
import { ISO_PRESSURE_PSI, ratedFlowOfSize } from "#domain/equipment/nozzle";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { calibrateSprayer } from "#domain/equipment/sprayer-calibration";
import { rateFromCollected } from "#domain/equipment/spreader-calibration";
import { readSprayerTest, readSpreaderTest, type TypedSprayerTest } from "#domain/equipment/typed-test";
import { type Density, densityFromSpecificGravity } from "#domain/quantities/density";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/domain-answers";

function workingOf(typed: TypedSprayerTest) {
  const calibration = calibrateSprayer(valueOf(readSprayerTest(typed, 40)), { kind: "the-spray-itself" }, USUAL_SPREAD_LIMIT);
  return sprayerWorking(valueOf(calibration));
}

const COURSE = { caught: "20 fl oz", caughtSeconds: "30", tipSize: "", course: "100 ft", courseSeconds: "22\n23" } as const;

test("a gun's: the flow a minute for the time that the area took", () => {
  expect(workingOf({ method: "timed-area", caught: "1 gal\n1 gal", caughtSeconds: "30", area: "1,000 sq ft", areaSeconds: "58\n60\n62" })).toEqual({
    formula: "The rate is the flow a minute, times the minutes that a measured area takes, over that area.",
    measured: ["The catches were 1 gal and 1 gal, each in 30 s.", "1,000 sq ft took 58 s, 60 s and 62 s."],
    steps: [
      "On the average of the 2 catches that is 2 gal a minute.",
      "The average of the 3 times is 60 s.",
      "2 gal a minute for 60 s is 2 gal.",
      "2 gal over 1,000 sq ft is 2 gal per 1,000 sq ft.",
    ],
    result: "2 gal per 1,000 sq ft. Going by the repeats it may be off by 3.3%.",
  });
});

test("a backpack's: the flow over the area that the swath covers in a minute", () => {
  expect(workingOf({ method: "timed-course", ...COURSE, swath: "4 ft" })).toEqual({
    formula: "The rate is the flow of the tip in a minute, over the area that it covers in a minute.",
    measured: ["The catch was 20 fl oz in 30 s.", "The swath is 4 ft.", "100 ft took 22 s and 23 s."],
    steps: [
      "20 fl oz in 30 s is 40 fl oz a minute.",
      "The average of the 2 times is 22.5 s.",
      "100 ft in 22.5 s is 266.7 ft a minute, or 3.03 mph.",
      "266.7 ft times 4 ft is 1,067 sq ft a minute.",
      "40 fl oz over 1,067 sq ft is 0.293 gal per 1,000 sq ft.",
    ],
    result: "0.293 gal per 1,000 sq ft. Not everything was measured twice, so how far it may be off is not known.",
  });
});

test("a boom's: one nozzle's flow over its spacing, in inches", () => {
  const working = workingOf({ method: "boom", ...COURSE, caught: "20 fl oz\n21 fl oz", nozzleSpacing: "20 in", courseSeconds: "22" });
  expect(working.measured).toEqual(["The nozzles, one by one, gave 20 fl oz and 21 fl oz, each in 30 s.", "The nozzles stand apart by 20 in.", "100 ft took 22 s."]);
  expect(working.steps).toEqual([
    "On the average of the 2 nozzles that is 41 fl oz a minute.",
    "100 ft in 22 s is 272.7 ft a minute, or 3.1 mph.",
    "272.7 ft times 20 in is 454½ sq ft a minute.",
    "41 fl oz over 454½ sq ft is 0.705 gal per 1,000 sq ft.",
  ]);
});

test("by what an area took: one run says nothing of how far it may be off, two do", () => {
  expect(workingOf({ method: "small-area", area: "500 sq ft", used: "1 gal" })).toMatchObject({
    steps: ["1 gal over 500 sq ft is 2 gal per 1,000 sq ft."],
    result: "2 gal per 1,000 sq ft. Not everything was measured twice, so how far it may be off is not known.",
  });
  expect(workingOf({ method: "small-area", area: "500 sq ft", used: "1 gal\n1.1 gal" })).toMatchObject({
    measured: ["500 sq ft took 1 gal and 1.1 gal."],
    steps: ["The average of the 2 runs is 1.05 gal.", "1.05 gal over 500 sq ft is 2.1 gal per 1,000 sq ft."],
    result: "2.1 gal per 1,000 sq ft. Going by the repeats it may be off by 4.8%.",
  });
});

test("a spreader's: what it gave over the test area", () => {
  const runs = valueOf(readSpreaderTest({ area: "500 sq ft", collected: "1.4 lb\n1.6 lb" }));
  expect(spreaderWorking(valueOf(rateFromCollected(runs)))).toEqual({
    formula: "The rate at this setting is what the spreader gave over a measured area, over that area.",
    measured: ["Over 500 sq ft it gave 1.4 lb and 1.6 lb."],
    steps: ["The average of the 2 runs is 1½ lb.", "1½ lb over 500 sq ft is 3 lb per 1,000 sq ft."],
    result: "3 lb per 1,000 sq ft. Going by the repeats it may be off by 6.7%.",
  });
});

test("water for a heavier spray: the step from the one to the other", () => {
  const test = valueOf(readSprayerTest({ method: "small-area", area: "1,000 sq ft", used: "2 gal" }, 40));
  const calibration = valueOf(calibrateSprayer(test, { kind: "water-for-a-spray", sprayDensity: densityFromSpecificGravity("1.44") }, USUAL_SPREAD_LIMIT));
  expect(sprayerWorking(calibration)).toMatchObject({
    steps: [
      "2 gal over 1,000 sq ft is 2 gal per 1,000 sq ft.",
      "The spray weighs 12.02 lb a gallon, so it comes slower than water, by the root of its weight over water’s: 1.2.",
      "2 gal per 1,000 sq ft of water over 1.2 is 1.67 gal per 1,000 sq ft of the spray.",
    ],
    result: "1.67 gal per 1,000 sq ft. Not everything was measured twice, so how far it may be off is not known.",
  });
});

test("a nominal flow is one of water: for a heavier spray the same step is told", () => {
  const nominal = { rated: ratedFlowOfSize("04"), pressurePsi: ISO_PRESSURE_PSI };
  const test = { method: "boom", nozzleSpacing: of("in", 20n), pace: { kind: "speed", milesPerHour: 3 }, catches: [], nominal } as const;
  const steps = (density?: Density) => sprayerWorking(valueOf(calibrateSprayer(test, { kind: "the-spray-itself", ...(density === undefined ? {} : { density }) }, USUAL_SPREAD_LIMIT))).steps;
  const heavier = steps(densityFromSpecificGravity("1.44"));
  expect(heavier.slice(0, -2)).toEqual(steps());
  expect(heavier.at(-2)).toBe("The spray weighs 12.02 lb a gallon, so it comes slower than water, by the root of its weight over water’s: 1.2.");
  expect(heavier.at(-1)).toContain("of water over 1.2 is");
});
