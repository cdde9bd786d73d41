import { describe, expect, test } from "vitest";
import { type EnteredLimits, type EnteredSun, judgeHours } from "#domain/worksheets/judged-hours";

const FREE: EnteredLimits = { coolestF: undefined, hottestF: undefined, hottestAfter: undefined, windMph: 10, rainfastHours: 0 };
const NO_SUN: EnteredSun = { sunriseMinute: undefined, sunsetMinute: undefined };
const hour = (ofClock: number, change: { readonly temperatureF?: number; readonly windMph?: number; readonly rainInches?: number } = {}) => ({
  minute: ofClock * 60,
  weather: { startsAtEpochMilliseconds: ofClock * 3_600_000, temperatureF: 70, relativeHumidityPercent: 60, windMph: 5, rainInches: 0, ...change },
});
const standings = (hours: readonly ReturnType<typeof hour>[], limits: Partial<EnteredLimits> = {}, sun = NO_SUN) =>
  judgeHours(hours, { ...FREE, ...limits }, sun).map(({ standing }) => standing);

describe("how an hour stands", () => {
  test("open, and closed by each limit that was entered", () => {
    expect(standings([hour(9)])).toEqual(["open"]);
    expect([{ coolestF: 71 }, { coolestF: 70 }, { hottestF: 69 }, { hottestF: 70 }, { windMph: 4.9 }, { windMph: 5 }].map((limits) => standings([hour(9)], limits)[0])).toEqual(["closed", "open", "closed", "open", "closed", "open"]);
    expect(standings([hour(9, { rainInches: 0.01 }), hour(10, { rainInches: 0.009 })])).toEqual(["closed", "open"]);
  });
  test("undecided where only hours that are not there could close it", () => {
    expect(standings([hour(9), hour(10)], { rainfastHours: 1 })).toEqual(["open", "undecided"]);
    expect(standings([hour(9), hour(10)], { hottestAfter: { limitF: 85, withinHours: 1 } })).toEqual(["open", "undecided"]);
    expect(standings([hour(9), hour(10, { windMph: 11 })], { rainfastHours: 1 })).toEqual(["open", "closed"]);
    expect(standings([hour(9, { windMph: 2 })], { rainfastHours: 1 }, { ...NO_SUN, sunriseMinute: 540 })).toEqual(["undecided"]);
  });
  test("heat and rain of the hours after close it, over midnight too", () => {
    expect(standings([hour(22), hour(23), hour(24, { rainInches: 0.2 })], { rainfastHours: 1 })).toEqual(["open", "closed", "closed"]);
    expect(standings([hour(22), hour(23), hour(24, { temperatureF: 86 })], { hottestAfter: { limitF: 85, withinHours: 1 } })).toEqual(["open", "closed", "closed"]);
  });
});

test("wind and rain are said once, in the words of a worksheet", () => {
  const [windy, wet, before] = judgeHours([hour(9, { windMph: 11 }), hour(10, { rainInches: 0.2 }), hour(23), hour(24, { rainInches: 0.3 }), hour(25)], { ...FREE, rainfastHours: 1 }, NO_SUN);
  expect(windy?.reasons.map(({ rule }) => rule)).toEqual(["wind-high", "rain"]);
  expect(wet?.reasons.map(({ sentence }) => sentence)).toEqual(["Rain of 0.2 in is expected at 10 am; this spray needs 1 h without rain."]);
  expect(before?.reasons.map(({ sentence }) => sentence)).toEqual(["Rain of 0.3 in is expected at midnight the next day; this spray needs 1 h without rain."]);
});

test("the sun of each day is minded at the end that was entered", () => {
  const light = [5, 7, 12, 18, 23, 29, 31, 36, 42].map((ofClock) => hour(ofClock, { windMph: 2 }));
  const careful = (sun: Partial<EnteredSun>) => light.flatMap(({ minute }, index) => (standings(light, {}, { ...NO_SUN, ...sun })[index] === "take-care" ? [minute / 60] : []));
  expect(careful({ sunriseMinute: 360 })).toEqual([5, 29]);
  expect(careful({ sunsetMinute: 1200 })).toEqual([18, 23, 42]);
  expect(careful({ sunriseMinute: 361, sunsetMinute: 1200 })).toEqual([5, 7, 18, 23, 29, 31, 42]);
  expect(careful({})).toEqual([]);
});
