import { describe, expect, test } from "vitest";
import { readGrasses } from "#domain/properties/grass-words";
import { GRASS_NAMES } from "#domain/turf/grass";
import { refusalOf, valueOf } from "../../support/domain-answers";

test.each([...GRASS_NAMES])("%s is known by its own name", (grass) => {
  expect(valueOf(readGrasses("grass", grass))).toEqual({ grasses: [grass], assumed: false });
});

describe("what crews write", () => {
  test.each([
    ["KBG", ["Kentucky bluegrass"], false],
    ["TTTF / KBG", ["tall fescue", "Kentucky bluegrass"], false],
    ["Bluegrass and rye mix", ["Kentucky bluegrass", "perennial ryegrass"], false],
    ["tall fescue?", ["tall fescue"], true],
    ["Kentucky bluegrass (assumed)", ["Kentucky bluegrass"], true],
    ["probably rye", ["perennial ryegrass"], true],
    ["kbg, KBG", ["Kentucky bluegrass"], false],
  ] as const)("%j", (text, grasses, assumed) => {
    expect(valueOf(readGrasses("grass", text))).toEqual({ grasses, assumed });
  });
});

test.each(["", "mix", "?", "fescue", "crabgrass", "KBG / weeds"])("%j is refused with the grasses that are known", (text) => {
  const refusal = refusalOf(readGrasses("grass", text));
  expect(refusal).toMatchObject({ field: "grass", allowed: GRASS_NAMES.join(", "), found: text === "" ? "nothing" : text });
});
