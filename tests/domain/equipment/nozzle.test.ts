import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { flowAtPressure, ISO_PRESSURE_PSI, nozzleSizes, pressureForFlow, PSI_PER_BAR, type RatedFlow, ratedFlowOfSize, squareRoot } from "#domain/equipment/nozzle";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { compareExact, exactly, measureInUnit, multiplyExact } from "#domain/quantities/exact-quantity";
import { of, zero } from "#domain/quantities/quantity";
import { rational, toNumber } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { between } from "../../support/real-numbers";

const gun: RatedFlow = { flowPerMinute: of("gal", 2n), atPressurePsi: 100, statedBy: "the maker's sheet" };

describe("the sizes", () => {
  test.each(Object.entries(nozzleSizes))("size %s gives 0.4 L/min for each whole number of its size", (size, { litersPerMinute }) => {
      const half = size.slice(2);
    expect(Number(litersPerMinute)).toBeCloseTo(0.4 * Number(`${size.slice(0, 2)}.${half === "" ? "0" : half}`), 12);
  });

  test("are rated at 3 bar, which is 43.5 psi", () => {
    expect(ISO_PRESSURE_PSI).toBeCloseTo(43.511, 3);
    expect(PSI_PER_BAR).toBeCloseTo(14.5038, 4);
    expect(ratedFlowOfSize("04")).toEqual({ flowPerMinute: exactly("L", "1.6"), atPressurePsi: ISO_PRESSURE_PSI, statedBy: "ISO 10625, size 04" });
  });
});

describe("the flow at a pressure", () => {
  test("is the rated one at the rated pressure, and doubles with four times the pressure, exactly", () => {
    expect(compareExact(valueOf(flowAtPressure(gun, 100)), gun.flowPerMinute)).toBe(0);
    expect(compareExact(valueOf(flowAtPressure(gun, 400)), multiplyExact(gun.flowPerMinute, rational(2n)))).toBe(0);
  });

  test("grows with the pressure and leads back to it, for any", () => {
    fc.assert(
      fc.property(between(1, 999), between(0.001, 1), (pressurePsi, more) => {
        const flow = valueOf(flowAtPressure(gun, pressurePsi));
        expect(compareExact(valueOf(flowAtPressure(gun, pressurePsi + more)), flow)).toBe(1);
        expect(valueOf(pressureForFlow(gun, flow))).toBeCloseTo(pressurePsi, 6);
      }),
    );
  });

  test.each([0.9, 1000.1, -40, Number.POSITIVE_INFINITY])("at %d psi is refused", (pressurePsi) => {
    expect(refusalOf(flowAtPressure(gun, pressurePsi))).toMatchObject({ kind: "bad-input", field: "pressurePsi" });
  });

  test("is refused where a pressure is not known", () => {
    expect(refusalOf(flowAtPressure(gun, Number.NaN))).toMatchObject({ kind: "missing-fact", field: "pressurePsi" });
    expect(refusalOf(flowAtPressure({ ...gun, atPressurePsi: Number.NaN }, 40)).field).toBe("ratedPressurePsi");
  });
});

describe("the pressure for a flow", () => {
  test("beyond what sprayers work at is refused", () => {
    expect(refusalOf(pressureForFlow(gun, of("gal", 20n))).field).toBe("pressurePsi");
    expect(refusalOf(pressureForFlow(gun, of("fl oz", 1n))).field).toBe("pressurePsi");
  });

  test("throws for a tip without a flow", () => {
    expect(() => pressureForFlow({ ...gun, flowPerMinute: zero("volume") }, of("gal", 1n))).toThrow(BrokenInvariant);
  });
});

test("a square root is right to twelve places", () => {
  expect(squareRoot(4)).toEqual({ numerator: 2_000_000_000_000n, denominator: 1_000_000_000_000n });
  expect(toNumber(squareRoot(2))).toBeCloseTo(Math.SQRT2, 12);
  expect(toNumber(measureInUnit(valueOf(flowAtPressure(gun, 200)), "gal"))).toBeCloseTo(2 * Math.SQRT2, 12);
});
