import { expect, test } from "vitest";
import { isOfPresentPlan } from "#application/days/ticket-of-plan";
import { toStoredJson } from "#application/stored-json";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { rateOf } from "#domain/quantities/rate";
import { valueOf } from "../../support/crew";
import { FEED, QUESTION } from "../../support/ticket";

const APPLICATION = { on: "2026-04-14" as CalendarDate, operatorId: "o", operatorName: "Rowan Ash", vehicleId: "v" };
const ticketOf = (rate = FEED.rate) => valueOf(makeMixTicket({ ...QUESTION, treatments: [{ ...FEED, rate }] }));
const PRESENT = { application: APPLICATION, ticket: ticketOf() };

/** An object as a JSON column gives it back: its names in another order. */
function shuffled(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(shuffled);
  return Object.fromEntries(Object.entries(value).reverse().map(([name, part]) => [name, shuffled(part)]));
}

test("the same plan is the same, whatever the order of names and whatever else the snapshot holds", () => {
  expect(isOfPresentPlan(shuffled(toStoredJson({ ...PRESENT, license: "C-1" })), PRESENT)).toBe(true);
});

test("findings that came since do not change what is on the paper", () => {
  expect(isOfPresentPlan(toStoredJson(PRESENT), { ...PRESENT, ticket: { ...PRESENT.ticket, findings: [] } })).toBe(true);
});

test("another rate, day, person or truck is another plan", () => {
  const stored = toStoredJson(PRESENT);
  expect(isOfPresentPlan(stored, { ...PRESENT, ticket: ticketOf(rateOf("product-mass-per-area", "3", "lb per 1,000 sq ft")) })).toBe(false);
  for (const other of [{ on: "2026-04-15" as CalendarDate }, { operatorId: "p" }, { vehicleId: null }]) {
    expect(isOfPresentPlan(stored, { ...PRESENT, application: { ...APPLICATION, ...other } })).toBe(false);
  }
});

test("what is no ticket is of no plan", () => {
  for (const snapshot of [null, "ticket", {}, { ticket: null }, { ticket: { mixes: [] } }]) expect(isOfPresentPlan(snapshot, PRESENT)).toBe(false);
});
