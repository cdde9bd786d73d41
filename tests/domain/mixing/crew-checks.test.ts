import { expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { type RulePack } from "#domain/rules/rule-pack";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { checkLicense, checkLicenseCategory, checkSetting, checkStock } from "#domain/mixing/crew-checks";
import { type TicketApplicator, type TicketTreatment } from "#domain/mixing/ticket-question";
import { BARRIER, FEED, IRON, QUESTION, SPREADER } from "../../support/ticket";

const said = (findings: ReturnType<typeof checkStock>) => findings.map(({ level, rule }) => `${level} ${rule}`);

test("an expired license is never named on a ticket with a pesticide; a technician wants a supervisor", () => {
  const by = (license: TicketApplicator["license"], treatments: readonly TicketTreatment[]) => said(checkLicense({ name: "Rowan Ash", license }, treatments));
  expect(by({ standing: "expired" }, [BARRIER])).toEqual(["hold license-missing"]);
  expect(by({ standing: "none" }, [FEED])).toEqual(["take-care license-missing"]);
  expect(by({ standing: "none" }, [{ ...FEED, label: { ...FEED.label, epaRegistrationNumber: "unknown" } }])).toEqual(["hold license-missing"]);
  expect(by({ standing: "stands", kind: "registered-technician", number: "T-1", category: "Turf" }, [BARRIER])).toEqual(["take-care technician-under-supervision"]);
  expect(by({ standing: "stands", kind: "certified-applicator", number: "C-1", category: "Turf" }, [BARRIER])).toEqual([]);
});

test("a license for pesticides is of a category for turf; where the state's categories are not on file, that is said", () => {
  // C.R.S. 35-10, 8 CCR 1203-2: 206 is turf, 207 ornamentals.
  const pack: RulePack = { ...ILLINOIS, facts: { ...ILLINOIS.facts, "license-category": { onFile: true, value: ["206"], citation: "8 CCR 1203-2 Part 9", standing: "read" } } };
  const of = (category: string, treatment = BARRIER, rules: RulePack | undefined = pack) =>
    said(checkLicenseCategory({ name: "Rowan Ash", license: { standing: "stands", kind: "certified-applicator", number: "C-1", category } }, [treatment], "CO", rules));
  expect(of("206 Turf")).toEqual([]);
  expect(of("206")).toEqual([]);
  expect(of("207 Ornamentals")).toEqual(["hold license-category"]);
  expect(of("2061 Turf")).toEqual(["hold license-category"]);
  expect(of("")).toEqual(["hold license-category"]);
  expect(of("207 Ornamentals", FEED)).toEqual([]);
  expect(of("206 Turf", BARRIER, ILLINOIS)).toEqual(["take-care license-category-not-on-file"]);
  expect(said(checkLicenseCategory({ name: "Rowan Ash", license: { standing: "expired" } }, [BARRIER], "CO", pack))).toEqual([]);
});

test("less on hand than the visit needs holds", () => {
  expect(said(checkStock({ ...FEED, onHand: of("lb", "4.99") }, of("lb", 5n)))).toEqual(["hold stock-short"]);
  expect(said(checkStock({ ...FEED, onHand: of("lb", 5n) }, of("lb", 5n)))).toEqual([]);
});

test("what is counted by volume and planned by weight holds, in words", () => {
  expect(checkStock({ ...FEED, onHand: of("gal", 5n) }, of("lb", 5n))).toMatchObject([{ level: "hold", rule: "stock-by-another-measure", what: "Harrowgate 32 is counted by volume and planned by weight." }]);
});

// UMass Extension, Rotary Spreader Calibration: 4.75 to 5.25 is accepted for 5.00; half of the rate in each of two passes.
test.each([
  ["one-with-overlap", "4.75", []],
  ["one-with-overlap", "5.25", []],
  ["one-with-overlap", "4.74", ["note setting-of-another-rate"]],
  ["one-with-overlap", "5.26", ["note setting-of-another-rate"]],
  ["two-at-half-rate-crosswise", "2.5", []],
  ["two-at-half-rate-crosswise", "2.63", ["note setting-of-another-rate"]],
  ["two-at-half-rate-crosswise", "5", ["take-care setting-of-another-rate"]],
] as const)("%s, 5 lb planned, a setting of %s lb: %j", (granularPasses, pounds, expected) => {
  const perThousand = (value: string) => rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");
  const treatment: TicketTreatment = {
    ...FEED,
    rate: perThousand("5"),
    use: { ...FEED.use, rates: { basis: "product-mass-per-area", low: perThousand("4"), high: perThousand("6") } },
    gear: { ...SPREADER, setting: { setting: "14", rate: perThousand(pounds), words: "calibrated by Rowan Ash", basis: "calibration" } },
  };
  expect(said(checkSetting(treatment, { ...QUESTION.settings, granularPasses }))).toEqual(expected);
});

test("a setting above the label's highest wants care, however near it is to the plan", () => {
  const perThousand = (value: string) => rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");
  const checked = (pounds: string) =>
    checkSetting({ ...FEED, rate: perThousand("3"), gear: { ...SPREADER, setting: { setting: "15", rate: perThousand(pounds), words: "calibrated by Rowan Ash", basis: "calibration" } } }, { ...QUESTION.settings, granularPasses: "two-at-half-rate-crosswise" });
  // The label of the feed allows 3 lb.
  expect(checked("1.57")).toMatchObject([
    {
      level: "take-care",
      rule: "setting-of-another-rate",
      what: "Setting 15 of Spreader puts down more of Harrowgate 32 than its label's highest rate.",
      figure: "It puts down 3.14 lb per 1,000 sq ft in its two passes; the label's highest is 3 lb per 1,000 sq ft, and planned is 3 lb per 1,000 sq ft.",
    },
  ]);
  expect(checked("1.5001")[0]?.figure).toBe("It puts down 3.0002 lb per 1,000 sq ft in its two passes; the label's highest is 3 lb per 1,000 sq ft, and planned is 3 lb per 1,000 sq ft.");
  expect(checked("1.5")).toEqual([]);
  expect(checked("1.43")).toEqual([]);
});

test("by the bag it says so; what several tests leave open wants care, near the rate or not", () => {
  const setting = { setting: "14", rate: rateOf("product-mass-per-area", "2", "lb per 1,000 sq ft"), words: "nominal by the bag", basis: "nominal" } as const;
  const checked = (more: object) => checkSetting({ ...FEED, gear: { ...SPREADER, setting: { ...setting, ...more } } }, { ...QUESTION.settings, granularPasses: "one-with-overlap" });
  expect(checked({})).toMatchObject([{ rule: "setting-of-another-rate", what: "By the bag, setting 14 of Spreader puts down another rate of Harrowgate 32." }]);
  const beyond = { rule: "setting-beyond-tests", sentence: "Tested from 1 to 2 only." };
  expect(checked({ basis: "calibration", doubt: beyond })).toMatchObject([
    { level: "take-care", rule: "setting-beyond-tests", figure: "Tested from 1 to 2 only.", toDo: "Until then weigh out what each lawn gets; beyond the tests nothing is guessed." },
    { level: "note", rule: "setting-of-another-rate" },
  ]);
  const disagree = { rule: "setting-tests-disagree", sentence: "Test both again." };
  expect(said(checked({ rate: FEED.rate, doubt: disagree }))).toEqual(["take-care setting-tests-disagree"]);
});

test("a spreader that is not calibrated, and a sprayer, have no setting to compare", () => {
  expect(checkSetting({ ...FEED, gear: { ...SPREADER, setting: "not-calibrated" } }, QUESTION.settings)).toEqual([]);
  expect(checkSetting(IRON, QUESTION.settings)).toEqual([]);
});
