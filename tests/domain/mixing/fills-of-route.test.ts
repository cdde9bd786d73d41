import { expect, test } from "vitest";
import { aboardAtStops, fillsOfRoute } from "#domain/mixing/fills-of-route";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { FEED, IRON } from "../../support/ticket";
import { truckStop } from "../../support/truck-stops";

// The sprayer of these tests puts out 1.5 gal per 1,000 sq ft: 20,000 sq ft are 30 gal with 30 fl oz of iron.
const weaker = { ...IRON, rate: rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft") };
const briefly = (fills: ReturnType<typeof fillsOfRoute>) => fills.map(({ letter, visitIds, finished }) => [letter, visitIds.join(" "), finished]);

test("stops with one mix share a fill until the tank is full", () => {
  const fills = fillsOfRoute([truckStop("a", [IRON], 20_000n), truckStop("b", [IRON], 40_000n), truckStop("c", [IRON], 20_000n)]);
  expect(briefly(fills)).toEqual([["A", "a b", of("gal", 90n)], ["B", "c", of("gal", 30n)]]);
  expect(fills[0]?.products).toMatchObject([{ productId: "iron", amount: of("fl oz", 90n) }]);
  expect(fills[0]?.water).toEqual(of("gal", "89.296875"));
});

test("a tank holds one mix: another rate begins a fill, and the first mix after it begins one again", () => {
  const fills = fillsOfRoute([truckStop("a", [IRON]), truckStop("b", [weaker]), truckStop("c", [IRON])]);
  expect(briefly(fills).map(([letter, visits]) => [letter, visits])).toEqual([["A", "a"], ["B", "b"], ["C", "c"]]);
});

test("what is spread asks for no fill and stands in the way of none", () => {
  expect(fillsOfRoute([truckStop("a", [IRON]), truckStop("b", [FEED]), truckStop("c", [IRON])]).map(({ visitIds }) => visitIds)).toEqual([["a", "c"]]);
});

test("a visit of several loads shares its last one with the next stop", () => {
  const fills = fillsOfRoute([truckStop("a", [IRON], 80_000n), truckStop("b", [IRON], 20_000n)]);
  expect(briefly(fills)).toEqual([["A", "a", of("gal", 60n)], ["B", "a b", of("gal", 90n)]]);
});

test("the twenty-seventh fill is AA", () => {
  const stops = Array.from({ length: 27 }, (_unused, index) => truckStop(`v${String(index)}`, [index % 2 === 0 ? IRON : weaker]));
  expect(fillsOfRoute(stops).map(({ letter }) => letter).slice(-2)).toEqual(["Z", "AA"]);
});

test("the tank's share falls from stop to stop and rises where it is filled", () => {
  const stops = [truckStop("feed", [FEED]), truckStop("a", [IRON], 20_000n), truckStop("b", [IRON], 40_000n), truckStop("c", [IRON], 20_000n), truckStop("last", [FEED])];
  expect(aboardAtStops(stops, fillsOfRoute(stops))).toEqual([
    { visitId: "feed", share: null, letters: [] },
    { visitId: "a", share: 0.9, letters: ["A"] },
    { visitId: "b", share: 0.6, letters: [] },
    { visitId: "c", share: 0.3, letters: ["B"] },
    { visitId: "last", share: 0, letters: [] },
  ]);
});

test("a fill begun with a long visit's second load serves the stop after it", () => {
  const stops = [truckStop("a", [IRON], 80_000n), truckStop("b", [IRON], 20_000n)];
  expect(aboardAtStops(stops, fillsOfRoute(stops))).toEqual([
    { visitId: "a", share: 0.6, letters: ["A", "B"] },
    { visitId: "b", share: 0.3, letters: [] },
  ]);
});
