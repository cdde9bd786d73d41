import fc from "fast-check";
import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { keptFromRoundingUp, treatmentsForRounding } from "#domain/mixing/rounding-room";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { packOf } from "#domain/rules/packs-on-file";
import { gradeOf } from "#domain/turf/nutrients";
import { BARRIER, FEED, granularOf, holdsOf, IRON, LAWN, PAST, QUESTION } from "../../support/ticket";

test("marks of a scale never bring a season over its limit", () => {
  fc.assert(
    fc.property(fc.bigInt(100n, 9000n), fc.bigInt(25n, 40n), (squareFeet, tenths) => {
      const rate = rateOf("product-mass-per-area", { numerator: tenths, denominator: 10n }, "lb per 1,000 sq ft");
      // The limit is what the plan brings: 0.37 % of the rate.
      const most = rateOf("active-ingredient-mass-per-area", { numerator: tenths * 37n, denominator: 100_000n }, "lb per 1,000 sq ft");
      const limits = [{ activeIngredient: "velodiamine", most, period: "calendar-year" }] as const;
      const use = { ...BARRIER.use, seasonLimits: { limits, basis: "label", source: "label of Barrier Nine" } } as const;
      const treatment: TicketTreatment = { ...BARRIER, use, rate, tool: { name: "pound scale", mark: exactly("lb", "1") } };
      const question = { lawns: [{ ...LAWN, area: of("sq ft", squareFeet) }], treatments: [treatment] };
      expect(holdsOf(question)).not.toContain("hold season-limit-passed");
      const amount = granularOf(question)?.total.amount ?? 0n;
      const planned = of("lb", { numerator: squareFeet * tenths, denominator: 10_000n }).amount;
      expect(amount <= planned + 1n).toBe(true);
    }),
  );
});

test("where the season has room for the labels' highest rates, rounding is left to the labels", () => {
  const question = { ...QUESTION, treatments: [BARRIER, IRON] };
  expect(keptFromRoundingUp(question, ILLINOIS)).toEqual(question.treatments);
  // 1.01 lb per acre and the planned 0.4835 keep the limit of 1.5; the label's highest rate would not.
  const history = [{ ...PAST, on: "2026-01-10" as CalendarDate, activeIngredients: [{ name: "velodiamine", rate: rateOf("active-ingredient-mass-per-area", "1.01", "lb per acre"), modeOfAction: "unknown" as const }] }];
  const full = { ...question, lawns: [{ ...LAWN, history }] };
  expect(keptFromRoundingUp(full, ILLINOIS).map(({ use }) => use.rates.high)).toEqual([BARRIER.rate, IRON.rate]);
});

test("the law's nitrogen in one application leaves no room above the plan either", () => {
  // An invented rule. 2.5 lb of 32 % is 0.8 lb of nitrogen; the label's highest, 3 lb, is 0.96 lb.
  const capped = (poundsPer1000SqFt: string) => ({
    ...ILLINOIS,
    facts: { ...ILLINOIS.facts, "nitrogen-per-application": { onFile: true, value: { poundsPer1000SqFt }, citation: "an invented rule", standing: "read" } as const },
  });
  const highest = (pounds: string) => keptFromRoundingUp({ ...QUESTION, treatments: [FEED] }, capped(pounds)).map(({ use }) => use.rates.high);
  expect(highest("0.96")).toEqual([FEED.use.rates.high]);
  expect(highest("0.9")).toEqual([FEED.rate]);
});

test("nor does the law's phosphate", () => {
  // An invented rule. 2.5 lb of 10 % is 0.25 lb of P2O5; the label's highest, 3 lb, is 0.3 lb.
  const starter: TicketTreatment = { ...FEED, label: { ...FEED.label, analysis: { grade: gradeOf("10", "10", "0"), release: { kind: "not-stated" } } } };
  const capped = (poundsPer1000SqFt: string) => ({
    ...ILLINOIS,
    facts: { ...ILLINOIS.facts, "phosphate-per-year": { onFile: true, value: { poundsPer1000SqFt }, citation: "an invented rule", standing: "read" } as const },
  });
  const highest = (pounds: string) => keptFromRoundingUp({ ...QUESTION, treatments: [starter] }, capped(pounds)).map(({ use }) => use.rates.high);
  expect(highest("0.3")).toEqual([FEED.use.rates.high]);
  expect(highest("0.29")).toEqual([FEED.rate]);
});

test("a rate by another measure than its label's is left as it is", () => {
  const capped = { ...ILLINOIS, facts: { ...ILLINOIS.facts, "nitrogen-per-application": { onFile: true, value: { poundsPer1000SqFt: "0" }, citation: "an invented rule", standing: "read" } as const } };
  const byWeight: TicketTreatment = { ...IRON, rate: FEED.rate };
  expect(keptFromRoundingUp({ ...QUESTION, treatments: [byWeight] }, capped)[0]?.use.rates).toEqual(IRON.use.rates);
  const byVolume: TicketTreatment = { ...FEED, rate: IRON.rate };
  expect(keptFromRoundingUp({ ...QUESTION, treatments: [byVolume, FEED] }, capped).map(({ use }) => use.rates.high)).toEqual([FEED.use.rates.high, FEED.rate]);
});

test("for a question they are those by the law on file for its state, of each question its own", () => {
  const roomy = { ...QUESTION, treatments: [BARRIER, IRON] };
  const history = [{ ...PAST, on: "2026-01-10" as CalendarDate, activeIngredients: [{ name: "velodiamine", rate: rateOf("active-ingredient-mass-per-area", "1.01", "lb per acre"), modeOfAction: "unknown" as const }] }];
  const full = { ...roomy, lawns: [{ ...LAWN, history }] };
  for (const question of [roomy, full, roomy]) expect(treatmentsForRounding(question)).toEqual(keptFromRoundingUp(question, packOf(question.state)));
  expect(treatmentsForRounding(full)).not.toEqual(treatmentsForRounding(roomy));
});

test("a season that is full on a lawn that a product does not come to leaves its own lawn's room", () => {
  // 1.6 lb per acre is above the limit of 1.5 by itself.
  const history = [{ ...PAST, on: "2026-01-10" as CalendarDate, activeIngredients: [{ name: "velodiamine", rate: rateOf("active-ingredient-mass-per-area", "1.6", "lb per acre"), modeOfAction: "unknown" as const }] }];
  const question = { ...QUESTION, lawns: [LAWN, { ...LAWN, zoneId: "full", history }] };
  const on = (zoneIds: readonly string[]) => keptFromRoundingUp({ ...question, treatments: [{ ...BARRIER, zoneIds }] }, ILLINOIS).map(({ use }) => use.rates.high);
  expect(on([LAWN.zoneId])).toEqual([BARRIER.use.rates.high]);
  expect(on(["full"])).toEqual([BARRIER.rate]);
});
