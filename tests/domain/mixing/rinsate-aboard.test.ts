import { expect, test } from "vitest";
import { rinsateAlong, weighRinsate } from "#domain/mixing/rinsate-aboard";
import { of } from "#domain/quantities/quantity";

const run = (rinsate: bigint, ...fillsAtShop: readonly { readonly beginsAt: number; readonly isMidway: boolean }[]) => ({ rinsate, fillsAtShop });

test("rinsate rides to the end of the route where the truck does not come back to the shop", () => {
  expect(rinsateAlong([run(0n), run(30n), run(10n)], 5)).toEqual({ rides: [{ volume: 40n, until: 5 }], atEnds: [0n, 30n, 40n] });
  expect(rinsateAlong([run(0n)], 5)).toEqual({ rides: [], atEnds: [0n] });
});

test("it is left at the shop as soon as the truck is back there, on the way to a stop or in the middle of it", () => {
  const back = { beginsAt: 3, isMidway: false };
  expect(rinsateAlong([run(30n), run(0n, back, { beginsAt: 4, isMidway: false }), run(10n)], 6)).toEqual({ rides: [{ volume: 30n, until: 3 }, { volume: 10n, until: 6 }], atEnds: [30n, 0n, 10n] });
  expect(rinsateAlong([run(30n, { ...back, isMidway: true })], 6)).toEqual({ rides: [{ volume: 30n, until: 4 }], atEnds: [0n] });
});

test("it weighs what water weighs from a stop on, and comes off again", () => {
  const weights = [1n, 1n, 1n];
  const gallon = of("gal", 1n).amount;
  weighRinsate(weights, gallon, 1);
  expect(weights[0]).toBe(1n);
  expect(Number((weights[2] ?? 0n) - 1n) / Number(of("lb", 1n).amount)).toBeCloseTo(8.3454, 4);
  weighRinsate(weights, -gallon, 2);
  expect([weights[1] === 1n, weights[2]]).toEqual([false, 1n]);
  weighRinsate(weights, 0n, 0);
  expect(weights[0]).toBe(1n);
});
