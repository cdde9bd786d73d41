import { describe, expect, test } from "vitest";
import { readClosedSoil, readHeavyRain, readRainfast, readTemperature, readTemperatureAhead, readWeatherLimits, readWind } from "#domain/label/label-weather";
import { accept } from "#domain/foundation/outcome";
import { aUseText } from "../../support/label-texts";

describe("temperature", () => {
  test.each([
    ["under 80 \u00B0F", 80, "forbidden"],
    ["below 80 F", 80, "forbidden"],
    ["not at 80 \u00B0F or above", 80, "forbidden"],
    ["up to 85 \u00B0F", 85, "allowed"],
    ["at most 85 degrees", 85, "allowed"],
    ["not above 90\u00B0F", 90, "allowed"],
    ["90 \u00B0F or less", 90, "allowed"],
  ])("highest: %s", (value, limitF, reaching) => expect(readTemperature(value, "highest")).toEqual(accept({ limitF, reaching })));

  test.each([
    ["at least 50 \u00B0F", 50, "allowed"],
    ["50 \u00B0F or above", 50, "allowed"],
    ["not below 50 \u00B0F", 50, "allowed"],
    ["above 50 \u00B0F", 50, "forbidden"],
  ])("lowest: %s", (value, limitF, reaching) => expect(readTemperature(value, "lowest")).toEqual(accept({ limitF, reaching })));

  test.each([["80 \u00B0F", "highest"], ["80 \u00B0F or above", "highest"], ["under 50 \u00B0F", "lowest"], ["under 27 \u00B0C", "highest"], ["hot", "highest"], ["under 80", "highest"]] as const)(
    "%s as the %s is refused: it does not say whether the figure itself is allowed, or of what",
    (value, bound) => expect(readTemperature(value, bound).ok).toBe(false),
  );

  test("afterwards, with its hours", () => {
    expect(readTemperatureAhead("under 85 \u00B0F for 24 hours")).toEqual(accept({ limitF: 85, reaching: "forbidden", withinHours: 24 }));
    expect(readTemperatureAhead("up to 85 \u00B0F for the next 2 days")).toEqual(accept({ limitF: 85, reaching: "allowed", withinHours: 48 }));
    expect(readTemperatureAhead("under 85 \u00B0F").ok).toBe(false);
  });
});

test("wind, rain and soil", () => {
  expect(readWind("10 mph", "highest")).toEqual(accept({ limitMph: 10 }));
  expect(readWind("up to 10 mph", "highest")).toEqual(accept({ limitMph: 10 }));
  expect(readWind("at least 3 mph", "lowest")).toEqual(accept({ limitMph: 3 }));
  expect(readWind("3 mph or more", "lowest")).toEqual(accept({ limitMph: 3 }));
  expect(readWind("10", "highest").ok).toBe(false);
  for (const value of ["at least 3 mph", "3 mph or more", "from 3 mph"]) expect(readWind(value, "highest").ok).toBe(false);
  for (const value of ["up to 10 mph", "10 mph or less", "not over 10 mph"]) expect(readWind(value, "lowest").ok).toBe(false);
  expect(readRainfast("4 hours")).toEqual(accept({ minutes: 240 }));
  expect(readRainfast("1 day")).toEqual(accept({ minutes: 1440 }));
  expect(readRainfast("1 month").ok).toBe(false);
  expect(readHeavyRain("0.5 in within 24 hours")).toEqual(accept({ inches: 0.5, withinHours: 24 }));
  expect(readHeavyRain("more than 1/2 in of rain within 1 day")).toEqual(accept({ inches: 0.5, withinHours: 24 }));
  expect(readHeavyRain("0.5 in").ok).toBe(false);
  expect(readClosedSoil("frozen or saturated")).toEqual(accept({ closedWhen: ["frozen", "saturated"] }));
  expect(readClosedSoil("dry").ok).toBe(false);
});

const AUTHORITY = { basis: "label", source: "label of Ironside" } as const;

test("all limits of a use, each with who says so", () => {
  const read = readWeatherLimits("Ironside", aUseText({ highestTemperature: "under 80 \u00B0F", rainfast: "12 hours", highestWind: "none" }), AUTHORITY);
  expect(read).toEqual(
    accept({
      lowestTemperature: "unknown",
      highestTemperature: { limitF: 80, reaching: "forbidden", ...AUTHORITY },
      highestTemperatureAhead: "unknown",
      lowestWind: "unknown",
      highestWind: "none",
      rainfast: { minutes: 720, ...AUTHORITY },
      heavyRain: "unknown",
      soil: "unknown",
    }),
  );
});

test("a figure that can't be meant is complained of at its own field", () => {
  const read = readWeatherLimits("Ironside", aUseText({ highestTemperature: "under 800 \u00B0F", highestWind: "1000 mph", rainfast: "4 hours" }), AUTHORITY);
  expect(read.ok ? [] : Object.keys(read.refusal)).toEqual(["highestTemperature", "highestWind"]);
});
