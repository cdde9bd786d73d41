import { expect, test } from "vitest";
import { ended, withoutFullStop } from "#domain/foundation/full-stop";

test("only what ends the words falls away", () => {
  expect(["Keep off 4 h.", "Keep off 4 h", "1.5 in. of rain", "And so on...", ".", ""].map(withoutFullStop)).toEqual(["Keep off 4 h", "Keep off 4 h", "1.5 in. of rain", "And so on", "", ""]);
});

test("what does not end by itself gets a full stop", () => {
  expect(["Clover", "Clover.", "In bloom!", "In bloom?", "And so on...", "1.5 in. of rain", ""].map(ended)).toEqual(["Clover.", "Clover.", "In bloom!", "In bloom?", "And so on...", "1.5 in. of rain.", "."]);
});
