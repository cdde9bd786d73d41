import fc from "fast-check";
import { expect, test } from "vitest";
import { sprayForGround, type SprayMix } from "#domain/mixing/spray-mix";
import { addUpFill } from "#domain/mixing/tank-day";
import { drawFromFill, fillStopOf, planFill } from "#domain/mixing/tank-fill";
import { planTanks } from "#domain/mixing/tank-plan";
import { type LastHeld, type TankPlanQuestion, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { exactly } from "#domain/quantities/exact-quantity";
import { of, type Quantity, sum } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { addRational, compareRational, rational, ZERO } from "#domain/quantities/rational";
import { sharePutDown } from "#domain/register/put-down";
import { valueOf } from "../../support/domain-answers";
import { FEED, IRON, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop, upTo } from "../../support/truck-stops";

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
        truck: { name: "Truck 1", payload: of("lb", payload), staysAboard: of("lb", 0n) },
        settings: { ...settings, tankLoads: loads, lineAtTheEnd: line },
        lastHeld: new Map([[SPRAYER.equipmentId, "clean"], ["backpack", "clean"]]),
      },
    );
  });

const total = (volumes: readonly { readonly amount: bigint }[]) => volumes.reduce((sum, { amount }) => sum + amount, 0n);
const isRefused = (plan: ReturnType<typeof planTanks>) => plan.found.some(({ finding }) => finding.rule === "no-room-for-spray");

function expectAllSprayed(question: TankPlanQuestion, plan: ReturnType<typeof planTanks>): void {
  for (const { visitId, mixes } of question.stops) {
    const planned = total(mixes.flatMap((mix) => (mix.kind === "spray" ? [sprayForGround(mix.carrier, mix.lawns)] : [])));
    expect(total(plan.fills.flatMap(({ parts }) => parts.filter((part) => part.visitId === visitId).map(({ finished }) => finished)))).toBe(planned);
  }
  const out = total(plan.fills.flatMap(({ parts, toLine }) => [toLine, ...parts.map(({ finished }) => finished)])) + total(plan.mixes.map(({ end }) => end.left));
  expect(out).toBe(total(plan.fills.map(({ finished }) => finished)));
}

test("what each stop sprays is what its ground takes, and with line and rest it is what was mixed", () => {
  fc.assert(
    fc.property(questionArbitrary, (question) => {
      const plan = planTanks(question);
      fc.pre(!isRefused(plan));
      expectAllSprayed(question, plan);
    }),
  );
});

test("a tank that rests while others are sprayed is filled for its next stop by what the truck may carry there, not by what it carried on the way", () => {
  const at = (name: string, what: number, area: bigint) => truckStop(name, TREATMENTS[what] ?? [], area, { water: "yes" });
  const stops = [at("v0", 0, 500n), at("v1", 2, 500n), at("v2", 0, 16_367n), at("v3", 3, 71_350n), at("v4", 2, 4_367n)];
  const question = tankQuestion(stops, {
    truck: { name: "Truck 1", payload: of("lb", 300n), staysAboard: of("lb", 0n) },
    settings: { ...tankQuestion([]).settings, tankLoads: "same-size-every-time", lineAtTheEnd: "left-as-it-is" },
    lastHeld: new Map([[SPRAYER.equipmentId, "clean"], ["backpack", "clean"]]),
  });
  const plan = planTanks(question);
  expectAllSprayed(question, plan);
  expect(plan.fills.filter(({ gear }) => gear === backpack).map(({ visitIds }) => visitIds)).toEqual([["v1"], ["v4"], ["v4"]]);
});

function sprayOfStop({ mixes }: TreatedStop): SprayMix {
  const mix = mixes.find((one): one is SprayMix => one.kind === "spray");
  if (mix === undefined) throw new Error("Iron is sprayed.");
  return mix;
}

interface Drawn {
  readonly finished: Quantity<"volume">;
  readonly products: readonly { readonly productId: string; readonly amount: Quantity<"mass" | "volume"> }[];
}

/** Of each stop, the product that comes out of its fills, exactly, and what the label's highest rate is on its ground. */
function expectWithinLabel(stops: readonly TreatedStop[], drawnAt: (visitId: string) => readonly (readonly [drawn: bigint, fill: Drawn])[]) {
  for (const { visitId, mixes, treatments } of stops) {
    for (const mix of mixes) {
      if (mix.kind !== "spray") continue;
      const ground = sum("area", mix.lawns.map(({ treatedArea }) => treatedArea));
      for (const { line } of mix.products) {
        const treatment = treatments.find((one) => one.line === line);
        const most = treatment === undefined ? ZERO : rational(treatment.use.rates.high.amount * ground.amount, treatment.use.rates.high.per);
        const down = drawnAt(visitId).reduce((so, [drawn, { finished, products }]) => {
          const inFill = products.find(({ productId }) => productId === treatment?.productId)?.amount.amount ?? 0n;
          return addRational(so, rational(drawn * inFill, finished.amount));
        }, ZERO);
        expect(compareRational(down, most) <= 0).toBe(true);
      }
    }
  }
}

const RATES = ["1", "1.37", "1.9", "2"];
/** None below a rate: a plan above its label is held. */
const HIGHS = ["2", "2.05", "2.4"];
const irons = fc.record({ rate: fc.constantFrom(...RATES), highs: fc.array(fc.constantFrom(...HIGHS), { minLength: 12, maxLength: 12 }), areas: fc.array(fc.bigInt(40n, 9_000n), { minLength: 1, maxLength: 12 }), mark: fc.constantFrom("0.1", "0.5", "1"), cup: fc.constantFrom("0.01", "0.5", "1", "none" as const) });

test("no stop gets more than its own label's highest rate on its ground, out of the fills of a route or out of one fill for its visits", () => {
  fc.assert(
    fc.property(irons, fc.constantFrom("same-size-every-time" as const, "full-tanks-then-a-short-one" as const), fc.constantFrom("yes" as const, "no" as const), fc.bigInt(3n, 30n), (asked, loads, water, gallons) => {
      const tool = asked.cup === "none" ? "none" : { name: "cup", mark: exactly("fl oz", asked.cup) };
      const gear = { ...SPRAYER, capacity: of("gal", gallons) };
      const treatment = { ...IRON, gear, tool, rate: rateOf("product-volume-per-area", asked.rate, "fl oz per 1,000 sq ft") } as const;
      const stops = asked.areas.map((area, index) => truckStop(`v${String(index)}`, [upTo(treatment, asked.highs[index] ?? "2")], area, { water }));
      const tankMark = exactly("gal", asked.mark);
      const plan = planTanks(tankQuestion(stops, { settings: { tankLoads: loads, tankMark, lineAtTheEnd: "pushed-out-with-water" } }));
      expect(plan.fills.length).toBeGreaterThan(0);
      expectWithinLabel(stops, (visitId) => plan.fills.flatMap((fill) => fill.parts.filter((part) => part.visitId === visitId).map(({ finished }) => [finished.amount, fill] as const)));
      const asOne = stops.map((stop) => fillStopOf(stop.visitId, sprayOfStop(stop), () => stop.treatments[0] ?? treatment));
      const fill = valueOf(planFill(asOne, { name: "Truck 1", capacity: of("gal", 200n), mark: tankMark }, () => (tool === "none" ? undefined : tool)));
      expectWithinLabel(stops, (visitId) => asOne.filter((one) => one.visitId === visitId).map(({ finished }) => [finished.amount, fill]));
    }),
    { numRuns: 60 },
  );
});

test("forty small lawns at the highest rate are one fill within the label, with less than a mark over", () => {
  const most = { ...IRON, rate: rateOf("product-volume-per-area", "2", "fl oz per 1,000 sq ft") };
  const plan = planTanks(tankQuestion(Array.from({ length: 40 }, (_unused, index) => truckStop(`v${String(index)}`, [most], 367n))));
  // 14,680 sq ft take 22.02 gal; 2 fl oz in 1.5 gal are 29.47 in 22.1.
  expect(plan.fills).toMatchObject([{ finished: of("gal", "22.1"), products: [{ amount: of("fl oz", 29n) }] }]);
});

test("drawing what the plan says from its fill is no more than the label allows on the record", () => {
  const most = { ...IRON, rate: rateOf("product-volume-per-area", "2", "fl oz per 1,000 sq ft"), tool: { name: "fine cup", mark: exactly("fl oz", "0.01") } };
  const stop = truckStop("a", [most], 2500n);
  const [fill] = planTanks(tankQuestion([stop])).fills;
  const [mix] = stop.mixes;
  if (fill === undefined || mix?.kind !== "spray") throw new Error("Iron is filled.");
  expect(fill.parts).toEqual([{ visitId: "a", finished: of("gal", "3.75") }]);
  const lots = fill.products.map(({ productId, amount }) => ({ lotId: productId, amount: amount.amount }));
  const { lots: [iron] } = drawFromFill({ finished: fill.finished, lots, drawn: of("gal", 0n) }, of("gal", "3.75"), "fill 1");
  expect(sharePutDown(most, { dimension: "volume", amount: iron?.amount ?? 0n }, mix.lawns).findings).toEqual([]);
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

/** What a tank may hold in the morning: nothing, nobody knows what, or so much of a fill with so much iron in each gallon. */
const inMorning = fc.oneof(
  fc.constantFrom("clean" as const, "unknown" as const),
  fc.record({ left: fc.oneof(fc.constant("unknown" as const), fc.bigInt(0n, 100n)), perGallon: fc.constantFrom("1", "0.6666", "0.5"), isUnderWay: fc.boolean() }),
);
const heldBy = (morning: typeof inMorning extends fc.Arbitrary<infer T> ? T : never, capacity: bigint): LastHeld => {
  if (typeof morning === "string") return morning;
  const left = morning.left === "unknown" ? "unknown" : of("gal", morning.left < capacity ? morning.left : capacity);
  const iron = { productId: IRON.productId, productName: "Rustwater Iron", label: IRON.label, amount: of("fl oz", String(Number(morning.perGallon) * 100)) };
  return { name: "fill 7", finished: of("gal", 100n), products: [iron], left, isUnderWay: morning.isUnderWay, isOfThatDay: false, filledOnto: [] };
};

const GALLON = Number(of("gal", 1n).amount);
const POUND = Number(of("lb", 1n).amount);
/** A pound of water is 0.1198 gal; all mixes here are more than 0.98 water. */
const POUNDS_A_GALLON = 8.3;

test("with whatever the tanks hold in the morning and however little the truck may carry, tanks and lawns add up and the heaviest load is told", () => {
  const payload = fc.oneof(fc.constant(null), fc.bigInt(20n, 2500n));
  fc.assert(
    fc.property(questionArbitrary, inMorning, inMorning, payload, (clean, truckTank, backTank, pounds) => {
      const question: TankPlanQuestion = {
        ...clean,
        truck: { name: "Truck 1", payload: pounds === null ? null : of("lb", pounds), staysAboard: of("lb", 0n) },
        lastHeld: new Map([[SPRAYER.equipmentId, heldBy(truckTank, 100n)], ["backpack", heldBy(backTank, 4n)]]),
      };
      const plan = planTanks(question);
      for (const [index, { visitId, tanks }] of plan.aboard.entries()) {
        expect(visitId).toBe(question.stops[index]?.visitId);
        const water = tanks.reduce((sum, { arrives }) => sum + Number(arrives.amount) / GALLON, 0);
        expect(Number(plan.heaviest.weight.amount) / POUND).toBeGreaterThanOrEqual(Number(question.dryWeights[index]?.amount ?? 0n) / POUND + water * POUNDS_A_GALLON * 0.98 - 0.01);
      }
      const isSaid = plan.found.some(({ finding }) => finding.rule === "above-payload");
      expect(isSaid).toBe(pounds !== null && Number(plan.heaviest.weight.amount) > Number(pounds) * POUND);
      if (isRefused(plan)) return;
      for (const gear of [SPRAYER, backpack]) {
        const sprays = question.stops.flatMap(({ mixes }) => mixes.flatMap((mix) => (mix.kind === "spray" && mix.gearName === gear.name ? [sprayForGround(mix.carrier, mix.lawns)] : [])));
        const fills = plan.fills.filter((fill) => fill.gear.equipmentId === gear.equipmentId);
        const mixes = plan.mixes.filter((mix) => mix.gear.equipmentId === gear.equipmentId);
        const came = total(mixes.map(({ already }) => already)) + total(fills.map(({ finished }) => finished));
        // A line that held something else, and that no water pushes out at the end, keeps of the mix what it holds.
        const stays = mixes.map(({ begin, end }) => (begin.line === "holds-this-mix" || begin.line === "runs-on" || end.inLine === "unknown" ? 0n : end.inLine.amount));
        expect(came).toBe(total(sprays) + stays.reduce((sum, one) => sum + one, 0n) + total(mixes.map(({ end }) => end.left)));
        for (const { end } of mixes) expect(total([...end.way.sites.map(({ mix }) => mix), end.way.toShop])).toBe(end.left.amount + (end.inLine === "unknown" ? 0n : end.inLine.amount) - carriedOn(mixes, end));
      }
    }),
    { numRuns: 200 },
  );
});

/** What the next mix's first lawn gets out of the line needs no other place. */
function carriedOn(mixes: ReturnType<typeof planTanks>["mixes"], end: ReturnType<typeof planTanks>["mixes"][number]["end"]): bigint {
  const next = mixes[mixes.findIndex((mix) => mix.end === end) + 1];
  return next?.begin.line === "runs-on" && end.inLine !== "unknown" ? end.inLine.amount : 0n;
}

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
