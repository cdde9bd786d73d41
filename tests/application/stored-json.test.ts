import { expect, test } from "vitest";
import { fromStoredJson, toStoredJson } from "#application/stored-json";

test("whole numbers of canonical units come back as they were, at any depth", () => {
  const value = { amount: 9_223_372_036_854_775_807n, list: [-1n, "1n", null, 2.5, { deep: { amount: 0n } }] };
  const stored = toStoredJson(value);
  expect(JSON.parse(JSON.stringify(stored))).toEqual(stored);
  expect(fromStoredJson(stored)).toEqual(value);
});
