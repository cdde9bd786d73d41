import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import {
  type DegreeDayMethod,
  EIGHTY_SIX_FIFTY,
  degreeDaysOfDay,
  openingLine,
  sumDegreeDays,
} from "#domain/turf/degree-days";
import { day, refusalOf, valueOf } from "../../support/domain-answers";
import { between } from "../../support/real-numbers";

const first = day("2026-02-15");
const methods: readonly DegreeDayMethod[] = [
  { kind: "simple-average", scale: "celsius", baseDegrees: 10 },
  { kind: "reset", scale: "celsius", baseDegrees: 10 },
  { kind: "reset", scale: "celsius", baseDegrees: 10, upperCutDegrees: 30 },
  { kind: "met-eireann", scale: "celsius", baseDegrees: 10 },
];
const degrees = between(-40, 50);
const extremes = fc
  .tuple(degrees, degrees)
  .map(([one, other]) => ({ minimumDegrees: Math.min(one, other), maximumDegrees: Math.max(one, other) }));
const seriesOf = (days: readonly { minimumDegrees: number; maximumDegrees: number }[]) => ({
  scale: "celsius" as const,
  days: days.map((each, index) => ({ date: addDays(first, index), ...each })),
});

describe("a day's degree days, every method", () => {
  test("are zero or more, and at most how far the day's highest is above the base", () => {
    fc.assert(
      fc.property(fc.constantFrom(...methods), extremes, (method, each) => {
        const answer = valueOf(degreeDaysOfDay(method, each));
        expect(answer).toBeGreaterThanOrEqual(0);
        expect(answer).toBeLessThanOrEqual(Math.max(0, each.maximumDegrees - method.baseDegrees) + 1e-9);
      }),
    );
  });

  test("don't fall when the day gets warmer", () => {
    fc.assert(
      fc.property(fc.constantFrom(...methods), extremes, between(0, 10), (method, each, warmer) => {
        const warm = { minimumDegrees: each.minimumDegrees + warmer, maximumDegrees: each.maximumDegrees + warmer };
        expect(valueOf(degreeDaysOfDay(method, warm))).toBeGreaterThanOrEqual(
          valueOf(degreeDaysOfDay(method, each)) - 1e-9,
        );
      }),
    );
  });

  test("the simple average never gives more than the reset or the Irish method", () => {
    fc.assert(
      fc.property(extremes, (each) => {
        const [simple = 0, reset = 0, , irish = 0] = methods.map((method) => valueOf(degreeDaysOfDay(method, each)));
        expect(simple).toBeLessThanOrEqual(reset + 1e-9);
        expect(simple).toBeLessThanOrEqual(irish + 1e-9);
      }),
    );
  });

  test("all methods agree while the whole day is above the base and under the cut", () => {
    const answers = methods.map((method) =>
      valueOf(degreeDaysOfDay(method, { minimumDegrees: 12, maximumDegrees: 28 })),
    );
    expect(answers).toEqual([10, 10, 10, 10]);
  });

  test.each([
    [95, 40, 18],
    [100, 90, 36],
    [45, 30, 0],
    [86, 50, 18],
  ])("86/50 of %d over %d °F is %d", (maximumDegrees, minimumDegrees, expected) => {
    expect(valueOf(degreeDaysOfDay(EIGHTY_SIX_FIFTY, { minimumDegrees, maximumDegrees }))).toBe(expected);
  });
});

describe("refusals of a day", () => {
  const simple = { kind: "simple-average", scale: "fahrenheit", baseDegrees: 50 } as const;
  test("a lowest above the highest", () => {
    expect(refusalOf(degreeDaysOfDay(simple, { minimumDegrees: 70, maximumDegrees: 60 })).sentence).toBe(
      "The day's lowest temperature, 70 °F, is above its highest, 60 °F.",
    );
  });
  test.each([
    ["minimumDegrees", { minimumDegrees: Number.NaN, maximumDegrees: 60 }],
    ["maximumDegrees", { minimumDegrees: 40, maximumDegrees: Number.NaN }],
  ])("an unknown %s is a missing fact", (field, each) =>
    expect(refusalOf(degreeDaysOfDay(simple, each))).toMatchObject({ kind: "missing-fact", field }),
  );
  test("no weather of this earth, as when °F are typed as °C", () => {
    expect(degreeDaysOfDay({ ...simple, scale: "celsius" }, { minimumDegrees: 60, maximumDegrees: 85 }).ok).toBe(false);
    expect(degreeDaysOfDay(simple, { minimumDegrees: -Infinity, maximumDegrees: 60 }).ok).toBe(false);
  });
  test("an upper cut that is not above the base, and a base that is no number", () => {
    const cut = { kind: "reset", scale: "fahrenheit", baseDegrees: 50, upperCutDegrees: 50 } as const;
    expect(refusalOf(degreeDaysOfDay(cut, { minimumDegrees: 40, maximumDegrees: 60 })).field).toBe("upperCutDegrees");
    const endless = { ...cut, upperCutDegrees: Infinity };
    expect(refusalOf(degreeDaysOfDay(endless, { minimumDegrees: 40, maximumDegrees: 60 })).field).toBe("upperCutDegrees");
    expect(
      refusalOf(degreeDaysOfDay({ ...simple, baseDegrees: Number.NaN }, { minimumDegrees: 40, maximumDegrees: 60 }))
        .field,
    ).toBe("baseDegrees");
  });
  test.each([
    ["baseDegrees", { baseDegrees: 1e308 }],
    ["baseDegrees", { baseDegrees: -1e308 }],
    ["upperCutDegrees", { upperCutDegrees: 1e308 }],
  ])("a %s that is no temperature of this earth, so that no sum is infinite", (field, change) => {
    const reset = { kind: "reset", scale: "fahrenheit", baseDegrees: 50, upperCutDegrees: 86, ...change } as const;
    expect(refusalOf(degreeDaysOfDay(reset, { minimumDegrees: 40, maximumDegrees: 60 }))).toMatchObject({ kind: "bad-input", field, allowed: "from -130 to 167 °F" });
  });
});

describe("a running sum", () => {
  const method = { kind: "simple-average", scale: "celsius", baseDegrees: 0 } as const;
  const tenths = seriesOf(Array.from({ length: 30 }, () => ({ minimumDegrees: 9.1, maximumDegrees: 11.1 })));
  const through = addDays(first, 29);

  test("has a line for each day, each the sum of those before it", () => {
    fc.assert(
      fc.property(fc.constantFrom(...methods), fc.array(extremes, { minLength: 1, maxLength: 20 }), (each, days) => {
        const sum = valueOf(
          sumDegreeDays(each, seriesOf(days), { from: first, through: addDays(first, days.length - 1) }),
        );
        let total = 0;
        for (const line of sum.lines) {
          total += line.degreeDays;
          expect(line.totalDegreeDays).toBe(total);
        }
        expect(sum.lines).toHaveLength(days.length);
        expect(sum.totalDegreeDays).toBe(total);
      }),
    );
  });

  test("a threshold is reached on its day, although binary tenths fall short of it", () => {
    const sum = valueOf(sumDegreeDays(method, tenths, { from: first, through }));
    expect(openingLine(sum, 101)?.date).toBe(addDays(first, 9));
    expect(openingLine(sum, 101.1)?.date).toBe(addDays(first, 10));
    expect(openingLine(sum, 1000)).toBeUndefined();
    expect(openingLine(sum, 0)?.date).toBe(first);
  });

  test("begins where it is told, and leaves the days before and after alone", () => {
    const sum = valueOf(sumDegreeDays(method, tenths, { from: addDays(first, 5), through: addDays(first, 6) }));
    expect(sum.totalDegreeDays).toBeCloseTo(20.2, 9);
  });

  test("a series in °C summed in °F is 1.8 times as much", () => {
    const inFahrenheit = { kind: "simple-average", scale: "fahrenheit", baseDegrees: 32 } as const;
    const one = valueOf(sumDegreeDays(method, tenths, { from: first, through }));
    const other = valueOf(sumDegreeDays(inFahrenheit, tenths, { from: first, through }));
    expect(other.totalDegreeDays).toBeCloseTo(one.totalDegreeDays * 1.8, 6);
  });

  test("a missing day is named, and an impossible one too", () => {
    const gap = { ...tenths, days: tenths.days.filter(({ date }) => date !== "2026-02-20") };
    expect(refusalOf(sumDegreeDays(method, gap, { from: first, through })).field).toBe("2026-02-20");
    const wrong = {
      ...tenths,
      days: tenths.days.map((each) => (each.date === "2026-02-21" ? { ...each, minimumDegrees: 20 } : each)),
    };
    expect(refusalOf(sumDegreeDays(method, wrong, { from: first, through })).sentence).toBe(
      "2026-02-21: The day's lowest temperature, 20 °C, is above its highest, 11.1 °C.",
    );
  });
});
