import { expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { sprayWorkings } from "#domain/mixing/ticket-working-spray";
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

test("what the sprayer puts out is its calibration's, or says that it is none", () => {
  expect(workingsOf().carrier).toMatchObject({ result: "1½ gal per 1,000 sq ft", source: "Sprayer, calibrated by Rowan Ash" });
  expect(workingsOf({ basis: "nominal", words: "not calibrated" }).carrier).toMatchObject({ formula: "not measured: nominal figures stand in until it is calibrated", source: saying("not calibrated") });
});

test("a mix of which the question has no treatment has no working", () => {
  const mix = sprayOf();
  expect(mix && sprayWorkings(mix, { ...QUESTION, treatments: [FEED] }, ticketOf())).toBeUndefined();
});
