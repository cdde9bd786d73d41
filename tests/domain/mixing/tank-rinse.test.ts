import { expect, test } from "vitest";
import { placeRinsate, rinseOf, roomAtStop } from "#domain/mixing/tank-rinse";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { type SprayRate } from "#domain/label/label-facts";
import { FEED, IRON, SPRAYER } from "../../support/ticket";

const MARK = exactly("gal", "0.5");

test("a rinse is a tenth of the tank, or what pump and hose hold where that is more, up to a mark; a clean-out is three", () => {
  expect(rinseOf(SPRAYER, "rinse", MARK)).toEqual({ times: 1, waterEach: of("gal", 10n), water: of("gal", 10n) });
  expect(rinseOf({ capacity: of("gal", 25n), holdUp: of("gal", "3.1") }, "clean-out", MARK)).toEqual({ times: 3, waterEach: of("gal", "3.5"), water: of("gal", "10.5") });
  expect(rinseOf({ capacity: of("gal", 4n), holdUp: of("gal", 6n) }, "rinse", MARK).water).toEqual(of("gal", 4n));
  expect(rinseOf({ capacity: of("gal", 100n), holdUp: "unknown" }, "rinse", MARK).water).toEqual(of("gal", 10n));
});

// Ground that takes 30 gal at 1.5 gal per 1,000 sq ft.
const drawOf = (treatments: Parameters<typeof roomAtStop>[0]["treatments"]) => ({ finished: of("gal", 30n), ground: of("sq ft", 20_000n), treatments });
const perGallon = (fluidOunces: string) => rateOf("product-volume-per-spray-volume", fluidOunces, "fl oz per gal");
const iron = (fluidOunces: string) => new Map<string, SprayRate>([["iron", perGallon(fluidOunces)]]);

test("a stop has room for what its label's highest rate leaves above what is really in the mix, the least of its products", () => {
  // At most 2 fl oz per 1,000 sq ft are 40 fl oz there: 40 gal of 1 fl oz a gallon, of which 30 are down; 32 gal of 1.25.
  expect(roomAtStop(drawOf([IRON]), iron("1"), null)).toBe(of("gal", 10n).amount);
  expect(roomAtStop(drawOf([IRON]), iron("1.25"), null)).toBe(of("gal", 2n).amount);
  expect(roomAtStop(drawOf([IRON]), iron("1.4"), null)).toBe(0n);
  const kelp = { ...IRON, productId: "kelp" };
  const both = (fluidOunces: string) => new Map<string, SprayRate>([...iron("1"), ["kelp", perGallon(fluidOunces)]]);
  expect(roomAtStop(drawOf([IRON, kelp]), both("1.25"), null)).toBe(of("gal", 2n).amount);
  expect(roomAtStop(drawOf([IRON, kelp]), both("0.5"), null)).toBe(of("gal", 10n).amount);
});

test("a product that is not in the mix, or by another measure than its label's, leaves no room", () => {
  expect(roomAtStop(drawOf([IRON]), new Map(), null)).toBe(0n);
  expect(roomAtStop(drawOf([{ ...IRON, rate: rateOf("product-mass-per-area", "1", "lb per 1,000 sq ft") }]), iron("1"), null)).toBe(0n);
  expect(roomAtStop(drawOf([{ ...FEED, productId: "iron", use: IRON.use }]), iron("1"), null)).toBe(0n);
});

test("what comes out of the hose first is down already, as strong as it was", () => {
  // 3 gal of 2 fl oz and 27 of 1 leave 7 of the 40 fl oz.
  expect(roomAtStop(drawOf([IRON]), iron("1"), { volume: of("gal", 3n).amount, strengths: iron("2") })).toBe(of("gal", 7n).amount);
  expect(roomAtStop(drawOf([IRON]), iron("1"), { volume: of("gal", 3n).amount, strengths: new Map() })).toBe(of("gal", 13n).amount);
});

test("what is left goes to the stops in turn, no room counts twice, and the rest goes to the shop", () => {
  const sites = [{ visitId: "a", room: 4n }, { visitId: "b", room: 0n }, { visitId: "c", room: 5n }];
  const cursor = { at: 0 };
  const mix = (amount: bigint) => ({ dimension: "volume", amount });
  expect(placeRinsate(3n, sites, cursor)).toEqual({ sites: [{ visitId: "a", mix: mix(3n) }], toShop: mix(0n) });
  expect(placeRinsate(9n, sites, cursor)).toEqual({ sites: [{ visitId: "a", mix: mix(1n) }, { visitId: "c", mix: mix(5n) }], toShop: mix(3n) });
  expect(placeRinsate(1n, sites, cursor)).toEqual({ sites: [], toShop: mix(1n) });
});
