import { describe, expect, test } from "vitest";
import { readReach, readReachBack, readState, readTime, readUntils } from "#domain/label/label-time";
import { accept } from "#domain/foundation/outcome";

test.each([
  ["12 hours", { unit: "minutes", count: 720, from: "not-said" }],
  ["1 1/2 hours", { unit: "minutes", count: 90, from: "not-said" }],
  ["1-1/2 hours", { unit: "minutes", count: 90, from: "not-said" }],
  ["1-1/2 hours after start", { unit: "minutes", count: 90, from: "start" }],
  ["90 min", { unit: "minutes", count: 90, from: "not-said" }],
  ["24 hrs after start", { unit: "minutes", count: 1440, from: "start" }],
  ["2 hours from posting", { unit: "minutes", count: 120, from: "posting" }],
  ["24 hours after application", { unit: "minutes", count: 1440, from: "not-said" }],
  ["24 hours of the application", { unit: "minutes", count: 1440, from: "not-said" }],
  ["2 hours after the application ends", { unit: "minutes", count: 120, from: "end" }],
  ["2 hours after the beginning of treatment", { unit: "minutes", count: 120, from: "start" }],
  ["1 day after application", { unit: "days", count: 1, from: "not-said" }],
  ["1 day following treatment", { unit: "days", count: 1, from: "not-said" }],
  ["2 days after start", { unit: "days", count: 2, from: "start" }],
  ["2 days after completion of the application", { unit: "days", count: 2, from: "end" }],
  ["2 days after posting", { unit: "days", count: 2, from: "posting" }],
  ["within 7 days", { unit: "days", count: 7, from: "not-said" }],
  ["2 weeks", { unit: "days", count: 14, from: "not-said" }],
  ["3 months", { unit: "months", count: 3, from: "not-said" }],
  ["4 months after application", { unit: "months", count: 4, from: "not-said" }],
  ["1 year", { unit: "months", count: 12, from: "not-said" }],
])("%s", (value, time) => expect(readTime(value)).toEqual(accept(time)));

test.each(["soon", "12", "1.5 days", "half an hour", "2 days after lunch", "2 hours after application and again", "2 months after start", "0.7 min", "three months"])("%s is refused with a way to write it", (value) => {
  expect(readTime(value)).toMatchObject({ ok: false, refusal: expect.stringMatching(/\.$/) as unknown });
});

test.each(["11/2 hours", "within 11/2 hours", "12-24 hours"])("%s is no time, whose number is asked back", (value) => {
  expect(readTime(value)).toMatchObject({ ok: false, refusal: expect.stringMatching(/^"1[12-]/u) as unknown });
  expect(readTime("11/2 hours")).toMatchObject({ refusal: expect.stringMatching(/Write 1 1\/2, or 5\.5\./u) as unknown });
});

test("hours count from the end of the application unless it says otherwise, days by both readings, months and the day following by the calendar", () => {
  expect(readReach("12 hours")).toEqual(accept({ anchor: "application-end", durationMinutes: 720 }));
  expect(readReach("12 hours after start")).toEqual(accept({ anchor: "application-start", durationMinutes: 720 }));
  expect(readReach("24 hours after posting")).toEqual(accept({ anchor: "posting", durationMinutes: 1440 }));
  expect(readReach("24 hours after application")).toEqual(accept({ anchor: "application-end", durationMinutes: 1440 }));
  expect(readReach("2 days")).toEqual(accept({ anchor: "days", from: "not-said", days: 2 }));
  expect(readReach("1 day after application")).toEqual(accept({ anchor: "days", from: "not-said", days: 1 }));
  expect(readReach("2 weeks after the end of the application")).toEqual(accept({ anchor: "days", from: "application-end", days: 14 }));
  expect(readReach("2 days after start")).toEqual(accept({ anchor: "days", from: "application-start", days: 2 }));
  expect(readReach("2 days after posting")).toEqual(accept({ anchor: "days", from: "posting", days: 2 }));
  for (const words of ["the day following", "The following day", "next day"]) expect(readReach(words)).toEqual(accept({ anchor: "calendar-day", days: 1 }));
  expect(readReach("4 months")).toEqual(accept({ anchor: "calendar-month", months: 4 }));
});

test("before an application there are hours and days, and months are asked for in days", () => {
  expect(readReachBack("24 hours")).toEqual(accept({ anchor: "application-start", durationMinutes: 1440 }));
  for (const words of ["60 days", "60 days after seeding", "60 days before the application"]) {
    expect(readReachBack(words)).toEqual(accept({ anchor: "days", from: "application-start", days: 60 }));
  }
  expect(readReachBack("2 months").ok).toBe(false);
});

describe("until when", () => {
  const dry = { anchor: "state", state: "dry" };
  const hours = { anchor: "application-end", durationMinutes: 720 };
  test.each([
    ["until dry", [dry]],
    ["dry", [dry]],
    ["until sprays have dried", [dry]],
    ["until sprays dry", [dry]],
    ["until the spray has dried", [dry]],
    ["until spray is dry", [dry]],
    ["after sprays have dried", [dry]],
    ["until after sprays have dried", [dry]],
    ["until it has dried", [dry]],
    ["until dusts settle", [{ anchor: "state", state: "dust-settled" }]],
    ["1 day after application", [{ anchor: "days", from: "not-said", days: 1 }]],
    ["24 hours after application", [{ anchor: "application-end", durationMinutes: 1440 }]],
    ["until the day following", [{ anchor: "calendar-day", days: 1 }]],
    ["until dust has settled", [{ anchor: "state", state: "dust-settled" }]],
    ["until watered in", [{ anchor: "state", state: "watered-in" }]],
    ["until watered in and dry", [{ anchor: "state", state: "watered-in-and-dry" }]],
    ["until watered in, until dry, and 12 hours", [{ anchor: "state", state: "watered-in-and-dry" }, hours]],
    ["until watered in, and until dust has settled", [{ anchor: "state", state: "watered-in" }, { anchor: "state", state: "dust-settled" }]],
    ["12 hours", [hours]],
    ["12 hours and until dry", [hours, dry]],
    ["until dry, 12 hours", [dry, hours]],
    ["12 hours or until dry, whichever is later", [hours, dry]],
  ])("%s", (value, untils) => expect(readUntils(value)).toEqual(accept(untils)));

  test.each(["watered in, and dry", "until watered in, and until dry", "until watered in and until dry", "watered in, dry", "until dry, and until watered in"])("dry again after the watering, however it is parted: %s", (value) => {
    expect(readUntils(value)).toEqual(accept([{ anchor: "state", state: "watered-in-and-dry" }]));
  });

  test.each(["12 hours or until dry", "watered in, or dry"])("one or the other without which is refused: %s", (value) => {
    expect(readUntils(value)).toMatchObject({ ok: false, refusal: expect.stringMatching(/whichever is later/u) as unknown });
  });
  test.each(["until safe", "a while", "", "after 2 mowings", "until sprays have dried or watered in", "until spraying"])("%j is refused", (value) => expect(readUntils(value).ok).toBe(false));
});

test("a state is told from a time", () => {
  expect(readState("sprays have dried")).toBe("dry");
  expect(readState("watered in and dry")).toBe("watered-in-and-dry");
  expect(readState("12 hours")).toBeUndefined();
});
