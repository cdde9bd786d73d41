import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type ActiveIngredient } from "#domain/label/label-facts";
import { rateOf } from "#domain/quantities/rate";
import { checkResistance } from "#domain/mixing/resistance-checks";
import { type PastApplication, type TicketTreatment } from "#domain/mixing/ticket-question";
import { BARRIER, FEED, LAWN, PAST, QUESTION } from "../../support/ticket";

type ModeOfAction = ActiveIngredient["modeOfAction"];
const rate = rateOf("active-ingredient-mass-per-area", "0.1", "lb per acre");

/** Names with their groups, as in "velodiamine: Group 3"; a name alone has a group that nobody entered. */
const past = (on: string, ...ingredients: readonly string[]): PastApplication => ({
  ...PAST,
  on: on as CalendarDate,
  activeIngredients: ingredients.map((text) => {
    const [name = "", group] = text.split(": ");
    return { name, rate, modeOfAction: group === undefined ? "unknown" : group === "none" ? "none" : { group } };
  }),
});
const after = (treatment: TicketTreatment, ...history: readonly PastApplication[]) =>
  checkResistance({ ...QUESTION, lawns: [{ ...LAWN, history }], treatments: [treatment] });
const ofGroup = (modeOfAction: ModeOfAction): TicketTreatment => {
  const [active] = BARRIER.label.activeIngredients === "unknown" ? [] : BARRIER.label.activeIngredients;
  if (active === undefined) throw new Error("The label of a test has an ingredient.");
  return { ...BARRIER, label: { ...BARRIER.label, activeIngredients: [{ ...active, modeOfAction }] } };
};
const rules = (modeOfAction: ModeOfAction, ...history: readonly PastApplication[]) => after(ofGroup(modeOfAction), ...history).map(({ level, rule }) => `${level} ${rule}`);
const AGAIN = ["take-care same-mode-of-action-again"];

test("what the last pesticide on the lawn had too wants care; a feed between them does not part them", () => {
  expect(after(BARRIER, past("2025-09-01", "Velodiamine"), past("2026-03-01"))).toMatchObject([
    { level: "take-care", rule: "same-mode-of-action-again", what: "velodiamine (Group 3) comes twice in a row on Front." },
  ]);
});

test("another ingredient of the same group wants care too, and says which it was", () => {
  expect(after(BARRIER, past("2026-03-01", "oxathrin: Group 3 herbicide"))).toMatchObject([
    { what: "velodiamine (Group 3) works in the same way as the last herbicide on Front.", figure: "The last herbicide there, on Mar 1, 2026, had oxathrin of the same group." },
  ]);
});

test.each([
  ["Group 3 herbicide", "group 3 Herbicides", AGAIN],
  ["Group 3 herbicide", "3", AGAIN],
  ["Group 3 herbicide", "Group 3 fungicide", []],
  ["Group 3", "Group 14", []],
  ["Group 3A insecticide", "Group 3 insecticide", []],
  ["Group M5 fungicide", "Group M5", AGAIN],
] as const)("%s after %s: %j", (now, before, expected) => {
  expect(rules({ group: now }, past("2026-03-01", `oxathrin: ${before}`))).toEqual(expected);
});

test("another group in between, one that is planned for later, and a product without pesticides say nothing", () => {
  expect(after(BARRIER, past("2025-09-01", "velodiamine: Group 3"), past("2026-03-01", "oxathrin: Group 14"))).toEqual([]);
  expect(after(BARRIER, past("2026-05-01", "velodiamine: Group 3"))).toEqual([]);
  expect(after(FEED, past("2026-03-01", "velodiamine: Group 3"))).toEqual([]);
  expect(after(BARRIER)).toEqual([]);
});

const FUNGUS: TicketTreatment = { ...ofGroup({ group: "Group 3 fungicide" }), use: { ...BARRIER.use, serviceType: "disease control" } };

test("a pesticide of another kind in between does not part two of one kind", () => {
  expect(after(FUNGUS, past("2026-03-01", "oxathrin: Group 3 fungicide"), past("2026-03-20", "dandelin: Group 4 herbicide"))).toMatchObject([
    { what: "velodiamine (Group 3 fungicide) works in the same way as the last fungicide on Front.", figure: "The last fungicide there, on Mar 1, 2026, had oxathrin of the same group." },
  ]);
  expect(after(FUNGUS, past("2026-03-01", "oxathrin: Group 3 fungicide"), past("2026-03-20", "dandelin: Group 7 fungicide"))).toEqual([]);
});

test("where a label prints no kind, the kind of work tells it", () => {
  const sprayed = (on: string, serviceType: string, ...ingredients: readonly string[]) => ({ ...past(on, ...ingredients), serviceType });
  const against = (serviceType: TicketTreatment["use"]["serviceType"]): TicketTreatment => ({ ...ofGroup({ group: "Group 3" }), use: { ...BARRIER.use, serviceType } });
  const history = [sprayed("2026-03-01", "disease control", "oxathrin: Group 3"), sprayed("2026-03-20", "broadleaf weed control", "dandelin: Group 4")];
  expect(after(against("disease control"), ...history)).toHaveLength(1);
  expect(after(against("grassy weed control"), ...history)).toEqual([]);
});

test("one of no known kind may be of any, until one that is surely of the kind has come after it", () => {
  expect(after(FUNGUS, past("2026-03-01", "oxathrin: Group 3"), past("2026-02-01", "dandelin: Group 7 fungicide"))).toHaveLength(1);
  expect(after(FUNGUS, past("2026-03-01", "oxathrin: Group 3"), past("2026-03-20", "dandelin: Group 7 fungicide"))).toEqual([]);
  const unknown: TicketTreatment = { ...ofGroup({ group: "Group 3" }), use: { ...BARRIER.use, serviceType: "other" } };
  expect(after(unknown, past("2026-03-01", "oxathrin: Group 3 fungicide"), past("2026-03-20", "dandelin: Group 4 herbicide"))).toMatchObject([{ what: "velodiamine (Group 3) works in the same way as the last pesticide on Front." }]);
});

test("a group that nobody entered is not compared, and that is noted", () => {
  expect(after(BARRIER, past("2026-03-01", "oxathrin"))).toMatchObject([{ level: "note", rule: "mode-of-action-not-compared", figure: "The resistance group of oxathrin is not on file." }]);
  expect(rules("unknown", past("2026-03-01", "oxathrin: Group 14"))).toEqual(["note mode-of-action-not-compared"]);
  expect(rules("unknown", past("2026-03-01", "velodiamine"))).toEqual(AGAIN);
});

test("a product of which nobody read what is in it is not compared, and does not part what lies before and after it", () => {
  const unread: PastApplication = { ...PAST, on: "2026-03-20" as CalendarDate, activeIngredients: "unknown" };
  expect(after(BARRIER, unread)).toMatchObject([{ level: "note", figure: "The resistance group of Otherwise 5 is not on file." }]);
  expect(after(BARRIER, past("2026-03-01", "oxathrin: Group 3 herbicide"), unread).map(({ rule }) => rule)).toEqual(["same-mode-of-action-again"]);
});

test("ingredients that nobody entered hold elsewhere; what has no mode of action breeds no resistance", () => {
  const history = past("2026-03-01", "velodiamine: Group 3");
  expect(after({ ...BARRIER, label: { ...BARRIER.label, activeIngredients: "unknown" } }, history)).toEqual([]);
  expect(rules("none", history)).toEqual([]);
  expect(rules({ group: "Group 3" }, past("2026-03-01", "oxathrin: none"))).toEqual([]);
  expect(rules("unknown", past("2026-03-01", "oxathrin: none"))).toEqual([]);
});
