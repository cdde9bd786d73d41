import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { dayOfYear, gapsIn, refuseUnrealDate, stretchesOf, unbrokenDays } from "#domain/turf/daily-series";
import { day, refusalOf, valueOf } from "../../support/domain-answers";

const first = day("2026-02-26");
const series = Array.from({ length: 10 }, (_, index) => ({ date: addDays(first, index), index }));

describe("day of the year", () => {
  test.each([
    ["2026-01-01", 1],
    ["2026-02-28", 59],
    ["2026-03-01", 60],
    ["2024-03-01", 61],
    ["2026-09-03", 246],
    ["2026-12-31", 365],
    ["2024-12-31", 366],
  ])("%s is day %d", (date, expected) => expect(dayOfYear(day(date))).toBe(expected));
});

describe("unbroken days", () => {
  test("only the period is given, across the end of February", () => {
    const days = valueOf(unbrokenDays(series, { from: day("2026-02-28"), through: day("2026-03-02") }));
    expect(days.map(({ date }) => date)).toEqual(["2026-02-28", "2026-03-01", "2026-03-02"]);
  });

  test("a gap is named by its date, wherever it lies", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9 }), (hole) => {
        const broken = series.filter(({ index }) => index !== hole);
        const refusal = refusalOf(unbrokenDays(broken, { from: first, through: addDays(first, 9) }));
        expect(refusal).toMatchObject({ kind: "missing-fact", field: addDays(first, hole) });
        expect(refusal.sentence).toBe(`There is no reading for ${addDays(first, hole)}.`);
      }),
    );
  });

  test("a period that ends on no day of the calendar is refused", () => {
    const unreal = "2026-13-45" as typeof first;
    expect(refusalOf(unbrokenDays(series, { from: first, through: unreal }))).toMatchObject({ field: "through", found: "2026-13-45" });
    expect(refusalOf(unbrokenDays(series, { from: unreal, through: first })).field).toBe("from");
    expect(refuseUnrealDate("date", "2026-02-29" as typeof first)?.refusal.field).toBe("date");
    expect(refuseUnrealDate("date", first)).toBeUndefined();
  });

  test("an empty series lacks its first day", () => {
    expect(refusalOf(unbrokenDays([], { from: first, through: first })).field).toBe("2026-02-26");
  });

  test("a period that ends before it begins is refused", () => {
    expect(refusalOf(unbrokenDays(series, { from: addDays(first, 1), through: first })).field).toBe("through");
  });

  test("a day named twice or out of order is refused by its date", () => {
    const period = { from: first, through: addDays(first, 1) };
    const [one, two] = series;
    if (one === undefined || two === undefined) throw new Error("the series is too short");
    expect(refusalOf(unbrokenDays([one, one, two], period))).toMatchObject({ kind: "bad-input", found: "2026-02-26" });
    expect(refusalOf(unbrokenDays([two, one], period))).toMatchObject({ kind: "bad-input", found: "2026-02-26" });
  });
});

describe("the gaps of a series", () => {
  const period = { from: first, through: addDays(first, 9) };
  const left = (...holes: readonly number[]) => series.filter(({ index }) => !holes.includes(index));
  const gap = (from: number, through: number) => ({ from: addDays(first, from), through: addDays(first, through) });

  test("are its stretches without a day, at both ends and between", () => {
    expect(gapsIn(series, period)).toEqual([]);
    expect(gapsIn(left(0, 1, 4, 8, 9), period)).toEqual([gap(0, 1), gap(4, 4), gap(8, 9)]);
    expect(gapsIn([], period)).toEqual([period]);
  });

  test("and its stretches with days make up the whole of it", () => {
    expect(stretchesOf([])).toEqual([]);
    expect(stretchesOf(left(0, 1, 4, 8, 9))).toEqual([gap(2, 3), gap(5, 7)]);
    fc.assert(
      fc.property(fc.subarray([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]), (holes) => {
        const days = left(...holes);
        const parts = [...stretchesOf(days), ...gapsIn(days, period)].toSorted((one, other) => (one.from < other.from ? -1 : 1));
        expect([parts[0]?.from, parts.at(-1)?.through]).toEqual([period.from, period.through]);
        for (const [index, part] of parts.entries()) if (index > 0) expect(addDays(parts[index - 1]?.through ?? first, 1)).toBe(part.from);
      }),
    );
  });

  test("leave out what lies outside the period", () => {
    expect(gapsIn(left(0, 5, 9), { from: addDays(first, 3), through: addDays(first, 7) })).toEqual([gap(5, 5)]);
    expect(gapsIn(left(0, 5, 9), { from: addDays(first, 6), through: addDays(first, 8) })).toEqual([]);
  });
});
