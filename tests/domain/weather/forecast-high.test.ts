import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { judgeDayByForecastHigh } from "#domain/weather/forecast-high";
import { day, refusalOf, valueOf } from "../../support/domain-answers";
import { label, mixOf } from "../../support/spray-builders";

const date = day("2026-07-10");
const ninety = mixOf({ highestTemperature: { limitF: 90, reaching: "allowed", ...label } });
const judge = (forecastHighF: number, mix = ninety) =>
  valueOf(judgeDayByForecastHigh({ date, forecastHighF }, [mix]))[0];

describe("a day with a forecast high only", () => {
  test("a limit at or under the high holds the day", () => {
    expect([89, 89.9, 90, 96].map((high) => judge(high)?.verdict)).toEqual([
      "no-hold-by-heat",
      "no-hold-by-heat",
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
  test("a limit on the hours that follow holds too, and granular products have limits as well", () => {
    const ahead = mixOf(
      { highestTemperatureAhead: { limitF: 85, reaching: "allowed", withinHours: 24, ...label } },
      "granular",
    );
    expect(judge(85, ahead)?.verdict).toBe("hold");
    expect(judge(84, ahead)?.verdict).toBe("no-hold-by-heat");
  });
  test("a limit that nobody has read holds, no limit never does", () => {
    expect(judge(40, mixOf({ highestTemperature: "unknown" }))).toMatchObject({
      verdict: "hold",
      reasons: [{ isUndecided: true }],
    });
    expect(judge(110, mixOf())?.verdict).toBe("no-hold-by-heat");
  });
  test("each mix is answered by itself", () => {
    const answers = valueOf(judgeDayByForecastHigh({ date, forecastHighF: 92 }, [ninety, mixOf({}, "granular")]));
    expect(answers.map(({ mixId, verdict }) => `${mixId} ${verdict}`)).toEqual([
      "spray hold",
      "granular no-hold-by-heat",
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
    expect(refusalOf(judgeDayByForecastHigh({ date, forecastHighF }, [ninety])).field).toBe("forecastHighF");
  });
});
