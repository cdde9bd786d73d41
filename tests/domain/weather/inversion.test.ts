import { describe, expect, test } from "vitest";
import { type Sky, judgeInversion } from "#domain/weather/inversion";
import { refusalOf, valueOf } from "../../support/domain-answers";

const hour = (value: number) => value * 3_600_000;
const sun = {
  kind: "rises-and-sets",
  sunriseEpochMilliseconds: hour(6.5),
  sunsetEpochMilliseconds: hour(20.25),
} as const;
const judge = (from: number, air: { windMph?: number; sky: Sky }) =>
  judgeInversion({ fromEpochMilliseconds: hour(from), untilEpochMilliseconds: hour(from + 1) }, air, sun);
const calm = { windMph: 2.9, sky: "clear" } as const;

describe("an inversion", () => {
  test("is expected in a calm clear night, and from 2 h before sunset to 1 h after sunrise", () => {
    expect([0, 6, 7, 8, 12, 17, 18, 23].map((from) => valueOf(judge(from, calm)).kind)).toEqual([
      "expected",
      "expected",
      "expected",
      "not-expected",
      "not-expected",
      "not-expected",
      "expected",
      "expected",
    ]);
  });
  test("is not expected with wind of 3 mph or under clouds", () => {
    expect(valueOf(judge(5, { windMph: 3, sky: "clear" })).kind).toBe("not-expected");
    expect(valueOf(judge(5, { windMph: 0, sky: "cloudy" })).kind).toBe("not-expected");
  });
  test("can't be ruled out while wind or sky is not known, unless the other decides", () => {
    expect(valueOf(judge(5, { windMph: 1, sky: "unknown" }))).toEqual({ kind: "cannot-rule-out", unknown: ["sky"] });
    expect(valueOf(judge(5, { sky: "clear" }))).toEqual({ kind: "cannot-rule-out", unknown: ["wind"] });
    expect(valueOf(judge(5, { sky: "unknown" }))).toEqual({ kind: "cannot-rule-out", unknown: ["wind", "sky"] });
    expect(valueOf(judge(5, { windMph: 5, sky: "unknown" })).kind).toBe("not-expected");
    expect(valueOf(judge(5, { sky: "cloudy" })).kind).toBe("not-expected");
    expect(valueOf(judge(12, { sky: "unknown" })).kind).toBe("not-expected");
  });
  test("where the sun stays down it is always night, where it stays up never", () => {
    const span = { fromEpochMilliseconds: hour(12), untilEpochMilliseconds: hour(13) };
    expect(valueOf(judgeInversion(span, calm, { kind: "always-down" })).kind).toBe("expected");
    expect(valueOf(judgeInversion(span, calm, { kind: "always-up" })).kind).toBe("not-expected");
  });
  test("refuses a wind that is none", () => {
    expect(refusalOf(judge(5, { windMph: -1, sky: "clear" })).field).toBe("windMph");
    expect(refusalOf(judge(5, { windMph: 135, sky: "clear" }))).toMatchObject({ field: "windMph", found: "135 mph", allowed: "from 0 to 134 mph" });
    expect(refusalOf(judge(5, { windMph: Number.NaN, sky: "clear" })).kind).toBe("missing-fact");
  });
});
