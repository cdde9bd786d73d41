import { expect, test } from "vitest";
import { withoutFullStop } from "#domain/foundation/full-stop";

test("only what ends the words falls away", () => {
  expect(["Keep off 4 h.", "Keep off 4 h", "1.5 in. of rain", "And so on...", ".", ""].map(withoutFullStop)).toEqual(["Keep off 4 h", "Keep off 4 h", "1.5 in. of rain", "And so on", "", ""]);
});
