import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { missingFact } from "#domain/foundation/outcome";
import { gradeOf } from "#domain/turf/nutrients";
import { nutrientRatesOf } from "#domain/mixing/delivered";
import { countedAsQuick, wholeNitrogen } from "#domain/mixing/year-nitrogen";
import { rateOf } from "#domain/quantities/rate";
import { conclusionOfYear, LEDGER_NUTRIENTS, LEDGER_STANDINGS, lawnLedger, type LawnLedger, type LedgerEntry, type LedgerNutrient, type LedgerQuestion, poundsPerThousand } from "#domain/scheduling/nutrient-ledger";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { day } from "../../support/domain-answers";
import { MARION_COUNTY_FLORIDA } from "../../support/law-fixtures";
import { BARRIER_LABEL, FEED_LABEL, IRON_LABEL } from "../../support/ticket";

const pounds = (value: string) => rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");
let counter = 0;
function entry(on: string, value: string, standing: LedgerEntry["standing"] = "put-down", label = FEED_LABEL): LedgerEntry {
  counter += 1;
  return { id: String(counter), on: day(on), productName: label.productName, standing, brought: nutrientRatesOf(label, pounds(value)) };
}
const QUESTION: LedgerQuestion = { year: 2026, state: "IL", pack: ILLINOIS, grasses: ["tall fescue"], entries: [] };
const ledgerOf = (entries: readonly LedgerEntry[], more: Partial<LedgerQuestion> = {}) => lawnLedger({ ...QUESTION, ...more, entries });
function yearOf(ledger: LawnLedger, nutrient: LedgerNutrient) {
  const found = ledger.nutrients.find((year) => year.nutrient === nutrient);
  if (found === undefined) throw new Error("Every nutrient has its year.");
  return found;
}
const sentence = (entries: readonly LedgerEntry[], more: Partial<LedgerQuestion> = {}) => {
  const ledger = ledgerOf(entries, more);
  return conclusionOfYear(yearOf(ledger, "nitrogen"), ledger.missing);
};
const UNREAD: LedgerEntry = { id: "unread", on: day("2026-05-01"), productName: "Otherwise 5", standing: "put-down", brought: missingFact("analysis", "a grade", "The analysis of Otherwise 5 is not on file.") };

describe("the sums of a year", () => {
  test("put down, this visit and planned are kept apart, quick from slow, and not stated from both", () => {
    // 2.5 lb of 32 % (half slow) is 0.4 and 0.4; 3 lb of 19 % that states no release is 0.57.
    const { sums, parts } = yearOf(ledgerOf([entry("2026-03-01", "2.5"), entry("2026-04-14", "2.5", "this-visit"), entry("2026-06-01", "3", "planned", BARRIER_LABEL)]), "nitrogen");
    const figures = LEDGER_STANDINGS.map((standing) => [sums[standing].quick, sums[standing].slow, sums[standing].notStated].map((rate) => Number(poundsPerThousand(rate).toFixed(9))));
    expect(figures).toEqual([[0.4, 0.4, 0], [0.4, 0.4, 0], [0, 0, 0.57]]);
    expect(parts.map(({ standing }) => standing)).toEqual(["put-down", "this-visit", "planned"]);
  });

  test("what no label states counts as quick", () => {
    const { sums } = yearOf(ledgerOf([entry("2026-03-01", "3", "put-down", BARRIER_LABEL)]), "nitrogen");
    expect(poundsPerThousand(countedAsQuick(sums["put-down"]))).toBeCloseTo(0.57, 12);
  });

  test("the calendar year alone, in order of time", () => {
    const { parts } = yearOf(ledgerOf([entry("2026-12-31", "1"), entry("2025-12-31", "1"), entry("2026-01-01", "1"), entry("2027-01-01", "1")]), "nitrogen");
    expect(parts.map(({ on }) => on)).toEqual(["2026-01-01", "2026-12-31"]);
  });

  test("the other nutrients as labels count them; iron that a label does not name is none", () => {
    const starter = { ...FEED_LABEL, analysis: { grade: gradeOf("18", "24", "6"), release: { kind: "not-stated" } } } as const;
    const ledger = ledgerOf([entry("2026-03-01", "4", "put-down", starter), { ...entry("2026-04-01", "1"), brought: nutrientRatesOf(IRON_LABEL, rateOf("product-volume-per-area", "128", "fl oz per 1,000 sq ft")) }]);
    const whole = (nutrient: LedgerNutrient) => poundsPerThousand(wholeNitrogen(yearOf(ledger, nutrient).sums["put-down"]));
    expect(LEDGER_NUTRIENTS.map((nutrient) => Number(whole(nutrient).toFixed(9)))).toEqual([0.72 + 0.66, 0.96, 0.24, 1.1]);
    expect(yearOf(ledger, "iron").parts).toHaveLength(1);
    expect(yearOf(ledger, "phosphate")).toMatchObject({ limit: { kind: "not-on-file" }, ranges: [] });
    expect(yearOf(ledger, "potash")).toMatchObject({ limit: { kind: "not-kept" }, ranges: [] });
  });

  test("parts add up to the sums, whatever is put in", () => {
    const drawn = fc.record({ month: fc.integer({ min: 1, max: 12 }), tenths: fc.bigInt(0n, 60n), standing: fc.constantFrom(...LEDGER_STANDINGS), label: fc.constantFrom(FEED_LABEL, BARRIER_LABEL) });
    fc.assert(
      fc.property(fc.array(drawn, { maxLength: 12 }), (list) => {
        const entries = list.map(({ month, tenths, standing, label }): LedgerEntry => ({
          ...entry(`2026-${String(month).padStart(2, "0")}-10`, "1", standing, label),
          brought: nutrientRatesOf(label, rateOf("product-mass-per-area", { numerator: tenths, denominator: 10n }, "lb per 1,000 sq ft")),
        }));
        const { parts, sums } = yearOf(ledgerOf(entries), "nitrogen");
        const whole = LEDGER_STANDINGS.reduce((sum, standing) => sum + poundsPerThousand(wholeNitrogen(sums[standing])), 0);
        expect(parts.reduce((sum, { amount }) => sum + poundsPerThousand(wholeNitrogen(amount)), 0)).toBeCloseTo(whole, 9);
        const expected = list.reduce((sum, { tenths, label }) => sum + (Number(tenths) / 10) * (label === FEED_LABEL ? 0.32 : 0.19), 0);
        expect(whole).toBeCloseTo(expected, 9);
      }),
      { seed: 20_261_126 },
    );
  });

  test("what can't be counted is named once, and stands in no part", () => {
    const ledger = ledgerOf([UNREAD, { ...UNREAD, id: "again" }, entry("2026-03-01", "2.5")]);
    expect(ledger.missing).toEqual(["The analysis of Otherwise 5 is not on file."]);
    expect(yearOf(ledger, "nitrogen").parts).toHaveLength(1);
    expect(ledgerOf([{ ...UNREAD, on: day("2025-05-01") }]).missing).toEqual([]);
  });
});

describe("what the year stands beside", () => {
  test("the one range published for the main grass in the state, and the words for several or none", () => {
    expect(yearOf(ledgerOf([]), "nitrogen").ranges.map(({ region }) => region)).toEqual(["Illinois"]);
    expect(ledgerOf([]).rangeWords).toBe("Published for tall fescue: 2 to 4 lb in Illinois (University of Illinois, 1995).");
    expect(ledgerOf([], { state: "FL", grasses: ["bermudagrass"] }).rangeWords).toContain("3 to 5 lb in north Florida (UF/IFAS EP221, table 2); 4 to 6 lb in central Florida");
    expect(ledgerOf([], { state: "IN" }).rangeWords).toBe(
      "No yearly nitrogen range of tall fescue in Indiana is on file; published elsewhere: 2.5 to 3 lb in central North Carolina, 2 to 3.5 lb in Virginia, 2 to 4 lb in Illinois, about 2 lb in Pennsylvania.",
    );
    expect(ledgerOf([], { state: "PA" }).rangeWords).toBe("Published for tall fescue: about 2 lb in Pennsylvania (Penn State (Landschoot), Feast or Famine Fertility: about 2, said of fescues).");
    expect(ledgerOf([], { grasses: ["buffalograss"] }).rangeWords).toBe("No yearly nitrogen range of buffalograss is on file.");
    expect(ledgerOf([], { grasses: [] }).rangeWords).toContain("The grass is not on file");
  });

  test("a law that nobody has read says so, and one on file stands with its citation", () => {
    expect(yearOf(ledgerOf([]), "nitrogen").limit).toEqual({ kind: "not-on-file", words: "The most nitrogen that the law of Illinois lets down in a year is not on file, look it up." });
    expect(yearOf(ledgerOf([], { state: "OH", pack: undefined }), "nitrogen").limit.kind).toBe("not-on-file");
    expect(yearOf(ledgerOf([]), "phosphate").limit).toEqual({ kind: "not-on-file", words: "The most phosphate that the law of Illinois lets down in a year is not on file, look it up." });
    const phosphateOfMarion = yearOf(ledgerOf([], { state: "FL", pack: MARION_COUNTY_FLORIDA }), "phosphate").limit;
    expect(phosphateOfMarion.kind === "law" && poundsPerThousand(phosphateOfMarion.most)).toBe(0.5);
    expect(yearOf(ledgerOf([], { state: "FL", pack: MARION_COUNTY_FLORIDA }), "nitrogen").limit).toMatchObject({ kind: "law", citation: "Marion County Code 19-247" });
  });
});

describe("the sentence", () => {
  const spring = entry("2026-03-01", "2.5");
  const visit = entry("2026-04-14", "2.5", "this-visit");
  const ahead = entry("2026-06-01", "2.5", "planned");

  test("beside the law's most", () => {
    const law = { state: "FL", pack: MARION_COUNTY_FLORIDA, grasses: ["St. Augustinegrass"] } as const;
    expect(sentence([spring, visit, ahead], law)).toBe("0.80 of at most 3.00 lb N per 1,000 sq ft; 1.60 after this visit; 2.40 with what is planned.");
    expect(sentence([spring], law)).toBe("0.80 of at most 3.00 lb N per 1,000 sq ft.");
  });

  test.each([
    ["2.5", "less than"],
    ["6.25", "within"],
    ["12.5", "within"],
    ["12.6", "more than"],
  ])("%s lb of a 32 %% feed is %s the published range", (value, words) => {
    expect(sentence([entry("2026-03-01", value)])).toMatch(new RegExp(`put down, ${words} the 2 to 4 published for tall fescue in Illinois\\.$`, "u"));
  });

  test("a single published figure is about so much, and what lies near it is neither more nor less", () => {
    const urea = { ...FEED_LABEL, analysis: { grade: gradeOf("46", "0", "0"), release: { kind: "not-stated" } } } as const;
    const times = (value: string, count: number, more: Partial<LedgerQuestion>) => sentence(Array.from({ length: count }, (_unused, index) => entry(`2026-0${String(index + 3)}-01`, value, "put-down", urea)), more);
    // 3 × 1.45 lb × 46% = 2.001 lb; 2 × 2.17 lb × 46% = 1.9964 lb; 4 × 2.174 lb × 46% = 4.00016 lb.
    expect(times("1.45", 3, { state: "PA" })).toBe("2.00 lb N per 1,000 sq ft put down, about 2, as published for tall fescue in Pennsylvania.");
    expect(times("2.17", 2, { state: "PA", grasses: ["fine fescue"] })).toBe("2.00 lb N per 1,000 sq ft put down, about 2, as published for fine fescue in Pennsylvania.");
    expect(times("2.174", 4, { state: "NC", grasses: ["bermudagrass"] })).toBe("4.00 lb N per 1,000 sq ft put down, about 4, as published for bermudagrass in central North Carolina.");
    expect(times("2.4", 2, { state: "PA" })).toBe("2.21 lb N per 1,000 sq ft put down, more than about 2, as published for tall fescue in Pennsylvania.");
    expect(times("1.95", 2, { state: "PA" })).toBe("1.79 lb N per 1,000 sq ft put down, less than about 2, as published for tall fescue in Pennsylvania.");
  });

  test("no figure reads like an end of the range or a law's most that it is not", () => {
    // 12.505 lb of 32% are 4.0016 lb; 9.38 lb are 3.0016 lb.
    expect(sentence([entry("2026-03-01", "12.505")])).toBe("4.002 lb N per 1,000 sq ft put down, more than the 2 to 4 published for tall fescue in Illinois.");
    expect(sentence([entry("2026-03-01", "9.38")], { state: "FL", pack: MARION_COUNTY_FLORIDA, grasses: ["St. Augustinegrass"] })).toBe("3.002 of at most 3.00 lb N per 1,000 sq ft.");
  });

  test("with something missing it is a lowest figure and no verdict", () => {
    expect(sentence([entry("2026-03-01", "6.25"), UNREAD])).toBe("At least 2.00 lb N per 1,000 sq ft put down, beside the 2 to 4 published for tall fescue in Illinois.");
  });

  test("nothing is nothing", () => {
    expect(sentence([], { state: "IN" })).toBe("0.00 lb N per 1,000 sq ft put down.");
  });
});
