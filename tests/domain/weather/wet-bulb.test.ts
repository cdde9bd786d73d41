import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  classifyDeltaT,
  deltaT,
  psychrometricWetBulbC,
  relativeHumidityPercent,
  stullWetBulbC,
} from "#domain/weather/wet-bulb";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { between } from "../../support/real-numbers";

const temperature = between(-10, 45);
const humidity = between(5, 99);
const SEA_LEVEL_KPA = 101.325;

describe("the psychrometric wet bulb", () => {
  test("lies between the dew point and the air, and reads the humidity it was made from", () => {
    fc.assert(
      fc.property(temperature, humidity, between(70, 105), (degreesC, percent, pressure) => {
        const wetBulbC = valueOf(psychrometricWetBulbC(degreesC, percent, pressure));
        expect(wetBulbC).toBeLessThanOrEqual(degreesC);
        expect(relativeHumidityPercent(degreesC, wetBulbC, pressure)).toBeCloseTo(percent, 6);
      }),
    );
  });
  test("rises with humidity, to the air's own temperature when it is saturated", () => {
    fc.assert(
      fc.property(temperature, humidity, (degreesC, percent) => {
        expect(valueOf(psychrometricWetBulbC(degreesC, percent + 1, SEA_LEVEL_KPA))).toBeGreaterThan(
          valueOf(psychrometricWetBulbC(degreesC, percent, SEA_LEVEL_KPA)),
        );
        expect(valueOf(psychrometricWetBulbC(degreesC, 100, SEA_LEVEL_KPA))).toBeCloseTo(degreesC, 9);
      }),
    );
  });
  test("has an answer for bone-dry air", () =>
    expect(valueOf(psychrometricWetBulbC(30, 0, SEA_LEVEL_KPA))).toBeLessThan(12));
  test.each([
    [90, 50, 100, "temperatureC"],
    [20, 101, 100, "relativeHumidityPercent"],
    [20, 50, 1013, "pressureKilopascals"],
  ])("refuses %d °C, %d %%, %d kPa", (degreesC, percent, pressure, field) =>
    expect(refusalOf(psychrometricWetBulbC(degreesC, percent, pressure)).field).toBe(field),
  );
});

describe("Stull's fit", () => {
  // Up to 30 °C: in hot dry air his psychrometer and that of FAO-56 differ by a tenth of their own.
  test("keeps its published error against the psychrometer, from -1 to +0.65 °C, and is refused outside", () => {
    fc.assert(
      fc.property(between(0, 30), between(20, 99), (degreesC, percent) => {
        const error =
          valueOf(stullWetBulbC(degreesC, percent)) - valueOf(psychrometricWetBulbC(degreesC, percent, SEA_LEVEL_KPA));
        expect(error).toBeGreaterThan(-1);
        expect(error).toBeLessThan(0.65);
        expect(refusalOf(stullWetBulbC(degreesC, percent / 100)).field).toBe("relativeHumidityPercent");
      }),
    );
  });
});

describe("Delta T", () => {
  test("is the depression, with its class", () => {
    const answer = valueOf(deltaT(30, 30, SEA_LEVEL_KPA));
    expect(answer.deltaTC).toBeCloseTo(30 - valueOf(psychrometricWetBulbC(30, 30, SEA_LEVEL_KPA)), 12);
    expect(answer.classification).toBe("above-10");
    expect(valueOf(deltaT(15, 95, SEA_LEVEL_KPA)).classification).toBe("below-2");
    expect(deltaT(15, -5, SEA_LEVEL_KPA).ok).toBe(false);
  });
  test("the classes are in order", () => {
    const order = ["below-2", "ideal", "above-8", "above-10"];
    fc.assert(
      fc.property(between(0, 20), between(0, 20), (one, other) => {
        expect(order.indexOf(classifyDeltaT(Math.min(one, other)))).toBeLessThanOrEqual(
          order.indexOf(classifyDeltaT(Math.max(one, other))),
        );
      }),
    );
  });
});
