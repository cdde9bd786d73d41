import { describe, expect, test } from "vitest";
import { BROWN_PATCH_THRESHOLDS, judgeBrownPatch } from "#domain/turf/brown-patch";
import { plainHumidityPercent, weatherPlaces } from "../../support/daily-weather";
import { valueOf } from "../../support/domain-answers";

describe.each(weatherPlaces)("brown patch over four years of $name, against a second implementation", ({ days }) => {
  // The index goes by the night: below freezing and damp it says nothing, so that only nights above 10 °C are asked about.
  const warmNights = days.filter(({ minimumC }) => minimumC > 10);

  test("every warm night has the plain index", () => {
    let warnings = 0;
    for (const weather of warmNights) {
      const meanRelativeHumidityPercent = plainHumidityPercent(weather);
      const answer = valueOf(judgeBrownPatch({ meanRelativeHumidityPercent, minimumTemperatureC: weather.minimumC }, BROWN_PATCH_THRESHOLDS.published));
      // The parabola by its top, at 1.4 / 0.066 °C, and not by its three terms.
      const top = 1.4 / 0.066;
      const plain = -21.5 + 0.15 * meanRelativeHumidityPercent + 0.033 * top ** 2 - 0.033 * (weather.minimumC - top) ** 2;
      expect(Math.abs(answer.index - plain)).toBeLessThan(1e-9);
      const otherwise = weather.minimumC > top ? "cannot-rule-out" : "not-favorable";
      expect(answer.verdict).toBe(plain >= 6 ? "favorable" : otherwise);
      warnings += answer.verdict === "favorable" ? 1 : 0;
    }
    expect(warmNights.length).toBeGreaterThan(300);
    expect(warnings).toBeGreaterThan(0);
    expect(warnings).toBeLessThan(warmNights.length);
  });
});
