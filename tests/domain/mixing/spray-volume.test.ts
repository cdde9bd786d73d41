import fc from "fast-check";
import { expect, test } from "vitest";
import { marksFor } from "#domain/mixing/spray-volume";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { LAWN, QUESTION, sprayOf, ticketOf } from "../../support/ticket";

test("marks for so much spray", () => {
  const marks = (gallons: string, mark: string) => marksFor(exactly("gal", gallons), exactly("gal", mark));
  expect([marks("4.53", "0.1"), marks("1.125", "0.1"), marks("0.03", "0.1"), marks("98", "1"), marks("100", "5")]).toEqual([45n, 12n, 1n, 98n, 20n]);
  // Exactly 2 % too little is near enough; a little more is not.
  expect([marks("50", "49"), marks("50.1", "49")]).toEqual([1n, 2n]);
});

test("spray is mixed to the nearest mark, and to the next one where that is more than 2 % too little", () => {
  const on = (squareFeet: bigint, mark: string) => ({ lawns: [{ ...LAWN, area: of("sq ft", squareFeet) }], settings: { ...QUESTION.settings, tankMark: exactly("gal", mark) } });
  const saidOn = (...asked: Parameters<typeof on>) => ticketOf(on(...asked)).findings.filter(({ rule }) => rule === "spray-more-than-taken").map(({ level, figure }) => `${level} ${figure ?? ""}`);
  const mixed = [
    // 1.5 gal on each 1,000 sq ft.
    { squareFeet: 4900n, mark: "5", finished: "10", said: ["take-care They make 10 gal where 7.35 gal are taken. The product for this ground is in all of it: spread evenly, that is 2.04 gal per 1,000 sq ft in place of 1½ gal per 1,000 sq ft."] },
    { squareFeet: 993n, mark: "1", finished: "2", said: ["take-care They make 2 gal where 1.49 gal are taken. The product for this ground is in all of it: spread evenly, that is 2.01 gal per 1,000 sq ft in place of 1½ gal per 1,000 sq ft."] },
    { squareFeet: 20n, mark: "0.1", finished: "0.1", said: ["take-care They make 12.8 fl oz where 3.84 fl oz are taken. The product for this ground is in all of it: spread evenly, that is 5 gal per 1,000 sq ft in place of 1½ gal per 1,000 sq ft."] },
    // 1.125 gal: a mark less is 2.2 % too little, a mark more 6.7 %.
    { squareFeet: 750n, mark: "0.1", finished: "1.2", said: ["note They make 1.2 gal where 1.13 gal are taken. The product for this ground is in all of it: spread evenly, that is 1.6 gal per 1,000 sq ft in place of 1½ gal per 1,000 sq ft."] },
    // 4.53 gal: a mark less is 0.7 % too little.
    { squareFeet: 3020n, mark: "0.1", finished: "4.5", said: [] },
    { squareFeet: 2000n, mark: "0.1", finished: "3", said: [] },
  ];
  for (const { squareFeet, mark, finished, said } of mixed) {
    expect(sprayOf(on(squareFeet, mark))?.finished).toEqual(of("gal", finished));
    expect(saidOn(squareFeet, mark)).toEqual(said);
  }
});

test("spray is never more than 2 % short of what the ground takes, and less than a mark more", () => {
  fc.assert(
    fc.property(fc.bigInt(1n, 60_000n), fc.bigInt(1n, 50n), (squareFeet, tenths) => {
      const mark = exactly("gal", { numerator: tenths, denominator: 10n });
      const mix = sprayOf({ lawns: [{ ...LAWN, area: of("sq ft", squareFeet) }], settings: { ...QUESTION.settings, tankMark: mark } });
      if (mix === undefined) return;
      const [mixed, taken] = [Number(mix.finished.amount) / Number(of("gal", 1n).amount), (Number(squareFeet) * 1.5) / 1000];
      expect(mixed).toBeGreaterThan(taken * 0.98 - 1e-9);
      expect(mixed).toBeLessThan(taken + Number(tenths) / 10 + 1e-9);
    }),
  );
});
