import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clockSpans } from "#domain/mixing/clock-periods";
import { intersectSpans } from "#domain/mixing/span-set";
import { authoritiesOfHours, hoursInTheWay, hoursTogetherWords, hoursWords, periodWords, refuseImpossibleHours, unknownHours, type WateringDays, wateringPeriods, withinWateringHours } from "#domain/mixing/watering-hours";
import { PAST_MIDNIGHT, type PastMidnight } from "#domain/properties/watering-fact";
import { at, byHouse, byLaw, CHICAGO, daily } from "../../support/aftercare-builders";

const span = { fromEpochMilliseconds: at("2026-05-02T00:00-05:00"), untilEpochMilliseconds: at("2026-05-04T00:00-05:00") };
const within = (hours: Parameters<typeof withinWateringHours>[1]) =>
  withinWateringHours(span, hours, CHICAGO).map((found) => [found.fromEpochMilliseconds, found.untilEpochMilliseconds]);

describe("what both allow", () => {
  test("neither limits: all of it", () => expect(within({ localRules: "none", controller: "none" })).toEqual([[span.fromEpochMilliseconds, span.untilEpochMilliseconds]]));
  test("the rule's hours on the controller's days", () => {
    const hours = { localRules: byLaw([...daily(5, 9), ...daily(19, 22)]), controller: byHouse(daily(0, 8, [0])) };
    expect(within(hours)).toEqual([[at("2026-05-03T05:00-05:00"), at("2026-05-03T08:00-05:00")]]);
  });
  test("none in common", () => expect(within({ localRules: byLaw(daily(5, 9)), controller: byHouse(daily(9, 12)) })).toEqual([]));
  test("an empty or turned span has none", () => {
    expect(withinWateringHours({ fromEpochMilliseconds: 5, untilEpochMilliseconds: 5 }, { localRules: "none", controller: "none" }, CHICAGO)).toEqual([]);
  });
});

test("what nobody knows is a hold for the office, one for each kind", () => {
  expect(unknownHours({ localRules: "unknown", controller: "unknown" })).toMatchObject([
    { level: "hold", answerableBy: "office", source: "law" },
    { level: "hold", answerableBy: "office", source: "house" },
  ]);
  expect(unknownHours({ localRules: "none", controller: byHouse([]) })).toEqual([]);
});

describe("days and hours as periods and in words", () => {
  const hours = (fromHour: number, untilHour: number) => ({ fromMinuteOfDay: fromHour * 60, untilMinuteOfDay: untilHour * 60 });
  test.each([
    ["days of the week", { weekdays: [1, 3] }, hours(4, 9), [{ weekday: 1, ...hours(4, 9) }, { weekday: 3, ...hours(4, 9) }]],
    ["odd dates", { datesOfMonth: "odd" }, hours(4, 9), [{ datesOfMonth: "odd", ...hours(4, 9) }]],
    ["the whole of a date", { datesOfMonth: "odd" }, hours(0, 0), [{ datesOfMonth: "odd", ...hours(0, 24) }]],
    ["until midnight", { datesOfMonth: "even" }, hours(22, 0), [{ datesOfMonth: "even", ...hours(22, 24) }]],
  ] as const)("%s, whatever hours past midnight mean", (_name, days, from, expected) => {
    for (const pastMidnight of [...PAST_MIDNIGHT, "not-said"] as const) expect(wateringPeriods(days, from, pastMidnight)).toEqual(expected);
  });
  test.each([
    ["into the day after a day of the week", { weekdays: [6] }, hours(22, 5), "next-morning", [{ weekday: 6, ...hours(22, 29) }]],
    ["into the day after a date", { datesOfMonth: "even" }, hours(22, 5), "next-morning", [{ datesOfMonth: "even", ...hours(22, 29) }]],
    ["on the same day of the week", { weekdays: [3, 6] }, hours(19, 10), "same-day", [...daily(0, 10, [3, 6]), ...daily(19, 24, [3, 6])]],
    ["on the same date", { datesOfMonth: "odd" }, hours(22, 5), "same-day", [{ datesOfMonth: "odd", ...hours(0, 5) }, { datesOfMonth: "odd", ...hours(22, 24) }]],
    ["in the late hours alone where nobody has said", { weekdays: [1, 4] }, hours(18, 10), "not-said", daily(18, 24, [1, 4])],
    ["and the early ones after such a day, over the week's end too", { weekdays: [6, 0, 3] }, hours(18, 10), "not-said", [...daily(0, 10, [0]), ...daily(18, 24, [6, 0, 3])]],
    ["in the late hours of dates alone", { datesOfMonth: "odd" }, hours(18, 10), "not-said", [{ datesOfMonth: "odd", ...hours(18, 24) }]],
    ["round the clock from five in the morning", { weekdays: [6] }, hours(5, 5), "next-morning", [{ weekday: 6, ...hours(5, 29) }]],
  ] as const)("past midnight %s", (_name, days, from, pastMidnight, expected) => expect(wateringPeriods(days, from, pastMidnight)).toEqual(expected));
  test("where nobody has said, whatever is in is in by both readings, and on days of the week nothing that both allow is out", () => {
    const spansOf = (days: WateringDays, [from, until]: readonly [number, number], pastMidnight: PastMidnight | "not-said") =>
      clockSpans(wateringPeriods(days, { fromMinuteOfDay: from, untilMinuteOfDay: until }, pastMidnight), span, CHICAGO);
    const days = fc.oneof(fc.record({ weekdays: fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { minLength: 1 }) }), fc.record({ datesOfMonth: fc.constantFrom("odd" as const, "even" as const) }));
    const minute = fc.integer({ min: 0, max: 1439 });
    fc.assert(
      fc.property(days, fc.tuple(minute, minute), (on, pair) => {
        const both = intersectSpans(spansOf(on, pair, "same-day"), spansOf(on, pair, "next-morning"));
        const taken = spansOf(on, pair, "not-said");
        expect("weekdays" in on ? taken : intersectSpans(taken, both)).toEqual("weekdays" in on ? both : taken);
      }),
    );
  });
  test("what comes out is possible", () => {
    for (const pastMidnight of [...PAST_MIDNIGHT, "not-said"] as const) expect(refuseImpossibleHours({ localRules: byLaw(wateringPeriods({ datesOfMonth: "odd" }, hours(22, 5), pastMidnight)), controller: "none" })).toBeUndefined();
  });
  test.each([
    [daily(5, 9), "every day 5 am to 9 am"],
    [[...daily(5, 9, [3, 1]), ...daily(19, 24, [1])], "Monday and Wednesday 5 am to 9 am; Monday 7 pm to midnight"],
    [wateringPeriods({ datesOfMonth: "odd" }, hours(4, 9), "same-day"), "odd dates 4 am to 9 am"],
    [(["odd", "even"] as const).flatMap((datesOfMonth) => wateringPeriods({ datesOfMonth }, hours(4, 9), "same-day")), "every day 4 am to 9 am"],
    [wateringPeriods({ weekdays: [1, 4] }, hours(18, 10), "same-day"), "Monday and Thursday midnight to 10 am and 6 pm to midnight"],
    [wateringPeriods({ weekdays: [1, 4] }, hours(18, 10), "next-morning"), "Monday and Thursday 6 pm to 10 am of the next day"],
    [wateringPeriods({ weekdays: [1, 4] }, hours(18, 10), "not-said"), "Monday and Thursday 6 pm to midnight"],
    [wateringPeriods({ datesOfMonth: "odd" }, hours(22, 5), "next-morning"), "odd dates 10 pm to 5 am of the next day"],
  ])("in words", (periods, words) => expect(periodWords(periods)).toBe(words));
  test("of both kinds that are on file", () => {
    expect(hoursWords({ localRules: byLaw(daily(5, 9)), controller: byHouse(daily(4, 8, [6])) })).toBe("Local rules: every day 5 am to 9 am. The controller: Saturday 4 am to 8 am.");
    expect(hoursWords({ localRules: "none", controller: "unknown" })).toBe("");
  });
  test("as a customer is told them", () => {
    const [town, set] = [byLaw(daily(5, 9)), byHouse(daily(4, 8, [6]))];
    expect(hoursTogetherWords({ localRules: town, controller: "none" })).toBe("every day 5 am to 9 am");
    expect(hoursTogetherWords({ localRules: "unknown", controller: set })).toBe("Saturday 4 am to 8 am");
    expect(hoursTogetherWords({ localRules: town, controller: set })).toBe("both by local rules, every day 5 am to 9 am, and by the controller, Saturday 4 am to 8 am");
    expect(hoursTogetherWords({ localRules: town, controller: byHouse(daily(5, 9)) })).toBe("every day 5 am to 9 am");
    expect(hoursTogetherWords({ localRules: "none", controller: "none" })).toBe("");
  });
});

test("odd dates on the controller's days leave the odd ones of those", () => {
  const hours = { localRules: byLaw(wateringPeriods({ datesOfMonth: "odd" }, { fromMinuteOfDay: 240, untilMinuteOfDay: 540 }, "same-day")), controller: byHouse(daily(5, 24, [0, 6])) };
  expect(within(hours)).toEqual([[at("2026-05-03T05:00-05:00"), at("2026-05-03T09:00-05:00")]]);
});

describe("the hours that are in the way", () => {
  const [rules, set] = [byLaw(daily(5, 9)), byHouse(daily(4, 8))];
  const both = { localRules: rules, controller: set };
  const inTheWay = (leavesTime: (isRules: boolean, isController: boolean) => boolean) => hoursInTheWay(both, ({ localRules, controller }) => leavesTime(localRules !== "none", controller !== "none"));
  test("the rules alone where they leave none by themselves, whatever the controller is set to", () => {
    expect(inTheWay(() => false)).toEqual({ localRules: rules, controller: "none" });
    expect(inTheWay((isRules) => !isRules)).toEqual({ localRules: rules, controller: "none" });
  });
  test("the controller where only that leaves none", () => expect(inTheWay((_isRules, isController) => !isController)).toEqual({ localRules: "none", controller: set }));
  test("both where it takes both", () => expect(inTheWay((isRules, isController) => !isRules || !isController)).toEqual(both));
});

test("authorities are those of the hours on file", () => {
  expect(authoritiesOfHours({ localRules: byLaw(daily(5, 9)), controller: "none" })).toEqual([{ basis: "law", source: "town watering rule" }]);
});

test("impossible hours are refused by name", () => {
  expect(refuseImpossibleHours({ localRules: "none", controller: byHouse(daily(9, 5)) })?.refusal.field).toBe("controller");
  expect(refuseImpossibleHours({ localRules: byLaw(daily(5, 30)), controller: "none" })?.refusal.field).toBe("localRules");
  expect(refuseImpossibleHours({ localRules: byLaw(daily(5, 9)), controller: "unknown" })).toBeUndefined();
});
