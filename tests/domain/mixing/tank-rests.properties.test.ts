import fc from "fast-check";
import { expect, test } from "vitest";
import { planTanks } from "#domain/mixing/tank-plan";
import { type FilledLater, type HeldMix, type TankPlanQuestion } from "#domain/mixing/tank-plan-question";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { IRON, IRON_LABEL, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

const MIXES = [IRON, { ...IRON, rate: rateOf("product-volume-per-area", "2", "fl oz per 1,000 sq ft") }];
const PER_GALLON = ["1", "4/3"] as const;

const stop = fc.record({ mix: fc.nat({ max: 1 }), area: fc.integer({ min: 1, max: 30 }), hasWater: fc.boolean() });
const fill = fc.record({ mix: fc.nat({ max: 1 }), gallons: fc.integer({ min: 3, max: 60 }), left: fc.integer({ min: 0, max: 60 }), serves: fc.array(fc.nat({ max: 4 }), { minLength: 1, maxLength: 3 }) });
const route = fc.record({
  stops: fc.array(stop, { minLength: 1, maxLength: 5 }),
  fills: fc.array(fill, { minLength: 1, maxLength: 4 }),
  under: fc.array(fill, { maxLength: 2 }),
  line: fc.constantFrom("pushed-out-with-water", "left-as-it-is"),
});

function heldOf(index: number, { mix, gallons, left }: { readonly mix: number; readonly gallons: number; readonly left: number }): HeldMix {
  const finished = of("gal", BigInt(gallons * 3));
  const amount = of("fl oz", BigInt(PER_GALLON[mix] === "1" ? gallons * 3 : gallons * 4));
  const iron = { productId: "iron", productName: "Rustwater Iron", label: IRON_LABEL, amount };
  return { name: `fill ${String(index)}`, finished, left: of("gal", BigInt(Math.min(left, gallons * 3))), products: [iron], isUnderWay: false, isOfThatDay: true, filledOnto: [] };
}

test("whatever was filled before and along the day, what the lawns take is what was in the tank and is filled, and no tank is below empty", () => {
  fc.assert(
    fc.property(route, ({ stops, fills, under, line }) => {
      const treated = stops.map(({ mix, area, hasWater }, index) => truckStop(`v${String(index)}`, [MIXES[mix] ?? IRON], BigInt(area * 1000), { water: hasWater ? "yes" : "no" }));
      const [first, ...more] = fills;
      if (first === undefined) return;
      const later = more.map((one, index): FilledLater => ({ ...heldOf(8 + index, one), visitIds: one.serves.map((at) => `v${String(at)}`) }));
      const last: HeldMix = { ...heldOf(7, first), under: under.map((one, index) => heldOf(6 - index, one)), later };
      const question = tankQuestion(treated, { lastHeld: new Map([[SPRAYER.equipmentId, last]]), truck: { name: "Truck 1", payload: null, staysAboard: "unknown" } });
      const asked: TankPlanQuestion = { ...question, settings: { ...question.settings, lineAtTheEnd: line } };
      const plan = planTanks(asked);
      for (const { visitIds, already } of plan.mixes) {
        const own = plan.fills.filter((one) => one.visitIds.some((visitId) => visitIds.includes(visitId)));
        const taken = stops.reduce((total, { area }, index) => total + (visitIds.includes(`v${String(index)}`) ? BigInt(area) * of("gal", "1.5").amount : 0n), 0n);
        expect(own.reduce((total, { finished }) => total + finished.amount, already.amount)).toBeGreaterThanOrEqual(taken - BigInt(stops.length));
      }
    }),
    { numRuns: 150 },
  );
});
