import { expect, test } from "vitest";
import { isSameIngredient } from "#domain/label/ingredient-name";
import { SUBSTANCES } from "#domain/label/substance-names";

test("each name is one substance's, and all names of a substance are the same ingredient", () => {
  const all = SUBSTANCES.flatMap((substance) => [...substance.names, ...substance.chemicalNames].map((name) => ({ substance, name })));
  expect(all.length).toBeGreaterThan(40);
  for (const one of all) {
    const same = all.filter(({ name }) => isSameIngredient(one.name, name));
    expect([...new Set(same.map(({ substance }) => substance))], one.name).toEqual([one.substance]);
    expect(same.length, one.name).toBe(one.substance.names.length + one.substance.chemicalNames.length);
  }
});

test("an isomer stands apart from the mixture that has it", () => {
  expect(isSameIngredient("MCPP-p", "Mecoprop-P")).toBe(true);
  expect(isSameIngredient("MCPP-p", "MCPP")).toBe(false);
});
