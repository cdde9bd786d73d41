import { expect, test } from "vitest";
import { annualNitrogenRanges } from "#domain/turf/annual-nitrogen";
import { GRASS_NAMES, isGrass, seasonOf } from "#domain/turf/grass";

test("every grass of the nitrogen tables is one that a lawn can have", () => {
  for (const { grass } of annualNitrogenRanges) expect(GRASS_NAMES).toContain(grass);
});

test("a name that is no grass is none, whatever an object inherits", () => {
  expect(isGrass("tall fescue")).toBe(true);
  expect(isGrass("Tall Fescue")).toBe(false);
  expect(isGrass("constructor")).toBe(false);
});

test("a mixture with any cool-season grass takes a cool-season lawn's care", () => {
  expect(seasonOf(["tall fescue", "Kentucky bluegrass"])).toBe("cool");
  expect(seasonOf(["bermudagrass"])).toBe("warm");
  expect(seasonOf(["bermudagrass", "perennial ryegrass"])).toBe("cool");
});
