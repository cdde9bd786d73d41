import { expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { sprayWorkings } from "#domain/mixing/ticket-working-spray";
import { faultsOf } from "../../support/read-working";
import { saying } from "../../support/said";
import { FEED, IRON, LAWN, QUESTION, SPRAYER, sprayOf, ticketOf } from "../../support/ticket";

const LAWNS = [LAWN, { ...LAWN, zoneId: "back", letter: "B", name: "Back", area: of("sq ft", 3000n) }];

function workingsOf(carrier: Partial<(typeof SPRAYER)["carrier"]> = {}) {
  const treatments = [{ ...IRON, zoneIds: ["front", "back"], gear: { ...SPRAYER, carrier: { ...SPRAYER.carrier, ...carrier } } }];
  const question = { ...QUESTION, lawns: LAWNS, treatments };
  const mix = sprayOf(question);
  const workings = mix === undefined ? undefined : sprayWorkings(mix, question, ticketOf(question));
  if (workings === undefined) throw new Error("The iron is sprayed.");
  return workings;
}

function rateWorking(question: typeof QUESTION) {
  const mix = sprayOf(question);
  return mix && sprayWorkings(mix, question, ticketOf(question))?.products[0]?.rate;
}

test("each lawn's spray by what its ground takes, its share of product by its treated area", () => {
  // 1.5 gal on each 1,000 sq ft; 7.5 fl oz go in for 5,000 sq ft, of which two fifths are the front's.
  const [front] = workingsOf().lawns;
  expect(front?.finished).toMatchObject({ steps: ["2,000 sq ft ÷ 1,000 sq ft × 1½ gal = 3 gal"], result: "3 gal" });
  expect(front?.products[0]?.working).toMatchObject({ title: "Rustwater Iron for A Front", steps: ["7½ fl oz × 2,000 sq ft ÷ 5,000 sq ft = 3 fl oz"], result: "3 fl oz" });
});

test("how strong the spray is, and what goes in over all loads", () => {
  const [iron] = workingsOf().products;
  expect(iron?.concentration).toMatchObject({ steps: ["1½ fl oz ÷ 1½ gal = 1 fl oz per gal"], result: "1 fl oz per gal" });
  expect(iron?.total).toMatchObject({ inputs: [{ name: "Load 1", figure: "7½ fl oz", from: "measured out" }], result: "7½ fl oz" });
});

test("what the rate really becomes, on the ground or in the spray as it is planned", () => {
  expect(workingsOf().products[0]?.rate).toMatchObject({ title: "What the rate of Rustwater Iron becomes", steps: ["7½ fl oz ÷ 5,000 sq ft × 1,000 sq ft = 1½ fl oz"], result: "1½ fl oz per 1,000 sq ft" });
  // 500 sq ft at 1 fl oz are half of the cup's only mark.
  const cup = { ...IRON, rate: rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft"), rateText: "1 fl oz per 1,000 sq ft", tool: { name: "ounce cup", mark: exactly("fl oz", "1") } };
  const small = rateWorking({ ...QUESTION, lawns: [{ ...LAWN, area: of("sq ft", 500n) }], treatments: [cup] });
  expect(small).toMatchObject({
    inputs: [{ name: "In all", figure: "1 fl oz" }, { name: "All treated area", figure: "500 sq ft" }, { name: "Planned", figure: "1 fl oz per 1,000 sq ft" }],
    steps: ["1 fl oz ÷ 500 sq ft × 1,000 sq ft = 2 fl oz"],
    result: "2 fl oz per 1,000 sq ft",
  });
  const strength = (value: string) => rateOf("product-volume-per-spray-volume", value, "fl oz per gal");
  const byStrength = { ...IRON, rateText: "1 fl oz per gal", asStated: { rate: strength("1"), rates: { basis: "product-volume-per-spray-volume", low: strength("1"), high: strength("2") } as const } };
  expect(rateWorking({ ...QUESTION, treatments: [byStrength] })).toMatchObject({ steps: ["3 fl oz ÷ 3 gal = 1 fl oz per gal"], result: "1 fl oz per gal" });
  for (const working of [small, rateWorking({ ...QUESTION, treatments: [byStrength] })]) expect(working && faultsOf(working)).toEqual([]);
});

test("what the sprayer puts out is its calibration's, or says that it is none", () => {
  expect(workingsOf().carrier).toMatchObject({ result: "1½ gal per 1,000 sq ft", source: "Sprayer, calibrated by Rowan Ash" });
  expect(workingsOf({ basis: "nominal", words: "not calibrated" }).carrier).toMatchObject({ formula: "not measured: nominal figures stand in until it is calibrated", source: saying("not calibrated") });
});

test("a mix of which the question has no treatment has no working", () => {
  const mix = sprayOf();
  expect(mix && sprayWorkings(mix, { ...QUESTION, treatments: [FEED] }, ticketOf())).toBeUndefined();
});
