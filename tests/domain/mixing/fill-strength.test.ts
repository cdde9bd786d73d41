import { describe, expect, test } from "vitest";
import { type SprayRates } from "#domain/label/label-facts";
import { fillStrengthFindings, type MixPlanned, type ProductFilled } from "#domain/mixing/fill-strength";
import { type ProductAmount, type SprayTreatment } from "#domain/mixing/spray-mix";
import { ticketRate } from "#domain/mixing/stated-rate";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { percentByVolume, rateOf } from "#domain/quantities/rate";
import { IRON, IRON_LABEL, SPRAYER } from "../../support/ticket";

const perGallon = (value: string) => rateOf("product-volume-per-spray-volume", value, "fl oz per gal");
const perThousand = (value: string) => rateOf("product-volume-per-area", value, "fl oz per 1,000 sq ft");
const ounces = (value: string) => of("fl oz", value);

/** 1 to 2 fl oz per 1,000 sq ft, planned at 1.5 with 1.5 gal of spray: 1 fl oz in a gallon. */
const TREATMENT: SprayTreatment = { ...IRON, gear: SPRAYER };
const planned = (concentration = "1", treatment = TREATMENT, productId = "iron"): MixPlanned => [{ productId, concentration: perGallon(concentration), treatment }];
const filled = (amount: ProductAmount, change: Partial<ProductFilled> = {}): ProductFilled => ({ productId: "iron", productName: "Rustwater Iron", amount, label: IRON_LABEL, ...change });
const gallons = (value: string, mark = "0.1") => ({ finished: of("gal", value), mark: exactly("gal", mark) });
const findings = (amount: ProductAmount, mixes: readonly MixPlanned[] = [planned()]) => fillStrengthFindings(gallons("50"), [filled(amount)], mixes);

/** The label's strengths in place of its rates over ground. */
const BY_STRENGTH: SprayRates = { basis: "product-volume-per-spray-volume", low: perGallon("1"), high: perGallon("2") };

function byStrength(strength: string, mostOnArea?: string): SprayTreatment {
  const beside = mostOnArea === undefined ? {} : { besideRates: { mostOnArea: perThousand(mostOnArea) } };
  const stated = ticketRate(perGallon(strength), { ...IRON.use, rates: BY_STRENGTH, ...beside }, SPRAYER);
  if (stated === undefined) throw new Error("a sprayer puts out spray");
  return { ...TREATMENT, ...stated };
}

describe("beside the plan", () => {
  test("up to a tenth off either way is nothing to say, more is care with both strengths", () => {
    expect([...findings(ounces("50")), ...findings(ounces("55")), ...findings(ounces("45"))]).toEqual([]);
    expect(findings(ounces("55.1"))).toMatchObject([{ level: "take-care", rule: "fill-strength-not-as-planned", source: "house", what: "Rustwater Iron is stronger in this fill than planned.", figure: "It came to 1.1 fl oz per gal; the plan is 1 fl oz per gal." }]);
    expect(findings(ounces("25"))).toMatchObject([{ what: "Rustwater Iron is weaker in this fill than planned.", figure: "It came to ½ fl oz per gal; the plan is 1 fl oz per gal." }]);
  });

  test("what went in ten times too strong is said beside the plan and the label", () => {
    expect(findings(ounces("500"))).toMatchObject([
      { rule: "fill-strength-not-as-planned", figure: "It came to 10 fl oz per gal; the plan is 1 fl oz per gal." },
      { level: "hold", rule: "fill-above-label", source: "label", figure: "Sprayed at 1½ gal per 1,000 sq ft it comes to 15 fl oz per 1,000 sq ft; the label's highest is 2 fl oz per 1,000 sq ft.", citation: "label of Rustwater Iron, Lawns" },
    ]);
  });

  test("of several planned strengths the nearest is meant", () => {
    expect(findings(ounces("60"), [planned("1"), planned("1.3")])).toEqual([]);
    expect(findings(ounces("80"), [planned("1.3"), planned("1")])).toMatchObject([{ figure: "It came to 1.6 fl oz per gal; the plan is 1.3 fl oz per gal." }, { rule: "fill-above-label" }]);
  });

  test("of a visit's two mixes that one counts whose products went in", () => {
    const other = [...planned("1"), ...planned("0.5", TREATMENT, "soap")];
    expect(findings(ounces("50"), [other, planned("1")])).toEqual([]);
    expect(findings(ounces("50"), [other])).toMatchObject([{ rule: "planned-product-not-in-fill", source: "house" }]);
  });

  test("what is in no plan of the visits is said", () => {
    const soap = filled(ounces("4"), { productId: "soap", productName: "Soap", label: "unknown" });
    expect(fillStrengthFindings(gallons("50"), [filled(ounces("50")), soap], [planned()])).toMatchObject([{ level: "take-care", rule: "fill-product-not-planned", about: ["Soap"] }]);
  });
});

describe("beside the label", () => {
  // 2 fl oz per 1,000 sq ft at 1.5 gal is four thirds of an ounce in a gallon: 66 2/3 in 50 gal, 68 in 51.
  const rulesOf = (amount: string, finished = gallons("50")) => fillStrengthFindings(finished, [filled(ounces(amount))], [planned("1.33")]).map(({ level, rule }) => `${level} ${rule}`);

  test("exactly the highest is within it, up to 2 % more is a note, the least beyond that is above", () => {
    expect(rulesOf("66.6666")).toEqual([]);
    expect([...rulesOf("66.667"), ...rulesOf("68")]).toEqual(["note fill-at-label-limit", "note fill-at-label-limit"]);
    expect(rulesOf("68.001")).toEqual(["hold fill-above-label"]);
  });

  test("a gauge that reads coarsely may be a mark off before and one after", () => {
    expect(rulesOf("69.333", gallons("50", "1"))).toEqual(["note fill-at-label-limit"]);
    expect(rulesOf("69.334", gallons("50", "1"))).toEqual(["hold fill-above-label"]);
  });

  test("a label of one rate allows what its plan has, as it was read and as it was typed", () => {
    const high = perThousand("1.5");
    const oneRate: SprayTreatment = { ...TREATMENT, use: { ...IRON.use, rates: { basis: "product-volume-per-area", low: high, high } } };
    expect(fillStrengthFindings(gallons("50.93"), [filled(ounces("51"))], [planned("1", oneRate)])).toMatchObject([
      { level: "note", rule: "fill-at-label-limit", source: "label", figure: "Sprayed at 1½ gal per 1,000 sq ft it comes to 1.502 fl oz per 1,000 sq ft; the label's highest is 1½ fl oz per 1,000 sq ft.", citation: "label of Rustwater Iron, Lawns" },
    ]);
    const quarter = percentByVolume("0.25");
    const stated = ticketRate(quarter, { ...IRON.use, rates: { basis: "product-volume-per-spray-volume", low: quarter, high: quarter } }, SPRAYER);
    if (stated === undefined) throw new Error("a sprayer puts out spray");
    expect(fillStrengthFindings(gallons("33.4"), [filled(ounces("10.69"))], [planned("0.32", { ...TREATMENT, ...stated })])).toMatchObject([{ level: "note", rule: "fill-at-label-limit" }]);
  });

  test("of several limits the one that is surely passed is said", () => {
    expect(findings(ounces("101"), [planned("2", byStrength("2", "2.9"))])).toMatchObject([{ level: "hold", figure: expect.stringMatching(/2\.9 fl oz per 1,000 sq ft\.$/u) as string }]);
  });

  test("a label by strength is held against the strength, and against its most over ground", () => {
    expect(findings(ounces("103"), [planned("2", byStrength("2"))])).toMatchObject([{ rule: "fill-above-label", figure: "It comes to 2.06 fl oz per gal; the label's highest is 2 fl oz per gal." }]);
    expect(findings(ounces("99"), [planned("2", byStrength("2", "2.9"))])).toMatchObject([{ figure: "Sprayed at 1½ gal per 1,000 sq ft it comes to 2.97 fl oz per 1,000 sq ft; the label's highest is 2.9 fl oz per 1,000 sq ft." }]);
  });
});

describe("without a plan", () => {
  const [use] = IRON_LABEL.uses;
  if (use === undefined) throw new Error("the label has a use");
  const unplanned = (amount: ProductAmount, change: Partial<ProductFilled> = {}) => fillStrengthFindings(gallons("50"), [filled(amount, change)], []);

  test("a rate over ground says nothing of a tank, and that is said", () => {
    expect(unplanned(ounces("500"))).toMatchObject([{ level: "note", rule: "fill-strength-not-checked", what: "How strong Rustwater Iron may be in this fill is not on file.", about: ["Rustwater Iron"] }]);
    expect(unplanned(ounces("500"), { label: "unknown" })).toMatchObject([{ rule: "fill-strength-not-checked" }]);
  });

  test("what no use of the label allows is above it", () => {
    const label = { ...IRON_LABEL, uses: [{ ...use, rates: BY_STRENGTH }, { ...use, useName: "Drench", rates: { ...BY_STRENGTH, high: perGallon("4") } }] };
    expect(unplanned(ounces("200"), { label })).toEqual([]);
    expect(unplanned(ounces("201"), { label })).toMatchObject([{ level: "note", rule: "fill-at-label-limit", figure: "It comes to 4.02 fl oz per gal; the label's highest is 4 fl oz per gal." }]);
    expect(unplanned(ounces("205"), { label })).toMatchObject([{ level: "hold", rule: "fill-above-label", figure: "It comes to 4.1 fl oz per gal; the label's highest is 4 fl oz per gal.", citation: "label of Rustwater Iron, Drench" }]);
    expect(unplanned(ounces("500"), { label: { ...label, uses: [...label.uses, use] } })).toMatchObject([{ rule: "fill-strength-not-checked" }]);
    expect(unplanned(of("oz wt", "500"), { label })).toMatchObject([{ rule: "fill-strength-not-checked" }]);
  });
});

test("planned by another measure than it was counted by, nothing says how strong it should be", () => {
  expect(findings(of("oz wt", "50"))).toMatchObject([{ rule: "fill-strength-not-checked" }]);
});
