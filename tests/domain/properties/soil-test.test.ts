import { expect, test } from "vitest";
import { PHOSPHORUS_FINDINGS, PHOSPHORUS_WORDS } from "#domain/properties/soil-test";

test("every finding of phosphorus has words of its own", () => {
  expect(new Set(PHOSPHORUS_FINDINGS.map((finding) => PHOSPHORUS_WORDS[finding])).size).toBe(PHOSPHORUS_FINDINGS.length);
});
