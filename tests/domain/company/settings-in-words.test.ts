import { expect, test } from "vitest";
import { GRANULAR_PASSES, LINES_AT_THE_END, TANK_LOADS } from "#domain/company/house-settings";
import { GRANULAR_PASSES_WORDS, LINE_AT_THE_END_WORDS, TANK_LOADS_WORDS } from "#domain/company/settings-in-words";

test("every way to work has words of its own", () => {
  const words = [...GRANULAR_PASSES.map((one) => GRANULAR_PASSES_WORDS[one]), ...TANK_LOADS.map((one) => TANK_LOADS_WORDS[one]), ...LINES_AT_THE_END.map((one) => LINE_AT_THE_END_WORDS[one])];
  expect(words.every((one) => one.length > 0)).toBe(true);
  expect(new Set(words).size).toBe(6);
});
