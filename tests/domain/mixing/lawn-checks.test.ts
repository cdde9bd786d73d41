import { expect, test } from "vitest";
import { checkLawns } from "#domain/mixing/lawn-checks";
import { BARRIER, FEED, holdsOf, IRON, LAWN, QUESTION, type rulesOf, ticketOf, withFeed } from "../../support/ticket";

const count = (rule: string, question: Parameters<typeof rulesOf>[0]) => ticketOf(question).findings.filter((finding) => finding.rule === rule).length;

test("a grass that is only assumed wants care, once for a lawn, whatever goes on it", () => {
  expect(count("grass-assumed", { lawns: [{ ...LAWN, grassesAssumed: true }], treatments: [FEED, IRON] })).toBe(1);
  expect(count("grass-assumed", {})).toBe(0);
});

test("a grass that nobody entered holds, unless every label takes any turfgrass", () => {
  const lawns = [{ ...LAWN, grasses: [] }];
  expect(holdsOf({ lawns })).toEqual(["hold grass-not-on-file"]);
  expect(holdsOf({ lawns, ...withFeed({ use: { ...FEED.use, grasses: "any turfgrass" } }) })).toEqual([]);
});

test("an area that came from another list wants care; one that was measured or entered here does not", () => {
  expect(count("area-assumed", { lawns: [{ ...LAWN, areaOrigin: "imported" }] })).toBe(1);
  expect(count("area-assumed", { lawns: [{ ...LAWN, areaOrigin: "entered" }] })).toBe(0);
});

test("one product planned twice on a lawn holds, once; on two lawns it does not", () => {
  const again = { ...FEED, line: 7 };
  expect(count("same-product-twice", { treatments: [FEED, again, { ...FEED, line: 8 }] })).toBe(1);
  expect(holdsOf({ treatments: [FEED, again] })).toContain("hold same-product-twice");
  const lawns = [LAWN, { ...LAWN, zoneId: "back", name: "Back" }];
  expect(count("same-product-twice", { lawns, treatments: [FEED, { ...again, zoneIds: ["back"] }] })).toBe(0);
});

test("of a lawn on which nothing goes down nothing is said", () => {
  const lawns = [LAWN, { ...LAWN, zoneId: "back", grasses: [], grassesAssumed: true, areaOrigin: "imported" as const }];
  expect(checkLawns({ ...QUESTION, lawns, treatments: [BARRIER] })).toEqual([]);
});
