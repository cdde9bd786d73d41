import { expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { checkSpray } from "#domain/mixing/spray-checks";
import { isSprayed, type TicketTreatment } from "#domain/mixing/ticket-question";
import { IRON, LAWN, rulesOf, SCALE, SPRAYER, sprayOf, ticketOf, withIron } from "../../support/ticket";

const ruled = (rule: string, question: Parameters<typeof ticketOf>[0]) => ticketOf(question).findings.find((finding) => finding.rule === rule);

test("what pump and hose hold is a note that does not know what it is, care where nobody has measured it, nothing where it is nothing", () => {
  const holding = (holdUp: typeof SPRAYER.holdUp) => withIron({ gear: { ...SPRAYER, holdUp } });
  // 1.5 gal cover 1,000 sq ft.
  expect(ruled("hold-up", holding(of("gal", "2.9")))).toMatchObject({ level: "note", figure: "It covers the first 1,933 sq ft." });
  expect(ruled("hold-up", holding(of("gal", 3n)))).toMatchObject({ level: "note", figure: "That is all of the 3 gal of this visit." });
  expect(ruled("hold-up", holding(of("gal", 3n)))?.what).toBe("Pump and hose of Sprayer hold 3 gal: where that is water or another mix, this lawn gets it first.");
  expect(ruled("hold-up", holding(of("gal", 0n)))).toBeUndefined();
  expect(rulesOf(holding("unknown"))).toContain("take-care hold-up-not-measured");
});

test("a tool that measures by the other dimension is no tool, and is not said to be too coarse", () => {
  const rules = rulesOf(withIron({ tool: SCALE }));
  expect(rules).toContain("take-care no-measuring-tool");
  expect(rules).not.toContain("take-care below-first-mark");
  expect(sprayOf(withIron({ tool: SCALE }))?.products[0]?.toolName).toBeNull();
});

test("less than one mark of the cup asks for a finer one; a visit that marks bring below the label's lowest rate says so", () => {
  expect(rulesOf({ lawns: [{ ...LAWN, area: of("sq ft", 100n) }] })).toContain("take-care below-first-mark");
  // 1,200 sq ft at 1 fl oz is 1.2 fl oz, measured as 1.
  const low = { rate: rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft"), tool: { name: "ounce cup", mark: exactly("fl oz", "1") } } as const;
  expect(rulesOf({ lawns: [{ ...LAWN, area: of("sq ft", 1200n) }], ...withIron(low) })).toContain("take-care rounded-below-lowest");
  expect(rulesOf({ lawns: [{ ...LAWN, area: of("sq ft", 1000n) }], ...withIron(low) })).not.toContain("take-care rounded-below-lowest");
});

// sprayers101.com/tankmix: no more than three partners.
test("two products in a tank are a note on a jar, four want care, one says nothing, and one named twice is one", () => {
  const named = (count: number): readonly TicketTreatment[] =>
    Array.from({ length: count }, (_unused, index) => ({ ...IRON, line: index, productId: String(index), label: { ...IRON.label, productName: `Iron ${String(index)}` } }));
  const shared = (treatments: readonly TicketTreatment[]) => rulesOf({ treatments }).filter((rule) => /jar|many/u.test(rule));
  expect(shared(named(1))).toEqual([]);
  expect(shared(named(2))).toEqual(["note try-a-jar-first"]);
  expect(shared(named(3))).toEqual(["note try-a-jar-first"]);
  expect(shared(named(4))).toEqual(["take-care many-in-one-tank", "note try-a-jar-first"]);
  const mix = sprayOf();
  const [iron] = [IRON].filter(isSprayed);
  expect(mix && iron && checkSpray([iron, iron], mix).map(({ rule }) => rule)).not.toContain("try-a-jar-first");
});
