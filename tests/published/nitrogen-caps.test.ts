import { describe, expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { decimal } from "#domain/quantities/rational";
import { rateOf } from "#domain/quantities/rate";
import { gradeOf, type NitrogenRelease } from "#domain/turf/nutrients";
import { nutrientRatesOf } from "#domain/mixing/delivered";
import { checkNitrogen } from "#domain/mixing/nitrogen-checks";
import { type PastApplication, type TicketTreatment } from "#domain/mixing/ticket-question";
import { checkNutrientLaw } from "#domain/rules/nutrient-law";
import { type RulePack } from "#domain/rules/rule-pack";
import { MARION_COUNTY_FLORIDA, MARYLAND } from "../support/law-fixtures";
import { FEED, LAWN, PAST, QUESTION } from "../support/ticket";

const slow = (percentOfNitrogen: string): NitrogenRelease => ({ kind: "slow-percent-of-nitrogen", percent: decimal(percentOfNitrogen) });

/** A feed of one tenth nitrogen, so that ten times the pounds of nitrogen are the pounds of product. */
function feeding(poundsOfNitrogen: string, release: NitrogenRelease): TicketTreatment {
  const product = rateOf("product-mass-per-area", decimal(poundsOfNitrogen), "lb per 1,000 sq ft");
  return { ...FEED, rate: { ...product, amount: product.amount * 10n }, label: { ...FEED.label, analysis: { grade: gradeOf("10", "0", "0"), release } } };
}

function had(poundsOfNitrogen: string, on: string): PastApplication {
  const { label, rate } = feeding(poundsOfNitrogen, slow("50"));
  return { ...PAST, on: on as CalendarDate, nutrients: nutrientRatesOf(label, rate) };
}

function held(pack: RulePack, treatment: TicketTreatment, history: readonly PastApplication[] = []): readonly string[] {
  const lawns = [{ ...LAWN, grasses: ["St. Augustinegrass" as const], history }];
  return checkNitrogen({ ...QUESTION, state: "MD", lawns, treatments: [treatment] }, pack).map(({ rule }) => rule);
}

describe("Md. Code, Agriculture 6-224: at most 0.7 lb water-soluble and 0.9 lb total nitrogen per 1,000 sq ft, at least 20 % slow release", () => {
  test.each([
    // 0.9 lb with 25 % slow: 0.675 lb works at once.
    ["0.9", "25", []],
    ["0.91", "25", ["nitrogen-above-the-law"]],
    // 0.875 lb with 20 % slow: 0.7 lb works at once.
    ["0.875", "20", []],
    ["0.88", "20", ["quick-nitrogen-above-the-law"]],
    ["0.5", "19.9", ["slow-release-share-low"]],
    ["0.7", "0", ["slow-release-share-low"]],
    ["0.71", "0", ["quick-nitrogen-above-the-law", "slow-release-share-low"]],
    ["1", "10", ["nitrogen-above-the-law", "quick-nitrogen-above-the-law", "slow-release-share-low"]],
  ] as const)("%s lb of nitrogen with %s % of it slow: %j", (pounds, percent, expected) => {
    expect(held(MARYLAND, feeding(pounds, slow(percent)))).toEqual(expected);
  });

  test("nitrogen whose release the label does not state counts as quick, and the share can't be decided", () => {
    expect(held(MARYLAND, feeding("0.71", { kind: "not-stated" }))).toEqual(["quick-nitrogen-above-the-law", "slow-release-not-stated"]);
  });
});

describe("Md. Code, Agriculture 8-803.5: none before March 1 or after November 15", () => {
  test.each([
    ["2026-11-15", false],
    ["2026-11-16", true],
    ["2026-12-31", true],
    ["2027-01-01", true],
    ["2027-02-28", true],
    ["2028-02-29", true],
    ["2027-03-01", false],
  ] as const)("%s: %s", (on, isClosed) => {
    const products = [{ name: "Feed", grade: gradeOf("32", "0", "0"), lawns: [] }];
    const rules = checkNutrientLaw({ state: "MD", pack: MARYLAND, on: on as CalendarDate, products, frozenOrSaturated: "no" }).map(({ rule }) => rule);
    expect(rules.includes("blackout-dates")).toBe(isClosed);
  });
});

describe("Marion County Code 19-247: 1 lb of nitrogen in one application, 0.7 lb soluble, St. Augustinegrass 3 lb a year", () => {
  test.each([
    ["1", "30", [], []],
    ["1.01", "50", [], ["nitrogen-above-the-law"]],
    ["1", "29", [], ["quick-nitrogen-above-the-law"]],
    ["1", "50", ["1", "1"], []],
    ["1", "50", ["1", "1.01"], ["nitrogen-of-the-year-above-the-law"]],
  ] as const)("%s lb, %s % slow, after %j: %j", (pounds, percent, before, expected) => {
    const history = before.map((each, index) => had(each, `2026-0${String(index + 1)}-10`));
    // The note on slow release is advice of another source.
    expect(held(MARION_COUNTY_FLORIDA, feeding(pounds, slow(percent)), history).filter((rule) => rule !== "slow-release-share-low")).toEqual(expected);
  });
});
