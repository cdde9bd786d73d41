import fc from "fast-check";
import { expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { keptClearOf, statutoryLength, type WaterEdge } from "#domain/rules/kept-clear";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { INDIANA } from "#domain/rules/packs/indiana";

const POND: WaterEdge = { name: "the pond", length: of("ft", 60n), width: of("ft", 5n) };
const rule = ILLINOIS.facts["distance-to-water"];
const feed = (deflector: "yes" | "no" | "unknown" | "not-a-spreader") => ({ productName: "Feed", isFertilizer: true, deflector, label: "none" }) as const;
const labeled = (withDeflector: bigint, otherwise: bigint) => ({ withDeflector: of("ft", withDeflector), otherwise: of("ft", otherwise), basis: "label", source: "label of Feed, page 3" }) as const;
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

test("the widest of crew, label and law counts, and the strip and its finding say whose it is", () => {
  const kept = (crew: bigint | "unknown", withDeflector: bigint, otherwise: bigint, deflector: "yes" | "no", state: typeof rule | undefined = rule) =>
    keptClearOf("Back", [{ ...POND, width: crew === "unknown" ? crew : of("ft", crew) }], { ...feed(deflector), label: labeled(withDeflector, otherwise) }, state);
  const said = (...asked: Parameters<typeof kept>) => {
    const { edges, findings } = kept(...asked);
    return [edges[0]?.width.amount === undefined ? undefined : edges[0].width, edges[0]?.whose, edges[0]?.citation, findings.map(({ rule: name, source, citation }) => [name, source, citation])];
  };
  const law = rule.onFile ? rule.citation : "";
  expect(said(5n, 10n, 25n, "no")).toEqual([of("ft", 25n), "label", "label of Feed, page 3", [["distance-to-water", "label", "label of Feed, page 3"]]]);
  expect(said(5n, 10n, 25n, "yes")).toEqual([of("ft", 10n), "label", "label of Feed, page 3", [["distance-to-water", "label", "label of Feed, page 3"]]]);
  expect(said(5n, 3n, 6n, "no")).toEqual([of("ft", 15n), "law", law, [["distance-to-water", "law", law]]]);
  expect(said(30n, 10n, 25n, "no")).toEqual([of("ft", 30n), "company", undefined, []]);
  expect(said("unknown", 10n, 25n, "no")).toEqual([of("ft", 25n), "label", "label of Feed, page 3", [["distance-to-water", "label", "label of Feed, page 3"]]]);
  expect(said("unknown", 10n, 25n, "yes", undefined).slice(0, 2)).toEqual([of("ft", 10n), "label"]);
  // Of equal widths the company's own stands, then the label's.
  expect(said(25n, 10n, 25n, "no").slice(0, 2)).toEqual([of("ft", 25n), "company"]);
  expect(said(5n, 15n, 15n, "no").slice(0, 2)).toEqual([of("ft", 15n), "label"]);
});

test("a label's distance keeps off what is no fertilizer, and the finding names the machine", () => {
  const kept = keptClearOf("Back", [POND], { ...feed("not-a-spreader"), isFertilizer: false, label: labeled(3n, 25n) }, rule);
  expect(kept.findings).toMatchObject([{ level: "note", what: "Keep 25 ft clear of the pond.", figure: "The label of Feed asks for it without a deflector; the strip is taken off Back.", about: ["Feed", "Back"] }]);
  expect(keptClearOf("Back", [POND], { ...feed("yes"), label: labeled(6n, 25n) }, undefined).findings[0]?.figure).toMatch(/with the deflector/u);
});

test("a label that nobody has read for it holds by its name where the lawn runs along water, and the strip is still kept", () => {
  const unread = { ...feed("no"), label: "unknown" } as const;
  const kept = keptClearOf("Back", [POND, { ...POND, name: "the creek" }], unread, rule);
  expect(widthIn(kept)).toEqual([of("ft", 15n), of("ft", 15n)]);
  expect(kept.findings.filter(({ level }) => level === "hold")).toMatchObject([{ rule: "distance-to-water-not-read", source: "label", answerableBy: "office", about: ["Feed"] }]);
  expect(keptClearOf("Front", [], unread, rule).findings).toEqual([]);
});

test("statutory inches and feet are exact", () => {
  expect(statutoryLength({ value: "0.375", unit: "in" })).toEqual(of("in", "0.375"));
  expect(statutoryLength({ value: "15", unit: "ft" })).toEqual(of("ft", 15n));
});
