import fc from "fast-check";
import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, hold } from "#domain/foundation/finding";
import { type CountedPeriod, inPeriodOf, periodsAround, periodsMeantBy, periodWords, withinAYearOf } from "#domain/mixing/limit-period";
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

// The second way: plain arithmetic on year, month and day, over every day on which 12 months can begin.
const plainDay = fc.record({ year: fc.integer({ min: 2024, max: 2028 }), month: fc.integer({ min: 1, max: 12 }), day: fc.integer({ min: 1, max: 28 }) });
type PlainDay = typeof plainDay extends fc.Arbitrary<infer Day> ? Day : never;
const textOf = ({ year, month, day }: PlainDay) => `${String(year)}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
const numberOf = ({ year, month, day }: PlainDay) => year * 10_000 + month * 100 + day;
const isInYearFrom = (begin: PlainDay, one: PlainDay) => numberOf(begin) <= numberOf(one) && numberOf(one) < numberOf(begin) + 10_000;

test("the fullest 12 months that have the day in them are as full as plain counting finds, however long the history", () => {
  fc.assert(
    fc.property(plainDay, fc.array(plainDay, { maxLength: 40 }), (on, history) => {
      const found = Math.max(...days("12-months", textOf(on), ...history.map(textOf)).map((stretch) => stretch.length));
      const begins = [on, ...history].filter((begin) => isInYearFrom(begin, on));
      expect(found).toBe(Math.max(...begins.map((begin) => history.filter((one) => isInYearFrom(begin, one)).length)));
    }),
  );
});

test("what is more than a year away is in no stretch and is left out before", () => {
  const on = "2026-04-14" as CalendarDate;
  const kept = withinAYearOf(["2025-04-13", "2025-04-14", "2026-04-14", "2027-04-14", "2027-04-15"].map(past), on);
  expect(kept.map((one) => one.on)).toEqual(["2025-04-14", "2026-04-14", "2027-04-14"]);
  const leapDay = "2024-02-29" as CalendarDate;
  expect(withinAYearOf(["2023-02-28", "2023-03-01", "2025-02-28", "2025-03-01"].map(past), leapDay).map((one) => one.on)).toEqual(["2023-03-01", "2025-02-28"]);
});
