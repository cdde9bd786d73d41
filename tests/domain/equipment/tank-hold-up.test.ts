import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { areaUnderLastMix, holdUpOf, hoseVolume, type SprayPlumbing } from "#domain/equipment/tank-hold-up";
import { addExact, compareExact, exactly, measureInUnit, multiplyExact } from "#domain/quantities/exact-quantity";
import { of, zero } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { rational, toNumber } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { anyQuantity } from "../../support/quantity-arbitraries";
import { saying } from "../../support/said";

const reel = { name: "the hose on the reel", length: of("ft", 300n), innerDiameter: of("in", "0.5") };
const plumbing: SprayPlumbing = { hoses: [reel], pump: of("qt", 1n), tankRemainder: of("gal", 2n) };

describe("a hose", () => {
  test("of 300 ft and half an inch holds 3.06 gal", () => {
    expect(toNumber(measureInUnit(valueOf(hoseVolume(reel)), "gal"))).toBeCloseTo(3.0600, 4);
  });

  test("of twice the length holds twice, of twice the diameter four times as much, whatever the hose", () => {
    fc.assert(
      fc.property(anyQuantity("length", 1n), anyQuantity("length", 1n), (length, innerDiameter) => {
        const once = valueOf(hoseVolume({ name: "a hose", length, innerDiameter }));
        const longer = valueOf(hoseVolume({ name: "a hose", length: multiplyExact(length, rational(2n)), innerDiameter }));
        const wider = valueOf(hoseVolume({ name: "a hose", length, innerDiameter: multiplyExact(innerDiameter, rational(2n)) }));
        expect(compareExact(longer, multiplyExact(once, rational(2n)))).toBe(0);
        expect(compareExact(wider, multiplyExact(once, rational(4n)))).toBe(0);
      }),
    );
  });

  test.each([
    [{ ...reel, length: zero("length") }, "length"],
    [{ ...reel, innerDiameter: zero("length") }, "innerDiameter"],
  ] as const)("without a %s is refused", (hose, field) => {
    expect(refusalOf(hoseVolume(hose))).toMatchObject({ kind: "bad-input", field, sentence: saying("the hose on the reel") });
  });
});

describe("the hold-up", () => {
  test("is hoses and pump in the line, and the tank's rest besides", () => {
    const holdUp = valueOf(holdUpOf(plumbing));
    expect(compareExact(holdUp.inLine, addExact(valueOf(hoseVolume(reel)), of("qt", 1n)))).toBe(0);
    expect(compareExact(holdUp.total, addExact(holdUp.inLine, of("gal", 2n)))).toBe(0);
    expect(holdUp.hoses.map(({ name }) => name)).toEqual(["the hose on the reel"]);
  });

  test("of a sprayer without a hose is what the pump holds", () => {
    expect(compareExact(valueOf(holdUpOf({ ...plumbing, hoses: [] })).inLine, of("qt", 1n))).toBe(0);
  });

  test.each(["pump", "tankRemainder"] as const)("is refused while the %s is unknown", (field) => {
    expect(refusalOf(holdUpOf({ ...plumbing, [field]: "unknown" }))).toMatchObject({ kind: "missing-fact", field });
  });

  test("is refused with a hose that was not measured", () => {
    expect(refusalOf(holdUpOf({ ...plumbing, hoses: [reel, { ...reel, length: zero("length") }] })).field).toBe("length");
  });

  test("of 3 gal at 2 gal per 1,000 sq ft goes onto the next 1,500", () => {
    const holdUp = valueOf(holdUpOf({ hoses: [], pump: of("gal", 3n), tankRemainder: of("gal", 9n) }));
    const area = areaUnderLastMix(holdUp.inLine, rateOf("carrier-volume-per-area", 2n, "gal per 1,000 sq ft"));
    expect(compareExact(area, exactly("sq ft", 1500n))).toBe(0);
  });
});
