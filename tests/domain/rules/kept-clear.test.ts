import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { keptClearOf, type LawnAtWater, statutoryLength, type WaterEdge } from "#domain/rules/kept-clear";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { INDIANA } from "#domain/rules/packs/indiana";

const POND: WaterEdge = { name: "the pond", length: of("ft", 60n), width: of("ft", 5n) };
const back = (...waterEdges: readonly WaterEdge[]): LawnAtWater => ({ name: "Back", waterBeside: "yes", waterEdges });
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
  const kept = keptClearOf(back(POND), feed(deflector), rule);
  expect(widthIn(kept)).toEqual([of("ft", feet)]);
  expect(kept.area).toEqual(of("sq ft", 60n * feet));
  expect(kept.findings.map((finding) => finding.rule)).toEqual(feet > 5n ? ["distance-to-water"] : []);
});

test("what is no fertilizer, and a state whose rule is not on file, keep clear what the crew entered", () => {
  expect(widthIn(keptClearOf(back(POND), { ...feed("no"), isFertilizer: false }, rule))).toEqual([of("ft", 5n)]);
  expect(widthIn(keptClearOf(back(POND), feed("no"), INDIANA.facts["distance-to-water"]))).toEqual([of("ft", 5n)]);
});

test("a length that nobody measured holds the mix ticket, and the office answers by measuring", () => {
  const kept = keptClearOf(back({ ...POND, length: "unknown" }), feed("yes"), rule);
  expect(kept.area.amount).toBe(0n);
  expect(kept.findings).toMatchObject([{ level: "hold", rule: "water-not-measured", answerableBy: "office", about: ["Back", "the pond"] }]);
});

test("a width that nobody entered is the law's, and without a law a hold", () => {
  const edge: WaterEdge = { ...POND, width: "unknown" };
  expect(widthIn(keptClearOf(back(edge), feed("yes"), rule))).toEqual([of("ft", 3n)]);
  expect(keptClearOf(back(edge), feed("yes"), undefined).findings).toMatchObject([{ level: "hold", rule: "water-not-measured" }]);
});

test("never less than the law's strip, whatever is entered", () => {
  fc.assert(
    fc.property(fc.bigInt(1n, 10_000n), fc.bigInt(1n, 100n), fc.constantFrom("yes", "no", "unknown", "not-a-spreader"), (feet, wide, deflector) => {
      const kept = keptClearOf(back({ name: "w", length: of("ft", feet), width: of("ft", wide) }), feed(deflector), rule);
      const least = deflector === "yes" ? 3n : 15n;
      expect(kept.area).toEqual(of("sq ft", feet * (wide > least ? wide : least)));
    }),
  );
});

test("the widest of crew, label and law counts, and the strip and its finding say whose it is", () => {
  const kept = (crew: bigint | "unknown", withDeflector: bigint, otherwise: bigint, deflector: "yes" | "no", state: typeof rule | undefined = rule) =>
    keptClearOf(back({ ...POND, width: crew === "unknown" ? crew : of("ft", crew) }), { ...feed(deflector), label: labeled(withDeflector, otherwise) }, state);
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
  const kept = keptClearOf(back(POND), { ...feed("not-a-spreader"), isFertilizer: false, label: labeled(3n, 25n) }, rule);
  expect(kept.findings).toMatchObject([{ level: "note", what: "Keep 25 ft clear of the pond.", figure: "The label of Feed asks for it without a deflector; the strip is taken off Back.", about: ["Feed", "Back"] }]);
  expect(keptClearOf(back(POND), { ...feed("yes"), label: labeled(6n, 25n) }, undefined).findings[0]?.figure).toMatch(/with the deflector/u);
});

test("a label that nobody has read for it holds by its name where the lawn runs along water, and the strip is still kept", () => {
  const unread = { ...feed("no"), label: "unknown" } as const;
  const kept = keptClearOf(back(POND, { ...POND, name: "the creek" }), unread, rule);
  expect(widthIn(kept)).toEqual([of("ft", 15n), of("ft", 15n)]);
  expect(kept.findings.filter(({ level }) => level === "hold")).toMatchObject([{ rule: "distance-to-water-not-read", source: "label", answerableBy: "office", about: ["Feed"] }]);
  expect(keptClearOf({ ...back(), name: "Front", waterBeside: "none" }, unread, rule).findings).toEqual([]);
});

test("statutory inches and feet are exact", () => {
  expect(statutoryLength({ value: "0.375", unit: "in" })).toEqual(of("in", "0.375"));
  expect(statutoryLength({ value: "15", unit: "ft" })).toEqual(of("ft", 15n));
});

describe("a lawn of which no water is on file", () => {
  const said = (waterBeside: LawnAtWater["waterBeside"], placement: Parameters<typeof keptClearOf>[1], state: typeof rule | undefined = rule) =>
    keptClearOf({ name: "Back", waterBeside, waterEdges: [] }, placement, state).findings.map(({ level, rule: name, source, figure }) => [`${level} ${name}`, source, figure]);
  const held = "hold water-not-looked-at";

  test("without water asks for nothing, whatever label and law ask for", () => {
    expect(said("none", { ...feed("no"), label: labeled(10n, 25n) })).toEqual([]);
    expect(said("none", { ...feed("no"), label: "unknown" })).toEqual([]);
  });

  test("at which nobody looked holds where the law's or the label's distance is asked of the product, by the wider one", () => {
    expect(said("not-known", feed("no"))).toEqual([[held, "law", "The law asks for 15 ft."]]);
    expect(said("not-known", feed("yes"))).toEqual([[held, "law", "The law asks for 3 ft."]]);
    expect(said("not-known", { ...feed("no"), label: labeled(10n, 25n) })).toEqual([[held, "label", "The label of Feed asks for 25 ft."]]);
    expect(said("not-known", { ...feed("no"), label: labeled(10n, 12n) })).toEqual([[held, "law", "The law asks for 15 ft."]]);
    expect(keptClearOf({ name: "Back", waterBeside: "not-known", waterEdges: [] }, feed("no"), rule).findings).toMatchObject([
      { answerableBy: "office", about: ["Feed", "Back"], toDo: expect.stringContaining("that there is none") as unknown, citation: rule.onFile ? rule.citation : "" },
    ]);
  });

  test("at which nobody looked does not hold what has no distance on label and in law", () => {
    expect(said("not-known", { ...feed("no"), isFertilizer: false })).toEqual([]);
    expect(said("not-known", feed("no"), INDIANA.facts["distance-to-water"])).toEqual([]);
  });

  test("and a label that nobody has read for it: together they can't be decided", () => {
    expect(said("not-known", { ...feed("no"), label: "unknown" }, INDIANA.facts["distance-to-water"])).toEqual([[held, "label", "Nobody has read how far from water the label of Feed keeps it."]]);
    expect(said("not-known", { ...feed("no"), label: "unknown" })).toEqual([[held, "law", "The law asks for 15 ft. Nobody has read how far from water the label of Feed keeps it."]]);
  });

  test("at which there is water that nobody entered holds for every product", () => {
    expect(said("yes", { ...feed("no"), isFertilizer: false }).map(([what]) => what)).toEqual(["hold water-not-measured"]);
  });

  test("an edge on file counts, whatever was said", () => {
    expect(widthIn(keptClearOf({ name: "Back", waterBeside: "not-known", waterEdges: [POND] }, feed("no"), rule))).toEqual([of("ft", 15n)]);
  });
});
