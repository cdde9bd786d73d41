import { expect, test } from "vitest";
import { TANK_WATER_WORDS, tankWaterOf } from "#domain/properties/tank-water";

test("what nobody has said of water for a tank is unknown, and so is what is no answer", () => {
  expect(["yes", "no", "perhaps", "", null].map(tankWaterOf)).toEqual(["yes", "no", "unknown", "unknown", "unknown"]);
  expect(TANK_WATER_WORDS[tankWaterOf(null)]).toBe("Not on file");
});
