import { describe, expect, test } from "vitest";
import { missingFact } from "#domain/foundation/outcome";
import { rateOf } from "#domain/quantities/rate";
import { gradeOf } from "#domain/turf/nutrients";
import { checkNitrogen } from "#domain/mixing/nitrogen-checks";
import { type PastApplication, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { type RulePack } from "#domain/rules/rule-pack";
import { had, releasing, slow } from "../../support/feeds";
import { BARRIER, FEED, IRON, LAWN, QUESTION } from "../../support/ticket";

type Facts = RulePack["facts"];
const cap = (poundsPer1000SqFt: string): Facts["nitrogen-per-year"] => ({ onFile: true, value: { poundsPer1000SqFt }, citation: "an invented rule", standing: "read" });
/** Invented rules: Illinois has none of these on file. */
const withFacts = (facts: Partial<Facts>): RulePack => ({ ...ILLINOIS, facts: { ...ILLINOIS.facts, ...facts } });

const pounds = (value: string) => rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");
/** What so many pounds of the feed brought on a day: 0.32 lb of nitrogen a pound, half of it slow. */
const fed = (on: string, value: string): PastApplication => had({ ...FEED, rate: pounds(value) }, on);
const findings = (pack: RulePack | undefined, question: Partial<TicketQuestion>) => checkNitrogen({ ...QUESTION, ...question }, pack);
const said = (pack: RulePack | undefined, ...treatments: readonly TicketTreatment[]) => findings(pack, { treatments }).map(({ level, rule }) => `${level} ${rule}`);
const above = "hold nitrogen-above-the-law";
const unstated = releasing({ kind: "not-stated" });

// 2.5 lb of 32 % is 0.8 lb of nitrogen per 1,000 sq ft.
describe("one application", () => {
  test("all nitrogen of a visit on one lawn is held against the law's most", () => {
    const most = (value: string) => withFacts({ "nitrogen-per-application": cap(value) });
    expect(said(most("0.8"), FEED)).toEqual([]);
    expect(said(most("0.79"), FEED)).toEqual([above]);
    expect(said(most("0.8"), FEED, IRON)).toEqual([above]);
    expect(said(most("0.8"), FEED, { ...BARRIER, zoneIds: [], label: FEED.label })).toEqual([]);
    expect(findings(most("0.8"), { treatments: [{ ...FEED, rate: pounds("3") }] })).toMatchObject([{ answerableBy: "license-holder", about: [LAWN.name], citation: "an invented rule" }]);
  });

  test("a figure just above the law's most does not read like it", () => {
    const urea: TicketTreatment = { ...FEED, label: { ...FEED.label, analysis: { grade: gradeOf("46", "0", "0"), release: { kind: "not-stated" } } }, rate: pounds("1.522") };
    expect(findings(withFacts({ "nitrogen-per-application": cap("0.7") }), { treatments: [urea] })[0]?.figure).toBe(
      "Planned is 0.7001 lb per 1,000 sq ft; the law's most is 0.7 lb per 1,000 sq ft.",
    );
    expect(findings(withFacts({ "nitrogen-per-year": cap("0.7") }), { treatments: [urea] })[0]?.figure).toContain("has 0.7001 lb per 1,000 sq ft after this visit; the law's most is 0.7 lb");
  });

  test("of it quick nitrogen has a most of its own; what no label states counts as quick", () => {
    const most = (value: string) => withFacts({ "quick-nitrogen-per-application": cap(value) });
    expect(said(most("0.4"), FEED)).toEqual([]);
    expect(said(most("0.39"), FEED)).toEqual(["hold quick-nitrogen-above-the-law"]);
    expect(said(most("0.79"), unstated)).toContain("hold quick-nitrogen-above-the-law");
    expect(findings(most("0.79"), { treatments: [unstated] })[0]?.figure).toContain("no label states the release; it counts as quick");
    expect(said(most("0.8"), unstated)).not.toContain("hold quick-nitrogen-above-the-law");
  });
});

describe("the calendar year", () => {
  const year = (most: string, ...history: readonly PastApplication[]) =>
    findings(withFacts({ "nitrogen-per-year": cap(most) }), { lawns: [{ ...LAWN, grasses: [], history }], treatments: [FEED] }).map(({ rule }) => rule);

  test("counts what the lawn had since January and what the visit brings", () => {
    expect(year("1.6", fed("2026-03-01", "2.5"))).toEqual([]);
    expect(year("1.59", fed("2026-03-01", "2.5"))).toEqual(["nitrogen-of-the-year-above-the-law"]);
    expect(year("1.59", fed("2025-12-31", "2.5"))).toEqual([]);
    expect(year("1.59", fed("2026-01-01", "2.5"))).toEqual(["nitrogen-of-the-year-above-the-law"]);
  });

  test("a feed that can't be counted leaves it undecided, and says what is missing", () => {
    const unread: PastApplication = { ...fed("2026-03-01", "1"), nutrients: missingFact("analysis", "a grade", "The analysis of Otherwise 5 is not on file.") };
    expect(year("4", unread)).toEqual(["nitrogen-of-the-year-undecided"]);
    expect(year("0.79", unread)).toEqual(["nitrogen-of-the-year-undecided", "nitrogen-of-the-year-above-the-law"]);
    expect(findings(withFacts({ "nitrogen-per-year": cap("4") }), { lawns: [{ ...LAWN, history: [unread] }], treatments: [FEED] })[0]).toMatchObject({
      level: "hold",
      answerableBy: "license-holder",
      figure: expect.stringContaining("The analysis of Otherwise 5 is not on file.") as string,
    });
  });

  // University of Illinois, 1995: tall fescue 2 to 4 lb a year.
  test("above what is published for the main grass in the state wants care, and names the source", () => {
    const beside = (history: readonly PastApplication[], more: Partial<TicketQuestion> = {}) =>
      findings(undefined, { lawns: [{ ...LAWN, history }], treatments: [FEED], ...more }).map(({ level, rule }) => `${level} ${rule}`);
    const ten = fed("2026-03-01", "10");
    expect(beside([ten])).toEqual([]);
    expect(beside([ten, fed("2026-03-20", "0.01")])).toEqual(["take-care nitrogen-above-published-range"]);
    expect(beside([ten, ten], { state: "IN" })).toEqual([]);
    expect(beside([ten, ten], { lawns: [{ ...LAWN, grasses: ["buffalograss"], history: [ten, ten] }] })).toEqual([]);
    expect(findings(undefined, { lawns: [{ ...LAWN, history: [ten, ten] }], treatments: [FEED] })).toMatchObject([{ citation: "University of Illinois, 1995" }]);
  });

  // Penn State (Landschoot): about 2 lb a year, said of fescues.
  test("a single published figure is about so much: near it nothing is said, and farther off the sentence says how far", () => {
    const year = (before: string) => findings(undefined, { state: "PA", lawns: [{ ...LAWN, history: [fed("2026-03-01", before)] }], treatments: [FEED] }).filter(({ rule }) => rule === "nitrogen-above-published-range");
    // 32% of 2.5 lb with this visit is 0.8 lb; of 3.76 lb before it 1.2032, of 4.5 lb 1.44.
    expect(year("3.76")).toEqual([]);
    expect(year("4.5")).toMatchObject([
      { figure: "It has 2.24 lb per 1,000 sq ft after this visit; published is about 2 lb per 1,000 sq ft, and up to 10 % more counts as that.", citation: "Penn State (Landschoot), Feast or Famine Fertility: about 2, said of fescues" },
    ]);
  });

  test("what went on spots counts over the whole lawn beside what is published, and on the spots beside the law", () => {
    const spot = { shareBasisPoints: 500 };
    const onSpots = { ...fed("2026-03-20", "4"), spot };
    const year = (history: readonly PastApplication[], feed: TicketTreatment) => findings(undefined, { lawns: [{ ...LAWN, history }], treatments: [feed] }).map(({ rule }) => rule);
    // Nine pounds of feed all over are 2.88 lb of nitrogen, with 0.8 lb of this visit 3.68 of at most 4; eight more on 5 % of the ground are 0.128 lb of it.
    expect(year([fed("2026-03-01", "9"), onSpots, onSpots], FEED)).toEqual([]);
    expect(year([fed("2026-03-01", "10")], { ...FEED, rate: rateOf("product-mass-per-area", "3", "lb per 1,000 sq ft"), spot })).toEqual([]);
    expect(year([fed("2026-03-01", "9"), { ...onSpots, spot: { shareBasisPoints: 10_000 } }], FEED)).toEqual(["nitrogen-above-published-range"]);
    expect(said(withFacts({ "nitrogen-per-application": cap("0.7") }), { ...FEED, spot })).toContain("hold nitrogen-above-the-law");
  });

  test("where a state has several regions, the highest of them counts", () => {
    // UF/IFAS EP221: tall fescue has none, bermudagrass 3 to 5 in the north and 5 to 7 in the south.
    const feeds = (count: string) => findings(undefined, { state: "FL", lawns: [{ ...LAWN, grasses: ["bermudagrass"], history: [fed("2026-03-01", count)] }], treatments: [FEED] });
    expect(feeds("19")).toEqual([]);
    expect(feeds("20")).toMatchObject([{ rule: "nitrogen-above-published-range" }]);
  });
});

describe("the share of slow nitrogen", () => {
  const share = (percent: string): RulePack => withFacts({ "slow-release-share": { onFile: true, value: { leastPercentOfNitrogen: percent }, citation: "an invented rule", standing: "read" } });
  test("the law's is held against every feed's label, and what it does not state holds too", () => {
    expect(said(share("50"), FEED)).toEqual([]);
    expect(said(share("51"), FEED)).toEqual(["hold slow-release-share-low"]);
    expect(said(share("51"), IRON)).toEqual(["hold slow-release-share-low"]);
    expect(said(share("20"), unstated)).toEqual(["hold slow-release-not-stated"]);
  });

  // Penn State AASL: 30 % or more slow-release when possible.
  test("without a law, what is spread is held against what is advised, as a note", () => {
    expect(said(ILLINOIS, releasing(slow("30")))).toEqual([]);
    expect(said(ILLINOIS, releasing(slow("29.9")))).toEqual(["note slow-release-share-low"]);
    expect(said(undefined, unstated)).toEqual(["note slow-release-not-stated"]);
    expect(said(undefined, IRON)).toEqual([]);
  });
});

test("without a rule on file, and without nitrogen that can be counted, nothing is said here", () => {
  expect(said(ILLINOIS, FEED)).toEqual([]);
  expect(said(undefined, FEED)).toEqual([]);
  const uncounted = { ...IRON, label: { ...IRON.label, density: "unknown" } } as const;
  expect(said(withFacts({ "nitrogen-per-application": cap("0") }), { ...FEED, label: { ...FEED.label, analysis: "unknown" } }, uncounted)).toEqual([]);
});
