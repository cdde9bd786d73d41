import { expect, test } from "vitest";
import { accept, badInput, missingFact, refuse } from "#domain/foundation/outcome";

test("yes carries its value, no its reason", () => {
  expect(accept(7)).toEqual({ ok: true, value: 7 });
  expect(refuse("why")).toEqual({ ok: false, refusal: "why" });
});

test("a bad input says what was found; a missing fact that nothing was", () => {
  const rest = { field: "rate", allowed: "more than nothing", sentence: "Give a rate." };
  expect(badInput("rate", "-1", "more than nothing", "Give a rate.")).toEqual({ ok: false, refusal: { kind: "bad-input", found: "-1", ...rest } });
  expect(missingFact("rate", "more than nothing", "Give a rate.")).toEqual({ ok: false, refusal: { kind: "missing-fact", found: "nothing", ...rest } });
});
