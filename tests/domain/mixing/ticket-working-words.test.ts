import { expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { decimal } from "#domain/quantities/rational";
import { areaTimesRate, conversionLine, conversionLines, figure, inUnit, labelWords, manyTimes, perThousand, sumLine, sumLines, timesIn, unitOf } from "#domain/mixing/ticket-working-words";
import { FEED, IRON } from "../../support/ticket";

const THREE_POUNDS = rateOf("product-mass-per-area", "3", "lb per 1,000 sq ft");

test("a line shows two figures more than a page, and of very little still five", () => {
  expect(figure(decimal("7.7764"))).toBe("7.7764");
  expect(figure(decimal("1450.384"))).toBe("1,450.38");
  expect(figure(decimal("0.0000012345678"))).toBe("0.0000012346");
  expect(figure(decimal("0"))).toBe("0");
  expect(inUnit(exactly("lb", "0.0000012345"), "lb")).toBe("0.0000012345 lb");
});

test("an amount is worked out in the unit in which pages show it, an area always in square feet", () => {
  expect([of("lb", 1n), of("lb", "0.9"), of("gal", 2n), of("fl oz", 3n), of("acre", 5n)].map(unitOf)).toEqual(["lb", "oz wt", "gal", "fl oz", "sq ft"]);
});

test("an area at a rate", () => {
  expect(areaTimesRate(of("sq ft", 2592n), THREE_POUNDS, "lb")).toBe("2,592 sq ft ÷ 1,000 sq ft × 3 lb = 7.776 lb");
  expect(perThousand(THREE_POUNDS, "oz wt")).toBe("48 oz wt");
  expect(perThousand(rateOf("seed-mass-per-area", "0.5", "lb per 1,000 sq ft"))).toBe("8 oz wt");
});

test("how many marks, and what so many come to", () => {
  expect(timesIn(of("lb", "7.776"), of("lb", "0.25"), "lb")).toBe("7.776 lb ÷ ¼ lb = 31.104");
  expect(manyTimes(31n, of("lb", "0.25"), "lb")).toBe("31 × ¼ lb = 7¾ lb");
});

test("sums in the unit of their parts, and then in that of the whole; mixed ones in that of the whole", () => {
  expect(sumLine([], of("lb", 1n), "lb")).toBe("1 lb");
  expect(sumLines([of("fl oz", 72n), of("fl oz", 72n)], of("fl oz", 144n))).toEqual(["72 fl oz + 72 fl oz = 144 fl oz", "144 fl oz ÷ 128 fl oz × 1 gal = 1.125 gal"]);
  expect(sumLines([of("oz wt", 8n), of("lb", 0n), of("lb", 2n)], of("lb", "2.5"))).toEqual(["8 oz wt ÷ 16 oz wt × 1 lb = ½ lb", "½ lb + 0 lb + 2 lb = 2½ lb"]);
  expect(conversionLines(of("lb", 1n), "lb", "lb")).toEqual([]);
});

test("an amount in a larger unit goes by how much of its own unit is in one of that", () => {
  expect(conversionLine(of("sq ft", 6000n), "sq ft", "acre")).toBe("6,000 sq ft ÷ 43,560 sq ft × 1 acre = 0.13774 acre");
  expect(conversionLine(of("in", 20n), "in", "ft")).toBe("20 in ÷ 12 in × 1 ft = 1.6667 ft");
});

test("whose rates they are, and that they are by another measure", () => {
  expect(labelWords(FEED, "lb")).toBe("the label of Harrowgate 32, Lawns: 2 lb to 3 lb per 1,000 sq ft");
  expect(labelWords(IRON, "lb")).toBe("the label of Rustwater Iron, Lawns: by another measure");
});
