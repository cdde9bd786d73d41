import { describe, expect, test } from "vitest";
import { checkHeat } from "#domain/mixing/heat-checks";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { FEED, holdsOf, IRON, QUESTION, rulesOf, ticketOf, withIron } from "../../support/ticket";

const care = "take-care heat-on-cool-season-turf";
const heatLimit = (highestTemperature: TicketTreatment["use"]["weather"]["highestTemperature"]) => withIron({ use: { ...IRON.use, weather: { ...IRON.use.weather, highestTemperature } } });

// Common practice: cool-season turf gets feed and iron in the 70s F and waits in the 80s.
test("the 70s go, the 80s wait; the label's own limit holds at and above it, and nobody may answer", () => {
  expect(rulesOf({ forecastHighF: 79 }).filter((rule) => /hot|heat/u.test(rule))).toEqual([]);
  expect(rulesOf({ forecastHighF: 80 })).toEqual(expect.arrayContaining(["hold too-hot", care]));
  expect(ticketOf({ forecastHighF: 80 }).findings[0]).toMatchObject({ rule: "too-hot", answerableBy: "nobody" });
  expect(holdsOf({ forecastHighF: 80, treatments: [FEED] })).toEqual([]);
});

test("a day without a forecast holds where a label has a limit, and says that care can't be judged where feed may burn", () => {
  expect(holdsOf({ forecastHighF: "not-entered" })).toEqual(["hold forecast-not-entered"]);
  expect(holdsOf({ forecastHighF: "not-entered", treatments: [FEED] })).toEqual([]);
  expect(rulesOf({ forecastHighF: "not-entered", treatments: [FEED] })).toContain("take-care heat-not-judged");
});

test("a limit that nobody has read is said to be unread, with a forecast and without", () => {
  expect(holdsOf({ ...heatLimit("unknown"), forecastHighF: "not-entered" })).toEqual(["hold heat-limit-not-read"]);
  expect(holdsOf({ ...heatLimit("unknown"), forecastHighF: 60 })).toEqual(["hold heat-limit-not-read"]);
  expect(holdsOf({ ...heatLimit("none"), forecastHighF: "not-entered" })).toEqual([]);
});

test("what is no temperature of outdoor air is refused by name", () => {
  expect(makeMixTicket({ ...QUESTION, forecastHighF: 400 })).toMatchObject({ ok: false, refusal: { field: "forecastHighF" } });
  expect(checkHeat({ ...QUESTION, forecastHighF: Number.NaN })).toMatchObject({ ok: false });
});

// Iowa State University Extension: a broadleaf herbicide not if above 85 °F is forecast within 24 h.
test("a limit on the hours afterwards asks for the next day's high, and says to enter it", () => {
  const afterwards = (withinHours: number) =>
    withIron({ use: { ...IRON.use, weather: { ...IRON.use.weather, highestTemperature: "none", highestTemperatureAhead: { limitF: 85, reaching: "allowed", withinHours, basis: "label", source: "label" } } } });
  const missing = { ...afterwards(24), forecastFollowingHighsF: ["not-entered"] } as const;
  expect(holdsOf(missing)).toEqual(["hold forecast-after-not-entered"]);
  expect(ticketOf(missing).findings[0]).toMatchObject({
    answerableBy: "office",
    source: "weather",
    toDo: "Enter the highs of the days after with the day's forecast.",
    figure: expect.stringContaining("is not known; ") as unknown,
  });
  expect(holdsOf({ ...afterwards(24), forecastFollowingHighsF: [84] })).toEqual([]);
  expect(ticketOf({ ...afterwards(24), forecastFollowingHighsF: [85] }).findings[0]).toMatchObject({ rule: "too-hot", answerableBy: "nobody", what: expect.stringContaining("soon after that day") as unknown });
  expect(holdsOf({ forecastFollowingHighsF: ["not-entered"] })).toEqual([]);
  expect(checkHeat({ ...QUESTION, forecastFollowingHighsF: [300] })).toMatchObject({ ok: false, refusal: { field: "followingHighsF" } });
});

describe("a limit over two days and more is decided by the entered highs", () => {
  const afterwards = (withinHours: number, forecastFollowingHighsF: TicketQuestion["forecastFollowingHighsF"]) => ({
    ...withIron({ use: { ...IRON.use, weather: { ...IRON.use.weather, highestTemperature: "none", highestTemperatureAhead: { limitF: 85, reaching: "allowed", withinHours, basis: "label", source: "label" } } } }),
    forecastFollowingHighsF,
  });

  test.each([
    [48, [70, 84], []],
    [48, [70, 85], ["hold too-hot"]],
    [48, [70, 84, 99], []],
    [48, [70, "not-entered", 70], ["hold forecast-after-not-entered"]],
    [48, ["not-entered", 90], ["hold too-hot"]],
    [72, [70, 71, 72], []],
    [72, [70, 71, "not-entered"], ["hold forecast-after-not-entered"]],
    [96, [70, 71, 72], ["hold forecast-after-not-entered"]],
  ] as const)("%s h with %j on the days after: %j", (withinHours, highs, expected) => expect(holdsOf(afterwards(withinHours, highs))).toEqual(expected));

  test("beyond the days that can be entered the office looks them up", () => {
    const toDo = (...asked: Parameters<typeof afterwards>) => ticketOf(afterwards(...asked)).findings[0]?.toDo;
    expect(toDo(96, [70, 71, 72])).toMatch(/^Look up the highs/u);
    expect(toDo(96, [70, 71, "not-entered"])).toMatch(/^Enter the highs/u);
  });
});

test("a day whose high stays under the label's lowest temperature is too cold, whatever the hours are", () => {
  const lowestTemperature = { limitF: 50, reaching: "allowed", basis: "label", source: "label of Harrowgate 32" } as const;
  const cold = { ...FEED, use: { ...FEED.use, weather: { ...FEED.use.weather, lowestTemperature } } };
  const rules = (forecastHighF: number) => ticketOf({ forecastHighF, treatments: [cold] }).findings.filter(({ level }) => level === "hold").map(({ rule }) => rule);
  expect(rules(38)).toContain("too-cold");
  expect(rules(50)).not.toContain("too-cold");
  expect(ticketOf({ forecastHighF: 38, treatments: [cold] }).findings.find(({ rule }) => rule === "too-cold")).toMatchObject({ answerableBy: "nobody", source: "label", what: "Too cold for Harrowgate 32 that day." });
});
