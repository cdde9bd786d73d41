import { expect, test } from "vitest";
import { type LabelUse } from "#domain/label/label-facts";
import { checkSite, LOOK_FORM } from "#domain/mixing/site-checks";
import { type TicketLawn, type TicketTreatment } from "#domain/mixing/ticket-question";
import { BARRIER, FEED, IRON, LAWN, QUESTION } from "../../support/ticket";

const authority = { basis: "label", source: "label of Rustwater Iron" } as const;
const withWeather = (treatment: TicketTreatment, weather: Partial<LabelUse["weather"]>): TicketTreatment => ({ ...treatment, use: { ...treatment.use, weather: { ...treatment.use.weather, ...weather } } });
const withBloom = (bloomAndBees: LabelUse["bloomAndBees"], treatment = BARRIER): TicketTreatment => ({ ...treatment, use: { ...treatment.use, bloomAndBees } });
const findings = (treatment: TicketTreatment, lawn: Partial<TicketLawn> = {}) => checkSite({ ...QUESTION, lawns: [{ ...LAWN, ...lawn }], treatments: [treatment] });
const said = (...args: Parameters<typeof findings>) => findings(...args).map(({ level, rule }) => `${level} ${rule}`);

test("a spray wants a look at the wind even where its label is silent; what is spread does not", () => {
  expect(findings(IRON)).toMatchObject([{ level: "note", rule: "look-at-the-weather", source: "common-practice", figure: "It wants wind at most 10 mph." }]);
  expect(said(FEED)).toEqual([]);
});

test("a label's own limits stand in the note, and the stricter wind wins", () => {
  const strict = withWeather(IRON, {
    lowestTemperature: { limitF: 50, reaching: "allowed", ...authority },
    lowestWind: { limitMph: 3, ...authority },
    highestWind: { limitMph: 8, ...authority },
    rainfast: { minutes: 240, ...authority },
    heavyRain: { inches: 0.5, withinHours: 24, ...authority },
  });
  expect(findings(strict)).toMatchObject([
    { source: "label", figure: "It wants at least 50 °F, wind at most 8 mph, wind at least 3 mph, no rain for 4 h after and under 0.5 in of rain within 24 h." },
  ]);
  expect(findings(withWeather(IRON, { highestWind: { limitMph: 15, ...authority } }))[0]?.figure).toBe("It wants wind at most 10 mph.");
  expect(said(withWeather(FEED, { heavyRain: { inches: 1, withinHours: 24, ...authority } }))).toEqual(["note look-at-the-weather"]);
});

test("a stated wind limit of what is spread stands in the note, and the company's wind for sprays does not", () => {
  expect(findings(withWeather(FEED, { highestWind: { limitMph: 15, ...authority } }))).toMatchObject([{ level: "note", rule: "look-at-the-weather", source: "label", figure: "It wants wind at most 15 mph." }]);
  expect(findings(withWeather(FEED, { lowestWind: { limitMph: 2, ...authority } }))[0]?.figure).toBe("It wants wind at least 2 mph.");
  expect(findings(withWeather(FEED, { highestWind: { limitMph: 5, ...authority }, rainfast: { minutes: 60, ...authority } }))[0]?.figure).toBe("It wants wind at most 5 mph and no rain for 1 h after.");
});

test("limits that nobody has read hold, once for a product and by name; wind is not asked of what is spread", () => {
  const unread = withWeather(IRON, { highestWind: "unknown", rainfast: "unknown" });
  expect(findings(unread)[0]).toMatchObject({ level: "hold", answerableBy: "office", rule: "weather-limits-not-read", figure: "Nobody has read the highest wind and how long it must stay without rain." });
  expect(said(withWeather(FEED, { highestWind: "unknown", rainfast: "unknown", lowestWind: "unknown" }))).toEqual([]);
  expect(said(withWeather(FEED, { soil: "unknown" }))).toEqual(["hold weather-limits-not-read"]);
});

test("bees: in bloom is a hold that nobody answers, not looked at wants care, looked at and bare says nothing", () => {
  const barred = withBloom({ labelWords: "Do not apply to blooming weeds.", ...authority });
  expect(findings(barred, { inBloom: "yes" })).toMatchObject([{ level: "hold", answerableBy: "nobody", rule: "in-bloom", figure: "The label: Do not apply to blooming weeds." }]);
  expect(said(barred)).toEqual(["take-care bloom-not-looked-at"]);
  expect(said(barred, { inBloom: "no" })).toEqual([]);
  expect(said({ ...barred, zoneIds: ["back"] }, { inBloom: "yes" })).toEqual([]);
});

test("bees: the look that is behind it is said, and both findings name the form on which the crew writes it down", () => {
  const barred = withBloom({ labelWords: "Do not apply to blooming weeds.", ...authority });
  const [held] = findings(barred, { inBloom: "yes", bloomSeen: "Seen in bloom on Apr 14, 2026." });
  expect(held?.figure).toBe("The label: Do not apply to blooming weeds. Seen in bloom on Apr 14, 2026.");
  const [unsure] = findings(barred, { inBloom: "unknown", bloomSeen: "Seen without flowers on Apr 1, 2026." });
  expect(unsure?.figure).toBe("The label: Do not apply to blooming weeds. Seen without flowers on Apr 1, 2026.");
  for (const finding of [held, unsure]) expect(finding?.toDo).toContain(`"${LOOK_FORM}"`);
});

test("what a pesticide's label says of bees must have been read; a fertilizer is not asked", () => {
  expect(said(withBloom("unknown"))).toEqual(["hold bloom-and-bees-not-read"]);
  expect(said(withBloom("unknown", FEED))).toEqual([]);
  expect(said(withBloom("none"), { inBloom: "yes" })).toEqual([]);
});
