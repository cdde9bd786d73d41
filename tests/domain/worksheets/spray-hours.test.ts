import { describe, expect, test } from "vitest";
import { SPRAY_HOURS_EXAMPLE, sprayHoursWorksheet } from "#domain/worksheets/spray-hours";
import { answersOf, firstSentence, refusedFields, stepsOf, worked } from "../../support/worked";

const typed = SPRAY_HOURS_EXAMPLE.typed;
const calm = { ...typed, hours: "9 am, 70, 60, 5, 0", rainfast: "0", sunrise: "", sunset: "" };

test("hours are open or closed, with every reason", () => {
  const outcome = sprayHoursWorksheet(typed);
  expect(answersOf(outcome)).toEqual(["9 of 13 h"]);
  const { spans, working } = worked(outcome);
  expect(spans.map(({ verdict }) => verdict)).toEqual(["take-care", "open", "open", "open", "open", "open", "open", "closed", "closed", "closed", "open", "open", "closed"]);
  expect(spans[7]?.reasons).toEqual(["The temperature is 86 °F; the highest temperature for this spray is 85 °F.", "The wind is 11 mph; the highest wind for this spray is 10 mph."]);
  expect(spans[8]?.reasons.at(-1)).toBe("Rain of 0.02 in is expected at 4 pm; this spray needs 1 h without rain.");
  expect(spans[12]?.reasons).toEqual(["The rain at 8 pm is not known, and this spray depends on it."]);
  expect(working.result).toBe("9 of 13 hours are not closed. Not closed: 7 am to 2 pm; 5 pm to 7 pm.");
});

test("steps count what each limit closes", () => {
  expect(stepsOf(sprayHoursWorksheet(typed)).slice(0, 2)).toEqual(["Temperature against no lowest and 85 °F: closes 2 hours.", "Wind above 10 mph: closes 1 hour."]);
  expect(stepsOf(sprayHoursWorksheet({ ...calm, hottest: "" }))[0]).toBe("Temperature: no limit was entered.");
  expect(stepsOf(sprayHoursWorksheet(calm))).toContain("Inversions were not looked at: sunrise and sunset are not entered.");
});

test("Delta T is worked out in one scale, and the source of its wet bulb stands below", () => {
  const { working, tables } = worked(sprayHoursWorksheet({ ...calm, hours: "9 am, 70, 60, 5, 0\nnoon, 86, 40, 5, 0" }));
  expect(working.steps).toContain("Hours that are not closed, where 1 hour of 2 is closed for one reason or more: 2 − 1 = 1.");
  expect(working.steps.at(-1)).toBe("Delta T: 30 − 20.1392 = 9.8608 °C.");
  expect(tables[0]?.rows[1]?.slice(5, 7)).toEqual(["20.1", "9.9"]);
  expect(working.source).toContain("Eq. 11, 15 and 16");
});

describe("one hour", () => {
  test.each([
    ["too cold", { coolest: "75" }, "The temperature is 70 °F; the lowest temperature for this spray is 75 °F."],
    ["rain within it", { hours: "9 am, 70, 60, 5, 0.1" }, "It rains in this hour (0.1 in)."],
    ["the hour after midnight is not known", { hours: "11 pm, 70, 60, 5, 0", rainfast: "1" }, "The rain at midnight the next day is not known, and this spray depends on it."],
  ])("is closed: %s", (_why, change, reason) => {
    expect(worked(sprayHoursWorksheet({ ...calm, ...change })).spans).toMatchObject([{ verdict: "closed", reasons: [reason] }]);
  });

  test("Delta T is a note and closes nothing", () => {
    const outcome = worked(sprayHoursWorksheet({ ...calm, hours: "noon, 84, 20, 5, 0" }));
    expect(outcome.spans).toMatchObject([{ verdict: "open", reasons: [] }]);
    expect(outcome.tables[0]?.rows[0]?.at(-1)).toMatch(/^open\. Delta T above 10: drops dry out/u);
    expect(outcome.working.result).toContain("Not closed: noon to 1 pm.");
  });

  test("no hour may be left", () => {
    expect(worked(sprayHoursWorksheet({ ...calm, wind: "2" })).working.result).toBe("0 of 1 hours are not closed. No hour is open.");
  });
});

describe("refused by field", () => {
  test("all that is missing at once", () => {
    expect(refusedFields(sprayHoursWorksheet({ hours: "", coolest: "x", hottest: "300", wind: "", rainfast: "", sunrise: "dawn", sunset: "25:00" }))).toEqual(["hours", "coolest", "hottest", "wind", "rainfast", "sunrise", "sunset"]);
  });

  test.each([
    ["9 am, 70, 60, 5", "has not these five"],
    ["9 am, 70, 60, 5, 0, 1", "has not these five"],
    ["9:30 am, 70, 60, 5, 0", "does not begin on the hour"],
    ["early, 70, 60, 5, 0", "is no time of day"],
    ["9 am, 700, 60, 5, 0", "it takes from -40 to 130 °F"],
    ["9 am, 70, 60, 5, 0\n9:00, 71, 60, 5, 0", "9 am stands there twice"],
  ])("an hour typed as %s", (hours, words) => {
    const outcome = sprayHoursWorksheet({ ...calm, hours });
    expect(refusedFields(outcome)).toEqual(["hours"]);
    expect(firstSentence(outcome)).toContain(words);
  });

  test("a sunset before sunrise", () => {
    expect(refusedFields(sprayHoursWorksheet({ ...calm, sunrise: "6 am", sunset: "5 am" }))).toEqual(["sunset"]);
  });
});
