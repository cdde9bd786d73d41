import { expect, test } from "vitest";
import { PACKS_ON_FILE } from "#domain/rules/packs-on-file";
import { NOT_ON_FILE, RULE_WORDS } from "#domain/rules/rule-pack";

test("every rule of every pack has its words for screens, and no two the same", () => {
  for (const { facts } of PACKS_ON_FILE) expect(Object.keys(facts).toSorted()).toEqual(Object.keys(RULE_WORDS).toSorted());
  expect(new Set(Object.values(RULE_WORDS)).size).toBe(Object.keys(RULE_WORDS).length);
});

test("what is not on file says where the matter stands and promises nothing", () => {
  expect(NOT_ON_FILE).toBe("not on file, look it up");
});
