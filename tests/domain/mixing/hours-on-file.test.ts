import { describe, expect, test } from "vitest";
import { hoursMissing, hoursOnFile, type WateringAtProperty } from "#domain/mixing/hours-on-file";
import { hoursWords, withinWateringHours } from "#domain/mixing/watering-hours";
import { PAST_MIDNIGHT, WHOLE_DAY } from "#domain/properties/watering-fact";
import { at, CHICAGO } from "../../support/aftercare-builders";

const EVENING = { fromMinute: 18 * 60, untilMinute: 24 * 60 };
const NIGHT = { fromMinute: 18 * 60, untilMinute: 10 * 60 };
const TUESDAY = { weekdays: [2] } as const;
const SUNDAY = { weekdays: [7] } as const;

const property = (change: Partial<WateringAtProperty>): WateringAtProperty => ({ townRule: "none", controller: "none", street: "4 Sorrel Lane", ...change });

describe("the hours in which a property may be watered", () => {
  test("the town's rule is law, and the controller is the house's", () => {
    const { localRules, controller } = hoursOnFile(property({ townRule: { days: { dates: "odd" }, hours: EVENING }, controller: { days: TUESDAY, hours: EVENING } }));
    expect(localRules).toEqual({ basis: "law", source: "the town's watering rule, as it is on file for the property", periods: [{ datesOfMonth: "odd", fromMinuteOfDay: 1080, untilMinuteOfDay: 1440 }] });
    expect(controller).toEqual({ basis: "house", source: "the controller's days and hours, as they are on file for the property", periods: [{ weekday: 2, fromMinuteOfDay: 1080, untilMinuteOfDay: 1440 }] });
  });
  test.each([
    ["neither is there", {}, ""],
    ["nobody has said anything", { townRule: "unknown", controller: "unknown" }, ""],
    ["days without hours are whole days", { townRule: { days: SUNDAY, hours: null } }, "Local rules: Sunday midnight to midnight."],
    ["hours without days are those of every day", { controller: { days: null, hours: EVENING } }, "The controller: every day 6 pm to midnight."],
    ["the house number is read from the street", { townRule: { days: { dates: "house-number" }, hours: WHOLE_DAY } }, "Local rules: even dates midnight to midnight."],
    ["a house number that there is not leaves every day", { townRule: { days: { dates: "house-number" }, hours: EVENING }, street: "Old Mill Road" }, "Local rules: every day 6 pm to midnight."],
    ["the town's hours past midnight on the same day", { townRule: { days: SUNDAY, hours: { ...NIGHT, pastMidnight: "same-day" } } }, "Local rules: Sunday midnight to 10 am and 6 pm to midnight."],
    ["the town's hours past midnight into the next morning", { townRule: { days: { dates: "odd" }, hours: { ...NIGHT, pastMidnight: "next-morning" } } }, "Local rules: odd dates 6 pm to 10 am of the next day."],
    ["the town's hours past midnight, of which nobody has said either", { townRule: { days: SUNDAY, hours: NIGHT } }, "Local rules: Sunday 6 pm to midnight."],
    ["of which nobody has said either, on every day", { townRule: { days: null, hours: NIGHT } }, "Local rules: every day midnight to 10 am and 6 pm to midnight."],
    ["a controller runs on into the next morning", { controller: { days: SUNDAY, hours: NIGHT } }, "The controller: Sunday 6 pm to 10 am of the next day."],
    ["a controller by dates runs on as well", { controller: { days: { dates: "odd" }, hours: NIGHT } }, "The controller: odd dates 6 pm to 10 am of the next day."],
  ] as const)("%s", (_name, change, words) => expect(hoursWords(hoursOnFile(property(change)))).toBe(words));
});

describe("hours as water utilities publish them, typed as one pair past midnight", () => {
  const week = { fromEpochMilliseconds: at("2026-07-05T00:00-05:00"), untilEpochMilliseconds: at("2026-07-12T00:00-05:00") };
  const running = (change: Partial<WateringAtProperty>) =>
    withinWateringHours(week, hoursOnFile(property(change)), CHICAGO).map((span) => [span.fromEpochMilliseconds, span.untilEpochMilliseconds].map((instant) => new Date(instant - 5 * 3_600_000).toISOString().slice(8, 16)).join(" "));
  const hours = { fromMinute: 19 * 60, untilMinute: 10 * 60 };
  // Wednesday and Saturday, 12 a.m. to 10 a.m. and 7 p.m. to 12 a.m. "on your authorized day": Travis County WCID No. 17,
  // stage 1, house numbers that end in 7 to 9, https://wcid17.org/?p=16528.
  const days = { weekdays: [3, 6] } as const;
  test("of the authorized day: none on the mornings of Thursday and Sunday", () => {
    expect(running({ townRule: { days, hours: { ...hours, pastMidnight: "same-day" } } })).toEqual(["08T00:00 08T10:00", "08T19:00 09T00:00", "11T00:00 11T10:00", "11T19:00 12T00:00"]);
  });
  test("of which nobody has said it: the evenings, which are allowed either way", () => {
    expect(running({ townRule: { days, hours } })).toEqual(["08T19:00 09T00:00", "11T19:00 12T00:00"]);
  });
  test("a controller that is set to them runs on into Sunday and Thursday", () => {
    expect(running({ controller: { days, hours } })).toEqual(["05T00:00 05T10:00", "08T19:00 09T10:00", "11T19:00 12T00:00"]);
  });
});

describe("what is not on file is said, and what is taken in its place", () => {
  const said = (change: Partial<WateringAtProperty>) => hoursMissing(property(change)).map(({ level, source, rule }) => `${level} ${source} ${rule}`);
  const WHOLE = { days: TUESDAY, hours: EVENING };
  test.each([
    ["nothing where both are known not to be there", {}, []],
    ["nothing where both are whole", { townRule: WHOLE, controller: WHOLE }, []],
    ["both in one", { townRule: "unknown", controller: "unknown" }, ["take-care law watering-hours-not-on-file"]],
    ["the town's rule alone", { townRule: "unknown", controller: WHOLE }, ["take-care law watering-hours-of-town-not-on-file"]],
    ["the controller alone", { controller: "unknown" }, ["take-care house watering-hours-of-controller-not-on-file"]],
    ["the days of one", { townRule: { days: null, hours: EVENING } }, ["take-care law watering-hours-of-town-without-days"]],
    ["the hours of the other", { controller: { days: TUESDAY, hours: null } }, ["take-care house watering-hours-of-controller-without-hours"]],
    ["a half of each", { townRule: { days: TUESDAY, hours: null }, controller: { days: null, hours: EVENING } }, ["take-care law watering-hours-of-town-without-hours", "take-care house watering-hours-of-controller-without-days"]],
    ["a half of one and the whole of the other", { townRule: { days: TUESDAY, hours: null }, controller: "unknown" }, ["take-care law watering-hours-of-town-without-hours", "take-care house watering-hours-of-controller-not-on-file"]],
  ] as const)("%s", (_name, change, expected) => expect(said(change)).toEqual(expected));
  test("in words, with the property", () => {
    expect(hoursMissing(property({ townRule: { days: null, hours: EVENING }, controller: "unknown" }))).toEqual([
      {
        level: "take-care", rule: "watering-hours-of-town-without-days", source: "law", about: ["4 Sorrel Lane"],
        what: "The town's watering rule has its hours on file and not its days.", figure: "Every day is taken as allowed.", toDo: "Look up the days and enter them, all seven where it is every day.",
      },
      {
        level: "take-care", rule: "watering-hours-of-controller-not-on-file", source: "house", about: ["4 Sorrel Lane"],
        what: "The controller's days and hours are not on file.", figure: "Every hour that the town leaves is taken as allowed.", toDo: "Ask for them and enter them, or that there is no controller.",
      },
    ]);
    expect(hoursMissing(property({ townRule: "unknown" }))[0]?.figure).toBe("Every hour of the controller is taken as allowed.");
    expect(hoursMissing(property({ controller: { days: TUESDAY, hours: null } }))[0]).toMatchObject({
      what: "The controller has its days on file and not its hours.", figure: "Every hour of those days is taken as allowed.", toDo: "Ask for the hours and enter them, midnight to midnight where it is every hour.",
    });
  });
  test("a rule that goes by a house number that there is not says so", () => {
    const numberless = { days: { dates: "house-number" }, hours: EVENING } as const;
    expect(hoursMissing(property({ townRule: numberless, street: "Old Mill Road" }))).toMatchObject([{ rule: "watering-hours-of-town-without-days", what: "The town's watering rule goes by the house number, and the street begins with none." }]);
    expect(hoursMissing(property({ townRule: numberless }))).toEqual([]);
  });

  test("hours past midnight of the town's rule say so where nobody has said which morning they are of, and it makes a difference", () => {
    expect(hoursMissing(property({ townRule: { days: { weekdays: [1, 4] }, hours: NIGHT } }))).toEqual([
      {
        level: "take-care", rule: "watering-hours-of-town-past-midnight", source: "law", about: ["4 Sorrel Lane"],
        what: "The town's watering rule has 6 pm to 10 am on file, and not whether those are the early and late hours of the same day or run into the next morning.",
        figure: "Only hours that are allowed either way are taken as allowed.", toDo: "Look up which it is and choose it for the property.",
      },
    ]);
    expect(said({ townRule: { days: { dates: "odd" }, hours: NIGHT }, controller: "unknown" })).toEqual(["take-care law watering-hours-of-town-past-midnight", "take-care house watering-hours-of-controller-not-on-file"]);
    expect(said({ townRule: { days: { weekdays: [1, 2, 3, 4, 5, 6, 7] }, hours: NIGHT }, controller: { days: TUESDAY, hours: NIGHT } })).toEqual([]);
    expect(said({ townRule: { days: null, hours: NIGHT } })).toEqual(["take-care law watering-hours-of-town-without-days"]);
    for (const pastMidnight of PAST_MIDNIGHT) expect(said({ townRule: { days: TUESDAY, hours: { ...NIGHT, pastMidnight } } })).toEqual([]);
  });
});
