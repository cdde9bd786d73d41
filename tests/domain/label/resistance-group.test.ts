import { expect, test } from "vitest";
import { codeOfGroup, isOfOneKind, kindOf } from "#domain/label/resistance-group";

test.each([
  ["Group 3 herbicide", "other", "herbicide", "3"],
  ["group 3 Herbicides", "disease control", "herbicide", "3"],
  ["FRAC Group M5", "other", "fungicide", "m5"],
  ["IRAC 3A", "other", "insecticide", "3a"],
  ["Group 6 miticide", "other", "insecticide", "6"],
  ["Group 3", "grassy weed control", "herbicide", "3"],
  ["Group 3", "broadleaf weed control", "herbicide", "3"],
  ["Group 3", "disease control", "fungicide", "3"],
  ["Group 3", "insect control", "insecticide", "3"],
  ["3", "fertilizer", "unknown", "3"],
  ["3", "not on file", "unknown", "3"],
] as const)("%s for %s: %s, %s", (group, serviceType, kind, code) => {
  expect([kindOf({ group }, serviceType), codeOfGroup(group)]).toEqual([kind, code]);
});

test("a group that nobody entered, or that there is none of, has the kind of its work", () => {
  expect(kindOf("unknown", "disease control")).toBe("fungicide");
  expect(kindOf("none", "other")).toBe("unknown");
});

test("what is of no known kind may be of any", () => {
  expect([isOfOneKind("herbicide", "herbicide"), isOfOneKind("herbicide", "unknown"), isOfOneKind("unknown", "fungicide"), isOfOneKind("herbicide", "fungicide")]).toEqual([true, true, true, false]);
});
