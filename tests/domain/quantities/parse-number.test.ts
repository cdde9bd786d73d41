import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseNumber, plainCharacters } from "#domain/quantities/parse-number";
import { compareRational, rational, toDecimalString } from "#domain/quantities/rational";
import { anyRational } from "../../support/quantity-arbitraries";

describe("what people type", () => {
  const table: readonly (readonly [string, bigint, bigint])[] = [
    ["0", 0n, 1n],
    ["0.8", 4n, 5n],
    [".8", 4n, 5n],
    ["5.", 5n, 1n],
    ["13.50", 27n, 2n],
    ["007", 7n, 1n],
    ["1/4", 1n, 4n],
    ["15/16", 15n, 16n],
    ["2 1/2", 5n, 2n],
    ["2-1/2", 5n, 2n],
    ["2  1 / 2", 5n, 2n],
    ["1,250", 1250n, 1n],
    ["1,250.5", 2501n, 2n],
    ["1,234,567", 1_234_567n, 1n],
    ["12 000", 12_000n, 1n],
    ["12\u00A0000", 12_000n, 1n],
    ["12\u202F000", 12_000n, 1n],
    ["1,250 1/2", 2501n, 2n],
    ["\u00BD", 1n, 2n],
    ["2\u00BD", 5n, 2n],
    ["2 \u00BD", 5n, 2n],
    ["2-\u00BD", 5n, 2n],
    ["2\u2013\u00BD", 5n, 2n],
    ["2-\u00B9\u2044\u2082", 5n, 2n],
    ["1\u2153", 4n, 3n],
    ["\u215E", 7n, 8n],
    ["1\u20442", 1n, 2n],
    ["\uFF12.\uFF15", 5n, 2n],
    ["  3  ", 3n, 1n],
    ["1\u00B9\u2044\u2082", 3n, 2n],
    ["1\u00B9/\u2082", 3n, 2n],
    ["1\u00B9/2", 3n, 2n],
    ["1 \u00B9 \u2044 \u2082", 3n, 2n],
    ["1,250\u00B3\u2044\u2084", 5003n, 4n],
    ["\u00B9\u2044\u2084", 1n, 4n],
    ["2\u00B9\u00B9\u2044\u2081\u2086", 43n, 16n],
    ["1\u215F2", 3n, 2n],
    ["1\u215F\u2082", 3n, 2n],
    ["2\u2189", 2n, 1n],
  ];
  test.each(table)("%j", (text, numerator, denominator) => {
    const outcome = parseNumber("amount", text);
    if (!outcome.ok) throw new Error(outcome.refusal.sentence);
    expect(compareRational(outcome.value, rational(numerator, denominator))).toBe(0);
  });
});

describe("what is refused, and what is said", () => {
  const table: readonly (readonly [string, string, string])[] = [
    ["", "nothing", "There is no number here."],
    ["   ", "nothing", "There is no number here."],
    ["-2", "-2", '"-2" is below zero; an amount is zero or more.'],
    ["\u22122", "\u22122", '"\u22122" is below zero; an amount is zero or more.'],
    ["2,5", "2,5", '"2,5" has a comma where a point belongs. Write 2.5 if that is meant.'],
    ["0,800", "0,800", '"0,800" has a comma where a point belongs. Write 0.800 if that is meant.'],
    ["1.250,5", "1.250,5", '"1.250,5" has a comma where a point belongs. Write 1250.5 if that is meant.'],
    ["11/2", "11/2", '"11/2" is a fraction of one or more. Write 1 1/2, or 5.5.'],
    ["11\u20442", "11\u20442", '"11\u20442" is a fraction of one or more. Write 1 1/2, or 5.5.'],
    ["121/2", "121/2", '"121/2" is a fraction of one or more. Write 12 1/2, or 60.5.'],
    ["12/3", "12/3", '"12/3" is a fraction of one or more. Write 1 2/3, or 4.'],
    ["11/3", "11/3", '"11/3" is a fraction of one or more. Write 1 1/3, or 3 2/3.'],
    ["113/16", "113/16", '"113/16" is a fraction of one or more. Write 11 3/16, or 7.0625.'],
    ["101/2", "101/2", '"101/2" is a fraction of one or more. Write 10 1/2, or 50.5.'],
    ["5/4", "5/4", '"5/4" is a fraction of one or more. Write 1.25 if that is meant.'],
    ["2/2", "2/2", '"2/2" is a fraction of one or more. Write 1 if that is meant.'],
    ["20/2", "20/2", '"20/2" is a fraction of one or more. Write 10 if that is meant.'],
    ["1e3", "1e3", '"1e3" is not a number that can be read. Write it as 2.5, 2 1/2 or 1,250.'],
  ];
  test.each(table)("%j", (text, found, sentence) => {
    expect(parseNumber("amount", text)).toMatchObject({
      ok: false,
      refusal: { kind: "bad-input", field: "amount", found, sentence },
    });
  });

  test.each(["10\u00B2", "10\u2082", "\u00B2", "2\u00B9", "2\u2460", "11\u2044\u2082", "\u00B9\u2044\u2081\u00B2", "\u00B9\u2044\u20826", "\u00B9/1,000", "\u00B9\u00BD"])(
    "%j has figures raised or lowered that may be a footnote's or a power's",
    (text) => {
      expect(parseNumber("amount", text)).toMatchObject({ ok: false, refusal: { found: text, sentence: expect.stringMatching(/raised, lowered or in a ring/u) as string } });
    },
  );

  test.each([
    "NaN",
    "Infinity",
    "\u221E",
    "+2",
    "1/0",
    "2 3/2",
    "2 0/0",
    "1,25",
    "1,2500",
    "12,34,567",
    "1 2",
    "1..2",
    ".",
    "/",
    "1/",
    "2-3",
    "2 - 1/2",
    "2 -\u00BD",
    "$5",
    "ten",
    "0x10",
    "1_000",
  ])("%j is no number", (text) => {
    expect(parseNumber("amount", text).ok).toBe(false);
  });

  test("more than sixty characters are refused without being shown", () => {
    expect(parseNumber("amount", "9".repeat(61))).toMatchObject({ ok: false, refusal: { found: "61 characters" } });
  });

  test("any text gets an answer", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 80 }), (text) => {
        const outcome = parseNumber("amount", text);
        if (outcome.ok) expect(outcome.value.numerator >= 0n && outcome.value.denominator > 0n).toBe(true);
        else expect(outcome.refusal.sentence).not.toBe("");
      }),
    );
  });
});

test("a fraction below one is read, and one of one and more is asked back with what it comes to", () => {
  fc.assert(
    fc.property(fc.bigInt(0n, 999n), fc.bigInt(1n, 999n), (top, bottom) => {
      const outcome = parseNumber("amount", `${String(top)}/${String(bottom)}`);
      expect(outcome.ok).toBe(top < bottom);
      // The last number that is proposed is the fraction itself.
      const proposed = outcome.ok ? outcome : parseNumber("amount", /([\d.]+(?: \d+\/\d+)?)(?: if that is meant)?\.$/u.exec(outcome.refusal.sentence)?.[1] ?? "");
      if (!proposed.ok) throw new Error(proposed.refusal.sentence);
      expect(compareRational(proposed.value, rational(top, bottom))).toBe(0);
    }),
  );
});

test("a number written with a point reads back exactly", () => {
  fc.assert(
    fc.property(anyRational(), fc.integer({ min: 0, max: 8 }), (value, digits) => {
      const written = toDecimalString(value, digits, "down");
      const outcome = parseNumber("amount", written);
      if (!outcome.ok) throw new Error(outcome.refusal.sentence);
      expect(toDecimalString(outcome.value, digits, "nearest")).toBe(written);
    }),
  );
});

test("plain characters: one kind of space, slash and minus; superscripts as digits", () => {
  expect(plainCharacters("12\u00A0000 m\u00B2")).toBe("12 000 m2");
  expect(plainCharacters("1\u00BD gal / acre")).toBe("1 1/2 gal/acre");
  expect(plainCharacters("1\u00B9\u2044\u2082 gal per m\u00B2")).toBe("1 1/2 gal per m2");
  expect(plainCharacters("3 ft\u00B3/100 m\u00B2")).toBe("3 ft3/100 m2");
});

test("a figure raised behind a number stays what it was, so that nobody reads it as the number's own", () => {
  expect(plainCharacters("10\u00B2 lb\u00B9")).toBe("10\u00B2 lb\u00B9");
  expect(plainCharacters("2\u2460")).toBe("2\u2460");
});
