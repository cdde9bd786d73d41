import fc from "fast-check";
import { expect, test } from "vitest";
import { onSpotsWords, parseShare, partOfShare, shareWords, typedShareOf, WHOLE_LAWN } from "#domain/quantities/share";
import { rational } from "#domain/quantities/rational";

const read = (text: string) => {
  const share = parseShare("spotShare", text);
  return share.ok ? share.value : share.refusal.sentence;
};

test("a share is read with or without its sign, to hundredths of a percent", () => {
  expect(["5", "5%", "5 %", "2.5 percent", "0.25 % of the lawn", "10% of the area", "100%", "1/2 %"].map(read)).toEqual([500, 500, 500, 250, 25, 1000, 10_000, 50]);
});

test.each([
  ["", /Say how much/u],
  ["0 %", /none of this work/u],
  ["100.01 %", /more than the whole lawn/u],
  ["2.255 %", /two figures/u],
  ["some", /no share/u],
  ["-5 %", /./u],
])("%s is refused", (text, sentence) => expect(read(text)).toMatch(sentence));

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
