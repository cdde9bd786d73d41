import fc from "fast-check";
import { expect, test } from "vitest";
import { rateOnFile } from "#domain/equipment/rate-on-file";
import { accept } from "#domain/foundation/outcome";
import { of } from "#domain/quantities/quantity";
import { rateFromAmounts, rateOf } from "#domain/quantities/rate";
import { GREATEST_STORED_AMOUNT } from "#domain/quantities/units";

const ratePer = of("sq ft", 1000n).amount;

test("a rate is kept over 1,000 sq ft, whatever its own fraction", () => {
  expect(rateOnFile("caught", rateOf("carrier-volume-per-area", "2", "gal per 1,000 sq ft"))).toEqual(accept({ rateAmount: of("gal", 2n).amount, ratePer }));
  expect(rateOnFile("collected", rateOf("product-mass-per-area", "3.1", "lb per 1,000 sq ft"))).toEqual(accept({ rateAmount: of("lb", "3.1").amount, ratePer }));
});

test.each([
  rateOf("carrier-volume-per-area", "0.0099", "gal per 1,000 sq ft"),
  rateOf("carrier-volume-per-area", "100.01", "gal per 1,000 sq ft"),
  rateOf("product-mass-per-area", "0.0099", "lb per 1,000 sq ft"),
  rateOf("product-mass-per-area", "1000.1", "lb per 1,000 sq ft"),
])("what no turf equipment gives is refused under the field asked about", (rate) => {
  expect(rateOnFile("caught", rate)).toMatchObject({ ok: false, refusal: { field: "caught" } });
});

test("every rate that is kept fits its columns, above zero and at most half a unit off", () => {
  const gallons = fc.bigInt(1n, 10n ** 15n);
  fc.assert(
    fc.property(gallons, fc.bigInt(10n ** 13n, 10n ** 15n), (part, of1000) => {
      const exact = rateOf("carrier-volume-per-area", { numerator: part, denominator: of1000 }, "gal per 1,000 sq ft");
      const kept = rateOnFile("caught", exact);
      if (!kept.ok) return;
      expect(kept.value.rateAmount).toBeGreaterThan(0n);
      expect(kept.value.rateAmount).toBeLessThanOrEqual(GREATEST_STORED_AMOUNT);
      const { amount, per } = rateFromAmounts("carrier-volume-per-area", exact.amount, exact.per);
      const off = kept.value.rateAmount * per - amount * kept.value.ratePer;
      expect(2n * (off < 0n ? -off : off)).toBeLessThanOrEqual(per);
    }),
  );
});
