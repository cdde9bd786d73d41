import fc from "fast-check";
import { expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { type ExactValue, of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { amountIn, drawFromFill, fillStopOf, type FillStop, lotsLeftIn, mixFill, mixKeyOf, planFill, productsIn, productsOfAll, visitsThatShare } from "#domain/mixing/tank-fill";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { valueOf } from "../../support/crew";
import { CUP, IRON, QUESTION } from "../../support/ticket";

const IRON_IN_SPRAY = rateOf("product-volume-per-spray-volume", "1", "fl oz per gal");
const TANK = { name: "Truck 1", capacity: of("gal", 100n), mark: exactly("gal", "0.1") };
const perGallon = (fluidOunces: ExactValue) => rateOf("product-volume-per-spray-volume", fluidOunces, "fl oz per gal");
const stop = (visitId: string, gallons: string, concentration = IRON_IN_SPRAY, strongest = concentration): FillStop => ({
  visitId,
  finished: of("gal", gallons),
  products: [{ productId: "iron", productName: "Rustwater Iron", formulation: "soluble liquid", concentration, strongest }],
});
const cup = () => CUP;

test("visits that share their rates share a fill; one at another rate is a fill of its own", () => {
  const stops = [stop("a", "9"), stop("b", "12", perGallon("1.5")), stop("c", "15")];
  expect(visitsThatShare(stops).map((group) => group.map(({ visitId }) => visitId))).toEqual([["a", "c"], ["b"]]);
});

test("one fill for three visits: their volumes together, and the product at its concentration", () => {
  const fill = valueOf(planFill([stop("a", "9"), stop("b", "12"), stop("c", "15")], TANK, cup));
  expect(fill).toMatchObject({ visitIds: ["a", "b", "c"], finished: of("gal", 36n), findings: [] });
  expect(fill.products).toEqual([{ productId: "iron", productName: "Rustwater Iron", amount: of("fl oz", 36n), toolName: CUP.name, marks: 72n }]);
});

test("more than the tank holds is a hold; other mixes and no visit are refused", () => {
  expect(valueOf(planFill([stop("a", "60"), stop("b", "41")], TANK, cup)).findings).toMatchObject([{ level: "hold", rule: "fill-above-capacity" }]);
  expect(planFill([], TANK, cup)).toMatchObject({ ok: false, refusal: { field: "visits" } });
  const other = stop("b", "1", perGallon("2"));
  expect(planFill([stop("a", "1"), other], TANK, cup)).toMatchObject({ ok: false, refusal: { found: "different mixes" } });
});

test("an amount between marks goes to the nearest, and down where that would be stronger than any of the visits lets it be", () => {
  const amountOf = (stops: readonly FillStop[]) => valueOf(planFill(stops, TANK, cup)).products[0]?.amount;
  const [weak, strong] = [stop("a", "4.3"), stop("b", "5", IRON_IN_SPRAY, perGallon("1.5"))];
  expect(amountOf([{ ...strong, finished: of("gal", "9.3") }])).toEqual(of("fl oz", "9.5"));
  expect(amountOf([{ ...weak, finished: of("gal", "9.3") }])).toEqual(of("fl oz", 9n));
  expect([amountOf([strong, weak]), amountOf([weak, strong])]).toEqual([of("fl oz", 9n), of("fl oz", 9n)]);
});

test("what the ground takes together goes up to the next mark once, and not over the tank", () => {
  const finishedOf = (gallons: readonly string[], tank = TANK) => valueOf(planFill(gallons.map((each, index) => stop(String(index), each)), tank, cup)).finished;
  expect(finishedOf(["3.75", "3.75", "3.75"])).toEqual(of("gal", "11.3"));
  expect(finishedOf(["0.3", "0.6"])).toEqual(of("gal", "0.9"));
  expect(finishedOf(["3.75"], { ...TANK, capacity: of("gal", "3.78") })).toEqual(of("gal", "3.78"));
});

test("a product under the first mark of its cup says so, and goes in unrounded", () => {
  const fill = valueOf(planFill([stop("a", "0.2")], TANK, cup));
  expect(fill.products[0]).toMatchObject({ amount: of("fl oz", "0.2"), toolName: CUP.name, marks: null });
  expect(fill.findings).toMatchObject([{ level: "take-care", rule: "below-first-mark", what: "Rustwater Iron for a fill of Truck 1 is less than one mark of the half-ounce cup." }]);
});

test("a fill has the order of work with half of its own water first", () => {
  const fill = mixFill(stop("a", "6"), of("gal", 6n), cup);
  expect(fill.water).toEqual({ dimension: "volume", amount: of("gal", 6n).amount - of("fl oz", 6n).amount });
  expect(fill.steps[0]).toBe("Put in about half of this fill's water (2.98 gal) and start the agitation.");
  expect(mixFill(stop("a", "1", perGallon("200")), of("gal", 1n), cup).water).toEqual(of("gal", 0n));
});

test("the products of no stop are asked for by nobody", () => {
  expect(() => productsOfAll([])).toThrow("a fill serves a stop");
});

test("half of what was sprayed is half of each lot", () => {
  const fill = { finished: of("gal", 40n), drawn: of("gal", 0n), lots: [{ lotId: "one", amount: 100n }, { lotId: "two", amount: 7n }] };
  expect(drawFromFill(fill, of("gal", 20n), "fill 1")).toEqual({
    lots: [{ lotId: "one", amount: 50n }, { lotId: "two", amount: 4n }],
    leftInTank: of("gal", 20n),
    findings: [],
  });
});

test("more sprayed than filled takes what was left and says so", () => {
  const fill = { finished: of("gal", 40n), drawn: of("gal", 30n), lots: [{ lotId: "one", amount: 400n }] };
  const drawn = drawFromFill(fill, of("gal", 12n), "fill 1");
  expect(drawn.lots).toEqual([{ lotId: "one", amount: 100n }]);
  expect(drawn.leftInTank).toEqual(of("gal", 0n));
  expect(drawn.findings).toMatchObject([{ level: "take-care", rule: "more-sprayed-than-filled", figure: "2 gal are not accounted for." }]);
});

test("the draws of an emptied tank add up to what went in, however it was emptied", () => {
  const lots = fc.array(fc.bigInt(1n, 10n ** 15n), { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(lots, fc.array(fc.bigInt(1n, 10n ** 9n), { minLength: 1, maxLength: 12 }), (amounts, draws) => {
      const finished = { dimension: "volume", amount: draws.reduce((total, draw) => total + draw, 0n) } as const;
      const inFill = amounts.map((amount, index) => ({ lotId: String(index), amount }));
      let drawn = 0n;
      const taken = amounts.map(() => 0n);
      for (const draw of draws) {
        const answer = drawFromFill({ finished, lots: inFill, drawn: { dimension: "volume", amount: drawn } }, { dimension: "volume", amount: draw }, "a fill");
        answer.lots.forEach(({ amount }, index) => {
          expect(amount >= 0n).toBe(true);
          taken[index] = (taken[index] ?? 0n) + amount;
        });
        drawn += draw;
      }
      expect(taken).toEqual(amounts);
    }),
  );
});

test("what a mix ticket asks of a fill is what its ground takes, how strong it is and how strong it may become", () => {
  const mix = valueOf(makeMixTicket({ ...QUESTION, treatments: [IRON] })).mixes[0];
  if (mix?.kind !== "spray") throw new Error("Iron is sprayed.");
  const asked = fillStopOf("a", mix, () => IRON);
  // 1.5 of at most 2 fl oz per 1,000 sq ft, in 1.5 gal.
  expect(asked).toEqual({ ...stop("a", "3", IRON_IN_SPRAY, perGallon({ numerator: 4n, denominator: 3n })) });
});

test("a mix is known by products and concentrations, in whatever order and terms they are written", () => {
  const [iron] = stop("a", "1").products;
  const kelp = iron === undefined ? undefined : { ...iron, productId: "kelp", productName: "Kelp Tonic" };
  if (kelp === undefined || iron === undefined) throw new Error("The stop has iron.");
  expect(mixKeyOf({ products: [iron, kelp] })).toBe(mixKeyOf({ products: [kelp, { ...iron, concentration: { ...IRON_IN_SPRAY, amount: IRON_IN_SPRAY.amount * 3n, per: IRON_IN_SPRAY.per * 3n } }] }));
  expect(mixKeyOf({ products: [iron, kelp] })).not.toBe(mixKeyOf({ products: [iron] }));
});

test("what goes into so much spray is its concentration, exactly and to a mark that is not too strong", () => {
  expect(amountIn(IRON_IN_SPRAY, of("gal", "9.3")).exactAmount.numerator * 1n).toBe(of("fl oz", "9.3").amount * amountIn(IRON_IN_SPRAY, of("gal", "9.3")).exactAmount.denominator);
  expect(productsIn(stop("a", "1"), of("gal", "9.3"), cup)).toMatchObject([{ amount: of("fl oz", 9n), marks: 18n }]);
  expect(productsIn(stop("a", "1"), of("gal", "9.3"), () => undefined)).toMatchObject([{ amount: of("fl oz", "9.3"), marks: null }]);
});

test("what is left in a fill is what went in less all draws together, and below nothing gone is more than went in", () => {
  const fill = { finished: of("gal", 40n), lots: [{ lotId: "iron", amount: of("fl oz", 30n).amount }] };
  const left = (gone: bigint) => lotsLeftIn(fill, gone)[0]?.amount;
  expect([0n, of("gal", "9.5").amount, of("gal", 40n).amount, of("gal", 43n).amount].map(left)).toEqual([of("fl oz", 30n).amount, of("fl oz", "22.875").amount, 0n, 0n]);
  expect(left(-of("gal", 4n).amount)).toBe(of("fl oz", 33n).amount);
});
