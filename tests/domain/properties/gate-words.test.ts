import { describe, expect, test } from "vitest";
import { readGate } from "#domain/properties/gate-words";
import { of } from "#domain/quantities/quantity";
import { refusalOf, valueOf } from "../../support/domain-answers";

describe("a gate's cell", () => {
  test.each([
    ["", null, null, null],
    ["none", null, null, null],
    ["4471", "4471", null, null],
    ["#12B", "12B", null, null],
    ["code 07", "07", null, null],
    ["Gate code: 4471#", "4471#", null, null],
    ["36 in", null, "36", null],
    ['48" wide', null, "48", null],
    ["3 ft; code 4471, latch sticks", "4471", "36", "latch sticks"],
    ["side gate", null, null, "side gate"],
  ] as const)("%j", (text, code, inches, words) => {
    expect(valueOf(readGate(text))).toEqual({ code, width: inches === null ? null : of("in", inches), words });
  });
});

test.each([
  ["36", "could be inches or a code"],
  ["4471, 5582", "two codes"],
  ["36 in, 48 in", "narrowest"],
  ["0 in", "narrowest"],
])("%j is refused: %s", (text, words) => {
  expect(refusalOf(readGate(text)).sentence).toContain(words);
});
