import fc from "fast-check";
import { expect, test } from "vitest";
import { addUpFill } from "#domain/mixing/tank-day";
import { planTanks } from "#domain/mixing/tank-plan";
import { type TankPlanQuestion } from "#domain/mixing/tank-plan-question";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { FEED, IRON, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

const backpack = { ...SPRAYER, equipmentId: "backpack", name: "Backpack", capacity: of("gal", 4n), holdUp: of("gal", "0.1") };
const TREATMENTS = [
  [IRON],
  [{ ...IRON, rate: rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft") }],
  [{ ...IRON, gear: backpack }],
  [FEED],
  [FEED, IRON],
];

const stopArbitrary = fc.record({
  what: fc.nat({ max: TREATMENTS.length - 1 }),
  area: fc.bigInt(500n, 90_000n),
  water: fc.constantFrom("yes" as const, "no" as const, "unknown" as const),
});
const questionArbitrary = fc
  .record({
    stops: fc.array(stopArbitrary, { maxLength: 9 }),
    payload: fc.bigInt(300n, 2500n),
    loads: fc.constantFrom("same-size-every-time" as const, "full-tanks-then-a-short-one" as const),
    line: fc.constantFrom("pushed-out-with-water" as const, "left-as-it-is" as const),
  })
  .map(({ stops, payload, loads, line }): TankPlanQuestion => {
    const { settings } = tankQuestion([]);
    return tankQuestion(
      stops.map(({ what, area, water }, index) => truckStop(`v${String(index)}`, TREATMENTS[what] ?? [], area, { water })),
      {
        truck: { name: "Truck 1", payload: of("lb", payload), staysAboard: "counted-in-payload" },
        settings: { ...settings, tankLoads: loads, lineAtTheEnd: line },
        lastHeld: new Map([[SPRAYER.equipmentId, "clean"], ["backpack", "clean"]]),
      },
    );
  });

const total = (volumes: readonly { readonly amount: bigint }[]) => volumes.reduce((sum, { amount }) => sum + amount, 0n);
const isRefused = (plan: ReturnType<typeof planTanks>) => plan.found.some(({ finding }) => finding.rule === "no-room-for-spray");

test("what each stop sprays is what its ticket says, and with line and rest it is what was mixed", () => {
  fc.assert(
    fc.property(questionArbitrary, (question) => {
      const plan = planTanks(question);
      fc.pre(!isRefused(plan));
      for (const { visitId, mixes } of question.stops) {
        const planned = total(mixes.flatMap((mix) => (mix.kind === "spray" ? [mix.finished] : [])));
        expect(total(plan.fills.flatMap(({ parts }) => parts.filter((part) => part.visitId === visitId).map(({ finished }) => finished)))).toBe(planned);
      }
      const out = total(plan.fills.flatMap(({ parts, toLine }) => [toLine, ...parts.map(({ finished }) => finished)])) + total(plan.mixes.map(({ end }) => end.left));
      expect(out).toBe(total(plan.fills.map(({ finished }) => finished)));
    }),
  );
});

test("no tank holds more than it can, and the truck carries no more than it may", () => {
  fc.assert(
    fc.property(questionArbitrary, (question) => {
      const plan = planTanks(question);
      for (const { finished, gear } of plan.fills) expect(finished.amount <= gear.capacity.amount).toBe(true);
      for (const { share, tanks } of plan.aboard) {
        expect(share === null || share <= 1).toBe(true);
        for (const { arrives, leaves } of tanks) expect(arrives.amount >= 0n && leaves.amount >= 0n).toBe(true);
      }
      const { payload } = question.truck;
      // What is packed in bags can pass the payload by itself; the spray on top of it never does.
      const packed = question.dryWeights.some(({ amount }) => amount > (payload?.amount ?? 0n));
      const isSaid = plan.found.some(({ finding }) => finding.rule === "above-payload");
      expect(plan.heaviest.weight.amount <= (payload?.amount ?? 0n) || isSaid).toBe(true);
      if (isSaid) expect(packed || question.settings.lineAtTheEnd === "pushed-out-with-water").toBe(true);
    }),
  );
});

test("forward and back again: a fill that is sprayed as planned gives each visit the product of its gallons", () => {
  fc.assert(
    fc.property(questionArbitrary, (question) => {
      for (const fill of planTanks(question).fills.filter(({ toLine }) => toLine.amount === 0n)) {
        const lots = fill.products.map(({ productId, amount }) => ({ lotId: productId, amount: amount.amount }));
        const taken = total(fill.parts.map(({ finished }) => finished));
        const draws = fill.parts.map(({ visitId, finished }) => ({ visitId, sprayed: finished }));
        if (taken > fill.finished.amount) continue;
        const added = addUpFill({ name: fill.letter, finished: fill.finished, lots }, draws, "not-measured");
        for (const { sprayed, lots: got } of added.visits) {
          for (const [index, { amount }] of got.entries()) {
            const exact = (lots[index]?.amount ?? 0n) * sprayed.amount;
            const apart = amount * fill.finished.amount - exact;
            // Within one canonical unit of gallons times concentration, and all of them together exactly.
            expect((apart < 0n ? -apart : apart) <= fill.finished.amount).toBe(true);
          }
        }
        if (taken === fill.finished.amount) expect(lots.map((_lot, index) => added.visits.reduce((sum, { lots: got }) => sum + (got[index]?.amount ?? 0n), 0n))).toEqual(lots.map(({ amount }) => amount));
      }
    }),
  );
});

test("a thousand stops are planned with every stop in one fill of its own mix", () => {
  const stops = Array.from({ length: 1000 }, (_unused, index) => truckStop(`v${String(index)}`, TREATMENTS[index % 2] ?? [], 2000n));
  const plan = planTanks(tankQuestion(stops));
  expect([plan.fills.length, plan.mixes.length, plan.aboard.length]).toEqual([1000, 1000, 1000]);
});
