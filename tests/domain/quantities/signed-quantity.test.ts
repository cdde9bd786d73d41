import fc from "fast-check";
import { expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { of, type Quantity, zero } from "#domain/quantities/quantity";
import {
  addSigned,
  difference,
  fromSignedAmount,
  magnitude,
  negate,
  signed,
  type SignedQuantity,
  sumSigned,
  unsigned,
} from "#domain/quantities/signed-quantity";
import { anyQuantity } from "../../support/quantity-arbitraries";

test("a difference may be below zero, and says on which side it is", () => {
  expect(magnitude(difference(of("gal", 2n), of("gal", 3n)))).toEqual({ side: "below", size: of("gal", 1n) });
  expect(magnitude(difference(of("gal", 3n), of("gal", 2n)))).toEqual({ side: "above", size: of("gal", 1n) });
  expect(magnitude(difference(of("gal", 3n), of("gal", 3n)))).toEqual({ side: "zero", size: zero("volume") });
});

test("only a difference from zero up becomes a quantity", () => {
  expect(unsigned(signed(of("lb", 2n)))).toEqual(of("lb", 2n));
  expect(() => unsigned(fromSignedAmount("mass", -1n))).toThrow(BrokenInvariant);
});

test("two dimensions never meet", () => {
  const volume = { dimension: "volume", amount: 1n } as unknown as Quantity<"mass">;
  const signedVolume = { dimension: "volume", signedAmount: 1n } as unknown as SignedQuantity<"mass">;
  expect(() => difference(of("lb", 1n), volume)).toThrow(BrokenInvariant);
  expect(() => addSigned(signed(of("lb", 1n)), signedVolume)).toThrow(BrokenInvariant);
  expect(() => sumSigned("mass", [signedVolume])).toThrow(BrokenInvariant);
});

test("a movement out of one place and into another balances to zero", () => {
  fc.assert(
    fc.property(fc.array(anyQuantity("mass"), { maxLength: 12 }), (moved) => {
      const entries = moved.flatMap((quantity) => [signed(quantity), negate(signed(quantity))]);
      expect(sumSigned("mass", entries).signedAmount).toBe(0n);
    }),
  );
});

test("a sum counts every entry on its own side", () => {
  const entries = [fromSignedAmount("mass", 7n), fromSignedAmount("mass", -2n)];
  expect(sumSigned("mass", entries)).toEqual({ dimension: "mass", signedAmount: 5n });
  expect(unsigned(fromSignedAmount("mass", 0n))).toEqual(zero("mass"));
});

test("a difference turned round is its negative", () => {
  fc.assert(
    fc.property(anyQuantity("mass"), anyQuantity("mass"), (left, right) => {
      expect(addSigned(difference(left, right), difference(right, left)).signedAmount).toBe(0n);
    }),
  );
});
