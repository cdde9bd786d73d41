import { expect, test } from "vitest";
import { ROLE_SENTENCES, ROLE_WORDS, ROLES } from "#domain/crew/role";

test("each role has a word of its own and a sentence, and no word is left over", () => {
  expect(Object.keys(ROLE_WORDS)).toEqual([...ROLES]);
  expect(Object.keys(ROLE_SENTENCES)).toEqual([...ROLES]);
  expect(new Set(Object.values(ROLE_WORDS)).size).toBe(ROLES.length);
  for (const sentence of Object.values(ROLE_SENTENCES)) expect(sentence).toMatch(/^[A-Z].*\.$/);
});
