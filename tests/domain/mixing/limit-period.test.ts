import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, hold } from "#domain/foundation/finding";
import { type CountedPeriod, inPeriodOf, periodsAround, periodsMeantBy, periodWords } from "#domain/mixing/limit-period";
import { PAST } from "../../support/ticket";

const past = (on: string) => ({ ...PAST, on: on as CalendarDate });
const days = (period: CountedPeriod, on: string, ...history: readonly string[]) => periodsAround(period, history.map(past), on as CalendarDate).map((stretch) => stretch.map((one) => one.on));

test("a calendar year is one stretch, before and after the day", () => {
  expect(days("calendar-year", "2026-04-14", "2025-12-31", "2026-01-01", "2026-12-31", "2027-01-01")).toEqual([["2026-01-01", "2026-12-31"]]);
});

test("12 months begin with the day, or with each earlier one of which they have the day in them", () => {
  expect(days("12-months", "2026-04-14", "2025-04-14", "2025-04-15", "2026-09-01")).toEqual([["2026-09-01"], ["2025-04-15"]]);
});

test("the periods in words", () => {
  expect([periodWords("calendar-year"), periodWords("12-months")]).toEqual(["calendar year", "12 months"]);
});

test("a season without dates may mean either stretch, any other period only its own", () => {
  expect(periodsMeantBy("season")).toEqual(["calendar-year", "12-months"]);
  expect([periodsMeantBy("calendar-year"), periodsMeantBy("12-months")]).toEqual([["calendar-year"], ["12-months"]]);
});

test("a season says what the calendar year does, and with care what only the 12 months do", () => {
  const finding = (rule: string, citation?: string): Finding => hold("nobody", { rule, source: "label", what: "Too much.", figure: "A figure.", about: [], ...(citation === undefined ? {} : { citation }) });
  const said = (inYear: readonly Finding[], in12Months: readonly Finding[]) => inPeriodOf("season", (period) => (period === "calendar-year" ? inYear : in12Months));
  expect(said([finding("passed")], [finding("passed")])).toEqual([finding("passed")]);
  expect(said([finding("open")], [finding("open"), finding("passed", "a label")])).toMatchObject([
    { level: "hold", rule: "open" },
    { level: "take-care", rule: "passed", figure: "A figure. It names a season or a year without dates; in the calendar year alone it is not so.", citation: "a label" },
  ]);
  expect(inPeriodOf("12-months", (period) => [finding(period)])).toEqual([finding("12-months")]);
});
