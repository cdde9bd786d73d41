import { expect, test } from "vitest";
import { listWords } from "#domain/foundation/list-words";

test.each([
  [[], ""],
  [["Front"], "Front"],
  [["Front", "Back"], "Front and Back"],
  [["Front", "Side", "Back"], "Front, Side and Back"],
])("%j is listed as %j", (names, words) => expect(listWords(names)).toBe(words));
