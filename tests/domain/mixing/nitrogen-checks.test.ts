import { expect, test } from "vitest";
import { rateOf } from "#domain/quantities/rate";
import { checkNitrogenLaw } from "#domain/mixing/nitrogen-checks";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { type RuleName, type RulePack } from "#domain/rules/rule-pack";
import { BARRIER, FEED, IRON, LAWN, QUESTION } from "../../support/ticket";

/** An invented rule: Illinois has no such cap on file. */
function capped(rule: RuleName, poundsPer1000SqFt: string): RulePack {
  return { ...ILLINOIS, facts: { ...ILLINOIS.facts, [rule]: { onFile: true, value: { poundsPer1000SqFt }, citation: "an invented rule", standing: "read" } } };
}
const said = (pack: RulePack | undefined, ...treatments: readonly TicketTreatment[]) =>
  checkNitrogenLaw({ ...QUESTION, treatments }, pack).map(({ level, rule }) => `${level} ${rule}`);
const above = "hold nitrogen-above-the-law";

// 2.5 lb of 32 % is 0.8 lb of nitrogen per 1,000 sq ft.
test("all nitrogen of a visit on one lawn is held against the most in one application", () => {
  const cap = (pounds: string) => capped("nitrogen-per-application", pounds);
  expect(said(cap("0.8"), FEED)).toEqual([]);
  expect(said(cap("0.79"), FEED)).toEqual([above]);
  expect(said(cap("0.8"), FEED, IRON)).toEqual([above]);
  expect(said(cap("0.8"), FEED, { ...BARRIER, zoneIds: [] })).toEqual([]);
  expect(checkNitrogenLaw({ ...QUESTION, treatments: [{ ...FEED, rate: rateOf("product-mass-per-area", "3", "lb per 1,000 sq ft") }] }, cap("0.8"))).toMatchObject([
    { answerableBy: "license-holder", about: [LAWN.name], citation: "an invented rule" },
  ]);
});

test("the most in a year can't be judged without the year's feeds, and says so", () => {
  expect(said(capped("nitrogen-per-year", "4"), FEED)).toEqual(["hold nitrogen-of-the-year-undecided"]);
});

test("without a rule on file, and without nitrogen that can be counted, nothing is said here", () => {
  expect(said(ILLINOIS, FEED)).toEqual([]);
  expect(said(undefined, FEED)).toEqual([]);
  const uncounted = { ...IRON, label: { ...IRON.label, density: "unknown" } } as const;
  expect(said(capped("nitrogen-per-application", "0"), { ...FEED, label: { ...FEED.label, analysis: "unknown" } }, uncounted)).toEqual([]);
});
