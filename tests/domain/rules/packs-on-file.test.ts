import { expect, test } from "vitest";
import { PACKS_ON_FILE, packOf, RULES_VERSION } from "#domain/rules/packs-on-file";
import { NOT_ON_FILE, RULE_WORDS, type RuleName } from "#domain/rules/rule-pack";

const RULES = Object.keys(RULE_WORDS) as RuleName[];

test("a pack is found by its state; a state without one has none", () => {
  expect(packOf("IN")?.state).toBe("IN");
  expect(packOf("IL")?.state).toBe("IL");
  expect(packOf("OH")).toBeUndefined();
  expect(NOT_ON_FILE).toBe("not on file, look it up");
});

test.each(PACKS_ON_FILE.map((pack) => [pack.state, pack] as const))("%s: every entry has a citation and a standing, or says where to look", (_state, pack) => {
  for (const rule of RULES) {
    const fact = pack.facts[rule];
    if (fact.onFile) expect(fact.citation).not.toBe("");
    else expect(fact).toEqual({ onFile: false, standing: "unverified", whereToLook: expect.stringMatching(/\S/u) as string });
  }
});

test("the editions stand together in the version that tickets and papers carry", () => {
  for (const { edition } of PACKS_ON_FILE) expect(RULES_VERSION).toContain(edition);
});

test("every citation that has a section of Indiana's posting rule and Illinois's two sections", () => {
  expect(packOf("IN")?.facts["posting-sign"]).toMatchObject({ citation: expect.stringContaining("357 IAC 1-5-2") as string });
  expect(packOf("IL")?.facts["posting-sign"]).toMatchObject({ citation: "415 ILCS 65/3(a)" });
  expect(packOf("IL")?.facts.phosphorus).toMatchObject({ citation: expect.stringContaining("415 ILCS 65/5a") as string });
});
