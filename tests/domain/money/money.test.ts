import fc from "fast-check";
import { expect, test } from "vitest";
import { formatMoney, fromCents, multiplyMoney, parseDollars, sumMoney } from "#domain/money/money";
import { rational } from "#domain/quantities/rational";

test.each([
  ["42.50", 4250n], ["$42.50", 4250n], ["$ 42.5", 4250n], ["42 1/2", 4250n], ["1,250", 125_000n], [".99", 99n], ["0", 0n], ["0.10", 10n], ["1000000", 100_000_000n],
])("%j is read to the cent", (typed, cents) => {
  expect(parseDollars("price", typed)).toEqual({ ok: true, value: cents });
});

test.each([
  ["", "such as 42.50"], ["forty", "such as 42.50"], ["-3", "such as 42.50"], ["$", "such as 42.50"], ["42,50", "such as 42.50"], ["$$4", "such as 42.50"],
  ["42.505", "parts of a cent"], ["1/3", "parts of a cent"], ["1000000.01", "more than one container"],
])("%j is refused with a sentence", (typed, words) => {
  const answer = parseDollars("price", typed);
  expect(answer).toMatchObject({ ok: false, refusal: { kind: "bad-input", field: "price", found: typed === "" ? "nothing" : typed } });
  expect(answer.ok ? "" : answer.refusal.sentence).toContain(words);
});

test.each([
  [rational(0n), "$0.00"], [rational(5n), "$0.05"], [rational(123_450n), "$1,234.50"], [rational(1n, 2n), "$0.01"], [rational(49n, 100n), "$0.00"], [rational(200n, 3n), "$0.67"],
  [rational(99_999_950n, 100n), "$10,000.00"],
])("%o cents are written to the cent, half a cent up", (cents, words) => {
  expect(formatMoney({ cents })).toBe(words);
});

test("thirds of a cent add up to the cent, which rounded parts would not", () => {
  const third = multiplyMoney(fromCents(1n), rational(1n, 3n));
  expect(sumMoney([third, third, third])).toEqual(fromCents(1n));
  expect(sumMoney([])).toEqual(fromCents(0n));
});

test("what is written of whole cents reads back as the same cents", () => {
  fc.assert(
    fc.property(fc.bigInt({ min: 0n, max: 100_000_000n }), (cents) => {
      expect(parseDollars("price", formatMoney(fromCents(cents)))).toEqual({ ok: true, value: cents });
    }),
  );
});
