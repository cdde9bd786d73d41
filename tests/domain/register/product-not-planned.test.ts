import { expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { besideItsLine, productNotPlanned } from "#domain/register/product-not-planned";
import { IRON } from "../../support/ticket";

const FEED_IN_TANK = { ...IRON.label, epaRegistrationNumber: "none" } as const;
const said = (change: Partial<Parameters<typeof productNotPlanned>[0]> = {}) =>
  productNotPlanned({ productName: "Rustwater Iron", label: { label: FEED_IN_TANK, use: "not-known" }, amount: of("fl oz", "8"), fillNumber: 7, grasses: ["Kentucky bluegrass"], ...change });

test("a feed for these grasses is said with care, with what came out of the fill", () => {
  expect(said()).toMatchObject({ level: "take-care", rule: "product-not-planned", what: "Rustwater Iron was in fill 7 and was not planned here.", figure: "8 fl oz of it came out with what was sprayed." });
});

test("a pesticide, a label that nobody has entered, and grass that nobody knows are said as holds that keep nothing from being recorded", () => {
  const whyOf = (change: Parameters<typeof said>[0]) => [said(change).level, said(change).figure];
  const spray = "8 fl oz of it came out with what was sprayed.";
  const pesticide = { ...FEED_IN_TANK, epaRegistrationNumber: { number: "DEMO-0000-61" } } as const;
  expect(whyOf({ label: { label: pesticide, use: IRON.use } })).toEqual(["hold", `${spray} It is a pesticide that is not planned there.`]);
  const unknown = `${spray} It may not be labeled for the grass there: its label, or the grass, is not on file.`;
  expect(whyOf({ label: "not-on-file" })).toEqual(["hold", unknown]);
  expect(whyOf({ grasses: [] })).toEqual(["hold", unknown]);
});

test("what the visit plans on these lawns is not said to be unplanned, but that both amounts count", () => {
  const found = besideItsLine({ productName: "Rustwater Iron", label: "not-on-file", amount: of("fl oz", "8"), fillNumber: 7, grasses: [] });
  expect(found).toMatchObject({ level: "take-care", rule: "product-beside-its-line", figure: "8 fl oz of it came out with what was sprayed, and counts beside what its line says." });
});
