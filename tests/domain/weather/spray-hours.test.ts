import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { judgeSprayDay } from "#domain/weather/spray-hours";
import { day, refusalOf, valueOf } from "../../support/domain-answers";
import { fairHours, label, mixOf, questionOf } from "../../support/spray-builders";
import { between } from "../../support/real-numbers";

const date = day("2026-05-04");
const NEW_YORK = "America/New_York";
const verdicts = (question: ReturnType<typeof questionOf>, mix = 0) =>
  valueOf(judgeSprayDay(question))[mix]?.hours.map(({ verdict }) => verdict) ?? [];

describe("a day of hours", () => {
  test("a fair day is open for a mix that limits nothing", () => {
    expect(new Set(verdicts(questionOf(date)))).toEqual(new Set(["open"]));
    expect(verdicts(questionOf(date))).toHaveLength(24);
  });
  test.each([
    ["2026-03-08", 23],
    ["2026-11-01", 25],
  ])("%s has %d hours, each judged by its own weather", (text, count) => {
    const hours = fairHours(day(text), NEW_YORK, (index) => (index === 2 ? { windMph: 20 } : {}));
    const judged = valueOf(judgeSprayDay(questionOf(day(text), { hours })))[0]?.hours ?? [];
    expect(judged).toHaveLength(count);
    expect(
      judged.map(({ verdict }, index) => (verdict === "closed" ? index : -1)).filter((index) => index >= 0),
    ).toEqual([2]);
    expect(judged[2]?.startsAtEpochMilliseconds).toBe(hours[2]?.startsAtEpochMilliseconds);
  });
  test("rainfast time runs over the hour that clocks skip: four real hours", () => {
    const spring = day("2026-03-08");
    const hours = fairHours(spring, NEW_YORK, (index) => (index === 5 ? { rainInches: 0.2 } : {}));
    const closed = valueOf(
      judgeSprayDay(questionOf(spring, { hours, mixes: [mixOf({ rainfast: { minutes: 240, ...label } })] })),
    )[0]?.hours.filter(({ verdict }) => verdict === "closed");
    expect(closed?.map(({ localTime }) => localTime)).toEqual(["01:00", "03:00", "04:00", "05:00", "06:00"]);
  });
  test("the origin of the weather is carried to every mix", () => {
    const origin = { kind: "station", name: "station at the airport" } as const;
    expect(valueOf(judgeSprayDay(questionOf(date, { origin })))[0]?.origin).toEqual(origin);
  });
  test("an hour without weather is closed and says so", () => {
    const hours = fairHours(date, NEW_YORK).filter((_, index) => index !== 9);
    const judged = valueOf(judgeSprayDay(questionOf(date, { hours })))[0]?.hours[9];
    expect(judged).toMatchObject({ verdict: "closed", reasons: [{ rule: "no-weather", isUndecided: true }] });
  });
  test("every product of a mix is asked, and every reason given", () => {
    const [first] = mixOf({ highestTemperature: { limitF: 70, reaching: "allowed", ...label } }).products;
    const [second] = mixOf({ highestWind: { limitMph: 5, ...label }, productName: "Beta" }).products;
    if (first === undefined || second === undefined) throw new Error("a mix without a product");
    const hour = valueOf(
      judgeSprayDay(questionOf(date, { mixes: [{ mixId: "tank", method: "spray", products: [first, second] }] })),
    )[0]?.hours[12];
    expect(hour?.reasons.map(({ productName, rule }) => `${productName ?? "company"} ${rule}`)).toEqual([
      "Alpha temperature-high",
      "Beta wind-high",
    ]);
  });
});

describe("sprays and granular work", () => {
  test("wind, drift and inversion hold sprays only", () => {
    const hours = fairHours(date, NEW_YORK, () => ({ windMph: 18, windFromDegrees: 270 }));
    const question = questionOf(date, {
      hours,
      mixes: [mixOf(), mixOf({}, "granular")],
      sensitivePlaces: [{ name: "the pond", bearingDegrees: 90 }],
    });
    expect(new Set(verdicts(question, 0))).toEqual(new Set(["closed"]));
    expect(new Set(verdicts(question, 1))).toEqual(new Set(["open"]));
  });
  test("heavy rain on saturated soil closes both, though no label limits it", () => {
    const hours = fairHours(date, NEW_YORK, () => ({ rainInches: 2, soil: "saturated" }));
    const question = questionOf(date, { hours, mixes: [mixOf(), mixOf({}, "granular")] });
    expect(new Set(verdicts(question, 0))).toEqual(new Set(["closed"]));
    expect(new Set(verdicts(question, 1))).toEqual(new Set(["closed"]));
    expect(valueOf(judgeSprayDay(question))[1]?.hours[0]?.reasons.map(({ rule }) => rule)).toEqual(["soil", "rain", "heavy-rain"]);
  });
  test("the day before heavy rain is for care, for sprays and granular work that no label limits", () => {
    const hours = fairHours(date, NEW_YORK, (index) => (index === 13 ? { rainInches: 2, rainChancePercent: 100 } : {}));
    const question = questionOf(date, { hours, mixes: [mixOf(), mixOf({}, "granular")] });
    const expected = Array.from({ length: 24 }, (_, index) => (index < 13 ? "take-care" : index === 13 ? "closed" : "open"));
    expect(verdicts(question, 0)).toEqual(expected);
    expect(verdicts(question, 1)).toEqual(expected);
  });
  test("a chance of rain in the rainfast time is for care from the hour that it reaches on, for granules with a rainfast time too", () => {
    const hours = fairHours(date, NEW_YORK, (index) => (index === 13 ? { rainChancePercent: 95 } : {}));
    const rainfast = { minutes: 240, ...label };
    const question = questionOf(date, { hours, mixes: [mixOf({ rainfast }), mixOf({ rainfast }, "granular")] });
    const expected = Array.from({ length: 24 }, (_, index) => (index >= 9 && index <= 13 ? "take-care" : "open"));
    expect(verdicts(question, 0)).toEqual(expected);
    expect(verdicts(question, 1)).toEqual(expected);
    const settings = { ...question.settings, rainChanceFromPercent: 96 };
    expect(new Set(verdicts({ ...question, settings }, 0))).toEqual(new Set(["open"]));
  });
  test("a day without rain on file opens nothing", () => {
    const hours = fairHours(date, NEW_YORK, () => ({ rainInches: undefined, rainChancePercent: undefined }));
    const question = questionOf(date, { hours, mixes: [mixOf(), mixOf({}, "granular")] });
    for (const mix of [0, 1]) expect(new Set(verdicts(question, mix))).toEqual(new Set(["closed"]));
  });
  test("wind and leaf rain that nobody has read close sprays; of what is spread they are not asked, as on its mix ticket", () => {
    const limits = ["lowestWind", "highestWind", "rainfast"] as const;
    for (const limit of limits) {
      const question = questionOf(date, { mixes: [mixOf({ [limit]: "unknown" }), mixOf({ [limit]: "unknown" }, "granular")] });
      expect(new Set(verdicts(question, 0))).toEqual(new Set(["closed"]));
      expect(new Set(verdicts(question, 1))).toEqual(new Set(["open"]));
    }
    const unread = Object.fromEntries(limits.map((limit) => [limit, "unknown" as const]));
    // With a label that nobody has read for rain, falling heavy rain closes granular work all the same.
    const rainy = questionOf(date, { hours: fairHours(date, NEW_YORK, () => ({ rainInches: 2 })), mixes: [mixOf(unread, "granular")] });
    expect(new Set(verdicts(rainy, 0))).toEqual(new Set(["closed"]));
  });
  test("a wind limit that is stated for what is spread closes it", () => {
    const hours = fairHours(date, NEW_YORK, (index) => ({ windMph: index < 12 ? 4 : 6, gustMph: undefined }));
    const judged = verdicts(questionOf(date, { hours, mixes: [mixOf({ highestWind: { limitMph: 5, ...label } }, "granular")] }));
    expect(judged).toEqual(Array.from({ length: 24 }, (_, index) => (index < 12 ? "open" : "closed")));
  });
  test("a granular product's own limits hold it", () => {
    const heavy = mixOf({ heavyRain: { inches: 1, withinHours: 24, ...label } }, "granular");
    const hours = fairHours(date, NEW_YORK, (index) => (index === 20 ? { rainInches: 1.5 } : {}));
    const judged = verdicts(
      questionOf(date, { hours: [...hours, ...fairHours(day("2026-05-06"), NEW_YORK)], mixes: [heavy] }),
    );
    expect(judged.map((verdict) => verdict === "closed")).toEqual(
      Array.from({ length: 24 }, (_, index) => index <= 20),
    );
  });
});

describe("properties", () => {
  test("a stricter limit never opens an hour, and worse weather never does", () => {
    const wind = between(0, 25);
    fc.assert(
      fc.property(fc.array(wind, { minLength: 48, maxLength: 48 }), wind, wind, (winds, limit, stricter) => {
        const hours = fairHours(date, NEW_YORK, (index) => ({ windMph: winds[index] }));
        const judged = (limitMph: number) =>
          verdicts(questionOf(date, { hours, mixes: [mixOf({ highestWind: { limitMph, ...label } })] }));
        const loose = judged(limit + stricter);
        const tight = judged(limit);
        loose.forEach((verdict, index) => {
          if (verdict === "closed") expect(tight[index]).toBe("closed");
          expect(tight[index] === "closed").toBe((winds[index] ?? 0) > Math.min(limit, 10));
        });
      }),
      { numRuns: 30 },
    );
  });
});

describe("refusals", () => {
  const hours = fairHours(date, NEW_YORK);
  const [one] = hours;
  if (one === undefined) throw new Error("a day without hours");
  test.each([
    ["no hour of the day", { hours: fairHours(day("2026-06-01"), NEW_YORK) }, "hours"],
    ["no hours at all", { hours: [] }, "hours"],
    ["an hour given twice", { hours: [...hours, one] }, "startsAtEpochMilliseconds"],
    [
      "an hour off the grid",
      { hours: [...hours, { ...one, startsAtEpochMilliseconds: one.startsAtEpochMilliseconds - 600_000 }] },
      "startsAtEpochMilliseconds",
    ],
    [
      "an hour without a time",
      { hours: [...hours, { ...one, startsAtEpochMilliseconds: Number.NaN }] },
      "startsAtEpochMilliseconds",
    ],
    ["a negative wind", { hours: [{ ...one, windMph: -1 }] }, "windMph"],
    ["gusts that are none", { hours: [{ ...one, gustMph: Number.NaN }] }, "gustMph"],
    ["a wind from nowhere", { hours: [{ ...one, windFromDegrees: 400 }] }, "windFromDegrees"],
    ["an impossible temperature", { hours: [{ ...one, temperatureF: 295 }] }, "temperatureF"],
    ["an impossible humidity", { hours: [{ ...one, relativeHumidityPercent: 110 }] }, "relativeHumidityPercent"],
    ["negative rain", { hours: [{ ...one, rainInches: -0.1 }] }, "rainInches"],
    ["a wind beyond a hurricane", { hours: [{ ...one, windMph: 1.7e308 }] }, "windMph"],
    ["gusts beyond a hurricane", { hours: [{ ...one, gustMph: 135 }] }, "gustMph"],
    ["rain beyond any on earth", { hours: [{ ...one, rainInches: 12.1 }] }, "rainInches"],
    ["an impossible chance", { hours: [{ ...one, rainChancePercent: 101 }] }, "rainChancePercent"],
    ["an unknown zone", { timeZone: "Eastern" }, "timeZone"],
    [
      "an impossible place",
      { place: { latitudeDegrees: 140, longitudeDegrees: -83, elevationMeters: 240 } },
      "latitudeDegrees",
    ],
    [
      "an impossible elevation",
      { place: { latitudeDegrees: 40, longitudeDegrees: -83, elevationMeters: 24_000 } },
      "elevationMeters",
    ],
    ["an impossible limit", { mixes: [mixOf({ highestWind: { limitMph: -1, ...label } })] }, "Alpha highestWind"],
  ])("%s", (_, change, field) => expect(refusalOf(judgeSprayDay(questionOf(date, change))).field).toBe(field));
});
