import { expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { percentByVolume, rateOf } from "#domain/quantities/rate";
import { decimal, rational } from "#domain/quantities/rational";
import { amountBothWays, amountWords, areaAsTyped, carrierAsTyped, isByAcre, numberWords, productRateAsTyped, rateBothWays, rateWords } from "#domain/worksheets/figure-words";

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
  const ounces = rateOf("product-volume-per-area", "32", "fl oz per acre");
  expect(productRateAsTyped(ounces, "32 fl oz per acre")).toBe("32 fl oz per acre");
  expect(productRateAsTyped(rateOf("product-volume-per-area", "2", "gal per acre"), "2 gal/acre")).toBe("2 gal per acre");
  expect(productRateAsTyped(rateOf("product-mass-per-area", "2", "lb per acre"), "2 lb/acre")).toBe("2 lb per acre");
  expect(productRateAsTyped(rateOf("product-mass-per-area", "2", "oz wt per acre"), "2 oz wt/acre")).toBe("2 oz wt per acre");
  expect(productRateAsTyped(ounces, "0.73 fl oz/1,000")).toBe("0.735 fl oz per 1,000 sq ft");
  expect(productRateAsTyped(percentByVolume("0.25"), "0.25% v/v")).toBe("0.25% v/v");
});
