import { expect, test } from "vitest";
import { FORMULATIONS, type LabelFacts, type LabelUse, useNamed } from "#domain/label/label-facts";

test("a use is found by its own name and by no other", () => {
  const feed = { useName: "Feeding" } as LabelUse;
  const label = { uses: [{ useName: "Spot" } as LabelUse, feed] } as unknown as LabelFacts;
  expect(useNamed(label, "Feeding")).toBe(feed);
  expect(useNamed(label, "feeding")).toBeUndefined();
});

// Common practice: what must be wetted and suspended goes in before what mixes by itself.
test("what must be suspended stands before oils, and what dissolves stands last in the tank", () => {
  const order = (formulation: (typeof FORMULATIONS)[number]) => FORMULATIONS.indexOf(formulation);
  expect(order("wettable powder")).toBeLessThan(order("suspension concentrate"));
  expect(order("suspension concentrate")).toBeLessThan(order("emulsifiable concentrate"));
  expect(order("emulsifiable concentrate")).toBeLessThan(order("soluble liquid"));
});
