import { expect, test } from "vitest";
import { perThousand } from "#domain/mixing/ticket-working-words";
import { exactly } from "#domain/quantities/exact-quantity";
import { rateOf } from "#domain/quantities/rate";
import { decimal, rational } from "#domain/quantities/rational";
import { acreLines, amountBothWays, amountWords, areaAsTyped, areaInput, averageLines, carrierAsTyped, isByAcre, numberWords, rateBothWays, rateWords, stepPercent, stepRate, withTyped } from "#domain/worksheets/figure-words";

test("figures have three to four digits", () => {
  expect(numberWords(rational(150n, 7n))).toBe("21.43");
  expect(numberWords(decimal("1250"))).toBe("1,250");
});

test("amounts and rates stand in US units, with metric ones beside them where asked", () => {
  expect(amountWords(exactly("lb", "21.43"))).toBe("21.43 lb");
  expect(amountBothWays(exactly("lb", "1"))).toBe("1 lb (453.6 g)");
  const rate = rateOf("product-mass-per-area", "1", "lb per 1,000 sq ft");
  expect(rateWords(rate)).toBe("1 lb per 1,000 sq ft");
  expect(rateBothWays(rate)).toBe("1 lb per 1,000 sq ft (4.88 g per m²)");
});

test.each([["1 1/2 acres", true], ["20 gal/A", true], ["2 gal per acre", true], ["6,000 sq ft", false], ["4 L per 100 m2", false]])("whether %s is by the acre: %s", (typed, byAcre) => {
  expect(isByAcre(typed)).toBe(byAcre);
});

test("what was typed by the acre is read by the acre", () => {
  expect(areaAsTyped(exactly("acre", "1.5"), "1.5 acres")).toBe("1½ acres");
  expect(areaAsTyped(exactly("acre", "1"), "43,560 sq ft")).toBe("43,560 sq ft");
  const carrier = rateOf("carrier-volume-per-area", "20", "gal per acre");
  expect(carrierAsTyped(carrier, "20 gal/acre")).toBe("20 gal per acre");
  expect(carrierAsTyped(carrier, "0.459 gal/1,000")).toBe("0.459 gal per 1,000 sq ft");
});

test("rates in lines of arithmetic have two figures more", () => {
  const rate = rateOf("product-volume-per-area", "0.1", "gal per 1,000 sq ft");
  expect(perThousand(rate)).toBe("12.8 fl oz");
  expect(perThousand(rate, "gal")).toBe("0.1 gal");
  expect(stepRate(rate)).toBe("12.8 fl oz per 1,000 sq ft");
  expect([rational(1n, 3n), rational(0n), rational(1n)].map(stepPercent)).toEqual(["33.3333%", "0%", "100%"]);
});

test("what was typed stands beside a figure that begins with another number", () => {
  expect(withTyped("37.4167 ft", "37 ft 5 in")).toBe("37.4167 ft (37 ft 5 in)");
  expect(withTyped("6,000 sq ft", "6000 sq ft")).toBe("6,000 sq ft");
  expect(withTyped("12½ ft", "12.5")).toBe("12½ ft");
  expect(areaInput(exactly("acre", "1.5"), "1.5 acres")).toBe("1½ acres");
  expect(areaInput(exactly("m2", "100"), "100 m2")).toBe("1,076.39 sq ft (100 m2)");
  expect(acreLines(exactly("acre", "1.5"), "1.5 acres")).toEqual(["Area in square feet: 1½ acres × 43,560 sq ft = 65,340 sq ft."]);
  expect(acreLines(exactly("sq ft", "100"), "100 sq ft")).toEqual([]);
});

test("repeats are added up and divided by their number, and one alone is its own average", () => {
  expect(averageLines("runs", ["3 lb", "5 lb"], "8 lb", "4 lb")).toEqual(["All runs: 3 lb + 5 lb = 8 lb.", "Average of the 2 runs: 8 lb ÷ 2 = 4 lb."]);
  expect(averageLines("runs", ["3 lb"], "3 lb", "3 lb")).toEqual([]);
});
