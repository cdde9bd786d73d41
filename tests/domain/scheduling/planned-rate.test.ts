import { expect, test } from "vitest";
import { type LabelRates } from "#domain/label/label-facts";
import { densityOf } from "#domain/quantities/density";
import { rateIn, rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { labelRangeWords, type NitrogenFacts, plannedNitrogen, rateStanding, readPlannedRate } from "#domain/scheduling/planned-rate";
import { gradeOf } from "#domain/turf/nutrients";

const PER_THOUSAND = "lb per 1,000 sq ft";
const pounds = (value: string) => rateOf("product-mass-per-area", value, PER_THOUSAND);
const ounces = (value: string) => rateOf("product-volume-per-area", value, "fl oz per 1,000 sq ft");
const FEED: LabelRates = { basis: "product-mass-per-area", low: pounds("2"), high: pounds("3") };
const LIQUID: LabelRates = { basis: "product-volume-per-area", low: ounces("1"), high: ounces("1.5") };

test("the ends of the label's range belong to it, and a hair beyond is beyond", () => {
  expect(rateStanding(pounds("2"), FEED)).toBe("within");
  expect(rateStanding(pounds("3"), FEED)).toBe("within");
  expect(rateStanding(pounds("1.9999"), FEED)).toBe("below-lowest");
  expect(rateStanding(pounds("3.0001"), FEED)).toBe("above-highest");
  expect(rateStanding(ounces("1"), FEED)).toBe("another-basis");
});

test("a rate is kept as it was typed, and one below the lowest says so", () => {
  expect(readPlannedRate("rate", " 2.5 lb/1,000 sq ft ", FEED)).toEqual({ ok: true, value: { typed: "2.5 lb/1,000 sq ft", rate: pounds("2.5"), standing: "within" } });
  expect(readPlannedRate("rate", "1 lb/1,000", FEED)).toMatchObject({ ok: true, value: { standing: "below-lowest" } });
  expect(readPlannedRate("rate", "1.5 fl oz per 1,000 sq ft", LIQUID)).toMatchObject({ ok: true, value: { standing: "within" } });
});

test("above the label's highest it is refused with both figures", () => {
  const answer = readPlannedRate("rate", "3.5 lb/1,000 sq ft", FEED);
  expect(answer).toMatchObject({ ok: false, refusal: { field: "rate", allowed: "2 to 3 lb per 1,000 sq ft" } });
  expect(answer.ok ? "" : answer.refusal.sentence).toMatch(/^3½ lb per 1,000 sq ft is above the label's highest rate, 3 lb per 1,000 sq ft\./);
});

test("nothing typed is never a middle of the range, and neither is a rate of nothing or of the other measure", () => {
  expect(readPlannedRate("rate", "  ", FEED)).toMatchObject({ ok: false, refusal: { kind: "missing-fact", sentence: "Choose a rate. The label's range is 2 to 3 lb per 1,000 sq ft." } });
  for (const text of ["0 lb/1,000 sq ft", "2 fl oz/1,000 sq ft", "2.5", "plenty"]) expect(readPlannedRate("rate", text, FEED), text).toMatchObject({ ok: false });
  expect(readPlannedRate("rate", "2 lb/1,000 sq ft", LIQUID)).toMatchObject({ ok: false });
});

test("a range is said once where both ends are the same, and with both units where they differ", () => {
  expect(labelRangeWords(FEED)).toBe("2 to 3 lb per 1,000 sq ft");
  expect(labelRangeWords({ ...FEED, low: pounds("3") })).toBe("3 lb per 1,000 sq ft");
  expect(labelRangeWords({ ...FEED, low: pounds("0.5") })).toBe("8 oz wt per 1,000 sq ft to 3 lb per 1,000 sq ft");
});

test("a label per acre is shown rounded inward with its own words beside it, and what is shown may be typed", () => {
  const pints = (value: string) => rateOf("product-volume-per-area", value, "pt per acre");
  const perAcre: LabelRates = { basis: "product-volume-per-area", low: pints("1"), high: pints("2") };
  expect(labelRangeWords(perAcre)).toBe("0.368 to 0.734 fl oz per 1,000 sq ft (1 to 2 pt per acre)");
  for (const shown of ["0.368 fl oz/1,000 sq ft", "0.734 fl oz/1,000 sq ft", "1 pt/acre", "2 pt/acre"]) expect(readPlannedRate("rate", shown, perAcre), shown).toMatchObject({ ok: true, value: { standing: "within" } });
  expect(readPlannedRate("rate", "0.735 fl oz/1,000 sq ft", perAcre).ok).toBe(false);
});

const feed = (given: Partial<NitrogenFacts> = {}): NitrogenFacts => ({
  productName: "Greenmere",
  analysis: { grade: gradeOf("32", "0", "10"), release: { kind: "not-stated" } },
  density: "unknown",
  ...given,
});

function nitrogen(answer: ReturnType<typeof plannedNitrogen>): number {
  if (!answer.ok) throw new Error(answer.refusal.sentence);
  return toNumber(rateIn(answer.value.nitrogen, PER_THOUSAND));
}

test("a feed brings its percent of nitrogen", () => {
  expect(nitrogen(plannedNitrogen(pounds("2.5"), feed()))).toBe(0.8);
});

test("what of it is slow is said where the label states it", () => {
  const slow = feed({ analysis: { grade: gradeOf("32", "0", "10"), release: { kind: "slow-percent-of-nitrogen", percent: { numerator: 25n, denominator: 1n } } } });
  expect(plannedNitrogen(pounds("2.5"), slow)).toMatchObject({ ok: true, value: { slow: rateOf("nutrient-mass-per-area", "0.2", PER_THOUSAND) } });
  expect(plannedNitrogen(pounds("2.5"), feed())).toMatchObject({ ok: true, value: { slow: "not-stated" } });
});

test("a product without an analysis, or without nitrogen in it, brings none, by volume too", () => {
  expect(nitrogen(plannedNitrogen(pounds("2.5"), feed({ analysis: "none" })))).toBe(0);
  expect(nitrogen(plannedNitrogen(ounces("6"), feed({ analysis: { grade: gradeOf("0", "0", "0", "6"), release: { kind: "not-stated" } } })))).toBe(0);
});

test("what is not read is refused by name: the analysis, and a liquid's density", () => {
  expect(plannedNitrogen(pounds("2.5"), feed({ analysis: "unknown" }))).toMatchObject({ ok: false, refusal: { kind: "missing-fact", field: "analysis" } });
  expect(plannedNitrogen(ounces("6"), feed())).toMatchObject({ ok: false, refusal: { kind: "missing-fact", field: "density" } });
  // 1 gal of 10 lb with 32% is 3.2 lb.
  expect(nitrogen(plannedNitrogen(ounces("128"), feed({ density: densityOf("10", "lb per gal") })))).toBeCloseTo(3.2, 12);
});

test("a strength is planned in the label's own measure, said in percent too, and brings nothing that is known before the sprayer is", () => {
  const perGallon = (value: string) => rateOf("product-volume-per-spray-volume", value, "fl oz per gal");
  const strengths: LabelRates = { basis: "product-volume-per-spray-volume", low: perGallon("1.28"), high: perGallon("2.56") };
  expect(labelRangeWords(strengths)).toBe("1.28 to 2.56 fl oz per gal, 1% v/v to 2% v/v");
  expect(readPlannedRate("rate", "2 % v/v", strengths)).toMatchObject({ ok: true, value: { rate: perGallon("2.56"), standing: "within" } });
  expect(readPlannedRate("rate", "1.5 fl oz per 1,000 sq ft", strengths).ok).toBe(false);
  expect(readPlannedRate("rate", "3 fl oz/gal", strengths)).toMatchObject({ refusal: { sentence: expect.stringMatching(/above the label's highest rate, 2.56 fl oz per gal/u) as unknown } });
  const facts: NitrogenFacts = { productName: "Iron", analysis: { grade: gradeOf("6", "0", "0"), release: { kind: "not-stated" } }, density: densityOf("11", "lb per gal") };
  expect(plannedNitrogen(perGallon("2"), facts)).toMatchObject({ ok: false, refusal: { field: "rate" } });
});

test("spots count over the whole lawn", () => {
  const facts: NitrogenFacts = { productName: "Feed", analysis: { grade: gradeOf("32", "0", "0"), release: { kind: "not-stated" } }, density: "unknown" };
  const brought = plannedNitrogen(pounds("2.5"), facts, 500);
  expect(brought.ok && toNumber(rateIn(brought.value.nitrogen, PER_THOUSAND))).toBeCloseTo(0.04, 12);
});
