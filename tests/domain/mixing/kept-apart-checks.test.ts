import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type KeptApart, type LabelUse } from "#domain/label/label-facts";
import { rateOf } from "#domain/quantities/rate";
import { checkKeptApart } from "#domain/mixing/kept-apart-checks";
import { type PastApplication, type TicketTreatment } from "#domain/mixing/ticket-question";
import { BARRIER, FEED, IRON, LAWN, PAST, QUESTION, SPRAYER } from "../../support/ticket";

const apart = (treatment: TicketTreatment, keptApart: LabelUse["keptApart"]): TicketTreatment => ({ ...treatment, use: { ...treatment.use, keptApart } });
const from = (...list: readonly KeptApart[]): LabelUse["keptApart"] => ({ from: list, basis: "label", source: "a label" });
const WEED: TicketTreatment = { ...IRON, line: 4, productId: "weed", label: { ...IRON.label, productName: "Dandeloss", analysis: "none" } };
const findings = (treatments: readonly TicketTreatment[], history: readonly PastApplication[] = []) => checkKeptApart({ ...QUESTION, lawns: [{ ...LAWN, history }], treatments });
const said = (...args: Parameters<typeof findings>) => findings(...args).map(({ level, rule }) => `${level} ${rule}`);
const earlier = (on: string, productName: string, more: Partial<PastApplication> = {}): PastApplication => ({ ...PAST, on: on as CalendarDate, productName, ...more });

test("a product that its label keeps out of a tank with another holds, and nobody may answer", () => {
  const weed = apart(WEED, from({ from: "iron", apart: "tank" }));
  expect(findings([weed, IRON])).toMatchObject([{ level: "hold", answerableBy: "nobody", rule: "not-in-one-tank", about: ["Dandeloss", "Rustwater Iron"] }]);
  expect(said([apart(WEED, from({ from: "all others", apart: "tank" })), IRON])).toEqual(["hold not-in-one-tank"]);
  expect(said([apart(WEED, from({ from: "lime", apart: "tank" })), IRON])).toEqual([]);
});

test("another machine, output or lawn is another tank, and what is spread is in none", () => {
  const weed = apart(WEED, from({ from: "all others", apart: "tank" }));
  expect(said([weed, { ...IRON, gear: { ...SPRAYER, equipmentId: "another" } }])).toEqual([]);
  expect(said([weed, { ...IRON, gear: { ...SPRAYER, carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", "2", "gal per 1,000 sq ft") } } }])).toEqual([]);
  expect(said([weed, { ...IRON, zoneIds: ["back"] }])).toEqual([]);
  expect(said([weed, FEED])).toEqual([]);
});

test("what nobody has read of mixing holds where products share a tank, and only there", () => {
  expect(said([apart(WEED, "unknown"), IRON])).toEqual(["hold tank-partners-not-read"]);
  expect(said([apart(WEED, "unknown")])).toEqual([]);
  expect(said([apart(FEED, "unknown"), IRON])).toEqual([]);
});

test("two that are kept apart by days don't go down on one lawn on one day", () => {
  const barrier = apart(BARRIER, from({ from: "Harrowgate", apart: { days: 7 } }));
  expect(said([barrier, FEED])).toEqual(["hold not-on-one-day"]);
  expect(said([barrier, { ...FEED, zoneIds: ["back"] }])).toEqual([]);
});

test("days are counted over the lawn's history, before and after, by name or ingredient; the nearest is told", () => {
  const barrier = apart(BARRIER, from({ from: "lime", apart: { days: 14 } }));
  expect(said([barrier], [earlier("2026-04-01", "Fieldrow Lime")])).toEqual(["hold too-near-another-product"]);
  expect(said([barrier], [earlier("2026-03-31", "Fieldrow Lime")])).toEqual([]);
  expect(said([barrier], [earlier("2026-04-27", "Fieldrow Lime")])).toEqual(["hold too-near-another-product"]);
  expect(said([barrier], [earlier("2026-04-27", "Fieldrow Lime", { productId: "barrier" })])).toEqual([]);
  const rate = rateOf("active-ingredient-mass-per-area", "1", "lb per acre");
  expect(said([barrier], [earlier("2026-04-10", "Otherwise 5", { activeIngredients: [{ name: "Lime sulfur", rate, modeOfAction: "none" }] })])).toEqual(["hold too-near-another-product"]);
  expect(findings([barrier], [earlier("2026-04-01", "Fieldrow Lime"), earlier("2026-04-10", "Fieldrow Lime"), earlier("2026-04-02", "Fieldrow Lime")])[0]?.figure).toBe(
    "4 days lie between them; the label keeps it apart from lime by 14 days.",
  );
});
