import { expect, test } from "vitest";
import { type LabelFacts } from "#domain/label/label-facts";
import { massInVolume, percentByWeight } from "#domain/quantities/active-ingredient";
import { densityOf } from "#domain/quantities/density";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { pastIngredients, recordedRate } from "#domain/register/past-ingredients";
import { type RecordedLawnAmount, type RecordedTreatment } from "#domain/register/record-content";
import { FEED_TREATMENT } from "../../support/recorded";
import { BARRIER_LABEL, FEED_LABEL, IRON_LABEL } from "../../support/ticket";

const [front] = FEED_TREATMENT.lawns;
if (front === undefined) throw new Error("The record of a test has a lawn.");
const perAcre = (pounds: string) => rateOf("active-ingredient-mass-per-area", pounds, "lb per acre");
const recorded = (more: Partial<RecordedTreatment>, lawn: Partial<RecordedLawnAmount> = {}, facts?: LabelFacts) => pastIngredients({ ...FEED_TREATMENT, ...more }, { ...front, ...lawn }, facts);
const kept = perAcre("0.5");
const counted = { activeIngredients: [{ name: "velodiamine", amount: String(kept.amount), per: String(kept.per) }] };
// 2 lb per 1,000 sq ft of 0.37 % is 0.0074 lb, 0.32234 lb per acre.
const AMOUNT = { amount: { dimension: "mass", amount: String(of("lb", 4n).amount), words: "4 lb" }, treatedArea: { dimension: "area", amount: String(of("sq ft", 2000n).amount), words: "2,000 sq ft" } } as const;

test("what a record counted is its own, whatever the label says now; the group is the label's", () => {
  expect(recorded({ activeIngredients: ["velodiamine"], notCountable: [] }, counted, BARRIER_LABEL)).toEqual([{ name: "velodiamine", rate: kept, modeOfAction: { group: "Group 3" } }]);
  expect(recorded({ activeIngredients: ["velodiamine"], notCountable: [] }, counted)).toEqual([{ name: "velodiamine", rate: kept, modeOfAction: "unknown" }]);
  expect(recorded({ activeIngredients: ["velodiamine"] }, counted, { ...FEED_LABEL, activeIngredients: "unknown" })).toEqual([{ name: "velodiamine", rate: kept, modeOfAction: "unknown" }]);
});

test("what it comes to as its acid is the label's too, by what the record has the lawn get", () => {
  const acid = { name: "velodiac", equivalent: percentByWeight("0.185") };
  const label: LabelFacts = { ...BARRIER_LABEL, activeIngredients: BARRIER_LABEL.activeIngredients === "unknown" ? [] : BARRIER_LABEL.activeIngredients.map((active) => ({ ...active, acid })) };
  const ofAcid = { name: "velodiac", rate: perAcre("0.161172") };
  expect(recorded({ activeIngredients: ["velodiamine"], notCountable: [] }, { ...counted, ...AMOUNT }, label)).toMatchObject([{ rate: kept, acid: ofAcid }]);
  expect(recorded({ notCountable: "not-read" }, AMOUNT, label)).toMatchObject([{ rate: perAcre("0.322344"), acid: ofAcid }]);
});

test("what nobody had read is counted by the label that is on file since, and unknown until then", () => {
  expect(recorded({ notCountable: "not-read" }, AMOUNT)).toBe("unknown");
  expect(recorded({ notCountable: "not-read" }, AMOUNT, { ...BARRIER_LABEL, activeIngredients: "unknown" })).toBe("unknown");
  expect(recorded({ notCountable: "not-read" }, AMOUNT, BARRIER_LABEL)).toEqual([{ name: "velodiamine", rate: perAcre("0.322344"), modeOfAction: { group: "Group 3" } }]);
  expect(recorded({ notCountable: "not-read" }, AMOUNT, FEED_LABEL)).toEqual([]);
});

test("what took a density that was missing is counted once it is on file, and not countable until then", () => {
  const poured = { ...AMOUNT, amount: { dimension: "volume", amount: String(of("gal", 1n).amount), words: "1 gal" } } as const;
  const oxathrin = { name: "oxathrin", concentration: percentByWeight("10"), modeOfAction: "none" } as const;
  const label: LabelFacts = { ...IRON_LABEL, density: "unknown", activeIngredients: [oxathrin] };
  const treatment = { activeIngredients: ["oxathrin"], notCountable: ["oxathrin"] };
  expect(recorded(treatment, poured, label)).toEqual([{ name: "oxathrin", rate: "not-countable", modeOfAction: "none" }]);
  expect(recorded(treatment, poured)).toEqual([{ name: "oxathrin", rate: "not-countable", modeOfAction: "unknown" }]);
  // 1 gal of 10 lb on 2,000 sq ft, a tenth of it: half a pound per 1,000 sq ft.
  expect(recorded(treatment, poured, { ...label, density: densityOf("10", "lb per gal") })).toEqual([{ name: "oxathrin", rate: perAcre("21.78"), modeOfAction: "none" }]);
  expect(recorded(treatment, poured, { ...label, activeIngredients: [{ ...oxathrin, concentration: massInVolume("1", "lb per gal") }] })).toMatchObject([{ rate: perAcre("21.78") }]);
});

test("a record that says nothing of what it could not count is read by what it names without an amount", () => {
  expect(recorded({ activeIngredients: ["velodiamine", "oxathrin"] }, counted)).toMatchObject([{ name: "velodiamine", rate: kept }, { name: "oxathrin", rate: "not-countable" }]);
  expect(recorded({ activeIngredients: [] })).toBe("unknown");
  expect(recorded({ activeIngredients: [] }, {}, FEED_LABEL)).toEqual([]);
});

test("what a lawn got per area, by weight or volume; nothing where no ground was treated", () => {
  expect(recordedRate({ ...front, ...AMOUNT })).toEqual(rateOf("product-mass-per-area", "2", "lb per 1,000 sq ft"));
  expect(recordedRate({ ...front, ...AMOUNT, amount: { dimension: "volume", amount: String(of("gal", 1n).amount), words: "1 gal" } })).toEqual(rateOf("product-volume-per-area", "0.5", "gal per 1,000 sq ft"));
  expect(recordedRate({ ...front, treatedArea: { dimension: "area", amount: "0", words: "0 sq ft" } })).toBeUndefined();
});
