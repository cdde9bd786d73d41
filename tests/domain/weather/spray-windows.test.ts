import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type JudgedHour, type JudgedMix, judgeSprayDay } from "#domain/weather/spray-hours";
import { careFor, closedBy } from "#domain/weather/spray-reasons";
import { openWindows, visitWindows } from "#domain/weather/spray-windows";
import { day, valueOf } from "../../support/domain-answers";
import { fairHours, mixOf, questionOf } from "../../support/spray-builders";

const authority = { basis: "label", source: "label" } as const;
const reasonsOf = {
  open: [],
  "take-care": [careFor("gusts", authority, "Gusts.")],
  closed: [closedBy("rain", authority, "Rain.")],
};
const hour = (value: number) => value * 3_600_000;

/** A judged mix by a letter per hour: o open, t take-care, c closed. */
function mix(letters: string, method: JudgedMix["method"] = "spray"): JudgedMix {
  const verdictOf = { o: "open", t: "take-care", c: "closed" } as const;
  const hours: JudgedHour[] = letters.split("").map((letter, index) => {
    const verdict = verdictOf[letter as "o" | "t" | "c"];
    return {
      startsAtEpochMilliseconds: hour(index),
      endsAtEpochMilliseconds: hour(index + 1),
      localTime: `${index}:00`,
      utcOffsetMinutes: 0,
      verdict,
      reasons: reasonsOf[verdict],
    };
  });
  return { mixId: `${method} ${letters}`, method, origin: { kind: "forecast", name: "forecast" }, hours };
}
const spans = (
  windows: readonly { fromEpochMilliseconds: number; untilEpochMilliseconds: number; verdict: string }[],
) =>
  windows.map(
    ({ fromEpochMilliseconds, untilEpochMilliseconds, verdict }) =>
      `${fromEpochMilliseconds / hour(1)}-${untilEpochMilliseconds / hour(1)} ${verdict}`,
  );

describe("windows of a mix", () => {
  test.each([
    ["ccoooccoc", ["2-5 open", "7-8 open"]],
    ["oooo", ["0-4 open"]],
    ["otoc", ["0-3 take-care"]],
    ["cccc", []],
    ["", []],
  ])("%s: %o", (letters, expected) => expect(spans(openWindows(mix(letters)))).toEqual(expected));
  test("carry each reason once", () => {
    expect(openWindows(mix("otto"))[0]?.reasons).toEqual(reasonsOf["take-care"]);
  });
  test("cover the hours that aren't closed, no more and no less, and never touch each other", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom("o", "t", "c"), { maxLength: 30 }), (letters) => {
        const windows = openWindows(mix(letters.join("")));
        letters.forEach((letter, index) => {
          const covering = windows.filter(
            ({ fromEpochMilliseconds, untilEpochMilliseconds }) =>
              fromEpochMilliseconds <= hour(index) && hour(index + 1) <= untilEpochMilliseconds,
          );
          expect(covering).toHaveLength(letter === "c" ? 0 : 1);
        });
        windows.forEach(({ fromEpochMilliseconds }, index) => {
          if (index > 0)
            expect(fromEpochMilliseconds).toBeGreaterThan(windows[index - 1]?.untilEpochMilliseconds ?? Infinity);
        });
      }),
    );
  });
});

describe("windows of a visit", () => {
  const scopes = (...mixes: readonly JudgedMix[]) =>
    visitWindows(mixes).map(({ scope }, index) => `${spans(visitWindows(mixes))[index] ?? ""} ${scope}`);
  test("sprays are held while granular work goes on", () => {
    expect(scopes(mix("coocc"), mix("oooto", "granular"))).toEqual([
      "0-1 open granular-only",
      "1-3 open everything",
      "3-5 take-care granular-only",
    ]);
  });
  test("and the other way around", () => {
    expect(scopes(mix("oooo"), mix("oocc", "granular"))).toEqual(["0-2 open everything", "2-4 open sprays-only"]);
  });
  test("one closed spray holds all sprays, since a visit's sprays go out together", () => {
    expect(scopes(mix("oo"), mix("oc"), mix("oo", "granular"))).toEqual([
      "0-1 open everything",
      "1-2 open granular-only",
    ]);
    expect(scopes(mix("oo"), mix("oc"))).toEqual(["0-1 open everything"]);
  });
  test("a visit of one kind has windows for everything only", () => {
    expect(scopes(mix("oco", "granular"))).toEqual(["0-1 open everything", "2-3 open everything"]);
    expect(visitWindows([])).toEqual([]);
  });
  test("the reasons of what is held don't stand in the window of what goes on", () => {
    expect(visitWindows([mix("c"), mix("o", "granular")])[0]?.reasons).toEqual([]);
  });
  test("a windy afternoon of a real day: sprays in the morning and evening, granular work all day", () => {
    const date = day("2026-05-04");
    const hours = fairHours(date, "America/New_York", (index) => ({ windMph: index >= 11 && index < 18 ? 14 : 6 }));
    const judged = valueOf(judgeSprayDay(questionOf(date, { hours, mixes: [mixOf(), mixOf({}, "granular")] })));
    expect(visitWindows(judged).map(({ scope }) => scope)).toEqual(["everything", "granular-only", "everything"]);
  });
  test("windows are right over the hour that comes twice", () => {
    const date = day("2026-11-01");
    const judged = valueOf(judgeSprayDay(questionOf(date, { hours: fairHours(date, "America/New_York") })));
    const [only, ...more] = openWindows(judged[0] ?? mix(""));
    expect(more).toEqual([]);
    expect(((only?.untilEpochMilliseconds ?? 0) - (only?.fromEpochMilliseconds ?? 0)) / hour(1)).toBe(25);
  });
});
