import { describe, expect, test } from "vitest";
import { pastedDaySuch, readPastedDays, refusePastedLine } from "#domain/worksheets/pasted-days";
import { refusalOf, valueOf } from "../../support/domain-answers";

describe("pasted days", () => {
  test("stand one to a line, apart by commas, semicolons or tabs, with or without a date, under a heading or none", () => {
    expect(valueOf(readPastedDays("days", "date,high,low\n2026-03-01, 65, 40\r\n\n2026-03-02;60.5;-4\n70\t50", "fahrenheit"))).toEqual([
      { date: "2026-03-01", maximumDegrees: 65, minimumDegrees: 40 },
      { date: "2026-03-02", maximumDegrees: 60.5, minimumDegrees: -4 },
      { date: undefined, maximumDegrees: 70, minimumDegrees: 50 },
    ]);
  });

  test("take each scale's own range and sign, both ends included", () => {
    expect(valueOf(readPastedDays("days", "2026-03-01, 135 °F, -60", "fahrenheit"))[0]).toMatchObject({ maximumDegrees: 135, minimumDegrees: -60 });
    expect(valueOf(readPastedDays("days", "2026-03-01, 57 °C, -51", "celsius"))[0]).toMatchObject({ maximumDegrees: 57, minimumDegrees: -51 });
    expect(refusalOf(readPastedDays("days", "2026-03-01, 65, 40", "celsius")).sentence).toContain("it takes from -51 to 57 °C");
    expect(refusalOf(readPastedDays("days", "2026-03-01, 136, 40", "fahrenheit")).sentence).toContain("it takes from -60 to 135 °F");
  });

  test.each([
    ["", "Give the days, one to a line, such as 2026-03-01, 65, 40."],
    ["high,low", "Give the days"],
    ["2026-03-01", '"2026-03-01" is no day. Write date, high, low'],
    ["2026-03-01, 65, 40, 3", "is no day"],
    ["2026-03-01, M, 40", 'In "2026-03-01, M, 40":'],
    ["2026-03-01, 65,", 'In "2026-03-01, 65,": Give the day\'s low'],
    ["2026-02-30, 65, 40", 'In "2026-02-30, 65, 40": Give the date as year-month-day'],
    ["65, 40\n".repeat(401), "at most 400 days"],
  ])("are refused by what is wrong: %s", (text, words) => {
    expect(refusalOf(readPastedDays("days", text, "fahrenheit")).sentence).toContain(words);
  });

  test("a year and a leap day are read", () => {
    expect(valueOf(readPastedDays("days", "65, 40\n".repeat(400), "fahrenheit"))).toHaveLength(400);
  });

  test("a day is shown as its scale writes it, and reads as shown", () => {
    expect(refusePastedLine("days", "x", "celsius").refusal.sentence).toContain(pastedDaySuch("celsius"));
    for (const scale of ["fahrenheit", "celsius"] as const) expect(readPastedDays("days", pastedDaySuch(scale), scale).ok).toBe(true);
  });
});
