import { expect, test } from "vitest";
import { lawnAtApplication } from "#domain/mixing/lawn-at-application";
import { appliedOf, CHICAGO, earlierOf, IRON, labelOf, onLabel, says, START } from "../../support/aftercare-builders";

const weedGrains = labelOf("Weedgrain", { ...says("leaf-at-application", { state: "moist" }), ...says("soil-at-application", { state: "moist" }) });

test("what each product of the visit wants, by leaf and soil", () => {
  const { wanted, findings } = lawnAtApplication([appliedOf(weedGrains)], CHICAGO);
  expect(wanted.map(({ productName, part, state }) => [productName, part, state])).toEqual([
    ["Weedgrain", "leaf", "moist"],
    ["Weedgrain", "soil", "moist"],
  ]);
  expect(findings).toEqual([]);
});

test("opposites in one visit are a hold that names both and advises to split", () => {
  expect(lawnAtApplication([appliedOf(weedGrains), appliedOf(IRON)], CHICAGO).findings).toMatchObject([
    { level: "hold", answerableBy: "nobody", rule: "opposite-leaf-at-application", about: ["Ferrox Foliar", "Weedgrain"] },
  ]);
});

test("where one of them is common practice only, the office may answer", () => {
  const habit = labelOf("Weedgrain", says("leaf-at-application", { state: "moist" }, { ...onLabel, basis: "common-practice", source: "common practice" }));
  expect(lawnAtApplication([appliedOf(habit), appliedOf(IRON)], CHICAGO).findings).toMatchObject([{ answerableBy: "office", source: "common-practice" }]);
});

test("an earlier visit's product no longer wants anything of the leaf", () => {
  expect(lawnAtApplication([earlierOf(IRON, START), appliedOf(weedGrains)], CHICAGO).findings).toEqual([]);
});
