import fc from "fast-check";
import { expect, test } from "vitest";
import { loadMarks, unworkable } from "#domain/mixing/load-marks";
import { of } from "#domain/quantities/quantity";
import { SPRAYER } from "../../support/ticket";

test("as few loads as the tank takes, as equal as marks go, or full tanks and a short one", () => {
  expect(loadMarks(45n, 20n, "same-size-every-time")).toEqual([15n, 15n, 15n]);
  expect(loadMarks(46n, 20n, "same-size-every-time")).toEqual([16n, 15n, 15n]);
  expect(loadMarks(45n, 20n, "full-tanks-then-a-short-one")).toEqual([20n, 20n, 5n]);
  expect(loadMarks(20n, 20n, "full-tanks-then-a-short-one")).toEqual([20n]);
});

test("loads add up to all marks, and none holds more than a tank", () => {
  fc.assert(
    fc.property(fc.bigInt(1n, 5000n), fc.bigInt(1n, 900n), fc.constantFrom("same-size-every-time" as const, "full-tanks-then-a-short-one" as const), (marks, mostMarks, how) => {
      const loads = loadMarks(marks, mostMarks, how);
      expect(loads.reduce((total, load) => total + load, 0n)).toBe(marks);
      expect(loads.every((load) => load > 0n && load <= mostMarks)).toBe(true);
      expect(loads).toHaveLength(Number((marks + mostMarks - 1n) / mostMarks));
    }),
  );
});

test("a tank without a mark and more fillings than any day takes are held", () => {
  const rules = (marks: bigint, perTank: bigint) => unworkable({ ...SPRAYER, capacity: of("gal", "0.05") }, marks, perTank).map(({ level, rule }) => `${level} ${rule}`);
  expect([rules(5n, 0n), rules(201n, 1n), rules(200n, 1n)]).toEqual([["hold tank-smaller-than-a-mark"], ["hold too-many-loads"], []]);
});
