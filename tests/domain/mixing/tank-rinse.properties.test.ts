import fc from "fast-check";
import { expect, test } from "vitest";
import { sprayForGround } from "#domain/mixing/spray-mix";
import { planTanks } from "#domain/mixing/tank-plan";
import { type LastHeld } from "#domain/mixing/tank-plan-question";
import { exactly } from "#domain/quantities/exact-quantity";
import { of, sum } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { addRational, compareRational, multiplyRational, type Rational, rational, subtractRational, ZERO } from "#domain/quantities/rational";
import { IRON, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop, upTo } from "../../support/truck-stops";

const total = (volumes: readonly { readonly amount: bigint }[]) => volumes.reduce((all, { amount }) => all + amount, 0n);

interface Content {
  volume: bigint;
  product: Rational;
}

/** So much off the front of what flows through pump and hose, which keeps its order. */
function runOut(line: Content[], volume: bigint): Rational {
  let [rest, product] = [volume, ZERO];
  for (let front = line[0]; front !== undefined && rest > 0n; front = line[0]) {
    const taken = front.volume < rest ? front.volume : rest;
    const part = multiplyRational(front.product, rational(taken, front.volume));
    product = addRational(product, part);
    rest -= taken;
    if (taken === front.volume) line.shift();
    else line[0] = { volume: front.volume - taken, product: subtractRational(front.product, part) };
  }
  return product;
}

interface InMorning {
  readonly tank: Content;
  readonly line: Content;
  /** What the first stops get out of that tank before it is filled. */
  readonly draws: readonly { readonly visitId: string; readonly volume: bigint }[];
}

/** The iron that each stop gets out of fills that run into one another in tank and line, and what is left in both at the end. */
function sprayedFrom(fills: ReturnType<typeof planTanks>["fills"], { tank: before, line: inLine, draws }: InMorning) {
  const tank = { ...before };
  const line = inLine.volume > 0n ? [inLine] : [];
  const down = new Map<string, Rational>();
  const pump = (volume: bigint) => {
    const part = multiplyRational(tank.product, rational(volume, tank.volume));
    line.push({ volume, product: part });
    [tank.volume, tank.product] = [tank.volume - volume, subtractRational(tank.product, part)];
    return runOut(line, volume);
  };
  const spray = (visitId: string, volume: bigint) => down.set(visitId, addRational(down.get(visitId) ?? ZERO, pump(volume)));
  for (const { visitId, volume } of draws) if (volume > 0n) spray(visitId, volume);
  for (const { finished, products, toLine, parts } of fills) {
    [tank.volume, tank.product] = [tank.volume + finished.amount, addRational(tank.product, rational(products[0]?.amount.amount ?? 0n))];
    if (toLine.amount > 0n) pump(toLine.amount);
    for (const part of parts) spray(part.visitId, part.finished.amount);
  }
  const left = [tank, ...line].reduce((all, one) => ({ volume: all.volume + one.volume, product: addRational(all.product, one.product) }), { volume: 0n, product: ZERO });
  return { down, left };
}

function heldOf(fluidOunces: string): LastHeld {
  return {
    name: "fill 7", finished: of("gal", 2n), left: of("gal", 1n), isUnderWay: false, isOfThatDay: false, filledOnto: [],
    products: [{ productId: IRON.productId, productName: "Rustwater Iron", label: IRON.label, amount: of("fl oz", fluidOunces) }],
  };
}

const rests = fc.record({
  rate: fc.constantFrom("1", "1.25", "1.37", "1.9"),
  areas: fc.array(fc.bigInt(40n, 4_000n), { minLength: 1, maxLength: 6 }),
  highs: fc.array(fc.constantFrom("1.9", "2", "2.2"), { minLength: 6, maxLength: 6 }),
  /** In fluid ounces, in each 2 gal that the tank was filled with before. */
  held: fc.constantFrom("none" as const, "1.4", "1.75", "2", "2.6", "2.9"),
  mark: fc.constantFrom("0.1", "0.5", "1"),
  cup: fc.constantFrom("0.01", "0.5", "1"),
  gallons: fc.bigInt(3n, 12n),
  holdUp: fc.constantFrom("0.1", "0.2", "1.011", "1.05"),
  water: fc.constantFrom("yes" as const, "no" as const),
});

test("with what the tank held and with the rinse water of what is left no stop gets more than its label's highest rate, by what is really in tank, pump and hose", () => {
  fc.assert(
    fc.property(rests, ({ rate, areas, highs, held, mark, cup, gallons, holdUp, water }) => {
      const gear = { ...SPRAYER, capacity: of("gal", gallons), holdUp: of("gal", holdUp) };
      const treatment = { ...IRON, gear, rate: rateOf("product-volume-per-area", rate, "fl oz per 1,000 sq ft"), tool: { name: "cup", mark: exactly("fl oz", cup) } };
      const stops = areas.map((area, index) => truckStop(`v${String(index)}`, [upTo(treatment, highs[index] ?? "2")], area, { water }));
      const plan = planTanks(
        tankQuestion(stops, {
          settings: { tankLoads: "full-tanks-then-a-short-one", tankMark: exactly("gal", mark), lineAtTheEnd: "left-as-it-is" },
          lastHeld: new Map([[gear.equipmentId, held === "none" ? "clean" : heldOf(held)]]),
        }),
      );
      const [mix] = plan.mixes;
      const heldContent = (volume: bigint): Content => ({ volume, product: held === "none" ? ZERO : rational(of("fl oz", held).amount * volume, of("gal", 2n).amount) });
      const isHeldInLine = mix?.begin.line === "holds-this-mix" || mix?.begin.line === "runs-on";
      const draws = stops.map(({ visitId, mixes }) => {
        const planned = total(mixes.flatMap((one) => (one.kind === "spray" ? [sprayForGround(one.carrier, one.lawns)] : [])));
        return { visitId, volume: planned - total(plan.fills.flatMap(({ parts }) => parts.filter((part) => part.visitId === visitId).map(({ finished }) => finished))) };
      });
      const line: Content = isHeldInLine ? heldContent(gear.holdUp.amount) : { volume: gear.holdUp.amount, product: ZERO };
      const { down, left } = sprayedFrom(plan.fills, { tank: heldContent(mix?.already.amount ?? 0n), line, draws });
      expect(left.volume).toBe((mix?.end.left.amount ?? 0n) + gear.holdUp.amount);
      for (const { visitId, treatments, mixes } of stops) {
        const high = treatments[0]?.use.rates.high;
        const [spray] = mixes;
        if (high === undefined || spray?.kind !== "spray") throw new Error("Iron is sprayed.");
        const most = rational(high.amount * sum("area", spray.lawns.map(({ treatedArea }) => treatedArea)).amount, high.per);
        const more = total(mix?.end.way.sites.filter((site) => site.visitId === visitId).map((site) => site.mix) ?? []);
        const withMore = (volume: bigint) => addRational(down.get(visitId) ?? ZERO, multiplyRational(left.product, rational(volume, left.volume)));
        expect(compareRational(withMore(more), most) <= 0).toBe(true);
        // Out of one fill it is all that there is room for.
        if (held === "none" && plan.fills.length === 1 && visitId === mix?.end.visitId && mix.end.way.toShop.amount > 0n) expect(compareRational(withMore(more + 1n), most)).toBe(1);
      }
    }),
    { numRuns: 200 },
  );
});
