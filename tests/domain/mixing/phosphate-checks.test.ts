import { describe, expect, test } from "vitest";
import { missingFact } from "#domain/foundation/outcome";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { checkPhosphate, passesPhosphateOfLaw } from "#domain/mixing/phosphate-checks";
import { type PastApplication, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { gradeOf } from "#domain/turf/nutrients";
import { feeding, had } from "../../support/feeds";
import { MARION_COUNTY_FLORIDA } from "../../support/law-fixtures";
import { FEED, LAWN, PAST, QUESTION } from "../../support/ticket";

const starter = (poundsOfPhosphate: string) => feeding(poundsOfPhosphate, { kind: "not-stated" }, gradeOf("5", "10", "5"));
const unread: PastApplication = { ...PAST, nutrients: missingFact("analysis", "a grade", "The analysis of Otherwise 5 is not on file.") };
const asked = (treatments: readonly TicketTreatment[], history: readonly PastApplication[] = []): TicketQuestion => ({ ...QUESTION, treatments, lawns: [{ ...LAWN, history }] });
const rules = (...question: Parameters<typeof asked>) => checkPhosphate(asked(...question), MARION_COUNTY_FLORIDA).map(({ level, rule }) => `${level} ${rule}`);

const [AT_ONCE, OVER_YEAR, UNDECIDED] = ["hold phosphate-above-the-law", "hold phosphate-of-the-year-above-the-law", "hold phosphate-of-the-year-undecided"];

// Marion County Code 19-247: 0.25 lb of P2O5 in one application, 0.50 lb a year.
describe("the law's most phosphate", () => {
  test("in one application is held against all that a visit puts on a lawn", () => {
    expect(rules([starter("0.25")])).toEqual([]);
    expect(rules([starter("0.26")])).toEqual([AT_ONCE]);
    expect(rules([starter("0.13"), { ...starter("0.13"), line: 2 }])).toEqual([AT_ONCE]);
    expect(rules([starter("0.13"), { ...starter("0.13"), line: 2, zoneIds: ["elsewhere"] }])).toEqual([]);
    expect(checkPhosphate(asked([starter("0.26")]), MARION_COUNTY_FLORIDA)).toMatchObject([
      { answerableBy: "license-holder", source: "law", citation: "Marion County Code 19-247", figure: "Planned is 0.26 lb per 1,000 sq ft of P2O5; the law's most is ¼ lb per 1,000 sq ft.", about: [LAWN.name] },
    ]);
  });

  test("in a calendar year counts what the lawn had since January", () => {
    expect(rules([starter("0.25")], [had(starter("0.25"), "2026-03-01")])).toEqual([]);
    expect(rules([starter("0.25")], [had(starter("0.26"), "2026-03-01")])).toEqual([OVER_YEAR]);
    expect(rules([starter("0.25")], [had(starter("0.2"), "2026-01-01"), had(starter("0.06"), "2026-02-01")])).toEqual([OVER_YEAR]);
    expect(rules([starter("0.25")], [had(starter("0.26"), "2025-12-31")])).toEqual([]);
    expect(checkPhosphate(asked([starter("0.25")], [had(starter("0.3"), "2026-03-01")]), MARION_COUNTY_FLORIDA)[0]?.figure).toBe(
      "It had 0.3 lb per 1,000 sq ft and has 0.55 lb per 1,000 sq ft of P2O5 after this visit; the law's most is ½ lb per 1,000 sq ft.",
    );
  });

  test("can't be decided where a feed of the year can't be counted, and says what is missing", () => {
    expect(rules([starter("0.1")], [unread])).toEqual([UNDECIDED]);
    expect(rules([starter("0.25")], [unread, had(starter("0.3"), "2026-03-01")])).toEqual([UNDECIDED, OVER_YEAR]);
    expect(checkPhosphate(asked([starter("0.1")], [unread]), MARION_COUNTY_FLORIDA)[0]?.figure).toMatch(/^The analysis of Otherwise 5 is not on file\. The law's most/u);
  });

  test("asks nothing of a visit without phosphate, whatever the year had, and of a state whose pack has none", () => {
    expect(rules([FEED], [had(starter("0.9"), "2026-03-01"), unread])).toEqual([]);
    expect(checkPhosphate(asked([starter("0.9")]), ILLINOIS)).toEqual([]);
    expect(checkPhosphate(asked([starter("0.9")]), undefined)).toEqual([]);
  });

  test("leaves no room for rounding where it would be passed", () => {
    const passes = (...question: Parameters<typeof asked>) => passesPhosphateOfLaw(asked(...question), MARION_COUNTY_FLORIDA);
    expect([passes([starter("0.25")]), passes([starter("0.26")]), passes([starter("0.2")], [had(starter("0.31"), "2026-03-01")])]).toEqual([false, true, true]);
    expect(passesPhosphateOfLaw(asked([starter("0.9")]), ILLINOIS)).toBe(false);
  });

  test("is not on file for Illinois, which a mix ticket says of fertilizer", () => {
    const made = makeMixTicket(asked([FEED]));
    expect(made.ok && made.value.findings.find(({ rule }) => rule === "nutrient-law-not-on-file")?.figure).toContain("phosphate in one year");
  });
});
