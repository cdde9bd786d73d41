// Placeholders in expected answers, of a type that lint lets stand among typed values.
import { expect } from "vitest";

/** Some sentence, whatever its words. */
export const A_SENTENCE: unknown = expect.any(String);

/** A sentence with these words in it. */
export function saying(words: string): unknown {
  return expect.stringContaining(words);
}
