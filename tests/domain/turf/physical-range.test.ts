import { describe, expect, test } from "vitest";
import {
  MOST_RAIN,
  MOST_WIND,
  amountRange,
  hoursOfDayRange,
  latitudeRange,
  longitudeRange,
  percentRange,
  refuseOutOfRange,
  temperatureRange,
} from "#domain/turf/physical-range";

describe("physical ranges", () => {
  test("both ends are inside", () => {
    expect(
      refuseOutOfRange([percentRange("humidity", "The humidity", 0), percentRange("humidity", "The humidity", 100)]),
    ).toBeUndefined();
    expect(refuseOutOfRange([])).toBeUndefined();
  });

  test("the first offender is named with what was found and what is allowed", () => {
    const refused = refuseOutOfRange([
      percentRange("a", "The first", 50),
      percentRange("b", "The second", 101),
      percentRange("c", "The third", -1),
    ]);
    expect(refused?.refusal).toEqual({
      kind: "bad-input",
      field: "b",
      found: "101 %",
      allowed: "from 0 to 100 %",
      sentence: "The second is 101 %; it must be from 0 to 100 %.",
    });
  });

  test("what is not a number is a missing fact", () => {
    expect(refuseOutOfRange([temperatureRange("air", "The air temperature", Number.NaN)])?.refusal).toMatchObject({
      kind: "missing-fact",
      field: "air",
      sentence: "The air temperature is not known.",
    });
  });

  test.each([
    [temperatureRange("t", "T", -91), "from -90 to 75 °C"],
    [temperatureRange("t", "T", 76), "from -90 to 75 °C"],
    [latitudeRange(-90.1), "from -90 to 90 °"],
    [longitudeRange(180.1), "from -180 to 180 °"],
    [hoursOfDayRange("h", "H", 24.1), "from 0 to 24 h"],
    [amountRange("r", "R", -0.1, MOST_RAIN.dayMillimeters), "from 0 to 1825 mm"],
    [amountRange("r", "R", Infinity, MOST_RAIN.hourMillimeters), "from 0 to 305 mm"],
    [amountRange("r", "R", 12.1, MOST_RAIN.hourInches), "from 0 to 12 in"],
    [amountRange("w", "W", 60.1, MOST_WIND.metersPerSecond), "from 0 to 60 m/s"],
    [amountRange("w", "W", 135, MOST_WIND.milesPerHour), "from 0 to 134 mph"],
  ])("%o is outside", (check, allowed) => expect(refuseOutOfRange([check])?.refusal.allowed).toBe(allowed));
});
