import fc from "fast-check";
import { expect, test } from "vitest";
import { askPartOrPercent, onSpotsWords, parseShare, partOfShare, shareWords, typedShareOf, WHOLE_LAWN } from "#domain/quantities/share";
import { rational } from "#domain/quantities/rational";

const read = (text: string) => {
  const share = parseShare("spotShare", text);
  return share.ok ? share.value : share.refusal.sentence;
};

test("a share is read with or without its sign, to hundredths of a percent", () => {
  expect(["5", "5%", "5 %", "2.5 percent", "0.25 % of the lawn", "10% of the area", "100%", "1/2 %", "\u00BD%", "0.5%", "1", "1 1/2"].map(read)).toEqual([500, 500, 500, 250, 25, 1000, 10_000, 50, 50, 50, 100, 150]);
});

test.each([
  ["", /Say how much/u],
  ["0 %", /none of this work/u],
  ["100.01 %", /more than the whole lawn/u],
  ["2.255 %", /two figures/u],
  ["some", /no share/u],
  ["-5 %", /./u],
])("%s is refused", (text, sentence) => expect(read(text)).toMatch(sentence));

test.each([
  ["1/2", '"1/2" may be 0.5% or 50%. Write the one that is meant, with its sign.'],
  ["\u00BD of the lawn", '"1/2" may be 0.5% or 50%. Write the one that is meant, with its sign.'],
  ["0.5", '"0.5" may be 0.5% or 50%. Write the one that is meant, with its sign.'],
  [".05", '".05" may be 0.05% or 5%. Write the one that is meant, with its sign.'],
])("%s may be a part of a percent or of the lawn, and is asked about", (text, sentence) => expect(read(text)).toBe(sentence));

test("a figure from one up, nothing, and one with its sign ask nothing", () => {
  expect(askPartOrPercent(" 0.48 ", rational(48n, 100n))).toBe('"0.48" may be 0.48% or 48%. Write the one that is meant, with its sign.');
  expect(askPartOrPercent("1/3", rational(1n, 3n))).toMatch(/0\.3333% or 33\.3333%/u);
  expect([askPartOrPercent("1", rational(1n)), askPartOrPercent("0", rational(0n)), askPartOrPercent("0.48 %", rational(48n, 100n)), askPartOrPercent("0.48 Percent", rational(48n, 100n))]).toEqual([undefined, undefined, undefined, undefined]);
});

test("every share reads back as what its words say, and the whole is one", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: WHOLE_LAWN }), (points) => {
      expect(read(shareWords(points))).toBe(points);
    }),
  );
  expect(partOfShare(WHOLE_LAWN)).toEqual(rational(1n));
  expect(partOfShare(500)).toEqual(rational(1n, 20n));
});

test("what goes all over has no words of its own", () => {
  expect([typedShareOf(250), typedShareOf(null), typedShareOf(undefined)]).toEqual(["2.5%", "", ""]);
  expect([onSpotsWords(500), onSpotsWords(null), onSpotsWords(undefined)]).toEqual([" on spots, 5% of the lawn", "", ""]);
  expect(onSpotsWords(WHOLE_LAWN)).toBe(" on the whole lawn");
});
