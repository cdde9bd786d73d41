import fc from "fast-check";
import { expect, test } from "vitest";
import { flowForCarrier, speedForCarrier } from "#domain/equipment/carrier-planning";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { calibrateSprayer } from "#domain/equipment/sprayer-calibration";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { of, zero } from "#domain/quantities/quantity";
import { compareRates, rateOf } from "#domain/quantities/rate";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { anyQuantity } from "../../support/quantity-arbitraries";
import { between } from "../../support/real-numbers";

const carrier = rateOf("carrier-volume-per-area", 2n, "gal per 1,000 sq ft");
const width = of("ft", 4n);

test("the planned flow gives the planned rate when it is caught, and its speed comes back, for any", () => {
  fc.assert(
    fc.property(between(0.2, 20), anyQuantity("length", 1n), (milesPerHour, swath) => {
      const pace = { kind: "speed", milesPerHour } as const;
      const volume = valueOf(flowForCarrier(carrier, swath, pace));
      const caught = calibrateSprayer({ method: "backpack", swath, pace, catches: [{ nozzle: "wand", volume, seconds: 60 }] }, { kind: "the-spray-itself" }, USUAL_SPREAD_LIMIT);
      expect(compareRates(valueOf(caught).carrierRate, carrier)).toBe(0);
      expect(valueOf(speedForCarrier(carrier, swath, volume))).toBeCloseTo(milesPerHour, 9);
    }),
  );
});

test("a width or a flow of nothing is refused, and a rate of zero throws", () => {
  expect(refusalOf(speedForCarrier(carrier, zero("length"), of("gal", 1n))).field).toBe("width");
  expect(refusalOf(speedForCarrier(carrier, width, zero("volume"))).field).toBe("flowPerMinute");
  expect(refusalOf(flowForCarrier(carrier, width, { kind: "speed", milesPerHour: 99 })).field).toBe("milesPerHour");
  expect(() => speedForCarrier(rateOf("carrier-volume-per-area", 0n, "gal per acre"), width, of("gal", 1n))).toThrow(BrokenInvariant);
});
