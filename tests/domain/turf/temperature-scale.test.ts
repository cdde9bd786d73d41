import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  celsiusFromFahrenheit,
  convertTemperature,
  convertTemperatureDifference,
  fahrenheitFromCelsius,
  temperatureSign,
} from "#domain/turf/temperature-scale";
import { between } from "../../support/real-numbers";

describe("temperature scales", () => {
  test.each([
    [-40, -40],
    [0, 32],
    [20, 68],
    [31, 87.8],
    [100, 212],
  ])("%d °C is %d °F", (degreesC, degreesF) => {
    expect(fahrenheitFromCelsius(degreesC)).toBeCloseTo(degreesF, 10);
    expect(celsiusFromFahrenheit(degreesF)).toBeCloseTo(degreesC, 10);
    expect(convertTemperature(degreesC, "celsius", "fahrenheit")).toBeCloseTo(degreesF, 10);
    expect(convertTemperature(degreesF, "fahrenheit", "celsius")).toBeCloseTo(degreesC, 10);
  });

  test("a temperature on its own scale isn't touched", () => {
    expect(convertTemperature(12.3, "celsius", "celsius")).toBe(12.3);
    expect(convertTemperatureDifference(12.3, "fahrenheit", "fahrenheit")).toBe(12.3);
  });

  test("a difference converts without the 32 degrees", () => {
    expect(convertTemperatureDifference(10, "celsius", "fahrenheit")).toBe(18);
    expect(convertTemperatureDifference(18, "fahrenheit", "celsius")).toBe(10);
  });

  test("there and back again", () => {
    fc.assert(
      fc.property(between(-100, 200), (degrees) => {
        expect(
          convertTemperature(convertTemperature(degrees, "celsius", "fahrenheit"), "fahrenheit", "celsius"),
        ).toBeCloseTo(degrees, 9);
      }),
    );
  });

  test("each scale has its sign", () =>
    expect([temperatureSign("celsius"), temperatureSign("fahrenheit")]).toEqual(["°C", "°F"]));
});
