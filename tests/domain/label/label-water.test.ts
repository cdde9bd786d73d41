import { describe, expect, test } from "vitest";
import { readDepth, readRainThatSpoils, readWateringIn } from "#domain/label/label-water";
import { exactly } from "#domain/quantities/exact-quantity";
import { accept } from "#domain/foundation/outcome";
import { reduce } from "#domain/quantities/rational";

function inches(value: string) {
  return { dimension: "length", exactAmount: reduce(exactly("in", value).exactAmount) };
}

/** The answer with its depths in lowest terms, so that they compare as values. */
function plain(answer: unknown): unknown {
  return JSON.parse(
    JSON.stringify(answer, (_name, value: unknown) => {
      if (typeof value === "bigint") return value.toString();
      const isRatio = typeof value === "object" && value !== null && "numerator" in value && "denominator" in value;
      if (!isRatio) return value;
      const { numerator, denominator } = reduce(value as { numerator: bigint; denominator: bigint });
      return { numerator: numerator.toString(), denominator: denominator.toString() };
    }),
  );
}

describe("watering in", () => {
  const twoDays = { anchor: "days", from: "not-said", days: 2 };
  const atOnce = { anchor: "at-once" };
  const halfToOne = { least: inches("0.5"), most: inches("1") };
  const oneDay = { anchor: "days", from: "not-said", days: 1 };
  const cases: readonly (readonly [string, unknown, unknown, string])[] = [
    ["0.25 in within 2 days", twoDays, { least: inches("0.25"), most: "none" }, "not-stated"],
    ["1/4 inch within 24 hours", { anchor: "application-end", durationMinutes: 1440 }, { least: inches("0.25"), most: "none" }, "not-stated"],
    ["1-1/2 in", "not-stated", { least: inches("1.5"), most: "none" }, "not-stated"],
    ["1 to 1-1/2 in", "not-stated", { least: inches("1"), most: inches("1.5") }, "not-stated"],
    ["at least 0.5 in", "not-stated", { least: inches("0.5"), most: "none" }, "not-stated"],
    ["0.25 to 0.5 in within 2 days, rain counts", twoDays, { least: inches("0.25"), most: inches("0.5") }, "counts"],
    ["water in with 0.5 inches of water within 2 days; rain does not count", twoDays, { least: inches("0.5"), most: "none" }, "does-not-count"],
    ["within 2 days", twoDays, "not-stated", "not-stated"],
    ["immediately, 0.5 to 1 in", atOnce, halfToOne, "not-stated"],
    ["water in immediately after application with 0.5 to 1 in", atOnce, halfToOne, "not-stated"],
    ["0.5 to 1 in at once, rain counts", atOnce, halfToOne, "counts"],
    ["0.5 in within 1 day after application", oneDay, { least: inches("0.5"), most: "none" }, "not-stated"],
    ["within 24 hours of application", { anchor: "application-end", durationMinutes: 1440 }, "not-stated", "not-stated"],
    ["within 2 days after the start of the application", { ...twoDays, from: "application-start" }, "not-stated", "not-stated"],
    ["0.25 in within 0 days", { anchor: "calendar-day", days: 0 }, { least: inches("0.25"), most: "none" }, "not-stated"],
    ["0.25 in the same day", { anchor: "calendar-day", days: 0 }, { least: inches("0.25"), most: "none" }, "not-stated"],
    ["0.25 in by the end of the day following", { anchor: "calendar-day", days: 1 }, { least: inches("0.25"), most: "none" }, "not-stated"],
    ["water in", "not-stated", "not-stated", "not-stated"],
  ];
  test.each(cases)("%s", (value, by, depth, rain) => {
    expect(plain(readWateringIn(value))).toEqual(plain(accept({ kind: "watering-in", by, depth, rain })));
  });

  test.each(["0.25 in soon", "up to 0.5 in", "0.25", "0.25 in within 3 months", "0.25 in within 2 days unless it rains", "immediately or within 24 hours, 0.5 in", "0.25 in by the day following"])("%s is refused", (value) => {
    expect(readWateringIn(value).ok).toBe(false);
  });
});

describe("rain that spoils", () => {
  const within = { anchor: "application-end", durationMinutes: 720 };
  test.each([
    ["12 hours", "any"],
    ["within 12 hours", "any"],
    ["any rain within 12 hours", "any"],
    ["0.25 in within 12 hours", inches("0.25")],
    ["more than 0.25 in of rain within 12 hours", inches("0.25")],
  ])("%s", (value, from) => expect(plain(readRainThatSpoils(value))).toEqual(plain(accept({ kind: "rain-that-spoils", within, from }))));

  test("days of rain are read both ways like any others", () => {
    expect(readRainThatSpoils("any rain within 1 day")).toEqual(accept({ kind: "rain-that-spoils", within: { anchor: "days", from: "not-said", days: 1 }, from: "any" }));
  });

  test.each(["heavy rain within 12 hours", "rain", "0.25 in"])("%s is refused", (value) => expect(readRainThatSpoils(value).ok).toBe(false));
});

test("a depth has a unit of length", () => {
  expect(plain(readDepth("10 mm"))).toEqual(plain(accept(exactly("mm", "10"))));
  expect(readDepth("10 gal").ok).toBe(false);
  expect(readDepth("10").ok).toBe(false);
});
