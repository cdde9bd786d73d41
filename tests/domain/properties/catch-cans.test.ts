import { describe, expect, test } from "vitest";
import { depthPerHour, readCatchCans } from "#domain/properties/catch-cans";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { of } from "#domain/quantities/quantity";
import { refusalOf, valueOf } from "../../support/domain-answers";

test("the average of the cans over the minutes is the rate: 0.24 in in 20 minutes are 0.72 in an hour", () => {
  const test = valueOf(readCatchCans("0.2, 0.24 in; 0.28", "20"));
  expect(test).toEqual({ averageDepth: of("in", "0.24"), minutes: 20, cans: 3 });
  expect(formatQuantityIn(depthPerHour(test), "in", 2)).toBe("0.72 in");
});

test("an empty can counts, and other units of length are read", () => {
  expect(valueOf(readCatchCans("0, 6 mm\n12 mm", "15"))).toEqual({ averageDepth: of("mm", 6n), minutes: 15, cans: 3 });
});

describe("refused", () => {
  test.each([
    ["0.2, 0.3", "20", "depths"], ["", "20", "depths"], ["0, 0, 0", "20", "depths"], ["0.2, some, 0.3", "20", "depths"],
    ["0.2, 0.3, 0.2", "", "minutes"], ["0.2, 0.3, 0.2", "0", "minutes"], ["0.2, 0.3, 0.2", "1441", "minutes"], ["0.2, 0.3, 0.2", "7.5", "minutes"],
  ])("%j in %j minutes: at %s", (depths, minutes, field) => {
    expect(refusalOf(readCatchCans(depths, minutes)).field).toBe(field);
  });
});
