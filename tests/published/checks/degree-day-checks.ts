// Degree days of a day, and the windows of degree days and soil temperature, as printed.
import { expect } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { PUBLISHED_DEGREE_DAY_WINDOWS } from "#domain/turf/degree-day-windows";
import { type DegreeDayMethod, EIGHTY_SIX_FIFTY, degreeDaysOfDay, openingLine, sumDegreeDays } from "#domain/turf/degree-days";
import { PUBLISHED_SOIL_WINDOWS } from "#domain/turf/soil-temperature";
import { type TemperatureScale, convertTemperatureDifference, fahrenheitFromCelsius } from "#domain/turf/temperature-scale";
import { day, valueOf } from "../../support/domain-answers";
import { type PublishedCheck, type PublishedEntry, type PublishedStatement } from "../../support/published-check";

const simple = (scale: TemperatureScale, baseDegrees: number): DegreeDayMethod => ({ kind: "simple-average", scale, baseDegrees });
const metEireann = (baseDegrees: number): DegreeDayMethod => ({ kind: "met-eireann", scale: "celsius", baseDegrees });
const ofDay = (method: DegreeDayMethod, maximumDegrees: number, minimumDegrees: number) => () =>
  valueOf(degreeDaysOfDay(method, { minimumDegrees, maximumDegrees }));

const NUGENT = "Nugent, Michigan State, Calculating Growing Degree Days, https://info.5y1.org/how-do-you-calculate-the-difference_1_baa5bb.html";
const MET_EIREANN = "Met Eireann, degree days above base, http://www.met.ie/climate/data03.asp (formulas)";
const MCMASTER = "McMaster & Wilhelm 1997, Agric. Forest Meteorol. 87:291-300 (method 2)";

const rows: readonly PublishedCheck[] = [
  { row: ["degree-days.1", "degree-days.4"], name: "base 50 °F, 65/40", expected: 2.5, tolerance: 1e-9, computed: ofDay(simple("fahrenheit", 50), 65, 40), source: NUGENT, status: "seen" },
  { row: ["degree-days.1", "degree-days.5"], name: "base 50 °F, 60/35: none, though the mean is 2.5 below", expected: 0, tolerance: 0, computed: ofDay(simple("fahrenheit", 50), 60, 35), source: NUGENT, status: "seen" },
  { row: "degree-days.6", name: "base 50 °F, 75/27", expected: 1, tolerance: 1e-9, computed: ofDay(simple("fahrenheit", 50), 75, 27), source: "Virginia Tech, January 2007, via http://kentcoopextension.blogspot.com/2008/03/", status: "seen-2nd" },
  { row: "degree-days.7", name: "base 50 °F, 70/50", expected: 10, tolerance: 1e-9, computed: ofDay(simple("fahrenheit", 50), 70, 50), source: "Iowa State Agron 541, http://agron-www.agron.iastate.edu/courses/Agron541/classes/541/lesson02b/2b.1.1.html", status: "seen" },
  { row: "degree-days.8", name: "base 65 °F, mean 75", expected: 10, tolerance: 1e-9, computed: ofDay(simple("fahrenheit", 65), 85, 65), source: "Midwest Regional Climate Center, https://mrcc.illinois.edu/gismaps/info/gddinfo.htm", status: "seen" },
  { row: "degree-days.9", name: "base 53 °F, mean 64 (red scale)", expected: 11, tolerance: 1e-9, computed: ofDay(simple("fahrenheit", 53), 78, 50), source: "UC IPM, https://ipm.ucanr.edu/PMG/FIG/cit-t01.html", status: "seen" },
  { row: "degree-days.2", name: "base 50 °F, reset, 65/40: the low counts as 50", expected: 7.5, tolerance: 1e-9, computed: ofDay({ kind: "reset", scale: "fahrenheit", baseDegrees: 50 }, 65, 40), source: MCMASTER, status: "calc" },
  { row: "degree-days.2", name: "86/50, 95/60: the high counts as 86", expected: 23, tolerance: 1e-9, computed: ofDay(EIGHTY_SIX_FIFTY, 95, 60), source: MCMASTER, status: "calc" },
  { row: "degree-days.3", name: "base 10 °C, 20/12: mean less base", expected: 6, tolerance: 1e-9, computed: ofDay(metEireann(10), 20, 12), source: MET_EIREANN, status: "calc" },
  { row: "degree-days.3", name: "base 10 °C, 9/2: none", expected: 0, tolerance: 0, computed: ofDay(metEireann(10), 9, 2), source: MET_EIREANN, status: "calc" },
  { row: "degree-days.3", name: "base 10 °C, 18/6: (18-10)/2 - (10-6)/4", expected: 3, tolerance: 1e-9, computed: ofDay(metEireann(10), 18, 6), source: MET_EIREANN, status: "calc" },
  { row: "degree-days.3", name: "base 10 °C, 12/0: (12-10)/4", expected: 0.5, tolerance: 1e-9, computed: ofDay(metEireann(10), 12, 0), source: MET_EIREANN, status: "calc" },
  { row: "degree-days.11", name: "200 degree days °C as °F", expected: 360, tolerance: 1e-9, computed: () => convertTemperatureDifference(200, "celsius", "fahrenheit"), source: "Soldat, Golfdom July 30, 2013, https://www.golfdom.com/trinexapac-ethyl-applications-and-growing-degree-days/", status: "seen" },
  { row: "degree-days.11", name: "base 0 °C is base 32 °F", expected: 32, tolerance: 1e-9, computed: () => fahrenheitFromCelsius(0), source: "Soldat, Golfdom July 30, 2013", status: "seen" },
  { row: "degree-days.21", name: "Fidanza's base of 12 °C in °F", expected: 53.6, tolerance: 1e-9, computed: () => fahrenheitFromCelsius(12), source: "Fidanza et al. 1996, Crop Sci 36:990-996, via http://kentcoopextension.blogspot.com/2009/02/", status: "seen-2nd" },
  { row: "degree-days.16", name: "mean 25 °C a day: 200 degree days on day 8", expected: 8, tolerance: 0, computed: dayOfTwoHundred, source: "sum of daily means above 0 °C", status: "calc" },
];

function dayOfTwoHundred(): number {
  const first = day("2026-06-01");
  const days = Array.from({ length: 20 }, (_, index) => ({ date: addDays(first, index), minimumDegrees: 18, maximumDegrees: 32 }));
  const sum = valueOf(sumDegreeDays(simple("celsius", 0), { scale: "celsius", days }, { from: first, through: addDays(first, 19) }));
  return sum.lines.findIndex(({ date }) => date === openingLine(sum, 200)?.date) + 1;
}

const MSU_SOIL = "https://michiganagconnection.com/news/timing-crabgrass-preemergence-applications-in-spring";
const PURDUE = "Purdue, https://turf.purdue.edu/when-will-crabgrass-germinate/";
const UGA = "Murphy, University of Georgia, Six Easy Steps Preemergence";

/** The windows that others may build a round on, held against what the pages print. */
const windows = [
  { row: "degree-days.10", window: PUBLISHED_DEGREE_DAY_WINDOWS.trinexapacAgain, scale: "celsius", base: 0, opens: 200, closes: 250, start: { kind: "last-application" }, source: "Kreuser & Soldat 2009, https://a-c-s.confex.com/crops/2009am/webprogram/Paper55177.html", status: "seen" },
  { row: "degree-days.13", window: PUBLISHED_DEGREE_DAY_WINDOWS.paclobutrazolAgain, scale: "celsius", base: 0, opens: 300, closes: undefined, start: { kind: "last-application" }, source: "Golfdom, December 15, 2014, https://www.golfdom.com/improving-pgrs-by-degrees/", status: "seen" },
  { row: "degree-days.15", window: PUBLISHED_DEGREE_DAY_WINDOWS.trinexapacAgainBermuda, scale: "celsius", base: 10, opens: 220, closes: undefined, start: { kind: "last-application" }, source: "Parkes & Reasor, Mississippi Turfgrass Winter 2019", status: "seen" },
  { row: "degree-days.17", window: PUBLISHED_DEGREE_DAY_WINDOWS.crabgrassPreEmergent, scale: "fahrenheit", base: 32, opens: 250, closes: 500, start: { kind: "calendar", month: 2, day: 15 }, source: "https://turf.wisc.edu/growing-degree-day-maps/crabgrass-pre-emergence-timer/", status: "seen" },
  { row: "degree-days.20", window: PUBLISHED_DEGREE_DAY_WINDOWS.crabgrassGermination, scale: "fahrenheit", base: 50, opens: 200, closes: undefined, start: { kind: "not-printed" }, source: PURDUE, status: "seen" },
  { row: "degree-days.19", window: PUBLISHED_DEGREE_DAY_WINDOWS.crabgrassEmergence, scale: "fahrenheit", base: 50, opens: 70, closes: 140, start: { kind: "not-printed" }, source: "Virginia Tech, January 2007, via http://kentcoopextension.blogspot.com/2008/03/", status: "seen-2nd" },
  { row: "degree-days.23", window: PUBLISHED_DEGREE_DAY_WINDOWS.annualBluegrassSeedheads, scale: "fahrenheit", base: 32, opens: 220, closes: undefined, start: { kind: "calendar", month: 2, day: 15 }, source: "Frank, MSU 2019, https://www.migcsa.org/controlling-annual-bluegrass-seedheads-crabgrass-preemergence-application-timing/", status: "seen" },
] as const;

const soilWindows = [
  { row: "degree-days.17", window: PUBLISHED_SOIL_WINDOWS.crabgrassPreEmergent, printed: [50, 55, "0 to 2 in", 1], source: "https://turf.wisc.edu/growing-degree-day-maps/crabgrass-pre-emergence-timer/", status: "seen" },
  { row: "degree-days.22", window: PUBLISHED_SOIL_WINDOWS.crabgrassRuleOfThumb, printed: [50, undefined, "not printed", 3], source: "Kent County Extension (Delaware) 2009", status: "seen" },
  { row: "degree-days.19", window: PUBLISHED_SOIL_WINDOWS.crabgrassEmergence, printed: [55, 58, "4 in", 4], source: "Virginia Tech 2007, via http://kentcoopextension.blogspot.com/2008/03/", status: "seen-2nd" },
  { row: "degree-days.18", window: PUBLISHED_SOIL_WINDOWS.crabgrassMostGermination, printed: [60, 70, "0 to 2 in", 1], source: MSU_SOIL, status: "seen" },
  { row: "degree-days.20", window: PUBLISHED_SOIL_WINDOWS.crabgrassGerminationBegins, printed: [57, 64, "1 in", 1], source: PURDUE, status: "seen" },
  { row: "degree-days.24", window: PUBLISHED_SOIL_WINDOWS.crabgrassGermination, printed: [53, 58, "4 in", 1], source: UGA, status: "seen" },
  { row: "degree-days.24", window: PUBLISHED_SOIL_WINDOWS.goosegrassGermination, printed: [60, 65, "4 in", 1], source: UGA, status: "seen" },
] as const;

const carried: readonly PublishedStatement[] = [
  ...windows.map((printed): PublishedStatement => ({
    row: printed.row,
    says: printed.window.purpose,
    source: printed.source,
    status: printed.status,
    holds: () => {
      const { window, scale, base, opens, closes, start, status } = printed;
      expect(window.method).toEqual(simple(scale, base));
      expect(window.opensAtDegreeDays).toBe(opens);
      expect("closesAtDegreeDays" in window ? window.closesAtDegreeDays : undefined).toBe(closes);
      expect(window.start).toEqual(start);
      expect(window.reading).toBe(status === "seen" ? "read" : "read-second-hand");
    },
  })),
  ...soilWindows.map(({ row, window, printed, source, status }): PublishedStatement => ({
    row,
    says: `${window.purpose}, ${window.depth}`,
    source,
    status,
    holds: () => {
      expect([window.lowestF, "highestF" in window ? window.highestF : undefined, window.depth, window.consecutiveDays]).toEqual(printed);
      expect(window.reading).toBe(status === "seen" ? "read" : "read-second-hand");
    },
  })),
];

export const DEGREE_DAY_CHECKS: readonly PublishedEntry[] = [...rows, ...carried];
