import { expect, test } from "vitest";
import { amountOf, amountOrNone, keptOrTyped, quantityOf, shown, shownOrNone } from "#application/equipment/typed-amount";
import { of, zero } from "#domain/quantities/quantity";

test("what a schema has let through becomes whole canonical units", () => {
  expect(amountOf("capacity", "100 gal", "volume")).toBe(of("gal", 100n).amount);
  expect(amountOrNone("swath", "6 ft 6 in", "length")).toBe(of("ft", "6.5").amount);
  expect(amountOrNone("swath", "", "length")).toBeNull();
  expect(quantityOf("pumpHolds", "0 gal", "volume")).toEqual(zero("volume"));
});

test("what no schema lets through is a defect", () => {
  expect(() => amountOf("capacity", "much", "volume")).toThrow("the schema has read capacity");
  expect(() => amountOf("capacity", "0 gal", "volume")).toThrow("the schema has read capacity");
  expect(() => quantityOf("pumpHolds", "3 lb", "volume")).toThrow("the schema has read pumpHolds");
});

test("an amount is shown in the unit that suits its size, an unknown one not at all", () => {
  expect(shown("volume", of("gal", 100n).amount)).toBe("100 gal");
  expect(shownOrNone("mass", of("lb", 1850n).amount)).toBe("1,850 lb");
  expect(shownOrNone("mass", null)).toBeNull();
});

test("an amount that comes back as it was shown is kept; another is read", () => {
  const kept: bigint | null = of("gal", "3.0599").amount;
  const read = () => of("gal", 4n).amount;
  expect(keptOrTyped<bigint | null>("volume", kept, "3.06 gal", read)).toBe(kept);
  expect(keptOrTyped<bigint | null>("volume", kept, "4 gal", read)).toBe(of("gal", 4n).amount);
  expect(keptOrTyped<bigint | null>("volume", null, "", read)).toBeNull();
  expect(keptOrTyped<bigint | null>("volume", null, "4 gal", read)).toBe(of("gal", 4n).amount);
});
