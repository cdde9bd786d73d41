import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ANTHRACNOSE_THRESHOLD, DANNEBERGER_ANTHRACNOSE, judgeAnthracnose } from "#domain/turf/anthracnose";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { between } from "../../support/real-numbers";

const judge = (meanTemperatureC: number, meanLeafWetHoursPerDay: number) =>
  judgeAnthracnose({ meanTemperatureC, meanLeafWetHoursPerDay }, ANTHRACNOSE_THRESHOLD);
const wetHours = between(0, 24);

describe("the anthracnose index", () => {
  test("where it answers, it doesn't fall with warmth", () => {
    fc.assert(
      fc.property(between(13.5, 34), wetHours, (degreesC, hours) => {
        expect(valueOf(judge(degreesC + 1, hours)).index).toBeGreaterThan(valueOf(judge(degreesC, hours)).index);
      }),
    );
  });
  test("cold weather is refused and never called dangerous", () => {
    fc.assert(
      fc.property(between(-30, 4), wetHours, (degreesC, hours) => {
        expect(refusalOf(judge(degreesC, hours)).field).toBe("meanTemperatureC");
      }),
    );
    expect(refusalOf(judge(10, 0)).sentence).toBe(
      "The anthracnose model says nothing at 10 °C: below 13.5 °C its curve rises again.",
    );
  });
  test("heat beyond what the disease is reported in is refused with the range (University of Illinois Extension: 80 to 95 °F)", () => {
    expect(judge(35, 12).ok).toBe(true);
    expect(refusalOf(judge(35.1, 12))).toMatchObject({ field: "meanTemperatureC", found: "35.1 °C", allowed: "up to 35 °C" });
    expect(refusalOf(judge(45, 12)).sentence).toContain("reported up to 35 °C");
  });
  test("carries its model and threshold", () => {
    expect(valueOf(judge(22, 12))).toMatchObject({ model: DANNEBERGER_ANTHRACNOSE, threshold: 2, isFavorable: true });
  });
  test.each([
    [22, 25, "meanLeafWetHoursPerDay"],
    [22, -1, "meanLeafWetHoursPerDay"],
    [Number.NaN, 12, "meanTemperatureC"],
  ])("refuses %d °C and %d h", (degreesC, hours, field) => expect(refusalOf(judge(degreesC, hours)).field).toBe(field));
  test("refuses a threshold beyond the scale of the index", () => {
    expect(refusalOf(judgeAnthracnose({ meanTemperatureC: 22, meanLeafWetHoursPerDay: 12 }, 7)).field).toBe(
      "threshold",
    );
  });
});
