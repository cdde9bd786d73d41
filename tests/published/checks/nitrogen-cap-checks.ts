// What law and handbooks let of nitrogen and phosphate down at a time, in a year and on which days, as printed, against the checks of a
// mix ticket.
import { expect } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { readWateringIn } from "#domain/label/label-water";
import { checkNitrogen } from "#domain/mixing/nitrogen-checks";
import { checkPhosphate } from "#domain/mixing/phosphate-checks";
import { type PastApplication, type TicketTreatment } from "#domain/mixing/ticket-question";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { keptClearOf } from "#domain/rules/kept-clear";
import { checkNutrientLaw } from "#domain/rules/nutrient-law";
import { type RulePack } from "#domain/rules/rule-pack";
import { gradeOf } from "#domain/turf/nutrients";
import { NUTRIENTS_OF_PRODUCT_EXAMPLE, nutrientsOfProductWorksheet } from "#domain/worksheets/nutrients";
import { feeding, had, slow } from "../../support/feeds";
import { FLORIDA_RULE, MARION_COUNTY_FLORIDA, MARYLAND, SUFFOLK_COUNTY_NEW_YORK } from "../../support/law-fixtures";
import { type PublishedStatement } from "../../support/published-check";
import { LAWN, QUESTION } from "../../support/ticket";
import { worked } from "../../support/worked";

function held(pack: RulePack | undefined, treatment: TicketTreatment, history: readonly PastApplication[] = []): readonly string[] {
  const lawns = [{ ...LAWN, grasses: ["St. Augustinegrass" as const], history }];
  return checkNitrogen({ ...QUESTION, state: "MD", lawns, treatments: [treatment] }, pack).map(({ rule }) => rule);
}

const [ABOVE, QUICK, SLOW_SHARE] = ["nitrogen-above-the-law", "quick-nitrogen-above-the-law", "slow-release-share-low"];
/** The note on slow release is advice of another source. */
const ofLawAlone = (rules: readonly string[]) => rules.filter((rule) => rule !== SLOW_SHARE);

const MARYLAND_CODE = "Md. Code, Agriculture 6-224, statute text at https://lexace.ai/us/statute/maryland/AG-6-224";
const maryland = (
  [
    // 0.9 lb with 25 % slow: 0.675 lb works at once.
    ["0.9", "25", []],
    ["0.91", "25", [ABOVE]],
    // 0.875 lb with 20 % slow: 0.7 lb works at once.
    ["0.875", "20", []],
    ["0.88", "20", [QUICK]],
    ["0.5", "19.9", [SLOW_SHARE]],
    ["0.7", "0", [SLOW_SHARE]],
    ["0.71", "0", [QUICK, SLOW_SHARE]],
    ["1", "10", [ABOVE, QUICK, SLOW_SHARE]],
  ] as const
).map(([pounds, percent, expected]): PublishedStatement => ({
  row: "fertilizer.30",
  says: `Maryland, at most 0.7 lb water-soluble and 0.9 lb total nitrogen with 20 % slow: ${pounds} lb with ${percent} % of it slow: ${expected.join(", ") || "nothing"}`,
  source: MARYLAND_CODE,
  status: "seen",
  holds: () => expect(held(MARYLAND, feeding(pounds, slow(percent)))).toEqual(expected),
}));

const notStated: PublishedStatement = {
  row: "fertilizer.30",
  says: "Maryland: nitrogen whose release the label does not state counts as quick, and the share can't be decided",
  source: MARYLAND_CODE,
  status: "seen",
  holds: () => expect(held(MARYLAND, feeding("0.71", { kind: "not-stated" }))).toEqual([QUICK, "slow-release-not-stated"]),
};

const MARYLAND_SUMMARY = "https://marylandlandscaping.net/2014/02/fertilization/ (summary of Md. Code, Agriculture 8-803.5)";
const blackout = (
  [
    ["2026-11-15", false],
    ["2026-11-16", true],
    ["2026-12-31", true],
    ["2027-01-01", true],
    ["2027-02-28", true],
    ["2028-02-29", true],
    ["2027-03-01", false],
  ] as const
).map(([on, isClosed]): PublishedStatement => ({
  row: "fertilizer.36",
  says: `Maryland, no fertilizer from November 15 to March 1: ${on} is ${isClosed ? "closed" : "open"}`,
  source: MARYLAND_SUMMARY,
  status: "seen-2nd",
  holds: () => {
    const products = [{ name: "Feed", grade: gradeOf("32", "0", "0"), lawns: [] }];
    const rules = checkNutrientLaw({ state: "MD", pack: MARYLAND, on: on as CalendarDate, products, frozenOrSaturated: "no" }).map(({ rule }) => rule);
    expect(rules.includes("blackout-dates")).toBe(isClosed);
  },
}));

const distances = ([["yes", 10n], ["no", 15n]] as const).map(([deflector, feet]): PublishedStatement => ({
  row: "fertilizer.36",
  says: `Maryland: ${String(feet)} ft are kept clear of water ${deflector === "yes" ? "with" : "without"} a deflector`,
  source: MARYLAND_SUMMARY,
  status: "seen-2nd",
  holds: () => {
    const creek = { name: "the creek", length: of("ft", 40n), width: "unknown" } as const;
    const placement = { productName: "Feed", isFertilizer: true, deflector, label: "none" } as const;
    expect(keptClearOf({ name: "Back", waterBeside: "yes", waterEdges: [creek] }, placement, MARYLAND.facts["distance-to-water"]).area).toEqual(of("sq ft", 40n * feet));
  },
}));

const EP353 = "Trenholm, UF/IFAS EP353, https://edis.ifas.ufl.edu/publication/ep353";
const florida = (
  [
    ["2", "65", []],
    ["2", "64.9", [QUICK]],
    ["2.01", "66", [ABOVE]],
    ["0.7", "0", []],
    ["0.71", "0", [QUICK]],
  ] as const
).map(([pounds, percent, expected]): PublishedStatement => ({
  row: "fertilizer.31",
  says: `Florida, 0.7 lb soluble at a time and 2 lb with 65 % slow: ${pounds} lb with ${percent} %: ${expected.join(", ") || "nothing"}`,
  source: EP353,
  status: "seen",
  holds: () => expect(ofLawAlone(held(FLORIDA_RULE, feeding(pounds, slow(percent))))).toEqual(expected),
}));

const marion = (
  [
    ["1", "30", [], []],
    ["1.01", "50", [], [ABOVE]],
    ["1", "29", [], [QUICK]],
    ["1", "50", ["1", "1"], []],
    ["1", "50", ["1", "1.01"], ["nitrogen-of-the-year-above-the-law"]],
  ] as const
).map(([pounds, percent, before, expected]): PublishedStatement => ({
  row: "fertilizer.31",
  says: `Marion County, 1 lb in one application, 0.7 lb soluble, St. Augustinegrass 3 lb a year: ${pounds} lb, ${percent} % slow, after ${before.join(" and ") || "none"}: ${expected.join(", ") || "nothing"}`,
  source: "Marion County Code 19-247, an older county text of Florida's rule",
  status: "seen",
  holds: () => {
    const history = before.map((each, index) => had(feeding(each, slow("50")), `2026-0${String(index + 1)}-10`));
    expect(ofLawAlone(held(MARION_COUNTY_FLORIDA, feeding(pounds, slow(percent)), history))).toEqual(expected);
  },
}));

const PHOSPHATE_DOCUMENT = "IFAS doc via https://www.yumpu.com/en/document/view/33389138/";
const phosphate = (
  [
    ["0.25", [], []],
    ["0.26", [], ["phosphate-above-the-law"]],
    ["0.25", ["0.25"], []],
    ["0.25", ["0.25", "0.01"], ["phosphate-of-the-year-above-the-law"]],
  ] as const
).map(([pounds, before, expected]): PublishedStatement => ({
  row: "fertilizer.32",
  says: `Florida, 0.25 lb P2O5 in an application and 0.50 lb a year: ${pounds} lb after ${before.join(" and ") || "none"}: ${expected.join(", ") || "nothing"}`,
  source: PHOSPHATE_DOCUMENT,
  status: "seen",
  holds: () => {
    const starter = (poundsOfPhosphate: string) => feeding(poundsOfPhosphate, { kind: "not-stated" }, gradeOf("0", "10", "0"));
    const history = before.map((each) => had(starter(each)));
    const question = { ...QUESTION, lawns: [{ ...LAWN, history }], treatments: [starter(pounds)] };
    expect(checkPhosphate(question, MARION_COUNTY_FLORIDA).map(({ rule }) => rule)).toEqual(expected);
  },
}));

const SUFFOLK = "Cornell Coop. Ext. Suffolk, https://paperzz.com/doc/8583758/";
const advised: readonly PublishedStatement[] = [
  {
    row: "fertilizer.35",
    says: "Suffolk County: half a pound of soluble nitrogen at a time passes and more does not",
    source: SUFFOLK,
    status: "seen",
    holds: () => {
      expect(ofLawAlone(held(SUFFOLK_COUNTY_NEW_YORK, feeding("1", slow("50"))))).toEqual([]);
      expect(ofLawAlone(held(SUFFOLK_COUNTY_NEW_YORK, feeding("1", slow("49"))))).toEqual([QUICK]);
    },
  },
  {
    row: "fertilizer.35",
    says: "a quarter inch at most to water it in is read as such, and a most alone is asked for its least",
    source: SUFFOLK,
    status: "seen",
    holds: () => {
      expect(readWateringIn("0.1 to 0.25 in")).toMatchObject({ ok: true, value: { depth: { most: exactly("in", "0.25") } } });
      expect(readWateringIn("up to 0.25 in")).toMatchObject({ ok: false });
    },
  },
  {
    row: "lime-aeration.3",
    says: "where no law has a share, a granular feed with less than 30 % slow nitrogen is noted, with its source",
    source: "Penn State AASL, Home Lawn - Maintain, https://agsci.psu.edu/aasl/online-report/home-lawn-maintain",
    status: "seen",
    holds: () => {
      expect(held(undefined, feeding("0.5", slow("30")))).toEqual([]);
      expect(held(undefined, feeding("0.5", slow("29.9")))).toEqual([SLOW_SHARE]);
      const [note] = checkNitrogen({ ...QUESTION, treatments: [feeding("0.5", slow("29.9"))] }, undefined);
      expect(note).toMatchObject({ level: "note", source: "handbook", citation: expect.stringContaining("Penn State AASL") as unknown });
    },
  },
  {
    row: "fertilizer.34",
    says: "1 lb of nitrogen at once goes, more is for care, with its source",
    source: "Purdue, https://turf.purdue.edu/fertilizer-recommendations/",
    status: "seen",
    holds: () => {
      const findings = (rate: string) => worked(nutrientsOfProductWorksheet({ ...NUTRIENTS_OF_PRODUCT_EXAMPLE.typed, grade: "10-0-0", rate: `${rate} lb per 1,000 sq ft` })).findings;
      expect(findings("10")).toEqual([]);
      expect(findings("10.1")).toMatchObject([{ level: "take-care", rule: "nitrogen-in-one-application", citation: expect.stringContaining("Purdue") as unknown }]);
    },
  },
];

export const NITROGEN_CAP_CHECKS: readonly PublishedStatement[] = [...maryland, notStated, ...blackout, ...distances, ...florida, ...marion, ...phosphate, ...advised];
