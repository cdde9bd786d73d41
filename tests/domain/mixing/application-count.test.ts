import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type MostApplications } from "#domain/label/label-facts";
import { checkApplicationCount } from "#domain/mixing/application-count";
import { type PastApplication, type TicketTreatment } from "#domain/mixing/ticket-question";
import { BARRIER, holdsOf, LAWN, PAST } from "../../support/ticket";

const past = (on: string, more: Partial<PastApplication> = {}): PastApplication => ({ ...PAST, on: on as CalendarDate, visitId: on, productId: "barrier", ...more });
const limited = (period: MostApplications["period"], count = 2): TicketTreatment => ({
  ...BARRIER,
  use: { ...BARRIER.use, leastDaysBetween: "none", mostApplications: { count, period, basis: "label", source: "label of Barrier Nine" } },
});
const found = (treatment: TicketTreatment, on: string, ...history: readonly PastApplication[]) => checkApplicationCount(treatment, [{ ...LAWN, history }], on as CalendarDate);
const said = (period: MostApplications["period"], on: string, ...history: readonly PastApplication[]) => found(limited(period), on, ...history).map(({ level, rule }) => `${level} ${rule}`);
const HELD = ["hold too-many-applications"];

test("one more than the label's most in the calendar year holds, and nobody may answer", () => {
  expect(found(limited("calendar-year"), "2026-04-14", past("2026-01-05"), past("2026-03-01"))).toMatchObject([
    { level: "hold", answerableBy: "nobody", rule: "too-many-applications", figure: "With this visit Front gets it 3 times in the calendar year; the label's most is 2.", about: ["Barrier Nine", "Front"] },
  ]);
  expect(said("calendar-year", "2026-04-14", past("2026-01-05"))).toEqual([]);
  expect(said("calendar-year", "2026-04-14", past("2025-12-31"), past("2026-03-01"))).toEqual([]);
});

test("entries of one visit are one application, and other products are none of it", () => {
  expect(said("calendar-year", "2026-04-14", past("2026-03-01", { visitId: "one" }), past("2026-03-01", { visitId: "one" }))).toEqual([]);
  expect(said("calendar-year", "2026-04-14", past("2026-01-05", { productId: "another" }), past("2026-03-01"))).toEqual([]);
});

test("of the 12 months the fullest that has the day in it counts, with what stands for later", () => {
  expect(said("12-months", "2026-04-13", past("2025-04-14"), past("2025-09-01"))).toEqual(HELD);
  expect(said("12-months", "2026-04-14", past("2025-04-14"), past("2025-09-01"))).toEqual([]);
  expect(said("12-months", "2026-04-14", past("2025-10-01"), past("2026-09-01"))).toEqual(HELD);
  expect(said("12-months", "2026-04-14", past("2025-06-01"), past("2026-09-01"))).toEqual([]);
});

test("a year or season without dates holds by the calendar year, and wants care where only the 12 months are full", () => {
  expect(said("season", "2026-04-14", past("2026-01-05"), past("2026-03-01"))).toEqual(HELD);
  expect(said("season", "2026-04-14", past("2025-09-01"), past("2026-03-01"))).toEqual(["take-care too-many-applications"]);
  expect(said("season", "2026-04-14", past("2025-03-01"), past("2025-04-01"))).toEqual([]);
});

test("what the label does not limit, or nobody has read, is not judged here; the unread holds the ticket", () => {
  for (const mostApplications of ["none", "unknown"] as const) {
    expect(found({ ...BARRIER, use: { ...BARRIER.use, mostApplications } }, "2026-04-14", past("2026-01-05"))).toEqual([]);
  }
  expect(holdsOf({ treatments: [{ ...BARRIER, use: { ...BARRIER.use, mostApplications: "unknown" } }] })).toEqual(["hold most-applications-not-read"]);
  expect(holdsOf({ lawns: [{ ...LAWN, history: [past("2026-03-01")] }], treatments: [limited("calendar-year", 1)] })).toEqual(HELD);
});
