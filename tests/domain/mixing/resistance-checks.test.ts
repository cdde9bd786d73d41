import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { rateOf } from "#domain/quantities/rate";
import { checkResistance } from "#domain/mixing/resistance-checks";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { BARRIER, FEED, LAWN, QUESTION } from "../../support/ticket";

const past = (on: string, ...names: readonly string[]) => ({
  on: on as CalendarDate,
  productId: "another",
  activeIngredients: names.map((name) => ({ name, rate: rateOf("active-ingredient-mass-per-area", "0.1", "lb per acre") })),
});
const after = (treatment: TicketTreatment, ...history: readonly ReturnType<typeof past>[]) =>
  checkResistance({ ...QUESTION, lawns: [{ ...LAWN, history }], treatments: [treatment] });

test("what the last pesticide on the lawn had too wants care; a feed between them does not part them", () => {
  expect(after(BARRIER, past("2025-09-01", "Velodiamine"), past("2026-03-01"))).toMatchObject([
    { level: "take-care", rule: "same-mode-of-action-again", what: "velodiamine (Group 3) comes twice in a row on Front." },
  ]);
});

test("another pesticide in between, one that is planned for later, and a product without pesticides say nothing", () => {
  expect(after(BARRIER, past("2025-09-01", "velodiamine"), past("2026-03-01", "oxathrin"))).toEqual([]);
  expect(after(BARRIER, past("2026-05-01", "velodiamine"))).toEqual([]);
  expect(after(FEED, past("2026-03-01", "velodiamine"))).toEqual([]);
  expect(after(BARRIER)).toEqual([]);
});

test("ingredients that nobody entered hold elsewhere and are not compared; what has no mode of action breeds no resistance", () => {
  const history = past("2026-03-01", "velodiamine");
  expect(after({ ...BARRIER, label: { ...BARRIER.label, activeIngredients: "unknown" } }, history)).toEqual([]);
  const [active] = BARRIER.label.activeIngredients === "unknown" ? [] : BARRIER.label.activeIngredients;
  if (active === undefined) throw new Error("The label of a test has an ingredient.");
  expect(after({ ...BARRIER, label: { ...BARRIER.label, activeIngredients: [{ ...active, modeOfAction: "none" }] } }, history)).toEqual([]);
  expect(after({ ...BARRIER, label: { ...BARRIER.label, activeIngredients: [{ ...active, modeOfAction: "unknown" }] } }, history)).toMatchObject([{ what: "velodiamine comes twice in a row on Front." }]);
});
