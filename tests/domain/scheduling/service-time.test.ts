import { expect, test } from "vitest";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { of } from "#domain/quantities/quantity";
import { serviceMinutesOf } from "#domain/scheduling/service-time";

test.each([
  [0n, 8],
  [1n, 9],
  [1000n, 12],
  [5000n, 28],
  [5001n, 29],
  [10_000_000n, 1440],
])("%s sq ft take %i minutes, rounded up and at most a day", (squareFeet, minutes) => {
  expect(serviceMinutesOf(of("sq ft", squareFeet), DEFAULT_HOUSE_SETTINGS)).toBe(minutes);
});

test("a visit takes a minute at least, and a setting is whole minutes", () => {
  expect(serviceMinutesOf(of("sq ft", 0n), { minutesPerStop: 0, minutesPerThousandSquareFeet: 4 })).toBe(1);
  expect(() => serviceMinutesOf(of("sq ft", 1000n), { minutesPerStop: 8, minutesPerThousandSquareFeet: 4.5 })).toThrow();
});
