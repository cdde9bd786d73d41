import { expect, test } from "vitest";
import { densityOfRate, readCaughtLiquid } from "#domain/equipment/caught-liquid";
import { densityOf } from "#domain/quantities/density";
import { refusalOf, valueOf } from "../../support/domain-answers";

const UAN = densityOf("10.65", "lb per gal");

test("water, water for a heavier spray, and that spray itself; nothing said is water", () => {
  expect(valueOf(readCaughtLiquid({}))).toEqual({ kind: "the-spray-itself" });
  expect(valueOf(readCaughtLiquid({ liquid: "as-water", sprayDensity: "" }))).toEqual({ kind: "the-spray-itself" });
  expect(valueOf(readCaughtLiquid({ liquid: "water-for-heavier", sprayDensity: "10.65 lb per gal" }))).toEqual({ kind: "water-for-a-spray", sprayDensity: UAN });
  expect(valueOf(readCaughtLiquid({ liquid: "heavier-itself", sprayDensity: "10.65 lb per gal" }))).toEqual({ kind: "the-spray-itself", density: UAN });
});

test("the rate is of the spray, whichever of the two was caught", () => {
  expect(densityOfRate({ kind: "the-spray-itself" })).toBe("water");
  expect(densityOfRate({ kind: "the-spray-itself", density: UAN })).toEqual(UAN);
  expect(densityOfRate({ kind: "water-for-a-spray", sprayDensity: UAN })).toEqual(UAN);
});

test.each([
  [{ liquid: "water-for-heavier" }, "missing-fact"],
  [{ liquid: "heavier-itself", sprayDensity: "" }, "missing-fact"],
  [{ liquid: "as-water", sprayDensity: "10 lb per gal" }, "bad-input"],
  [{ liquid: "heavier-itself", sprayDensity: "heavy" }, "bad-input"],
  [{ liquid: "water-for-heavier", sprayDensity: "1.28 lb per gal" }, "bad-input"],
] as const)("%o is refused at the density", (typed, kind) => {
  expect(refusalOf(readCaughtLiquid(typed))).toMatchObject({ kind, field: "sprayDensity" });
});
