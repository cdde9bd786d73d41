import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { depthWords, exactText, irrigationRun, type IrrigationStation } from "#domain/mixing/irrigation-run";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rational } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { FRONT } from "../../support/aftercare-builders";

const quarter = { least: of("in", "0.25"), most: "none" } as const;
const runOf = (station: Partial<IrrigationStation>, depth: Parameters<typeof irrigationRun>[1] = quarter) =>
  valueOf(irrigationRun({ ...FRONT, ...station }, depth, "us"));

describe("minutes from a station's own rate", () => {
  // 96.25 x 12 gpm / 900 sq ft = 1.28 in an hour, half an inch: 23.4 min, in runs of 12 (calcady.com, precipitation rate).
  test("half an inch at 1.28333 in an hour is 24 whole minutes, in two runs of 12", () => {
    const run = runOf(
      { depthPerHour: exactly("in", rational(9625n * 12n, 90_000n)), cycle: { longestRunMinutes: 12, soakMinutes: 30 } },
      { least: of("in", "0.5"), most: "none" },
    );
    expect(run).toMatchObject({ totalMinutes: 24, runsMinutes: [12, 12], soakMinutes: 30, elapsedMinutes: 54, rounding: "up-to-whole-minute" });
    expect(run.sentence).toBe("Front: 12, then 12 min, with 30 min of rest between.");
  });
  test.each([
    ["exact", "0.75", "none", { totalMinutes: 20, rounding: "unchanged" }],
    ["up", "0.7", "none", { totalMinutes: 22, rounding: "up-to-whole-minute" }],
    ["a most that is not passed", "0.7", "0.3", { totalMinutes: 22, rounding: "up-to-whole-minute" }],
    ["never past the most", "0.7", "0.25", { kind: "no-minutes" }],
  ])("%s", (_name, rate, most, expected) => {
    const depth = { least: of("in", "0.25"), most: most === "none" ? ("none" as const) : of("in", most) };
    expect(runOf({ depthPerHour: of("in", rate) }, depth)).toMatchObject(expected);
  });
  test.each([
    ["0.7", "0.25", "Front: 21 min put down 0.245 in and 22 min put down 0.257 in; wanted are at least ¼ in and at most ¼ in."],
    ["40", "0.3", "Front: 1 min put down 0.667 in; wanted are at least ¼ in and at most 0.3 in."],
  ])("at %s in an hour no whole minute is within: both are said, and no minutes given", (rate, most, sentence) => {
    const run = runOf({ depthPerHour: of("in", rate) }, { least: of("in", "0.25"), most: of("in", most) });
    expect(run).toEqual({ kind: "no-minutes", stationName: "Front", sentence });
  });
  test("minutes that are given put down at least the least and at most the most, and none are kept back that would", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 30 }), (rate, least, more) => {
        const hundredths = (value: number) => exactly("in", rational(BigInt(value), 100n));
        const run = runOf({ depthPerHour: hundredths(rate) }, { least: hundredths(least), most: hundredths(least + more) });
        const within = Array.from({ length: 1441 }, (_, minutes) => minutes).filter((minutes) => rate * minutes >= 60 * least && rate * minutes <= 60 * (least + more));
        if (run.kind === "run") expect(within[0]).toBe(run.totalMinutes);
        else expect([run.kind, within]).toEqual(["no-minutes", []]);
      }),
    );
  });
  test("a station that would run for more than a day has no minutes, however little it gives", () => {
    for (const rate of [rational(1n, 100n), rational(1n, 1_000_000n)]) {
      const run = runOf({ depthPerHour: exactly("in", rate), cycle: { longestRunMinutes: 1, soakMinutes: 1 } }, { least: exactly("in", "0.5"), most: "none" });
      expect(run).toMatchObject({ kind: "no-minutes", sentence: expect.stringContaining("more than a day") as string });
    }
    expect(runOf({ depthPerHour: exactly("in", "0.01") }, { least: exactly("in", "0.24"), most: "none" })).toMatchObject({ kind: "run", totalMinutes: 1440 });
  });
  test("runs are as equal as whole minutes go", () => {
    expect(runOf({ cycle: { longestRunMinutes: 9, soakMinutes: 0 } })).toMatchObject({ runsMinutes: [7, 7, 6], elapsedMinutes: 20 });
  });
  test("a run of just the longest is one, and a minute less makes two", () => {
    expect(runOf({ cycle: { longestRunMinutes: 20, soakMinutes: 30 } })).toMatchObject({ runsMinutes: [20], elapsedMinutes: 20, sentence: "Front: 20 min." });
    expect(runOf({ cycle: { longestRunMinutes: 19, soakMinutes: 30 } })).toMatchObject({ runsMinutes: [10, 10], elapsedMinutes: 50 });
  });
  test("a most that is just reached is kept", () => expect(runOf({}, { least: of("in", "0.25"), most: of("in", "0.25") })).toMatchObject({ totalMinutes: 20 }));
  test("the longest run and the rest may be a day", () => {
    expect(runOf({ cycle: { longestRunMinutes: 1440, soakMinutes: 1440 } })).toMatchObject({ runsMinutes: [20] });
    expect(runOf({ cycle: { longestRunMinutes: 1, soakMinutes: 0 } })).toMatchObject({ elapsedMinutes: 20 });
  });
  test("what the minutes put down is kept exactly", () => {
    expect(runOf({})).toMatchObject({ depthReached: String(of("in", "0.25").amount) });
  });
  test("the same rate and depth in millimeters give the same minutes", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 200 }), (rateHundredths, depthHundredths) => {
        const inches = runOf({ depthPerHour: exactly("in", rational(BigInt(rateHundredths), 100n)) }, { least: exactly("in", rational(BigInt(depthHundredths), 100n)), most: "none" });
        const millimeters = runOf({ depthPerHour: exactly("mm", rational(BigInt(rateHundredths) * 254n, 1000n)) }, { least: exactly("mm", rational(BigInt(depthHundredths) * 254n, 1000n)), most: "none" });
        expect(millimeters).toEqual(inches);
      }),
    );
  });
  test("runs add up, none is longer than allowed, and the least is reached", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 400 }), fc.integer({ min: 1, max: 60 }), (rate, longestRunMinutes) => {
        const run = runOf({ depthPerHour: of("in", rational(BigInt(rate), 100n)), cycle: { longestRunMinutes, soakMinutes: 10 } });
        if (run.kind !== "run") throw new Error("a tested station has minutes");
        expect(run.runsMinutes.reduce((total, one) => total + one, 0)).toBe(run.totalMinutes);
        expect(Math.max(...run.runsMinutes)).toBeLessThanOrEqual(longestRunMinutes);
        expect(run.totalMinutes * rate).toBeGreaterThanOrEqual(0.25 * 60 * 100 - 1e-6);
        expect((run.totalMinutes - 1) * rate).toBeLessThan(0.25 * 60 * 100);
      }),
    );
  });
});

test("without a test there is the depth and how to test, never minutes of watering", () => {
  const run = runOf({ depthPerHour: "not-tested" });
  expect(run.kind).toBe("test-first");
  expect(run).not.toHaveProperty("totalMinutes");
  expect(run.sentence).toContain("Front: ¼ in. Its rate has not been tested.");
});

test.each([
  ["no water", { depthPerHour: of("in", "0") }, "Front depthPerHour"],
  ["a run of nothing", { cycle: { longestRunMinutes: 0, soakMinutes: 10 } }, "Front cycle"],
  ["a run of more than a day", { cycle: { longestRunMinutes: 1441, soakMinutes: 10 } }, "Front cycle"],
  ["a rest of more than a day", { cycle: { longestRunMinutes: 10, soakMinutes: 1441 } }, "Front cycle"],
  ["a rest below zero", { cycle: { longestRunMinutes: 10, soakMinutes: -1 } }, "Front cycle"],
  ["part of a minute", { cycle: { longestRunMinutes: 10, soakMinutes: 0.5 } }, "Front cycle"],
])("%s is refused", (_name, change, field) => {
  expect(refusalOf(irrigationRun({ ...FRONT, ...change }, quarter, "us")).field).toBe(field);
});

test("depths in words and exact text", () => {
  expect([depthWords(of("in", "0.25"), "us"), depthWords(of("in", "0.25"), "metric")]).toEqual(["¼ in", "6.4 mm"]);
  expect([depthWords(of("in", "0.125"), "us"), depthWords(of("in", "0.375"), "us"), depthWords(of("in", "0.5"), "us"), depthWords(of("in", "0.13"), "us")]).toEqual(["0.125 in", "0.375 in", "½ in", "0.13 in"]);
  expect(depthWords(of("mm", 6n), "us")).toBe("0.236 in");
  expect([exactText(rational(6n, 3n)), exactText(rational(2n, 6n))]).toEqual(["2", "1/3"]);
});
