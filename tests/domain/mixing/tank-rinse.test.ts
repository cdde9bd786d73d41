import { expect, test } from "vitest";
import { placeRinsate, rinseOf, roomAtStop } from "#domain/mixing/tank-rinse";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { FEED, IRON, SPRAYER } from "../../support/ticket";

const MARK = exactly("gal", "0.5");

test("a rinse is a tenth of the tank, or what pump and hose hold where that is more, up to a mark; a clean-out is three", () => {
  expect(rinseOf(SPRAYER, "rinse", MARK)).toEqual({ times: 1, waterEach: of("gal", 10n), water: of("gal", 10n) });
  expect(rinseOf({ capacity: of("gal", 25n), holdUp: of("gal", "3.1") }, "clean-out", MARK)).toEqual({ times: 3, waterEach: of("gal", "3.5"), water: of("gal", "10.5") });
  expect(rinseOf({ capacity: of("gal", 4n), holdUp: of("gal", 6n) }, "rinse", MARK).water).toEqual(of("gal", 4n));
  expect(rinseOf({ capacity: of("gal", 100n), holdUp: "unknown" }, "rinse", MARK).water).toEqual(of("gal", 10n));
});

test("a stop has room for what its label's highest rate leaves above the plan, the least of its products", () => {
  // 1.5 of at most 2 fl oz per 1,000 sq ft: a third more of 30 gal.
  expect(roomAtStop(of("gal", 30n), [IRON])).toBe(of("gal", 10n).amount);
  expect(roomAtStop(of("gal", 30n), [IRON, { ...IRON, rate: IRON.use.rates.high }])).toBe(0n);
  expect(roomAtStop(of("gal", 30n), [{ ...IRON, rate: rateOf("product-mass-per-area", "1", "lb per 1,000 sq ft") }])).toBe(0n);
  expect(roomAtStop(of("gal", 30n), [{ ...FEED, use: IRON.use }])).toBe(0n);
});

test("what is left goes to the stops in turn, no room counts twice, and the rest goes to the shop", () => {
  const sites = [{ visitId: "a", room: 4n }, { visitId: "b", room: 0n }, { visitId: "c", room: 5n }];
  const cursor = { at: 0 };
  const mix = (amount: bigint) => ({ dimension: "volume", amount });
  expect(placeRinsate(3n, sites, cursor)).toEqual({ sites: [{ visitId: "a", mix: mix(3n) }], toShop: mix(0n) });
  expect(placeRinsate(9n, sites, cursor)).toEqual({ sites: [{ visitId: "a", mix: mix(1n) }, { visitId: "c", mix: mix(5n) }], toShop: mix(3n) });
  expect(placeRinsate(1n, sites, cursor)).toEqual({ sites: [], toShop: mix(1n) });
});
