import fc from "fast-check";
import { expect, test } from "vitest";
import { LICENSE_KIND_WORDS, LICENSE_KINDS, licenseStanding, RUNS_OUT_SOON_DAYS } from "#domain/crew/license";
import { addDays, type CalendarDate } from "#domain/foundation/calendar-date";

const on = "2026-04-14" as CalendarDate;
const standingIn = (days: number, issuedOn: CalendarDate | null = null) => licenseStanding({ issuedOn, expiresOn: addDays(on, days) }, on);

test.each([
  ["far from its end", RUNS_OUT_SOON_DAYS + 1, { kind: "standing", daysLeft: 61 }],
  ["at the edge of soon", RUNS_OUT_SOON_DAYS, { kind: "runs-out-soon", daysLeft: 60 }],
  ["on its last good day", 0, { kind: "runs-out-soon", daysLeft: 0 }],
  ["the day after", -1, { kind: "expired", daysAgo: 1 }],
])("%s", (_when, days, standing) => expect(standingIn(days)).toEqual(standing));

test("is good from the day it was issued, and says how long until then", () => {
  expect(standingIn(365, on)).toMatchObject({ kind: "standing" });
  expect(standingIn(365, addDays(on, 1))).toEqual({ kind: "not-yet", startsInDays: 1 });
});

test("goes from not yet to standing to soon to expired as days pass, and never back", () => {
  const order = ["not-yet", "standing", "runs-out-soon", "expired"];
  const offset = fc.integer({ min: -500, max: 500 });
  fc.assert(
    fc.property(offset, fc.integer({ min: 1, max: 900 }), offset, fc.nat(30), (issue, length, day, later) => {
      const license = { issuedOn: addDays(on, issue), expiresOn: addDays(on, issue + length) };
      const ranks = [day, day + later].map((days) => order.indexOf(licenseStanding(license, addDays(on, days)).kind));
      expect(ranks[0]).toBeLessThanOrEqual(ranks[1] ?? -1);
    }),
  );
});

test("each kind has a word", () => expect(Object.keys(LICENSE_KIND_WORDS)).toEqual([...LICENSE_KINDS]));
