import { describe, expect, test } from "vitest";
import {
  DEFAULT_SPRAY_WEATHER_SETTINGS,
  type SprayWeatherSettings,
  limitsAskedOf,
  refuseImpossibleLimits,
  stated,
} from "#domain/weather/spray-limits";
import { FREE_OF_LIMITS, label } from "../../support/spray-builders";

const mixOf = (change: Partial<typeof FREE_OF_LIMITS>) => [
  { mixId: "one", method: "spray" as const, products: [{ ...FREE_OF_LIMITS, ...change }] },
];
const fieldOf = (mixes = mixOf({}), bearingDegrees = 90, settings: Partial<SprayWeatherSettings> = {}) =>
  refuseImpossibleLimits(mixes, [{ name: "bed", bearingDegrees }], { ...DEFAULT_SPRAY_WEATHER_SETTINGS, ...settings })
    ?.refusal.field;

describe("limits", () => {
  test("ordinary ones and the defaults pass", () => {
    expect(
      fieldOf(
        mixOf({
          highestTemperature: { limitF: 90, reaching: "allowed", ...label },
          rainfast: { minutes: 240, ...label },
        }),
      ),
    ).toBeUndefined();
  });
  test.each([
    ["lowestTemperature", { lowestTemperature: { limitF: 500, reaching: "allowed", ...label } }],
    ["highestTemperature", { highestTemperature: { limitF: Number.NaN, reaching: "allowed", ...label } }],
    [
      "highestTemperatureAhead",
      { highestTemperatureAhead: { limitF: 85, reaching: "allowed", withinHours: -1, ...label } },
    ],
    ["lowestWind", { lowestWind: { limitMph: -3, ...label } }],
    ["highestWind", { highestWind: { limitMph: 1000, ...label } }],
    ["rainfast", { rainfast: { minutes: -60, ...label } }],
    ["heavyRain", { heavyRain: { inches: 0, withinHours: 24, ...label } }],
  ] as const)("an impossible %s is refused by product and name", (field, change) =>
    expect(fieldOf(mixOf(change))).toBe(`Alpha ${field}`),
  );
  test.each([
    ["highestWind", { highestWind: { limitMph: -1, ...label } }],
    ["highestWind", { highestWind: { limitMph: 135, ...label } }],
    ["towardsWithinDegrees", { towardsWithinDegrees: 181 }],
    ["rainFromInches", { rainFromInches: 0 }],
    ["rainChanceFromPercent", { rainChanceFromPercent: 101 }],
  ] as const)("an impossible setting %s is refused", (field, settings) =>
    expect(fieldOf(mixOf({}), 90, settings)).toBe(field),
  );
  test("a bearing that is none is refused", () => expect(fieldOf(mixOf({}), 400)).toBe("bearing bed"));
  test("of what is spread, wind and leaf rain count where they are stated and are not asked where nobody has read them", () => {
    const unread = { ...FREE_OF_LIMITS, lowestWind: "unknown", highestWind: "unknown", rainfast: "unknown", heavyRain: "unknown" } as const;
    expect(limitsAskedOf(unread, "spray")).toBe(unread);
    expect(limitsAskedOf(unread, "granular")).toEqual({ ...FREE_OF_LIMITS, heavyRain: "unknown" });
    const windy = { ...FREE_OF_LIMITS, highestWind: { limitMph: 5, ...label } };
    expect(limitsAskedOf(windy, "granular")).toEqual(windy);
  });
  test("stated gives a limit only when there is one", () => {
    expect(stated<{ minutes: number }>("none")).toEqual([]);
    expect(stated<{ minutes: number }>("unknown")).toEqual([]);
    expect(stated<{ minutes: number }>({ minutes: 60, ...label })).toHaveLength(1);
  });
});
