import { describe, expect, test } from "vitest";
import { type SprayerTest } from "#domain/equipment/sprayer-calibration";
import { compareExact, exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { asNominal, lanesAcross, type LawnPace, NO_PACE, paceOfSpreader, paceOfTest, timeInWords, timeOnLawns } from "#domain/mixing/time-on-lawn";

const LANES: LawnPace = { kind: "swath-and-speed", swath: of("ft", 10n), distancePerMinute: exactly("ft", "200") };
const TIMED: LawnPace = { kind: "timed-ground", groundPerMinute: exactly("sq ft", "500") };
const NONE: LawnPace = { kind: "not-on-file" };

describe("minutes on lawns", () => {
  // A square of 100 ft is 10 lanes of 10 ft: 1,000 ft at 200 ft a minute, and 9 turns of 5 s.
  test("lanes at a speed, with a turn between two of them", () => {
    const { minutes, turns, basis } = timeOnLawns([of("sq ft", 10_000n)], LANES, 1, 4);
    expect(minutes).toBeCloseTo(5 + (9 * 5) / 60, 9);
    expect([turns, basis]).toEqual([9, "calibration"]);
    expect(timeOnLawns([of("sq ft", 10_000n)], LANES, 2, 4).minutes).toBeCloseTo(2 * minutes, 9);
  });

  test("a lane that is not full is walked whole, and each lawn has its own lanes", () => {
    expect(timeOnLawns([of("sq ft", 10_201n)], LANES, 1, 4).turns).toBe(10);
    expect(timeOnLawns([of("sq ft", 2_500n), of("sq ft", 2_500n)], LANES, 1, 4)).toMatchObject({ turns: 8 });
    expect(timeOnLawns([of("sq ft", 50n)], LANES, 1, 4).turns).toBe(0);
    expect([100, 101, 7].map((side) => lanesAcross(side, 10))).toEqual([10, 11, 1]);
  });

  test("timed ground has its turns in it, and without a pace the company's figure stands in", () => {
    expect(timeOnLawns([of("sq ft", 6_000n), of("sq ft", 1_500n)], TIMED, 1, 4)).toEqual({ minutes: 15, turns: 0, basis: "calibration" });
    for (const passes of [1, 2] as const) expect(timeOnLawns([of("sq ft", 6_000n)], NONE, passes, 4)).toEqual({ minutes: 24, turns: 0, basis: "house" });
  });

  test("no ground takes no time", () => {
    for (const pace of [LANES, TIMED, NONE]) expect(timeOnLawns([of("sq ft", 0n)], pace, 1, 4)).toMatchObject({ minutes: 0, turns: 0 });
  });
});

describe("the pace in a calibration", () => {
  const caught = { catches: [{ nozzle: "The tip", volume: of("fl oz", 64n), seconds: 30 }] };
  const course = { kind: "timed-course", course: of("ft", 100n), seconds: [30, 30] } as const;

  test("a gun's coverings, averaged", () => {
    const coverings = [{ area: of("sq ft", 1000n), seconds: 110 }, { area: of("sq ft", 1000n), seconds: 130 }];
    const pace = paceOfTest({ method: "gun", ...caught, coverings }, null);
    expect(timeOnLawns([of("sq ft", 1000n)], pace, 1, 4).minutes).toBeCloseTo(2, 9);
  });

  test("a wand has its own swath; a boom takes the one on file, and has no pace without", () => {
    const wand: SprayerTest = { method: "backpack", ...caught, swath: of("ft", 10n), pace: course };
    expect(paceOfTest(wand, of("ft", 6n))).toEqual(LANES);
    const boom: SprayerTest = { method: "boom", ...caught, nozzleSpacing: of("in", 20n), pace: course };
    expect(paceOfTest(boom, of("ft", 10n))).toEqual(LANES);
    expect(paceOfTest(boom, null)).toEqual(NONE);
  });

  test("what a measured area took says nothing of pace", () => {
    expect(paceOfTest({ method: "small-area", runs: [{ area: of("sq ft", 1000n), volume: of("gal", 1n) }] }, of("ft", 10n))).toEqual(NONE);
  });
});

test.each([
  [{ minutes: 13.2, turns: 9, basis: "calibration" }, "About 14 min, at the pace of the calibration, with 9 turns"],
  [{ minutes: 13, turns: 1, basis: "calibration" }, "About 13 min, at the pace of the calibration, with 1 turn"],
  [{ minutes: 0.2, turns: 0, basis: "calibration" }, "About 1 min, at the pace of the calibration"],
  [{ minutes: 24, turns: 0, basis: "house" }, "About 24 min, by the company’s figure; no pace is on file"],
  [{ minutes: 0, turns: 0, basis: "house" }, "none"],
] as const)("%j", (time, words) => expect(timeInWords(time)).toBe(words));

test("a spreader goes at the speed of its calibration over that day's swath, or over the one on file; or takes its minutes", () => {
  const onFile = of("ft", 12n);
  const paceOf = (typed: Parameters<typeof paceOfSpreader>[0], swath: Parameters<typeof paceOfSpreader>[1] = onFile) => paceOfSpreader(typed, swath);
  // 3 mph is 264 ft a minute.
  const walked = paceOf({ swath: "10 ft", speedMph: "3 mph" });
  expect(walked).toMatchObject({ kind: "swath-and-speed", swath: of("ft", 10n) });
  expect(walked.kind === "swath-and-speed" && compareExact(walked.distancePerMinute, exactly("ft", "264"))).toBe(0);
  expect(paceOf({ speedMph: "3" })).toMatchObject({ swath: onFile });
  expect(paceOf({ speedMph: "3" }, null)).toEqual(NO_PACE);
  expect(paceOf({ swath: "10 ft" })).toEqual(NO_PACE);
  expect(paceOf({})).toEqual(NO_PACE);
  expect(paceOf({ minutesPerThousand: "many" })).toEqual(NO_PACE);
  const timed = paceOf({ minutesPerThousand: "1.5" }, null);
  expect(timeOnLawns([of("sq ft", 2000n)], timed, 2, 4)).toMatchObject({ minutes: 6, basis: "calibration" });
});

test("a nominal pace says that nobody has timed it", () => {
  expect(asNominal(NONE)).toEqual(NONE);
  const time = timeOnLawns([of("sq ft", 1000n)], asNominal(TIMED), 1, 4);
  expect(time).toEqual({ minutes: 2, turns: 0, basis: "nominal" });
  expect(timeInWords(time)).toBe("About 2 min, at the nominal pace, which nobody has timed");
  expect(timeOnLawns([of("sq ft", 1000n)], asNominal(LANES), 1, 4).basis).toBe("nominal");
});
