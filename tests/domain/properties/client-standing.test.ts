import { expect, test } from "vitest";
import { CLIENT_STANDING_SENTENCES, CLIENT_STANDING_WORDS, CLIENT_STANDINGS, MOWER_WORDS, MOWERS } from "#domain/properties/client-standing";

test("every standing and every mower has words, and no two the same", () => {
  expect(new Set(CLIENT_STANDINGS.map((standing) => CLIENT_STANDING_WORDS[standing])).size).toBe(3);
  expect(CLIENT_STANDINGS.every((standing) => CLIENT_STANDING_SENTENCES[standing].endsWith("."))).toBe(true);
  expect(new Set(MOWERS.map((mower) => MOWER_WORDS[mower])).size).toBe(3);
});
