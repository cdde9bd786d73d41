import { expect, test } from "vitest";
import { densityOf } from "#domain/quantities/density";
import { citationOfUse, FORMULATIONS, knownDensity, type LabelFacts, type LabelUse, useNamed } from "#domain/label/label-facts";

test("a use is found by its own name and by no other", () => {
  const feed = { useName: "Feeding" } as LabelUse;
  const label = { uses: [{ useName: "Spot" } as LabelUse, feed] } as unknown as LabelFacts;
  expect(useNamed(label, "Feeding")).toBe(feed);
  expect(useNamed(label, "feeding")).toBeUndefined();
});

// Manitoba Guide to Crop Protection, quoted by the Canola Council of Canada (2013): bags, powders and granules and
// flowables, solutions, emulsifiable concentrates, surfactants.
test("bags go first, then what is suspended, then solutions, then oils, then surfactants", () => {
  const named: readonly (typeof FORMULATIONS)[number][] = [
    "water-soluble bag",
    "wettable powder",
    "water-dispersible granule",
    "suspension concentrate",
    "soluble liquid",
    "emulsifiable concentrate",
    "surfactant",
  ];
  expect(FORMULATIONS.filter((formulation) => named.includes(formulation))).toEqual(named);
});

test("a density that is not on file is none to compute with", () => {
  const density = densityOf("10", "lb per gal");
  expect(knownDensity({ density })).toBe(density);
  expect(knownDensity({ density: "unknown" })).toBeUndefined();
});

test("a use is cited by the label's product and its own name", () => {
  expect(citationOfUse("Barrier PE", "Established turf")).toBe("label of Barrier PE, Established turf");
});
