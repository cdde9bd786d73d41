import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { missingFact } from "#domain/foundation/outcome";
import { compareRates, rateOf } from "#domain/quantities/rate";
import { nutrientRatesOf } from "#domain/mixing/delivered";
import { broughtByTreatments, countedAsQuick, countNitrogen, nitrogenOfVisit, nitrogenOfYear, wholeNitrogen } from "#domain/mixing/year-nitrogen";
import { BARRIER, FEED, IRON, LAWN, PAST } from "../../support/ticket";

const nitrogen = (pounds: string) => rateOf("nutrient-mass-per-area", pounds, "lb per 1,000 sq ft");
const isSame = (one: Parameters<typeof compareRates>[0], pounds: string) => compareRates(one as ReturnType<typeof nitrogen>, nitrogen(pounds)) === 0;

test("quick, slow and not stated are kept apart; the last counts as quick", () => {
  // 2.5 lb of 32 %, half of it slow; 3 lb of 19 % whose label states no release.
  const { nitrogen: brought, missing } = nitrogenOfVisit(LAWN, broughtByTreatments([FEED, BARRIER]));
  expect([isSame(brought.quick, "0.4"), isSame(brought.slow, "0.4"), isSame(brought.notStated, "0.57")]).toEqual([true, true, true]);
  expect(isSame(countedAsQuick(brought), "0.97")).toBe(true);
  expect(isSame(wholeNitrogen(brought), "1.37")).toBe(true);
  expect(missing).toEqual([]);
});

test("only what goes on the lawn counts, and what can't be counted is named once", () => {
  const unweighed = { ...IRON, label: { ...IRON.label, density: "unknown" } } as const;
  const counted = nitrogenOfVisit(LAWN, broughtByTreatments([unweighed, { ...unweighed, line: 8 }, { ...FEED, zoneIds: ["back"] }]));
  expect(wholeNitrogen(counted.nitrogen).amount).toBe(0n);
  expect(counted.missing).toEqual(["The density of Rustwater Iron is not on file; its nutrients are stated by weight."]);
});

test("a year is the calendar year of the day", () => {
  const fed = (on: string) => ({ ...PAST, on: on as CalendarDate, nutrients: nutrientRatesOf(FEED.label, FEED.rate) });
  const lawn = { ...LAWN, history: [fed("2025-12-31"), fed("2026-01-01"), fed("2026-12-31"), fed("2027-01-01")] };
  expect(isSame(wholeNitrogen(nitrogenOfYear(lawn, "2026-06-01" as CalendarDate).nitrogen), "1.6")).toBe(true);
});

test("nothing brings nothing", () => {
  expect(wholeNitrogen(countNitrogen([]).nitrogen).amount).toBe(0n);
  expect(countNitrogen([missingFact("analysis", "a grade", "Not read.")]).missing).toEqual(["Not read."]);
});
