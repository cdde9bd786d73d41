import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import {
  type WaterDay,
  judgeDriving,
  rootZoneWater,
  runWaterBalance,
  stressCoefficient,
  waterDepthMillimeters,
} from "#domain/turf/water-balance";
import { day, refusalOf, valueOf } from "../../support/domain-answers";
import { between } from "../../support/real-numbers";

const first = day("2026-06-01");
const zone = {
  rootDepthMillimeters: 150,
  fieldCapacityPercent: 28,
  wiltingPointPercent: 12,
  readilyAvailableShare: 0.5,
};
type Water = Omit<WaterDay, "date">;
const seriesOf = (days: readonly Water[]) => days.map((each, index) => ({ date: addDays(first, index), ...each }));
const run = (days: readonly Water[], depletionBeforeMillimeters: number) =>
  runWaterBalance(zone, seriesOf(days), {
    from: first,
    through: addDays(first, days.length - 1),
    depletionBeforeMillimeters,
  });
const dry = { effectiveRainMillimeters: 0, irrigationMillimeters: 0, waterUseMillimeters: 5 };

describe("a root zone", () => {
  test("holds what lies between its limits", () => {
    const water = valueOf(rootZoneWater(zone));
    expect(water.totalAvailableMillimeters).toBeCloseTo(24, 12);
    expect(water.readilyAvailableMillimeters).toBeCloseTo(12, 12);
    expect(waterDepthMillimeters(28, 12, 150)).toBeCloseTo(-24, 12);
  });
  test.each([
    ["rootDepthMillimeters", { rootDepthMillimeters: 0 }],
    ["wiltingPointPercent", { wiltingPointPercent: 28 }],
    ["fieldCapacityPercent", { fieldCapacityPercent: Number.NaN }],
    ["readilyAvailableShare", { readilyAvailableShare: 1 }],
  ])("refuses an impossible %s", (field, change) =>
    expect(refusalOf(rootZoneWater({ ...zone, ...change })).field).toBe(field),
  );
  test("stress begins beyond the readily available water and is whole at the wilting point", () => {
    const water = valueOf(rootZoneWater(zone));
    expect([0, 12, 18, 24].map((depletion) => stressCoefficient(water, depletion))).toEqual([
      1,
      1,
      expect.closeTo(0.5, 9),
      0,
    ]);
  });
});

describe("a water balance", () => {
  test("dries day by day, then slower under stress, and says when water is needed", () => {
    const lines = valueOf(run([dry, dry, dry, dry], 0));
    expect(lines.map(({ depletionMillimeters }) => depletionMillimeters)).toEqual([
      5,
      10,
      15,
      expect.closeTo(18.75, 9),
    ]);
    expect(lines.map(({ needsWater }) => needsWater)).toEqual([false, false, true, true]);
    expect(lines[3]?.stressCoefficient).toBeCloseTo(0.75, 9);
  });
  test("rain fills it to field capacity and the rest drains", () => {
    const [line] = valueOf(run([{ ...dry, effectiveRainMillimeters: 20 }], 8));
    expect(line).toMatchObject({ depletionMillimeters: 0, drainageMillimeters: 7, actualUseMillimeters: 5 });
  });
  test("neither loses nor makes water, and stays within what the zone holds", () => {
    const amount = between(0, 60);
    const anyDay = fc.record({
      effectiveRainMillimeters: amount,
      irrigationMillimeters: amount,
      waterUseMillimeters: between(0, 30),
    });
    fc.assert(
      fc.property(fc.array(anyDay, { minLength: 1, maxLength: 20 }), between(0, 24), (days, before) => {
        const lines = valueOf(run(days, Math.min(before, valueOf(rootZoneWater(zone)).totalAvailableMillimeters)));
        let depletion = before;
        lines.forEach((line, index) => {
          const each = days[index];
          if (each === undefined) throw new Error("a line without a day");
          const came = each.effectiveRainMillimeters + each.irrigationMillimeters;
          const went = line.actualUseMillimeters + line.drainageMillimeters;
          expect(line.depletionMillimeters).toBeCloseTo(depletion - came + went, 6);
          expect(line.depletionMillimeters).toBeGreaterThanOrEqual(0);
          expect(line.depletionMillimeters).toBeLessThanOrEqual(24 + 1e-9);
          expect(line.actualUseMillimeters).toBeLessThanOrEqual(each.waterUseMillimeters + 1e-9);
          depletion = line.depletionMillimeters;
        });
      }),
    );
  });
  test("refuses a gap, a beginning beyond the zone, and an amount below zero", () => {
    const gap = seriesOf([dry, dry, dry]).filter((_, index) => index !== 1);
    expect(
      refusalOf(runWaterBalance(zone, gap, { from: first, through: addDays(first, 2), depletionBeforeMillimeters: 0 }))
        .field,
    ).toBe("2026-06-02");
    expect(refusalOf(run([dry], 25)).field).toBe("depletionBeforeMillimeters");
    expect(refusalOf(run([{ ...dry, effectiveRainMillimeters: -1 }], 0)).field).toBe(
      "2026-06-01 effectiveRainMillimeters",
    );
    expect(
      refusalOf(
        runWaterBalance({ ...zone, wiltingPointPercent: 40 }, [], {
          from: first,
          through: first,
          depletionBeforeMillimeters: 0,
        }),
      ).field,
    ).toBe("wiltingPointPercent");
  });
});

describe("water beyond this earth", () => {
  test.each([
    ["effectiveRainMillimeters", "from 0 to 1825 mm"],
    ["irrigationMillimeters", "from 0 to 250 mm"],
    ["waterUseMillimeters", "from 0 to 30 mm"],
  ])("%s of 1.7e308 on two days is refused by its day", (field, allowed) => {
    const flood = { ...dry, [field]: 1.7e308 };
    expect(refusalOf(run([dry, flood, flood], 0))).toMatchObject({ field: `2026-06-02 ${field}`, found: "1.7e+308 mm", allowed });
  });
  test("a depletion of more than any root zone holds is refused", () => {
    expect(refusalOf(judgeDriving(2001, 4))).toMatchObject({ field: "depletionMillimeters", allowed: "from 0 to 2000 mm" });
    expect(refusalOf(judgeDriving(4, 1e9)).field).toBe("neededDepletionMillimeters");
  });
});

describe("too wet to drive", () => {
  test("near field capacity, by the company's own figure, and it says what it rests on", () => {
    expect(valueOf(judgeDriving(3.9, 4))).toMatchObject({
      kind: "too-wet",
      depletionMillimeters: 3.9,
      neededDepletionMillimeters: 4,
    });
    expect(valueOf(judgeDriving(4, 4)).kind).toBe("dry-enough");
    expect(valueOf(judgeDriving(4, 4)).basis).toContain("not measured on the lawn");
  });
  test("drier soil is never wetter", () => {
    fc.assert(
      fc.property(between(0, 50), between(0, 50), (depletion, needed) => {
        if (valueOf(judgeDriving(depletion, needed)).kind === "dry-enough")
          expect(valueOf(judgeDriving(depletion + 1, needed)).kind).toBe("dry-enough");
      }),
    );
  });
  test("unknown figures are refused", () => expect(refusalOf(judgeDriving(Number.NaN, 4)).kind).toBe("missing-fact"));
});
