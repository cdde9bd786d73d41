import { describe, expect, test } from "vitest";
import { type Unit, units } from "#domain/quantities/units";
import { published } from "../support/published-check";
import { UNIT_CHECKS, UNITS_PRINTED } from "./checks/unit-checks";

describe("published units", () => {
  test.each(published(UNIT_CHECKS))("$title", ({ run }) => run());
});

test("every unit stands in a published row, but for those that are powers of ten of one that does", () => {
  const powersOfTen: readonly Unit[] = ["mL", "L", "m3", "g", "kg", "m2", "mm", "cm", "m"];
  const covered = new Set<string>([...powersOfTen, ...UNITS_PRINTED]);
  expect(Object.keys(units).filter((unit) => !covered.has(unit))).toEqual([]);
});
