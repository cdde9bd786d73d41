import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { measurePace, milesPerHourOf, minutesFromSeconds, secondsRange } from "#domain/equipment/pace";
import { compareExact, exactly } from "#domain/quantities/exact-quantity";
import { of, zero } from "#domain/quantities/quantity";
import { rational, reduce } from "#domain/quantities/rational";
import { refuseOutOfRange } from "#domain/turf/physical-range";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { between } from "../../support/real-numbers";

const course = of("ft", 176n);
const timed = (...seconds: number[]) => measurePace({ kind: "timed-course", course, seconds });

test("3 mph are 264 ft a minute", () => {
  const pace = valueOf(measurePace({ kind: "speed", milesPerHour: 3 }));
  expect(compareExact(pace.distancePerMinute, exactly("ft", 264n))).toBe(0);
  expect(pace.uncertainty).toEqual({ kind: "not-given" });
});

test("176 ft in 40 s are 3 mph, on average and with the spread of the runs", () => {
  const pace = valueOf(timed(38, 40, 42));
  expect(compareExact(pace.distancePerMinute, exactly("ft", 264n))).toBe(0);
  expect(pace.uncertainty).toEqual({ kind: "spread-of-repeats", part: rational(1n, 20n), repeats: 3 });
});

test("a speed comes back from its course, for any", () => {
  fc.assert(
    fc.property(between(0.2, 20), (milesPerHour) => {
      const { distancePerMinute } = valueOf(measurePace({ kind: "speed", milesPerHour }));
      expect(milesPerHourOf(distancePerMinute)).toBeCloseTo(milesPerHour, 9);
      const again = valueOf(measurePace({ kind: "timed-course", course: distancePerMinute, seconds: [60] }));
      expect(compareExact(again.distancePerMinute, distancePerMinute)).toBe(0);
    }),
  );
});

test("a time by the watch is exact in thousandths", () => {
  expect(reduce(minutesFromSeconds(40.5))).toEqual(rational(27n, 40n));
});

describe("refused are", () => {
  test.each([0, 0.19, 20.1, -3])("a speed of %d mph", (milesPerHour) => {
    expect(refusalOf(measurePace({ kind: "speed", milesPerHour }))).toMatchObject({ kind: "bad-input", field: "milesPerHour" });
  });
  test("an unknown speed", () => {
    expect(refusalOf(measurePace({ kind: "speed", milesPerHour: Number.NaN })).kind).toBe("missing-fact");
  });
  test("a course without length", () => {
    expect(refusalOf(measurePace({ kind: "timed-course", course: zero("length"), seconds: [40] })).field).toBe("course");
  });
  test.each([
    ["2640", [60], "2,640 ft in that time are 30 mph; nobody goes so fast. From 0.2 to 20 mph can be meant: look at the length of the course and at its time."],
    ["1760.01", [60], "1,760 ft in that time are 20.0001 mph; nobody goes so fast. From 0.2 to 20 mph can be meant: look at the length of the course and at its time."],
    ["17.6", [61], "17.6 ft in that time are 0.197 mph; nobody goes so slowly. From 0.2 to 20 mph can be meant: look at the length of the course and at its time."],
    ["176", [5, 6], "176 ft in that time are 21.82 mph; nobody goes so fast. From 0.2 to 20 mph can be meant: look at the length of the course and at its time."],
  ])("a course of %s ft in %j s, by the speed that it comes to", (feet, seconds, sentence) => {
    expect(refusalOf(measurePace({ kind: "timed-course", course: of("ft", feet), seconds }))).toMatchObject({ kind: "bad-input", field: "course", sentence });
  });
  test("no course at the ends of what can be meant", () => {
    expect(milesPerHourOf(valueOf(measurePace({ kind: "timed-course", course: of("ft", 1760n), seconds: [60] })).distancePerMinute)).toBe(20);
    expect(milesPerHourOf(valueOf(measurePace({ kind: "timed-course", course: of("ft", "17.6"), seconds: [60] })).distancePerMinute)).toBe(0.2);
  });
  test("a course that was not timed, or in no time", () => {
    expect(refusalOf(timed())).toMatchObject({ kind: "missing-fact", field: "seconds" });
    expect(refusalOf(timed(40, 0.5)).field).toBe("seconds");
  });
  test("times of under a second and over two hours", () => {
    expect(refuseOutOfRange([secondsRange("seconds", "The time", 7201)])?.refusal.found).toBe("7201 s");
    expect(refuseOutOfRange([secondsRange("seconds", "The time", 7200)])).toBeUndefined();
  });
});
