import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { isTimeZone, instantOfMinute, localDay, localHours, localTimeAt, noonToNoon } from "#domain/weather/local-hours";
import { day, refusalOf, valueOf } from "../../support/domain-answers";

const NEW_YORK = "America/New_York";
const utc = (text: string) => Date.parse(`${text}Z`);

describe("the hours of a local day", () => {
  test.each([
    ["2026-05-04", NEW_YORK, 24],
    ["2026-03-08", NEW_YORK, 23],
    ["2026-11-01", NEW_YORK, 25],
    ["2026-03-08", "America/Phoenix", 24],
    ["2026-03-08", "America/Los_Angeles", 23],
    ["2024-09-08", "America/Santiago", 23],
    ["2026-10-04", "Australia/Lord_Howe", 24],
  ])("%s in %s: %d", (date, timeZone, count) => expect(valueOf(localHours(day(date), timeZone))).toHaveLength(count));

  test("in spring the clock goes from 01:00 to 03:00, one hour apart", () => {
    const hours = valueOf(localHours(day("2026-03-08"), NEW_YORK));
    expect(hours.slice(0, 4).map(({ localTime, utcOffsetMinutes }) => [localTime, utcOffsetMinutes])).toEqual([
      ["00:00", -300],
      ["01:00", -300],
      ["03:00", -240],
      ["04:00", -240],
    ]);
    expect(hours[2]?.startsAtEpochMilliseconds).toBe(utc("2026-03-08T07:00"));
  });
  test("in fall it shows 01:00 twice, told apart by the offset", () => {
    const hours = valueOf(localHours(day("2026-11-01"), NEW_YORK));
    expect(hours.slice(0, 4).map(({ localTime, utcOffsetMinutes }) => [localTime, utcOffsetMinutes])).toEqual([
      ["00:00", -240],
      ["01:00", -240],
      ["01:00", -300],
      ["02:00", -300],
    ]);
  });
  test("a zone that shifts by half an hour ends its day with a half hour", () => {
    const last = valueOf(localHours(day("2026-10-04"), "Australia/Lord_Howe")).at(-1);
    expect((last?.endsAtEpochMilliseconds ?? 0) - (last?.startsAtEpochMilliseconds ?? 0)).toBe(30 * 60_000);
  });
  test("where midnight doesn't exist the day begins with the first instant that does", () => {
    expect(valueOf(localHours(day("2024-09-08"), "America/Santiago"))[0]).toMatchObject({
      localTime: "01:00",
      startsAtEpochMilliseconds: utc("2024-09-08T04:00"),
    });
  });

  test("touch each other, belong to their date, and one day ends where the next begins", () => {
    const zones = fc.constantFrom(
      NEW_YORK,
      "America/Denver",
      "America/Anchorage",
      "Pacific/Honolulu",
      "Europe/London",
      "Asia/Kolkata",
      "UTC",
    );
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3000 }), zones, (after, timeZone) => {
        const date = addDays(day("2022-01-01"), after);
        const hours = valueOf(localHours(date, timeZone));
        hours.forEach(({ startsAtEpochMilliseconds, endsAtEpochMilliseconds }, index) => {
          expect(localTimeAt(startsAtEpochMilliseconds, timeZone).date).toBe(date);
          if (index > 0) expect(startsAtEpochMilliseconds).toBe(hours[index - 1]?.endsAtEpochMilliseconds);
          expect(endsAtEpochMilliseconds).toBeGreaterThan(startsAtEpochMilliseconds);
        });
        expect(hours.at(-1)?.endsAtEpochMilliseconds).toBe(
          valueOf(localDay(addDays(date, 1), timeZone)).fromEpochMilliseconds,
        );
      }),
    );
  });
});

describe("from noon to noon", () => {
  test.each([
    ["2026-07-10", 24],
    ["2026-03-07", 23],
    ["2026-10-31", 25],
    ["2026-03-08", 24],
  ])("%s: %d h", (date, count) => {
    const { fromEpochMilliseconds, untilEpochMilliseconds } = valueOf(noonToNoon(day(date), NEW_YORK));
    expect((untilEpochMilliseconds - fromEpochMilliseconds) / 3_600_000).toBe(count);
    expect(localTimeAt(fromEpochMilliseconds, NEW_YORK).localTime).toBe("12:00");
    expect(localTimeAt(untilEpochMilliseconds, NEW_YORK).localTime).toBe("12:00");
  });
});

describe("time zones", () => {
  test.each([
    [NEW_YORK, true],
    ["UTC", true],
    ["America/Indiana/Indianapolis", true],
    ["Eastern", false],
    ["America/Nowhere", false],
    ["", false],
    ["+05:00", false],
  ])("%s: %s", (name, isKnown) => expect(isTimeZone(name)).toBe(isKnown));
  test("an unknown one is refused by name", () => {
    for (const answer of [
      localHours(day("2026-05-04"), "Eastern"),
      localDay(day("2026-05-04"), "Eastern"),
      noonToNoon(day("2026-05-04"), "Eastern"),
    ]) {
      expect(refusalOf(answer)).toMatchObject({ field: "timeZone", found: "Eastern" });
    }
  });
  test("an instant is read with date, time and offset", () => {
    expect(localTimeAt(utc("2026-05-04T02:30"), NEW_YORK)).toEqual({
      date: "2026-05-03",
      localTime: "22:30",
      utcOffsetMinutes: -240,
    });
  });
});

test("a minute of the day is an instant, on the days when clocks change too", () => {
  const at = (date: string, minute: number) => new Date(instantOfMinute(day(date), minute, "America/Chicago")).toISOString();
  expect(at("2026-04-14", 9 * 60 + 12)).toBe("2026-04-14T14:12:00.000Z");
  expect(at("2026-03-08", 3 * 60)).toBe("2026-03-08T08:00:00.000Z");
  expect(at("2026-11-01", 30)).toBe("2026-11-01T05:30:00.000Z");
  expect(at("2026-11-01", 9 * 60)).toBe("2026-11-01T15:00:00.000Z");
});
