import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { daysAheadOf, type EnteredHigh, judgeDayByForecastHigh } from "#domain/weather/forecast-high";
import { day, refusalOf, valueOf } from "../../support/domain-answers";
import { label, mixOf } from "../../support/spray-builders";

const date = day("2026-07-10");
const ninety = mixOf({ highestTemperature: { limitF: 90, reaching: "allowed", ...label } });
const judge = (forecastHighF: number, mix = ninety, followingHighsF: readonly EnteredHigh[] = []) =>
  valueOf(judgeDayByForecastHigh({ date, forecastHighF, followingHighsF }, [mix]))[0];
const ahead = (withinHours: number, method: "spray" | "granular" = "spray") =>
  mixOf({ highestTemperatureAhead: { limitF: 85, reaching: "allowed", withinHours, ...label } }, method);

describe("a limit on the hours that follow (not if above 85 °F is forecast within 24 h; Iowa State)", () => {
  test("24 h reach into the next day: an unknown high there holds, undecided, and says which day is missing", () => {
    expect(judge(80, ahead(24))).toMatchObject({
      verdict: "hold",
      reasons: [
        {
          rule: "temperature-ahead",
          isUndecided: true,
          productName: "Alpha",
          sentence: "The forecast high of Jul 11, 2026 is not known; Alpha must not see more than 85 °F within 24 h.",
        },
      ],
    });
  });
  test("a hot next day holds, a cool one doesn't, and a day beyond the reach is not asked", () => {
    expect(judge(80, ahead(24), [86])?.reasons).toMatchObject([
      {
        rule: "temperature-ahead",
        isUndecided: false,
        sentence: "The forecast high of Jul 11, 2026 is 86 °F; Alpha must not see more than 85 °F within 24 h.",
      },
    ]);
    expect(judge(80, ahead(24), [85.004])?.reasons[0]?.sentence).toContain("is 85.004 °F; Alpha must not see more than 85 °F");
    expect(judge(80, ahead(24), [84])?.verdict).toBe("no-hold-by-temperature");
    expect(judge(80, ahead(24), [84, 95])?.verdict).toBe("no-hold-by-temperature");
  });
  test("a next day that only reaches the limit holds, and says that it may turn out warmer, or that reaching it is forbidden", () => {
    const under = mixOf({ highestTemperatureAhead: { limitF: 85, reaching: "forbidden", withinHours: 24, ...label } });
    expect([judge(80, ahead(24), [85]), judge(80, under, [85]), judge(80, under, ["not-entered"])].map((found) => found?.reasons[0]?.sentence)).toEqual([
      "The forecast high of Jul 11, 2026 is 85 °F, the most that Alpha may see within 24 h; the day may turn out warmer than forecast.",
      "The forecast high of Jul 11, 2026 is 85 °F; Alpha must not see 85 °F or more within 24 h.",
      "The forecast high of Jul 11, 2026 is not known; Alpha must not see 85 °F or more within 24 h.",
    ]);
  });
  test("the reach counts from midnight, whole days upwards", () => {
    expect([0, 1, 24, 25, 48, 49].map((withinHours) => judge(80, ahead(withinHours), [80, 80])?.verdict)).toEqual(["no-hold-by-temperature", "no-hold-by-temperature", "no-hold-by-temperature", "no-hold-by-temperature", "no-hold-by-temperature", "hold"]);
    expect([0, 1, 24, 25].map((withinHours) => judge(80, ahead(withinHours), [])?.verdict)).toEqual(["no-hold-by-temperature", "hold", "hold", "hold"]);
    expect(judge(80, ahead(48), [80])?.reasons[0]?.sentence).toContain("The forecast high of Jul 12, 2026 is not known");
    expect(judge(80, ahead(48), [80, 90])?.reasons).toMatchObject([{ isUndecided: false }]);
  });
  test("a day between that is not entered holds, undecided, unless another in reach is too hot", () => {
    expect(judge(80, ahead(72), [80, "not-entered", 80])?.reasons).toMatchObject([{ isUndecided: true, sentence: "The forecast high of Jul 12, 2026 is not known; Alpha must not see more than 85 °F within 72 h." }]);
    expect(judge(80, ahead(72), ["not-entered", 80, 86])?.reasons).toMatchObject([{ isUndecided: false, sentence: "The forecast high of Jul 13, 2026 is 86 °F; Alpha must not see more than 85 °F within 72 h." }]);
    expect([0, 1, 24, 25, 72].map((withinHours) => daysAheadOf({ withinHours }))).toEqual([0, 1, 1, 2, 3]);
  });
  test("a day that is too hot itself asks for no other", () => expect(judge(90, ahead(24))?.reasons).toMatchObject([{ rule: "temperature-high", isUndecided: false }]));
  test("a limit on the day alone asks for no other", () => expect(judge(80)?.verdict).toBe("no-hold-by-temperature"));
  test.each([Number.NaN, 300])("a next high of %d is refused", (high) => {
    expect(refusalOf(judgeDayByForecastHigh({ date, forecastHighF: 80, followingHighsF: [high] }, []))).toMatchObject({
      field: "followingHighsF",
      allowed: "from -60 to 140 °F",
    });
  });
});

describe("a day with a forecast high only", () => {
  test("a limit at or under the high holds the day", () => {
    expect([89, 89.9, 90, 96].map((high) => judge(high)?.verdict)).toEqual([
      "no-hold-by-temperature",
      "no-hold-by-temperature",
      "hold",
      "hold",
    ]);
  });
  test("says by which limit, product and label", () => {
    expect(judge(93)?.reasons).toEqual([
      {
        verdict: "closed",
        rule: "temperature-high",
        basis: "label",
        source: "label of Alpha, directions",
        productName: "Alpha",
        isUndecided: false,
        sentence: "The forecast high is 93 °F; the highest temperature for Alpha is 90 °F.",
      },
    ]);
  });
  test("a high that only reaches the limit says so, by what the label says of reaching it", () => {
    const under = mixOf({ highestTemperature: { limitF: 90, reaching: "forbidden", ...label } });
    expect([judge(90), judge(90, under), judge(85, ahead(24))].map((found) => found?.reasons[0]?.sentence)).toEqual([
      "The forecast high is 90 °F, the highest temperature for Alpha; the day may turn out warmer than forecast.",
      "The forecast high is 90 °F; Alpha must stay below 90 °F.",
      "The forecast high is 85 °F, the highest temperature for Alpha; the day may turn out warmer than forecast.",
    ]);
  });
  test("a limit on the hours that follow holds by the day itself, and granular products have limits as well", () => {
    expect(judge(85, ahead(24, "granular"))?.verdict).toBe("hold");
    expect(judge(84, ahead(24, "granular"), [84])?.verdict).toBe("no-hold-by-temperature");
  });
  test("a limit that nobody has read holds, no limit never does", () => {
    expect(judge(40, mixOf({ highestTemperature: "unknown" }))).toMatchObject({
      verdict: "hold",
      reasons: [{ isUndecided: true }],
    });
    expect(judge(110, mixOf())?.verdict).toBe("no-hold-by-temperature");
  });
  test("each mix is answered by itself", () => {
    const answers = valueOf(judgeDayByForecastHigh({ date, forecastHighF: 92, followingHighsF: [] }, [ninety, mixOf({}, "granular")]));
    expect(answers.map(({ mixId, verdict }) => `${mixId} ${verdict}`)).toEqual([
      "spray hold",
      "granular no-hold-by-temperature",
    ]);
  });
  test("a hotter day never lifts a hold", () => {
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 130 }), fc.integer({ min: 0, max: 10 }), (high, hotter) => {
        if (judge(high)?.verdict === "hold") expect(judge(Math.min(140, high + hotter))?.verdict).toBe("hold");
      }),
    );
  });
  test.each([Number.NaN, 300])("a high of %d is refused", (forecastHighF) => {
    expect(refusalOf(judgeDayByForecastHigh({ date, forecastHighF, followingHighsF: [] }, [ninety])).field).toBe("forecastHighF");
  });
});

test("a lowest temperature that the day's high does not reach holds the day, and one that it reaches leaves it", () => {
  const fifty = (reaching: "allowed" | "forbidden") => mixOf({ lowestTemperature: { limitF: 50, reaching, ...label } });
  expect(judge(38, fifty("allowed"))).toMatchObject({
    verdict: "hold",
    reasons: [{ rule: "temperature-low", isUndecided: false, sentence: "The forecast high is 38 °F; the lowest temperature for Alpha is 50 °F, and no hour of the day reaches it." }],
  });
  expect([judge(49.9, fifty("allowed")), judge(50, fifty("allowed")), judge(50, fifty("forbidden")), judge(50.1, fifty("forbidden"))].map((found) => found?.verdict)).toEqual(["hold", "no-hold-by-temperature", "hold", "no-hold-by-temperature"]);
});
