import fc from "fast-check";
import { expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { keptClearOf, statutoryLength, type WaterEdge } from "#domain/rules/kept-clear";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { INDIANA } from "#domain/rules/packs/indiana";

const POND: WaterEdge = { name: "the pond", length: of("ft", 60n), width: of("ft", 5n) };
const rule = ILLINOIS.facts["distance-to-water"];
const feed = (deflector: "yes" | "no" | "unknown" | "not-a-spreader") => ({ productName: "Feed", isFertilizer: true, deflector }) as const;
const widthIn = (kept: ReturnType<typeof keptClearOf>) => kept.edges.map(({ width }) => width);

// 415 ILCS 65/5a: 3 ft with a spreader that has a deflector, 15 ft otherwise.
test.each([
  ["yes", 5n],
  ["no", 15n],
  ["unknown", 15n],
  ["not-a-spreader", 15n],
] as const)("deflector %s: the wider of what the crew keeps clear and what the law asks for", (deflector, feet) => {
  const kept = keptClearOf("Back", [POND], feed(deflector), rule);
  expect(widthIn(kept)).toEqual([of("ft", feet)]);
  expect(kept.area).toEqual(of("sq ft", 60n * feet));
  expect(kept.findings.map((finding) => finding.rule)).toEqual(feet > 5n ? ["distance-to-water"] : []);
});

test("what is no fertilizer, and a state whose rule is not on file, keep clear what the crew entered", () => {
  expect(widthIn(keptClearOf("Back", [POND], { ...feed("no"), isFertilizer: false }, rule))).toEqual([of("ft", 5n)]);
  expect(widthIn(keptClearOf("Back", [POND], feed("no"), INDIANA.facts["distance-to-water"]))).toEqual([of("ft", 5n)]);
});

test("a length that nobody measured holds the mix ticket, and the office answers by measuring", () => {
  const kept = keptClearOf("Back", [{ ...POND, length: "unknown" }], feed("yes"), rule);
  expect(kept.area.amount).toBe(0n);
  expect(kept.findings).toMatchObject([{ level: "hold", rule: "water-not-measured", answerableBy: "office", about: ["Back", "the pond"] }]);
});

test("a width that nobody entered is the law's, and without a law a hold", () => {
  const edge: WaterEdge = { ...POND, width: "unknown" };
  expect(widthIn(keptClearOf("Back", [edge], feed("yes"), rule))).toEqual([of("ft", 3n)]);
  expect(keptClearOf("Back", [edge], feed("yes"), undefined).findings).toMatchObject([{ level: "hold", rule: "water-not-measured" }]);
});

test("never less than the law's strip, whatever is entered", () => {
  fc.assert(
    fc.property(fc.bigInt(1n, 10_000n), fc.bigInt(1n, 100n), fc.constantFrom("yes", "no", "unknown", "not-a-spreader"), (feet, wide, deflector) => {
      const kept = keptClearOf("A", [{ name: "w", length: of("ft", feet), width: of("ft", wide) }], feed(deflector), rule);
      const least = deflector === "yes" ? 3n : 15n;
      expect(kept.area).toEqual(of("sq ft", feet * (wide > least ? wide : least)));
    }),
  );
});

test("statutory inches and feet are exact", () => {
  expect(statutoryLength({ value: "0.375", unit: "in" })).toEqual(of("in", "0.375"));
  expect(statutoryLength({ value: "15", unit: "ft" })).toEqual(of("ft", 15n));
});
