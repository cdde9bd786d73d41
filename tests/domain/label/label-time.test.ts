import { describe, expect, test } from "vitest";
import { readReach, readReachBack, readTime, readUntils } from "#domain/label/label-time";
import { accept } from "#domain/foundation/outcome";

test.each([
  ["12 hours", { unit: "minutes", count: 720, from: "not-said" }],
  ["1 1/2 hours", { unit: "minutes", count: 90, from: "not-said" }],
  ["90 min", { unit: "minutes", count: 90, from: "not-said" }],
  ["24 hrs after start", { unit: "minutes", count: 1440, from: "start" }],
  ["2 hours from posting", { unit: "minutes", count: 120, from: "posting" }],
  ["within 7 days", { unit: "days", count: 7 }],
  ["2 weeks", { unit: "days", count: 14 }],
  ["3 months", { unit: "months", count: 3 }],
  ["1 year", { unit: "months", count: 12 }],
])("%s", (value, time) => expect(readTime(value)).toEqual(accept(time)));

test.each(["soon", "12", "1.5 days", "half an hour", "2 days after start", "0.7 min", "three months"])("%s is refused with a way to write it", (value) => {
  expect(readTime(value)).toMatchObject({ ok: false, refusal: expect.stringMatching(/\.$/) as unknown });
});

test("hours count from the end of the application unless it says otherwise, days and months by the calendar", () => {
  expect(readReach("12 hours")).toEqual(accept({ anchor: "application-end", durationMinutes: 720 }));
  expect(readReach("12 hours after start")).toEqual(accept({ anchor: "application-start", durationMinutes: 720 }));
  expect(readReach("24 hours after posting")).toEqual(accept({ anchor: "posting", durationMinutes: 1440 }));
  expect(readReach("2 days")).toEqual(accept({ anchor: "calendar-day", days: 2 }));
  expect(readReach("4 months")).toEqual(accept({ anchor: "calendar-month", months: 4 }));
});

test("before an application there are hours and days, and months are asked for in days", () => {
  expect(readReachBack("24 hours")).toEqual(accept({ anchor: "application-start", durationMinutes: 1440 }));
  expect(readReachBack("60 days")).toEqual(accept({ anchor: "calendar-day", days: 60 }));
  expect(readReachBack("2 months").ok).toBe(false);
});

describe("until when", () => {
  const dry = { anchor: "state", state: "dry" };
  const hours = { anchor: "application-end", durationMinutes: 720 };
  test.each([
    ["until dry", [dry]],
    ["dry", [dry]],
    ["until sprays have dried", [dry]],
    ["until dust has settled", [{ anchor: "state", state: "dust-settled" }]],
    ["until watered in", [{ anchor: "state", state: "watered-in" }]],
    ["until watered in and dry", [{ anchor: "state", state: "watered-in-and-dry" }]],
    ["12 hours", [hours]],
    ["12 hours and until dry", [hours, dry]],
    ["until dry, 12 hours", [dry, hours]],
    ["12 hours or until dry, whichever is later", [hours, dry]],
  ])("%s", (value, untils) => expect(readUntils(value)).toEqual(accept(untils)));

  test("one or the other without which is refused", () => expect(readUntils("12 hours or until dry").ok).toBe(false));
  test.each(["until safe", "a while", ""])("%j is refused", (value) => expect(readUntils(value).ok).toBe(false));
});
