import { describe, expect, test } from "vitest";
import { localHours } from "#domain/weather/local-hours";
import { judgeProductHour, passesTemperature } from "#domain/weather/product-hour";
import { type WeatherLimits } from "#domain/weather/spray-limits";
import { type WeatherHour, worstVerdict } from "#domain/weather/spray-reasons";
import { day, valueOf } from "../../support/domain-answers";
import { FREE_OF_LIMITS, fairHours, label } from "../../support/spray-builders";

const NEW_YORK = "America/New_York";
const date = day("2026-05-04");

/** The reasons of one product in the tenth hour of a fair day that is changed by hour. */
function judge(
  limits: Partial<WeatherLimits>,
  change: (index: number) => Partial<WeatherHour> = () => ({}),
  index = 10,
  hoursOnFile = 48,
) {
  const hours = fairHours(date, NEW_YORK, change).slice(0, hoursOnFile);
  const slot = valueOf(localHours(date, NEW_YORK))[index];
  const weather = hours[index];
  if (slot === undefined || weather === undefined) throw new Error("the day is too short");
  const weatherAt = (start: number) =>
    hours.find(({ startsAtEpochMilliseconds }) => startsAtEpochMilliseconds === start);
  return judgeProductHour(
    { ...FREE_OF_LIMITS, ...limits },
    { slot, weather, weatherAt, timeZone: NEW_YORK, rainFromInches: 0.01, rainChanceFromPercent: 50 },
  );
}
const verdict = (...parameters: Parameters<typeof judge>) => worstVerdict(judge(...parameters));

describe("a product without limits", () => {
  test("has no reasons, even where nothing about the weather is known", () => {
    const unknown = { temperatureF: undefined, windMph: undefined, rainInches: undefined, soil: undefined };
    expect(judge({}, () => unknown)).toEqual([]);
  });
});

describe("temperature", () => {
  const hot = (temperatureF: number) => () => ({ temperatureF });
  test("not above 90 °F lets 90 pass; at 85 °F or higher doesn't let 85", () => {
    const above = { limitF: 90, reaching: "allowed", ...label } as const;
    const orHigher = { limitF: 85, reaching: "forbidden", ...label } as const;
    expect([89, 90, 90.1].map((degreesF) => verdict({ highestTemperature: above }, hot(degreesF)))).toEqual([
      "open",
      "open",
      "closed",
    ]);
    expect([84.9, 85, 86].map((degreesF) => verdict({ highestTemperature: orHigher }, hot(degreesF)))).toEqual([
      "open",
      "closed",
      "closed",
    ]);
  });
  test("a lowest limit works the other way", () => {
    const lowestTemperature = { limitF: 50, reaching: "allowed", ...label } as const;
    expect([49.9, 50, 51].map((degreesF) => verdict({ lowestTemperature }, hot(degreesF)))).toEqual([
      "closed",
      "open",
      "open",
    ]);
    expect(passesTemperature("temperature-low", { limitF: 50, reaching: "forbidden" }, 50)).toBe(true);
  });
  test("the reason is a sentence with what is found and what is allowed, and the label it stands on", () => {
    const [reason] = judge({ highestTemperature: { limitF: 90, reaching: "allowed", ...label } }, hot(93.2));
    expect(reason).toEqual({
      verdict: "closed",
      rule: "temperature-high",
      basis: "label",
      source: "label of Alpha, directions",
      productName: "Alpha",
      isUndecided: false,
      sentence: "The temperature is 93.2 °F; the highest temperature for Alpha is 90 °F.",
    });
  });
  test("a hair past a limit is written with the digits that show it", () => {
    const highestTemperature = { limitF: 90, reaching: "allowed", ...label } as const;
    expect(judge({ highestTemperature }, hot(90.004))[0]?.sentence).toBe("The temperature is 90.004 °F; the highest temperature for Alpha is 90 °F.");
    expect(judge({ highestTemperatureAhead: { ...highestTemperature, withinHours: 24 } }, hot(90.004))[0]?.sentence).toContain("is 90.004 °F at 10:00; Alpha must not see more than 90 °F");
    const wind = { limitMph: 10, ...label };
    expect(judge({ highestWind: wind }, () => ({ windMph: 10.0041942 }))[0]?.sentence).toBe("The wind is 10.004 mph; the highest wind for Alpha is 10 mph.");
    expect(judge({ highestWind: wind }, () => ({ windMph: 9, gustMph: 10.0041942 }))[0]?.sentence).toBe("Gusts reach 10.004 mph; the highest wind for Alpha is 10 mph.");
  });
  test("a limit that must not even be reached says so where it is", () => {
    const orHigher = { limitF: 85, reaching: "forbidden", ...label } as const;
    expect(judge({ highestTemperature: orHigher }, hot(85))[0]?.sentence).toBe("The temperature is 85 °F; Alpha must stay below 85 °F.");
    expect(judge({ lowestTemperature: orHigher }, hot(85))[0]?.sentence).toBe("The temperature is 85 °F; Alpha must stay above 85 °F.");
    expect(judge({ highestTemperatureAhead: { ...orHigher, withinHours: 24 } }, hot(85))[0]?.sentence).toContain("Alpha must not see 85 °F or more within 24 h.");
  });
  test("unknown where a limit needs it closes, undecided", () => {
    const [reason] = judge({ lowestTemperature: { limitF: 50, reaching: "allowed", ...label } }, () => ({
      temperatureF: undefined,
    }));
    expect(reason).toMatchObject({ rule: "temperature-low", verdict: "closed", isUndecided: true });
  });
});

describe("temperature of the hours that follow (not if above 85 °F is forecast within 24 h; Iowa State)", () => {
  const highestTemperatureAhead = { limitF: 85, reaching: "allowed", withinHours: 24, ...label } as const;
  const hotAt = (hot: number) => (index: number) => (index === hot ? { temperatureF: 88 } : {});
  test("the hour itself and 24 h after its end count, what is before and beyond doesn't", () => {
    expect([9, 10, 34, 35].map((hot) => verdict({ highestTemperatureAhead }, hotAt(hot)))).toEqual([
      "open",
      "closed",
      "closed",
      "open",
    ]);
  });
  test("says when, with the date when it is tomorrow", () => {
    expect(judge({ highestTemperatureAhead }, hotAt(15))[0]?.sentence).toBe(
      "The temperature is 88 °F at 15:00; Alpha must not see more than 85 °F within 24 h.",
    );
    expect(judge({ highestTemperatureAhead }, hotAt(30))[0]?.sentence).toContain("at 06:00 on 2026-05-05");
  });
  test("a forecast that ends too early can't decide", () => {
    expect(judge({ highestTemperatureAhead }, undefined, 10, 34)[0]).toMatchObject({
      rule: "temperature-ahead",
      isUndecided: true,
    });
    expect(verdict({ highestTemperatureAhead }, undefined, 10, 35)).toBe("open");
  });
});

describe("wind", () => {
  test("a label may ask for 3 to 8 mph", () => {
    const limits = { lowestWind: { limitMph: 3, ...label }, highestWind: { limitMph: 8, ...label } };
    expect([2.9, 3, 8, 8.1].map((windMph) => verdict(limits, () => ({ windMph, gustMph: windMph })))).toEqual([
      "closed",
      "open",
      "open",
      "closed",
    ]);
    expect(judge(limits, () => ({ windMph: undefined })).map(({ rule, isUndecided }) => [rule, isUndecided])).toEqual([
      ["wind-low", true],
      ["wind-high", true],
    ]);
  });
  test("gusts above the label's highest wind are for care; a wind above it closes alone", () => {
    const highestWind = { limitMph: 8, ...label };
    expect(judge({ highestWind }, () => ({ windMph: 7, gustMph: 9.9 }))).toMatchObject([
      {
        rule: "gusts",
        verdict: "take-care",
        basis: "label",
        productName: "Alpha",
        sentence: "Gusts reach 9.9 mph; the highest wind for Alpha is 8 mph.",
      },
    ]);
    expect(judge({ highestWind }, () => ({ windMph: 7, gustMph: 8 }))).toEqual([]);
    expect(judge({ highestWind }, () => ({ windMph: 7, gustMph: undefined }))).toEqual([]);
    expect(judge({ highestWind }, () => ({ windMph: 9, gustMph: 14 })).map(({ rule }) => rule)).toEqual(["wind-high"]);
    expect(judge({ lowestWind: { limitMph: 3, ...label } }, () => ({ windMph: 4, gustMph: 20 }))).toEqual([]);
  });
});

describe("rain", () => {
  const rainAt =
    (wet: number, rainInches = 0.05) =>
    (index: number) =>
      index === wet ? { rainInches } : {};
  test("inside the rainfast time closes, counted from the end of the hour; a part of an hour counts as the hour", () => {
    const at = (minutes: number) =>
      [9, 10, 11, 12, 14, 15].map((wet) => verdict({ rainfast: { minutes, ...label } }, rainAt(wet)));
    expect(at(240)).toEqual(["open", "closed", "closed", "closed", "closed", "open"]);
    expect(at(60)).toEqual(["open", "closed", "closed", "open", "open", "open"]);
    expect(at(90)).toEqual(["open", "closed", "closed", "closed", "open", "open"]);
    expect(at(0)).toEqual(["open", "closed", "open", "open", "open", "open"]);
  });
  test("less than the setting isn't rain", () =>
    expect(verdict({ rainfast: { minutes: 240, ...label } }, rainAt(12, 0.009))).toBe("open"));
  test("says how much, when and how long it must stay dry", () => {
    expect(judge({ rainfast: { minutes: 90, ...label } }, rainAt(12))[0]?.sentence).toBe(
      "Rain of 0.05 in is expected at 12:00; Alpha needs 1.5 h without rain.",
    );
  });
  test("an hour without a figure, or beyond the forecast, can't decide; rain before it does", () => {
    const rainfast = { minutes: 240, ...label };
    expect(judge({ rainfast }, (index) => (index === 13 ? { rainInches: undefined } : {}))[0]).toMatchObject({
      isUndecided: true,
      sentence: "The rain at 13:00 is not known, and Alpha depends on it.",
    });
    expect(judge({ rainfast }, undefined, 22, 24)[0]).toMatchObject({ isUndecided: true });
    expect(judge({ rainfast }, (index) => ({ rainInches: index === 11 ? 0.2 : undefined }))[0]).toMatchObject({
      isUndecided: false,
    });
  });
  test("a chance of rain in the rainfast time is for care where all of it is forecast dry, and rain or an unknown hour goes before it", () => {
    const rainfast = { minutes: 240, ...label };
    const likelyAt = (hour: number, rainChancePercent = 50) => (index: number) => (index === hour ? { rainChancePercent } : {});
    expect([9, 10, 14, 15].map((hour) => verdict({ rainfast }, likelyAt(hour)))).toEqual(["open", "take-care", "take-care", "open"]);
    expect(verdict({ rainfast }, likelyAt(13, 49.9))).toBe("open");
    expect(judge({ rainfast }, likelyAt(13, 95))).toMatchObject([
      { rule: "rain-chance", verdict: "take-care", basis: "label", productName: "Alpha", isUndecided: false, sentence: "The chance of rain is 95 % at 13:00; Alpha needs 4 h without rain." },
    ]);
    expect(judge({ rainfast }, (index) => ({ ...likelyAt(11, 95)(index), ...rainAt(13)(index) })).map(({ rule }) => rule)).toEqual(["rain"]);
    expect(judge({ rainfast }, (index) => ({ ...likelyAt(11, 95)(index), ...(index === 13 ? { rainInches: undefined } : {}) })).map(({ rule }) => rule)).toEqual(["rain"]);
    expect(judge({}, likelyAt(11, 95))).toEqual([]);
  });
  test("heavy rain after is a sum (2 in within 24 h; University of Missouri)", () => {
    const heavyRain = { inches: 2, withinHours: 24, ...label };
    const steady = (inches: number) => () => ({ rainInches: inches });
    expect(verdict({ heavyRain }, steady(0.08))).toBe("closed");
    expect(verdict({ heavyRain }, steady(0.07))).toBe("open");
    expect(judge({ heavyRain }, steady(0.1))[0]?.sentence).toBe(
      "Rain of 2.5 in is expected within 24 h; Alpha must not be followed by 2 in.",
    );
  });
  test("eight times 0.1 in are 0.8 in, though the binary sum falls short of it", () => {
    const heavyRain = { inches: 0.8, withinHours: 7, ...label };
    expect(verdict({ heavyRain }, () => ({ rainInches: 0.1 }))).toBe("closed");
  });
  test("unknown hours leave heavy rain undecided unless the known ones are enough", () => {
    const heavyRain = { inches: 1, withinHours: 24, ...label };
    expect(judge({ heavyRain }, undefined, 10, 30)[0]).toMatchObject({ rule: "heavy-rain", isUndecided: true });
    expect(judge({ heavyRain }, rainAt(12, 1.2), 10, 30)[0]).toMatchObject({ rule: "heavy-rain", isUndecided: false });
  });
});

describe("soil", () => {
  const soil = { closedWhen: ["frozen", "saturated"], basis: "law", source: "state fertilizer law" } as const;
  test.each([
    ["workable", "open"],
    ["frozen", "closed"],
    ["saturated", "closed"],
  ] as const)("%s: %s", (state, expected) => {
    expect(verdict({ soil }, () => ({ soil: state }))).toBe(expected);
  });
  test("a limit on frozen soil lets saturated soil pass", () => {
    expect(verdict({ soil: { ...soil, closedWhen: ["frozen"] } }, () => ({ soil: "saturated" }))).toBe("open");
    expect(verdict({ soil: { ...soil, closedWhen: [] } }, () => ({ soil: undefined }))).toBe("open");
  });
  test("a state that nobody gave closes, undecided, by that law", () => {
    expect(judge({ soil }, () => ({ soil: undefined }))[0]).toMatchObject({
      isUndecided: true,
      basis: "law",
      source: "state fertilizer law",
    });
  });
});

describe("a limit that nobody has read", () => {
  test.each([
    "lowestTemperature",
    "highestTemperature",
    "highestTemperatureAhead",
    "lowestWind",
    "highestWind",
    "rainfast",
    "heavyRain",
    "soil",
  ] as const)("%s closes, undecided", (limit) => {
    const reasons = judge({ [limit]: "unknown" });
    expect(reasons).toHaveLength(1);
    expect(reasons[0]).toMatchObject({ verdict: "closed", isUndecided: true, productName: "Alpha", basis: "label" });
  });
});

describe("several limits at once", () => {
  test("every reason is given, not the first only", () => {
    const reasons = judge(
      {
        highestTemperature: { limitF: 85, reaching: "allowed", ...label },
        highestWind: { limitMph: 5, ...label },
        rainfast: { minutes: 60, ...label },
      },
      () => ({ temperatureF: 95, windMph: 12, rainInches: 0.1 }),
    );
    expect(reasons.map(({ rule }) => rule)).toEqual(["temperature-high", "wind-high", "rain"]);
  });
});
