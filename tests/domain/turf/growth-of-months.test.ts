import { describe, expect, test } from "vitest";
import { growthOfMonths, growthSeasonOf } from "#domain/turf/growth-of-months";
import { GROWTH_CURVES, growthCurveAt } from "#domain/turf/growth-potential";
import { type MonthTemperature } from "#domain/turf/month-temperature";
import { refusalOf, valueOf } from "../../support/domain-answers";

const means = [0, 2, 6, 12, 17, 20, 25, 24, 19, 12, 6, 1];
const facts = { daysKept: 30, daysOfMonth: 30, gaps: [] };
const monthsOf = (temperatures: readonly (number | undefined)[]) =>
  temperatures.map((mean, index): MonthTemperature => (mean === undefined ? { kind: "too-few-days", month: index + 1, ...facts, daysKept: 4 } : { kind: "mean", month: index + 1, ...facts, meanTemperatureC: mean }));

describe("the growth of months", () => {
  test("is the potential of each month's mean, January first", () => {
    const grown = valueOf(growthOfMonths("cool-season", monthsOf(means)));
    expect(grown).toHaveLength(12);
    expect(grown[5]).toMatchObject({ kind: "growth", month: 6, potential: 1, meanTemperatureC: 20 });
    expect(grown[0]).toMatchObject({ potential: expect.closeTo(growthCurveAt(GROWTH_CURVES["cool-season"], 0), 12) as number });
    expect(valueOf(growthOfMonths("warm-season", monthsOf(means)))[6]).toMatchObject({ potential: expect.closeTo(growthCurveAt(GROWTH_CURVES["warm-season"], 25), 12) as number });
  });

  test("a month of too few days stays a gap: no zero stands for it, and no other month", () => {
    const grown = valueOf(growthOfMonths("cool-season", monthsOf(means.map((mean, index) => (index === 1 ? undefined : mean)))));
    expect(grown[1]).toEqual({ kind: "too-few-days", month: 2, ...facts, daysKept: 4 });
    expect(grown.map(({ kind }) => kind).filter((kind) => kind === "growth")).toHaveLength(11);
  });

  test("is refused where no month has a mean, and where a mean is no air temperature", () => {
    expect(refusalOf(growthOfMonths("cool-season", monthsOf(means.map(() => undefined))))).toMatchObject({ kind: "missing-fact", sentence: expect.stringContaining("Of no month of the year") as string });
    expect(refusalOf(growthOfMonths("cool-season", [])).kind).toBe("missing-fact");
    expect(refusalOf(growthOfMonths("warm-season", monthsOf(means.map(() => 90)))).kind).toBe("bad-input");
  });
});

describe("the curve of a lawn", () => {
  test("is that of its grasses' season", () => {
    expect(valueOf(growthSeasonOf(["Kentucky bluegrass", "perennial ryegrass"]))).toBe("cool-season");
    expect(valueOf(growthSeasonOf(["bermudagrass"]))).toBe("warm-season");
  });

  test("is refused by name for a grass nobody knows and for both seasons together", () => {
    expect(refusalOf(growthSeasonOf([]))).toMatchObject({ kind: "missing-fact", sentence: expect.stringContaining("The grass is not on file") as string });
    expect(refusalOf(growthSeasonOf(["bermudagrass", "perennial ryegrass", "tall fescue"])).sentence).toBe(
      "Cool-season perennial ryegrass and tall fescue and warm-season bermudagrass grow here together, so no one curve is this lawn's.",
    );
  });
});
