import fc from "fast-check";
import { expect, test } from "vitest";
import { isTooLittle, leastSpray, leftOver, marksFor, moreThanTaken, passedLabel } from "#domain/mixing/spray-volume";
import { exactly, settle } from "#domain/quantities/exact-quantity";
import { fromAmount, of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { IRON, LAWN, QUESTION, SPRAYER, sprayOf, ticketOf } from "../../support/ticket";

test("marks for so much spray", () => {
  const marks = (gallons: string, mark: string) => marksFor(exactly("gal", gallons), exactly("gal", mark));
  expect([marks("4.53", "0.1"), marks("1.125", "0.1"), marks("0.03", "0.1"), marks("98", "1"), marks("100", "5")]).toEqual([45n, 12n, 1n, 98n, 20n]);
  // Exactly 2 % too little is near enough; a little more is not.
  expect([marks("50", "49"), marks("50.1", "49")]).toEqual([1n, 2n]);
  expect([isTooLittle(of("gal", 49n), exactly("gal", "50")), isTooLittle(of("gal", 49n), exactly("gal", "50.1"))]).toEqual([false, true]);
  // 4.53 gal are near enough at 4.5, but not where a label wants 4.51.
  expect(["4.5", "4.51"].map((least) => marksFor(exactly("gal", "4.53"), exactly("gal", "0.1"), exactly("gal", least)))).toEqual([45n, 46n]);
});

const perThousand = (gallons: string) => rateOf("carrier-volume-per-area", gallons, "gal per 1,000 sq ft");

/** The iron with a label that wants so much finished spray. */
function wanting(productName: string, low: string, high: string) {
  return { ...IRON, label: { ...IRON.label, productName }, use: { ...IRON.use, carrier: { low: perThousand(low), high: perThousand(high), basis: "label", source: "label" } as const } };
}

test("the spray that labels want on a ground", () => {
  const ground = of("sq ft", 2000n);
  const tank = [wanting("A", "1", "2"), wanting("B", "1.25", "1.75"), { ...IRON, use: { ...IRON.use, carrier: "none" as const } }, { ...IRON, use: { ...IRON.use, carrier: "unknown" as const } }];
  const least = (puts: string) => leastSpray(tank, perThousand(puts), ground);
  // One that wants more than the sprayer puts out is held for it.
  expect([least("1.5"), least("1.1"), least("0.9")].map((spray) => spray && settle(spray, "nearest"))).toEqual([of("gal", "2.5"), of("gal", 2n), undefined]);
  expect(["3.5", "3.6", "4.1"].map((gallons) => passedLabel(tank, of("gal", gallons), ground)?.productName)).toEqual([undefined, "B", "B"]);
  expect(passedLabel(tank.slice(2), of("gal", 90n), ground)).toBeUndefined();
});

test("what is left is more than whole units make of ground and spray", () => {
  expect(leftOver(of("gal", 2n), of("gal", "1.5"))).toEqual(of("gal", "0.5"));
  expect([leftOver(of("gal", 2n), of("gal", 3n)), leftOver(fromAmount("volume", 1100n), fromAmount("volume", 1000n))].map(({ amount }) => amount)).toEqual([0n, 0n]);
  expect(leftOver(fromAmount("volume", 1101n), fromAmount("volume", 1000n)).amount).toBe(101n);
});

test("more than a label wants is said by however little it is more, and what becomes of it", () => {
  const said = (finished: string, isAtStrength: boolean, high: string) =>
    moreThanTaken({ gear: SPRAYER, products: [wanting("Iron", "1", high)], finished: of("gal", finished), area: of("sq ft", 2000n), isAtStrength }).map(({ level, toDo }) => `${level} ${toDo ?? ""}`);
  const left = "Take a smaller sprayer with finer marks, or use the rest where it is labeled.";
  expect(said("3.05", true, "1.5")).toEqual([`note ${left}`]);
  expect(said("3.05", true, "2")).toEqual([]);
  expect(said("3.4", true, "2")).toEqual([`take-care ${left}`]);
  expect(said("3.4", false, "2")).toEqual(["take-care Spray all of it evenly on this ground, or take a smaller sprayer with finer marks."]);
});

test("spray is never mixed to less, nor spread to more, than a label wants where the calibration gives it", () => {
  const tenth = fc.constantFrom("1", "1.25", "1.5", "1.75", "2");
  fc.assert(
    fc.property(fc.bigInt(1n, 9_000n), tenth, fc.bigInt(1n, 10n), (squareFeet, puts, tenths) => {
      const ground = of("sq ft", squareFeet);
      const gear = { ...SPRAYER, carrier: { ...SPRAYER.carrier, rate: perThousand(puts) } };
      const mix = sprayOf({ lawns: [{ ...LAWN, area: ground }], treatments: [{ ...wanting("Iron", "1", "2"), gear }], settings: { ...QUESTION.settings, tankMark: exactly("gal", { numerator: tenths, denominator: 10n }) } });
      if (mix === undefined) throw new Error("There is a spray.");
      const room = 101n;
      expect(mix.finished.amount + room >= of("gal", { numerator: squareFeet, denominator: 1000n }).amount).toBe(true);
      expect(mix.finished.amount - (mix.rest?.finished.amount ?? 0n) <= of("gal", { numerator: squareFeet * 2n, denominator: 1000n }).amount + room).toBe(true);
    }),
  );
});

test("spray is mixed to the nearest mark, and to the next one where that is more than 2 % too little", () => {
  const on = (squareFeet: bigint, mark: string) => ({ lawns: [{ ...LAWN, area: of("sq ft", squareFeet) }], settings: { ...QUESTION.settings, tankMark: exactly("gal", mark) } });
  const saidOn = (...asked: Parameters<typeof on>) => ticketOf(on(...asked)).findings.filter(({ rule }) => rule === "spray-more-than-taken").map(({ level, figure }) => `${level} ${figure ?? ""}`);
  const mixed = [
    // 1.5 gal on each 1,000 sq ft.
    { squareFeet: 4900n, mark: "5", finished: "10", said: ["take-care They make 10 gal where 7.35 gal are taken. It is mixed at its strength, and the rest is left. All of it on this ground would be 2.04 gal per 1,000 sq ft; the label of Rustwater Iron wants 2 gal per 1,000 sq ft at most."] },
    { squareFeet: 993n, mark: "1", finished: "2", said: ["take-care They make 2 gal where 1.49 gal are taken. It is mixed at its strength, and the rest is left. All of it on this ground would be 2.01 gal per 1,000 sq ft; the label of Rustwater Iron wants 2 gal per 1,000 sq ft at most."] },
    { squareFeet: 20n, mark: "0.1", finished: "0.1", said: ["take-care They make 12.8 fl oz where 3.84 fl oz are taken. It is mixed at its strength, and the rest is left. All of it on this ground would be 5 gal per 1,000 sq ft; the label of Rustwater Iron wants 2 gal per 1,000 sq ft at most."] },
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
