import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  BROWN_PATCH_THRESHOLDS,
  BROWN_PATCH_TURN_C,
  FIDANZA_INITIAL_CONDITIONS,
  judgeBrownPatch,
  judgeBrownPatchInitial,
  judgeBrownPatchKentucky,
} from "#domain/turf/brown-patch";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { between } from "../../support/real-numbers";

const judge = (meanRelativeHumidityPercent: number, minimumTemperatureC: number, threshold = 6) =>
  judgeBrownPatch({ meanRelativeHumidityPercent, minimumTemperatureC }, threshold);

describe("the two-variable index", () => {
  test("rises with humidity, and never passes its peak at 21.2 °C", () => {
    fc.assert(
      fc.property(between(0, 99), between(-20, 40), (percent, degreesC) => {
        const { index } = valueOf(judge(percent, degreesC));
        expect(valueOf(judge(percent + 1, degreesC)).index).toBeGreaterThan(index);
        expect(index).toBeLessThanOrEqual(valueOf(judge(percent, 1.4 / 0.066)).index + 1e-9);
      }),
    );
  });
  test("the threshold belongs to the warning", () => {
    const { index } = valueOf(judge(90, 18));
    expect(valueOf(judge(90, 18, index)).verdict).toBe("favorable");
    expect(valueOf(judge(80, 18, BROWN_PATCH_THRESHOLDS.published)).verdict).toBe("not-favorable");
    expect(valueOf(judge(80, 18, BROWN_PATCH_THRESHOLDS.kentucky)).verdict).toBe("favorable");
  });
  test("above the turn of its curve a hot humid night is never reported as safe", () => {
    expect(BROWN_PATCH_TURN_C).toBeCloseTo(21.21, 2);
    expect(valueOf(judge(90, 24))).toMatchObject({ index: expect.closeTo(6.592, 3) as number, verdict: "favorable" });
    expect(valueOf(judge(90, 27))).toMatchObject({ index: expect.closeTo(5.743, 3) as number, verdict: "cannot-rule-out" });
    fc.assert(
      fc.property(between(0, 100), between(21.22, 40), (percent, degreesC) => {
        expect(valueOf(judge(percent, degreesC)).verdict).not.toBe("not-favorable");
      }),
    );
    expect(valueOf(judge(50, 21.2)).verdict).toBe("not-favorable");
  });
  test.each([
    [101, 20, 6, "meanRelativeHumidityPercent"],
    [90, Number.NaN, 6, "minimumTemperatureC"],
    [90, 20, 60, "threshold"],
  ])("refuses %d %%, %d °C, threshold %d", (percent, degreesC, threshold, field) =>
    expect(refusalOf(judge(percent, degreesC, threshold)).field).toBe(field),
  );
});

const WET_DAY = {
  hoursAtOrAbove95PercentHumidity: 9,
  meanRelativeHumidityPercent: 80,
  leafWetHours: 8,
  rainMillimeters: 3,
  minimumAirTemperatureC: 17,
  minimumSoilTemperatureC: 17,
};

describe("the initial conditions", () => {
  test("are five, are listed with what was found, and say that they are not added up", () => {
    const answer = valueOf(
      judgeBrownPatchInitial({
        hoursAtOrAbove95PercentHumidity: 9,
        meanRelativeHumidityPercent: 80,
        leafWetHours: 2,
        rainMillimeters: 3,
        minimumAirTemperatureC: 17,
        minimumSoilTemperatureC: 12,
      }),
    );
    expect(answer.model).toBe(FIDANZA_INITIAL_CONDITIONS);
    expect(answer.conditions.map(({ isMet }) => isMet)).toEqual([true, true, false, true, false]);
    expect(answer.conditions.map(({ found }) => found)).toEqual([9, 80, 2, 17, 12]);
  });
  test("a day of 25 hours of wet leaves is refused", () => {
    const answer = judgeBrownPatchInitial({ ...WET_DAY, leafWetHours: 25 });
    expect(refusalOf(answer).field).toBe("leafWetHours");
    const flooded = { ...WET_DAY, rainMillimeters: 2000 };
    expect(refusalOf(judgeBrownPatchInitial(flooded))).toMatchObject({ field: "rainMillimeters", allowed: "from 0 to 1825 mm" });
  });
});

describe("the Kentucky model", () => {
  const hour = {
    airTemperatureC: 22,
    soilTemperatureC: 23,
    relativeHumidityPercent: 70,
    rainOrIrrigationMillimeters: 0,
  };
  const hours = (count: number, change: (index: number) => Partial<typeof hour>) =>
    Array.from({ length: count }, (_, index) => ({
      startsAtEpochMilliseconds: index * 3_600_000,
      ...hour,
      ...change(index),
    }));
  const humidEnd = (index: number) => (index >= 50 ? { relativeHumidityPercent: 97 } : {});

  test("rain counts in the 36 hours before the tenth humid hour, and not earlier or in it", () => {
    const rainAt = (wet: number) =>
      valueOf(
        judgeBrownPatchKentucky(
          hours(60, (index) => ({ ...humidEnd(index), ...(index === wet ? { rainOrIrrigationMillimeters: 3 } : {}) })),
        ),
      ).isFavorable;
    expect([22, 23, 40, 58, 59].map(rainAt)).toEqual([false, true, true, true, false]);
  });
  test("temperatures count in the 24 hours before it", () => {
    const coldAt = (cold: number) =>
      valueOf(
        judgeBrownPatchKentucky(
          hours(60, (index) => ({
            ...humidEnd(index),
            ...(index === 30 ? { rainOrIrrigationMillimeters: 3 } : {}),
            ...(index === cold ? { airTemperatureC: 15 } : {}),
          })),
        ),
      ).isFavorable;
    expect([34, 35, 58, 59].map(coldAt)).toEqual([true, false, false, true]);
  });
  test("humid hours need not follow each other, but lie in the last day", () => {
    const everyOther = hours(72, (index) => ({
      ...(index >= 48 && index % 2 === 0 ? { relativeHumidityPercent: 97 } : {}),
      rainOrIrrigationMillimeters: 1,
    }));
    expect(valueOf(judgeBrownPatchKentucky(everyOther))).toMatchObject({ humidHours: 12, isFavorable: true });
    const before = hours(72, (index) => ({
      ...(index < 40 ? { relativeHumidityPercent: 97 } : {}),
      rainOrIrrigationMillimeters: 1,
    }));
    expect(valueOf(judgeBrownPatchKentucky(before))).toMatchObject({ humidHours: 0, isFavorable: false });
  });
  test("with nine humid hours only that condition is answered", () => {
    const nine = hours(60, (index) => (index >= 51 ? { relativeHumidityPercent: 97 } : {}));
    expect(valueOf(judgeBrownPatchKentucky(nine)).conditions).toHaveLength(1);
  });
  test("refuses too few hours, a gap, no 36 hours before, and impossible readings", () => {
    expect(refusalOf(judgeBrownPatchKentucky(hours(23, humidEnd))).field).toBe("hours");
    expect(refusalOf(judgeBrownPatchKentucky(hours(1, humidEnd))).sentence).toBe("Only 1 hour is on file; the model needs 24.");
    expect(refusalOf(judgeBrownPatchKentucky(hours(2, humidEnd))).sentence).toBe("Only 2 hours are on file; the model needs 24.");
    expect(refusalOf(judgeBrownPatchKentucky(hours(60, humidEnd).filter((_, index) => index !== 20))).field).toBe(
      "1970-01-01T20:00",
    );
    expect(
      refusalOf(judgeBrownPatchKentucky(hours(30, (index) => (index >= 20 ? { relativeHumidityPercent: 97 } : {}))))
        .sentence,
    ).toContain("36 hours");
    expect(
      refusalOf(judgeBrownPatchKentucky(hours(60, (index) => (index === 5 ? { soilTemperatureC: Number.NaN } : {}))))
        .field,
    ).toBe("hour 6 soilTemperatureC");
    expect(refusalOf(judgeBrownPatchKentucky(hours(60, () => ({ rainOrIrrigationMillimeters: 306 }))))).toMatchObject({
      field: "hour 1 rainOrIrrigationMillimeters",
      allowed: "from 0 to 305 mm",
    });
  });
});
