import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { localHours } from "#domain/weather/local-hours";
import { DEFAULT_SPRAY_WEATHER_SETTINGS, type SensitivePlace } from "#domain/weather/spray-limits";
import { type WeatherHour, worstVerdict } from "#domain/weather/spray-reasons";
import { angleBetweenDegrees, judgeSprayHour } from "#domain/weather/spraying-hour";
import { sunTimesOn } from "#domain/weather/sun-times";
import { day, valueOf } from "../../support/domain-answers";
import { FAIR } from "../../support/spray-builders";
import { between } from "../../support/real-numbers";

const NEW_YORK = "America/New_York";
const date = day("2026-05-04");
const place = { latitudeDegrees: 39.96, longitudeDegrees: -83, elevationMeters: 240 };
const sun = valueOf(sunTimesOn(date, NEW_YORK, place));

function judge(change: Partial<WeatherHour>, sensitivePlaces: readonly SensitivePlace[] = [], index = 12) {
  const slot = valueOf(localHours(date, NEW_YORK))[index];
  if (slot === undefined) throw new Error("the day is too short");
  const weather = { startsAtEpochMilliseconds: slot.startsAtEpochMilliseconds, ...FAIR, ...change };
  const site = { place, sensitivePlaces, settings: DEFAULT_SPRAY_WEATHER_SETTINGS };
  return judgeSprayHour(
    site,
    { slot, weather, weatherAt: () => weather, timeZone: NEW_YORK, rainFromInches: 0.01, rainChanceFromPercent: 50 },
    sun,
  );
}
const rulesOf = (...parameters: Parameters<typeof judge>) =>
  judge(...parameters).map(({ rule, verdict }) => `${rule} ${verdict}`);

describe("spraying in an hour", () => {
  test("a fair hour gives no reason", () => expect(judge({})).toEqual([]));

  test("the company's wind: 10 mph passes, more doesn't, gusts are for care, unknown closes", () => {
    expect(rulesOf({ windMph: 10, gustMph: 10 })).toEqual([]);
    expect(rulesOf({ windMph: 10.1 })).toEqual(["wind-high closed"]);
    expect(rulesOf({ gustMph: 14 })).toEqual(["gusts take-care"]);
    expect(rulesOf({ gustMph: undefined })).toEqual([]);
    expect(judge({ windMph: undefined })[0]).toMatchObject({ rule: "wind-high", isUndecided: true });
    // 16.1 km/h is 10.0041 mph.
    expect(judge({ windMph: 10.0041942 })[0]?.sentence).toBe("The wind is 10.004 mph; the company sprays up to 10 mph.");
    expect(judge({ gustMph: 10.0041942 })[0]?.sentence).toBe("Gusts reach 10.004 mph; the company sprays up to 10 mph.");
  });

  test("rain in the hour closes, a chance of it is for care, and rain that nobody knows closes undecided", () => {
    expect(rulesOf({ rainInches: 0.01 })).toEqual(["rain closed"]);
    expect(rulesOf({ rainChancePercent: 50 })).toEqual(["rain-chance take-care"]);
    expect(judge({ rainInches: undefined, rainChancePercent: undefined })).toMatchObject([
      { rule: "rain", verdict: "closed", isUndecided: true, sentence: "The rain in this hour is not known." },
    ]);
    expect(rulesOf({ rainInches: undefined, rainChancePercent: 90 })).toEqual(["rain closed"]);
    expect(rulesOf({ rainChancePercent: undefined })).toEqual([]);
  });

  test("a calm clear dawn is for care, noon isn't; clouds and wind end it", () => {
    expect(rulesOf({ windMph: 2 }, [], 6)).toEqual(["inversion take-care"]);
    expect(rulesOf({ windMph: 2 }, [], 12)).toEqual([]);
    expect(rulesOf({ windMph: 2, sky: "cloudy" }, [], 6)).toEqual([]);
    expect(judge({ windMph: 2, sky: undefined }, [], 6)[0]?.sentence).toBe(
      "An inversion can't be ruled out: the sky is not known.",
    );
    expect(judge({ windMph: undefined, sky: undefined }, [], 6).at(-1)?.sentence).toBe("An inversion can't be ruled out: the wind and the sky are not known.");
  });

  test("Delta T is a note and closes nothing; without humidity there is none", () => {
    const reasons = judge({ temperatureF: 95, relativeHumidityPercent: 20 });
    expect(reasons.map(({ rule, verdict }) => [rule, verdict])).toEqual([["delta-t", "note"]]);
    expect(worstVerdict(reasons)).toBe("open");
    expect(judge({ temperatureF: 60, relativeHumidityPercent: 99 })[0]?.sentence).toContain("below 2");
    expect(judge({ temperatureF: 86, relativeHumidityPercent: 45 })[0]?.sentence).toContain("above 8");
    expect(judge({ temperatureF: 95, relativeHumidityPercent: undefined })).toEqual([]);
  });
});

describe("wind towards something sensitive", () => {
  const pond = { name: "the pond", bearingDegrees: 90 };
  test("a west wind blows east, towards the pond; an east wind doesn't", () => {
    expect(judge({ windFromDegrees: 270 }, [pond])).toMatchObject([
      { rule: "towards-sensitive", verdict: "closed", sentence: "The wind blows towards the pond." },
    ]);
    expect(rulesOf({ windFromDegrees: 90 }, [pond])).toEqual([]);
  });
  test("45 degrees to either side count, across north too", () => {
    expect([225, 224, 315, 316].map((windFromDegrees) => rulesOf({ windFromDegrees }, [pond]).length)).toEqual([
      1, 0, 1, 0,
    ]);
    const garden = { name: "the garden", bearingDegrees: 350 };
    expect([180, 200, 90].map((windFromDegrees) => rulesOf({ windFromDegrees }, [garden]).length)).toEqual([1, 1, 0]);
  });
  test("each place is looked at by itself", () => {
    const reasons = judge({ windFromDegrees: 270 }, [
      pond,
      { name: "the bees", bearingDegrees: 100 },
      { name: "the roses", bearingDegrees: 270 },
    ]);
    expect(reasons.map(({ sentence }) => sentence)).toEqual([
      "The wind blows towards the pond.",
      "The wind blows towards the bees.",
    ]);
  });
  test("light wind has no direction and is for care; unknown wind or direction closes", () => {
    expect(rulesOf({ windMph: 2.9, windFromDegrees: 90 }, [pond])).toEqual(["towards-sensitive take-care"]);
    expect(judge({ windFromDegrees: undefined }, [pond])[0]).toMatchObject({ verdict: "closed", isUndecided: true });
    expect(judge({ windMph: undefined }, [pond]).map(({ rule, isUndecided }) => [rule, isUndecided])).toEqual([
      ["wind-high", true],
      ["towards-sensitive", true],
    ]);
    expect(rulesOf({ windFromDegrees: undefined })).toEqual([]);
  });
  test("an angle is the smaller one, the same both ways and around the compass", () => {
    expect(angleBetweenDegrees(350, 10)).toBe(20);
    const bearing = between(0, 360);
    fc.assert(
      fc.property(bearing, bearing, (one, other) => {
        const angle = angleBetweenDegrees(one, other);
        expect(angle).toBeGreaterThanOrEqual(0);
        expect(angle).toBeLessThanOrEqual(180);
        expect(angleBetweenDegrees(other, one)).toBe(angle);
        expect(angleBetweenDegrees(one + 360, other)).toBeCloseTo(angle, 9);
        expect(angleBetweenDegrees(one + 180, other)).toBeCloseTo(180 - angle, 9);
      }),
    );
  });
});
