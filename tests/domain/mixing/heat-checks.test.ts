import { expect, test } from "vitest";
import { checkHeat } from "#domain/mixing/heat-checks";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { FEED, holdsOf, IRON, LAWN, QUESTION, rulesOf, ticketOf, withFeed, withIron } from "../../support/ticket";

const care = "take-care heat-on-cool-season-turf";
const heatLimit = (highestTemperature: TicketTreatment["use"]["weather"]["highestTemperature"]) => withIron({ use: { ...IRON.use, weather: { ...IRON.use.weather, highestTemperature } } });

// Common practice: cool-season turf gets feed and iron in the 70s F and waits in the 80s.
test("the 70s go, the 80s wait; the label's own limit holds at and above it, and nobody may answer", () => {
  expect(rulesOf({ forecastHighF: 79 }).filter((rule) => /hot|heat/u.test(rule))).toEqual([]);
  expect(rulesOf({ forecastHighF: 80 })).toEqual(expect.arrayContaining(["hold too-hot", care]));
  expect(ticketOf({ forecastHighF: 80 }).findings[0]).toMatchObject({ rule: "too-hot", answerableBy: "nobody" });
  expect(holdsOf({ forecastHighF: 80, treatments: [FEED] })).toEqual([]);
});

test("warm-season turf is not asked, a grass that nobody entered is", () => {
  const any = withFeed({ use: { ...FEED.use, grasses: "any turfgrass" } });
  expect(rulesOf({ forecastHighF: 90, lawns: [{ ...LAWN, grasses: ["zoysiagrass"] }], ...any })).not.toContain(care);
  expect(rulesOf({ forecastHighF: 90, lawns: [{ ...LAWN, grasses: [] }], ...any })).toContain(care);
});

test("slow nitrogen alone does not burn; nitrogen whose release the label does not state may", () => {
  const grade = FEED.label.analysis === "none" || FEED.label.analysis === "unknown" ? undefined : FEED.label.analysis.grade;
  if (grade === undefined) throw new Error("The feed of a test has a grade.");
  const released = (release: Extract<TicketTreatment["label"]["analysis"], object>["release"]) => rulesOf({ forecastHighF: 85, ...withFeed({ label: { ...FEED.label, analysis: { grade, release } } }) });
  const whole = { numerator: 100n, denominator: 1n };
  expect(released({ kind: "slow-percent-of-nitrogen", percent: whole })).not.toContain(care);
  expect(released({ kind: "slow-percent-of-product", percent: grade.nitrogenPercent })).not.toContain(care);
  expect(released({ kind: "not-stated" })).toContain(care);
  expect(rulesOf({ forecastHighF: 85, ...withFeed({ label: { ...FEED.label, analysis: "none" } }) })).not.toContain(care);
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
  const missing = { ...afterwards(24), forecastNextHighF: "not-entered" } as const;
  expect(holdsOf(missing)).toEqual(["hold forecast-after-not-entered"]);
  expect(ticketOf(missing).findings[0]).toMatchObject({
    answerableBy: "office",
    source: "weather",
    toDo: "Enter the high of the day after with the day's forecast.",
    figure: expect.stringContaining("is not known; ") as unknown,
  });
  expect(holdsOf({ ...afterwards(24), forecastNextHighF: 84 })).toEqual([]);
  expect(ticketOf({ ...afterwards(24), forecastNextHighF: 85 }).findings[0]).toMatchObject({ rule: "too-hot", answerableBy: "nobody", what: expect.stringContaining("soon after that day") as unknown });
  expect(ticketOf({ ...afterwards(48), forecastNextHighF: 70 }).findings[0]).toMatchObject({ rule: "forecast-after-not-entered", toDo: expect.stringContaining("Look up the highs") as unknown });
  expect(holdsOf({ forecastNextHighF: "not-entered" })).toEqual([]);
  expect(checkHeat({ ...QUESTION, forecastNextHighF: 300 })).toMatchObject({ ok: false, refusal: { field: "followingHighsF" } });
});
