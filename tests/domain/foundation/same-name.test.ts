import { expect, test } from "vitest";
import { isSameName } from "#domain/foundation/same-name";

test.each([
  [" Meadow 24-0-6", "meadow 24-0-6 "],
  ["XR8004", "Xr8004"],
  ["XR8004", " xr  8004 "],
  ["Flat fan, red", "FLAT\u00A0FAN,red"],
  ["Gun tip, 1.5 gal", "gun tip,  1.5 gal"],
])("%j and %j are one name", (left, right) => {
  expect(isSameName(left, right)).toBe(true);
  expect(isSameName(right, left)).toBe(true);
});

test.each([
  ["Meadow 24-0-6", "Meadow 24-0-8"],
  ["Size 1 1", "Size 11"],
  ["XR8004", "XR8003"],
  ["", "XR8004"],
])("%j and %j are two", (left, right) => expect(isSameName(left, right)).toBe(false));
