import { expect, test } from "vitest";
import { appliedName, constraintsOf, weakestAuthority } from "#domain/mixing/applied-product";
import { appliedOf, at, CHICAGO, earlierOf, FEED, IRON, labelOf } from "../../support/aftercare-builders";

test("constraints come with their product, in one order whatever that of the products", () => {
  const named = (products: Parameters<typeof constraintsOf>[0]) =>
    constraintsOf(products, "people-and-pets").map(({ applied }) => applied.label.productName);
  expect(named([appliedOf(IRON), appliedOf(FEED), appliedOf(labelOf("Alpha"))])).toEqual(["Evenfeed 18", "Ferrox Foliar"]);
  expect(named([appliedOf(FEED), appliedOf(IRON)])).toEqual(["Evenfeed 18", "Ferrox Foliar"]);
});

test("an earlier product is named with the local day it was put down", () => {
  expect(appliedName(appliedOf(IRON), CHICAGO)).toBe("Ferrox Foliar");
  expect(appliedName(earlierOf(IRON, at("2026-04-29T23:30-05:00")), CHICAGO)).toBe("Ferrox Foliar (put down Wednesday, Apr 29, 2026)");
});

test.each([
  [["label", "label"], "label", "nobody"],
  [["label", "law"], "law", "license-holder"],
  [["handbook", "label", "law"], "handbook", "office"],
  [["common-practice", "label"], "common-practice", "office"],
  [["house", "label", "law"], "house", "office"],
] as const)("%o: %s, answered by %s", (bases, source, answerableBy) => {
  const authorities = bases.map((basis) => ({ basis, source: `source ${basis}` }));
  expect(weakestAuthority(authorities)).toMatchObject({ source, answerableBy });
});

test("the citation names each source once", () => {
  const one = { basis: "label", source: "label of A" } as const;
  expect(weakestAuthority([one, { ...one, source: "label of B" }, one]).citation).toBe("label of A; label of B");
});
