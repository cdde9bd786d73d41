import { describe, expect, test } from "vitest";
import { ONE_HOUR_MILLISECONDS, unbrokenHours, unbrokenHoursBetween } from "#domain/turf/hourly-series";
import { refusalOf, valueOf } from "../../support/domain-answers";

const start = Date.UTC(2026, 6, 1, 12);
const hours = Array.from({ length: 6 }, (_, index) => ({
  startsAtEpochMilliseconds: start + index * ONE_HOUR_MILLISECONDS,
}));
const without = (...indexes: readonly number[]) => hours.filter((_, index) => !indexes.includes(index));

describe("unbroken hours", () => {
  test("hours in a row are given back", () => {
    expect(valueOf(unbrokenHours(hours))).toHaveLength(6);
    expect(valueOf(unbrokenHours([]))).toEqual([]);
  });

  test("the missing hour is named in UTC", () => {
    expect(refusalOf(unbrokenHours(without(2)))).toMatchObject({
      kind: "missing-fact",
      field: "2026-07-01T14:00",
      sentence: "There is no reading for the hour that begins at 2026-07-01T14:00 UTC.",
    });
  });

  test("an hour given twice breaks the row", () =>
    expect(unbrokenHours([...hours.slice(0, 1), ...hours]).ok).toBe(false));

  test("an hour without a time is refused", () => {
    expect(refusalOf(unbrokenHours([{ startsAtEpochMilliseconds: Number.NaN }])).sentence).toBe(
      "An hour of the series has no time.",
    );
  });

  test("between two instants the first is in and the last is out", () => {
    const between = valueOf(
      unbrokenHoursBetween(hours, start + ONE_HOUR_MILLISECONDS, start + 3 * ONE_HOUR_MILLISECONDS),
    );
    expect(between).toEqual(hours.slice(1, 3));
  });

  test.each([
    [0, "2026-07-01T12:00"],
    [3, "2026-07-01T15:00"],
    [5, "2026-07-01T17:00"],
  ])("without hour %d, %s is named", (index, name) => {
    const answer = unbrokenHoursBetween(without(index), start, start + 6 * ONE_HOUR_MILLISECONDS);
    expect(refusalOf(answer).field).toBe(name);
  });
});
