import { expect, test } from "vitest";
import { rinsateAlong } from "#domain/mixing/rinsate-aboard";

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
