import { expect, test } from "vitest";
import { EQUIPMENT_KIND_WORDS, EQUIPMENT_KINDS, isSprayer, methodsFor, SPRAYER_KINDS, SPRAYER_METHOD_WORDS, SPREADER_KINDS } from "#domain/equipment/equipment-kind";

test("every kind is a sprayer or a spreader, and has words of its own", () => {
  for (const kind of SPRAYER_KINDS) expect(isSprayer(kind)).toBe(true);
  for (const kind of SPREADER_KINDS) expect(isSprayer(kind)).toBe(false);
  expect(new Set(EQUIPMENT_KINDS.map((kind) => EQUIPMENT_KIND_WORDS[kind])).size).toBe(EQUIPMENT_KINDS.length);
});

test("a gun is timed over an area, a boom caught nozzle by nozzle, a backpack walked over a course", () => {
  expect(SPRAYER_KINDS.map((kind) => [kind, methodsFor(kind)[0]])).toEqual([
    ["hose-and-gun", "timed-area"], ["boom-sprayer", "boom"], ["backpack-sprayer", "timed-course"],
  ]);
  for (const kind of SPRAYER_KINDS) {
    expect(methodsFor(kind)).toContain("small-area");
    for (const method of methodsFor(kind)) expect(SPRAYER_METHOD_WORDS[method]).toMatch(/^[A-Z]/);
  }
});
