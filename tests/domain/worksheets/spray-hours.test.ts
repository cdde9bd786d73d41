import { describe, expect, test } from "vitest";
import { SPRAY_HOURS_EXAMPLE, sprayHoursWorksheet } from "#domain/worksheets/spray-hours";
import { answersOf, firstSentence, refusedFields, stepsOf, worked } from "../../support/worked";

const typed = SPRAY_HOURS_EXAMPLE.typed;
const calm = { ...typed, hours: "9 am, 70, 60, 5, 0", rainfast: "0", sunrise: "", sunset: "" };

test("hours are open or closed, with every reason", () => {
  const outcome = sprayHoursWorksheet(typed);
  expect(answersOf(outcome)).toEqual(["9 of 13 h", "1 of 13 h"]);
  const { spans, working, answers, tables } = worked(outcome);
  expect(spans.map(({ standing }) => standing)).toEqual(["take-care", "open", "open", "open", "open", "open", "open", "closed", "closed", "closed", "open", "open", "undecided"]);
  expect(spans[7]?.reasons).toEqual(["The temperature is 86 °F; the highest temperature for this spray is 85 °F.", "The wind is 11 mph; the highest wind for this spray is 10 mph."]);
  expect(spans[8]?.reasons.at(-1)).toBe("Rain of 0.02 in is expected at 4 pm; this spray needs 1 h without rain.");
  expect(spans[12]?.reasons).toEqual(["The rain at 8 pm is not known, and this spray depends on it."]);
  expect(answers.map(({ of }) => of)).toEqual(["Not closed: 7 am to 2 pm; 5 pm to 7 pm.", "Can't be decided: 7 pm to 8 pm. Write the hours after them too."]);
  expect(tables[0]?.rows.at(-1)?.at(-1)).toBe("can't be decided. The rain at 8 pm is not known");
  expect(working.result).toBe("9 of 13 hours are not closed. Not closed: 7 am to 2 pm; 5 pm to 7 pm. Can't be decided: 7 pm to 8 pm.");
});

test("what can't be decided is left out of an hour that is closed anyhow, and said once of one that can't be", () => {
  const hours = "9 am, 70, 60, 11, 0\n10 am, 70, 60, 5, 0";
  const { tables } = worked(sprayHoursWorksheet({ ...calm, hours, rainfast: "2", hottestAfter: "85", hoursAfter: "2" }));
  expect(tables[0]?.rows.map((row) => row.at(-1))).toEqual(["closed. The wind is 11 mph; the highest wind for this spray is 10 mph", "can't be decided. The temperature at 11 am is not known"]);
});

test("steps count what each limit closes", () => {
  expect(stepsOf(sprayHoursWorksheet(typed)).slice(0, 2)).toEqual(["Temperature against no lowest and 85 °F: closes 2 hours.", "Wind above 10 mph: closes 1 hour."]);
  expect(stepsOf(sprayHoursWorksheet({ ...calm, hottest: "" }))[0]).toBe("Temperature: no limit was entered.");
  expect(stepsOf(sprayHoursWorksheet(typed)).slice(2, 5)).toEqual([
    "Rain in the hour, or in the 1 h after it: closes 2 hours and leaves 1 undecided for want of later ones.",
    "Near sunrise and sunset with wind under 3 mph: take care, an inversion may lie over the lawn.",
    "Hours that are not closed, where 3 of 13 are closed for one reason or more and 1 can't be decided: 13 − 3 − 1 = 9.",
  ]);
});

test("Delta T is worked out in one scale, and the source of its wet bulb stands below", () => {
  const { working, tables } = worked(sprayHoursWorksheet({ ...calm, hours: "9 am, 70, 60, 5, 0\nnoon, 86, 40, 5, 0" }));
  expect(working.steps).toContain("Hours that are not closed, where 1 of 2 is closed for one reason or more: 2 − 1 = 1.");
  expect(working.steps.at(-1)).toBe("Delta T: 30 − 20.1392 = 9.8608 °C.");
  expect(tables[0]?.rows[1]?.slice(5, 7)).toEqual(["20.1", "9.9"]);
  expect(working.source).toContain("Eq. 11, 15 and 16");
});

describe("one hour", () => {
  test.each([
    ["too cold", { coolest: "75" }, "The temperature is 70 °F; the lowest temperature for this spray is 75 °F."],
    ["rain within it", { hours: "9 am, 70, 60, 5, 0.1" }, "It rains in this hour (0.1 in)."],
  ])("is closed: %s", (_why, change, reason) => {
    expect(worked(sprayHoursWorksheet({ ...calm, ...change })).spans).toMatchObject([{ standing: "closed", reasons: [reason] }]);
  });

  test("Delta T is a note and closes nothing", () => {
    const outcome = worked(sprayHoursWorksheet({ ...calm, hours: "noon, 84, 20, 5, 0" }));
    expect(outcome.spans).toMatchObject([{ standing: "open", reasons: [] }]);
    expect(outcome.tables[0]?.rows[0]?.at(-1)).toMatch(/^open\. Delta T above 10: drops dry out/u);
    expect(outcome.working.result).toContain("Not closed: noon to 1 pm.");
  });

  test("no hour may be left", () => {
    expect(worked(sprayHoursWorksheet({ ...calm, wind: "2" })).working.result).toBe("0 of 1 hours are not closed. No hour is open.");
  });
});

/** A dry, calm day and the next, as they are typed: the hours of the first from `from` on, so many in all. */
function hoursFrom(from: number, count: number, change: (index: number) => string = () => "70, 50, 5, 0"): string {
  return Array.from({ length: count }, (_, index) => `${String((from + index) % 24)}:00, ${change(index)}`).join("\n");
}

describe("dry hours that reach past midnight", () => {
  test("a dry day alone leaves 24 dry hours undecided, and not closed", () => {
    const outcome = sprayHoursWorksheet({ ...calm, hours: hoursFrom(0, 24), rainfast: "24" });
    expect(answersOf(outcome)).toEqual(["0 of 24 h", "24 of 24 h"]);
    expect(worked(outcome).answers.map(({ of }) => of)).toEqual(["No hour is known to be open.", "Can't be decided: midnight to midnight. Write the hours after them too."]);
    expect(new Set(worked(outcome).spans.map(({ standing }) => standing))).toEqual(new Set(["undecided"]));
    expect(worked(outcome).working.result).toBe("0 of 24 hours are not closed. No hour is known to be open. Can't be decided: midnight to midnight.");
    expect(stepsOf(outcome)).toContain("Rain in the hour, or in the 24 h after it: closes 0 hours and leaves 24 undecided for want of later ones.");
  });

  test("with the next day's hours they are open", () => {
    const outcome = sprayHoursWorksheet({ ...calm, hours: hoursFrom(0, 48), rainfast: "24" });
    expect(worked(outcome).answers.map(({ figure, of }) => `${figure} ${of}`)).toEqual([
      "24 Not closed: midnight to midnight.",
      "24 Can't be decided: midnight the next day to midnight. Write the hours after them too.",
    ]);
  });

  test("rain at midnight after 11 pm is the midnight to come, and closes the evening before it", () => {
    const hours = "midnight, 60, 60, 5, 0\n9 pm, 70, 60, 5, 0\n10 pm, 70, 60, 5, 0\n11 pm, 70, 60, 5, 0\nmidnight, 66, 60, 5, 0.5\n1 am, 66, 60, 5, 0";
    const { spans, tables } = worked(sprayHoursWorksheet({ ...calm, hours, rainfast: "2" }));
    expect(spans.map(({ fromMinute, standing }) => [fromMinute / 60, standing])).toEqual([[0, "undecided"], [21, "open"], [22, "closed"], [23, "closed"], [24, "closed"], [25, "undecided"]]);
    expect(tables[0]?.rows.map(([from]) => from)).toEqual(["midnight", "9\u00a0pm", "10\u00a0pm", "11\u00a0pm", "midnight\u00a0the next day", "1\u00a0am the next day"]);
    expect(spans[2]?.reasons).toEqual(["Rain of 0.5 in is expected at midnight the next day; this spray needs 2 h without rain."]);
  });

  test("rain two days on is said with its day", () => {
    const { spans } = worked(sprayHoursWorksheet({ ...calm, hours: hoursFrom(20, 30, (index) => `70, 50, 5, ${index === 29 ? "0.2" : "0"}`), rainfast: "72" }));
    expect(spans[0]?.reasons).toEqual(["Rain of 0.2 in is expected at 1 am 2 days later; this spray needs 72 h without rain."]);
    expect(spans.at(-1)).toMatchObject({ fromMinute: 49 * 60, standing: "closed" });
  });
});

describe("a limit on the hours afterwards (not if more than 85 °F is forecast within 24 h; Iowa State)", () => {
  const iowa = { ...calm, hottest: "", hottestAfter: "85", hoursAfter: "24" };
  const hot = (at: number, degreesF: number) => hoursFrom(6, 48, (index) => `${index === at ? String(degreesF) : "70"}, 50, 5, 0`);

  test("an hour above it closes all hours that it comes after within 24 h, and none that follow", () => {
    const { spans, working } = worked(sprayHoursWorksheet({ ...iowa, hours: hot(9, 86) }));
    expect(spans.slice(0, 11).map(({ standing }) => standing)).toEqual([...Array.from({ length: 10 }, () => "closed"), "open"]);
    expect(spans[0]?.reasons).toEqual(["The temperature is 86 °F at 3 pm; this spray must not see more than 85 °F within 24 h."]);
    expect(working.inputs).toContainEqual({ name: "Hottest afterwards", figure: "85 °F within 24 h", from: "the label" });
    expect(working.steps[1]).toBe("Temperature against 85 °F in the hour and the 24 h after it: closes 10 hours and leaves 24 undecided for want of later ones.");
  });

  test("85 °F itself passes, and the next day's heat counts", () => {
    expect(worked(sprayHoursWorksheet({ ...iowa, hours: hot(9, 85) })).spans[0]?.standing).toBe("open");
    expect(worked(sprayHoursWorksheet({ ...iowa, hours: hot(24, 86) })).spans.slice(0, 2)).toMatchObject([
      { standing: "closed", reasons: ["The temperature is 86 °F at 6 am the next day; this spray must not see more than 85 °F within 24 h."] },
      { standing: "closed" },
    ]);
  });

  test("each of its figures is asked for where the other is given, and read within its range", () => {
    const ofAfter = (hottestAfter: string, hoursAfter: string) => refusedFields(sprayHoursWorksheet({ ...iowa, hottestAfter, hoursAfter }));
    expect([ofAfter("85", ""), ofAfter(" ", "24"), ofAfter("300", "24"), ofAfter("85", "0"), ofAfter("85", "73"), ofAfter("", "")]).toEqual([["hoursAfter"], ["hottestAfter"], ["hottestAfter"], ["hoursAfter"], ["hoursAfter"], []]);
  });
});

describe("sunrise and sunset, each by itself", () => {
  const calmHours = { ...calm, hours: hoursFrom(6, 48, () => "70, 50, 2, 0") };
  const careful = (sunrise: string, sunset: string) => worked(sprayHoursWorksheet({ ...calmHours, sunrise, sunset }))
    .spans.flatMap(({ fromMinute, standing }) => (standing === "take-care" ? [fromMinute / 60] : []));

  test("a sunrise alone is minded until an hour after it, on the next day too", () => {
    expect(careful("6:20 am", "")).toEqual([6, 7, 24, 25, 26, 27, 28, 29, 30, 31, 48, 49, 50, 51, 52, 53]);
  });
  test("a sunset alone is minded from two hours before it until midnight", () => {
    expect(careful("", "8 pm")).toEqual([18, 19, 20, 21, 22, 23, 42, 43, 44, 45, 46, 47]);
  });
  test("both, and neither", () => {
    expect(careful("6:20 am", "8 pm").slice(0, 9)).toEqual([6, 7, 18, 19, 20, 21, 22, 23, 24]);
    expect(careful("", "")).toEqual([]);
  });
  test("inputs and steps say what was entered and what was looked at", () => {
    const of = (sunrise: string, sunset: string) => {
      const { working } = worked(sprayHoursWorksheet({ ...calm, sunrise, sunset }));
      return [working.inputs.at(-1)?.figure, working.steps.find((step) => step.includes('sunrise'))];
    };
    expect(of("", "")).toEqual(["not entered", "Inversions were not looked at: sunrise and sunset are not entered."]);
    expect(of("6:20 am", "")).toEqual(["6:20 am; not entered", "Near sunrise with wind under 3 mph: take care, an inversion may lie over the lawn. The evening was not looked at: sunset is not entered."]);
    expect(of("", "8 pm")).toEqual(["not entered; 8 pm", "Near sunset with wind under 3 mph: take care, an inversion may lie over the lawn. The morning was not looked at: sunrise is not entered."]);
    expect(of("6:20 am", "8 pm")).toEqual(["6:20 am; 8 pm", "Near sunrise and sunset with wind under 3 mph: take care, an inversion may lie over the lawn."]);
  });
  test("a sunset before noon and a sunrise after it are refused", () => {
    expect(firstSentence(sprayHoursWorksheet({ ...calm, sunset: "7:45" }))).toBe("\"7:45\" is before noon. Write the sunset as 8:10 pm, with the pm.");
    expect(refusedFields(sprayHoursWorksheet({ ...calm, sunset: "11:59" }))).toEqual(["sunset"]);
    expect(refusedFields(sprayHoursWorksheet({ ...calm, sunset: "12:00" }))).toEqual([]);
    expect(firstSentence(sprayHoursWorksheet({ ...calm, sunrise: "6:20 pm" }))).toBe("\"6:20 pm\" is after noon. Write the sunrise as 6:20 am.");
    expect(refusedFields(sprayHoursWorksheet({ ...calm, sunrise: "12 pm" }))).toEqual(["sunrise"]);
  });
});

describe("refused by field", () => {
  test("all that is missing at once", () => {
    expect(refusedFields(sprayHoursWorksheet({ hours: "", coolest: "x", hottest: "300", hottestAfter: "85", hoursAfter: "", wind: "", rainfast: "", sunrise: "dawn", sunset: "25:00" }))).toEqual(["hours", "coolest", "hottest", "hoursAfter", "wind", "rainfast", "sunrise", "sunset"]);
  });
});
