import { describe, expect, test } from "vitest";
import { answerOf, gather, partsOf, readOnFile, readWord, readYesOrNo } from "#domain/label/label-answer";
import { accept, refuse } from "#domain/foundation/outcome";

describe("what was typed for a fact", () => {
  test.each(["", "   ", "\n"])("%j is unread", (text) => expect(answerOf(text)).toEqual({ kind: "unread" }));
  test.each(["none", "None", " NONE. "])("%j is none", (text) => expect(answerOf(text)).toEqual({ kind: "none" }));

  test("anything else is what is printed, and stands for the label's words", () => {
    expect(answerOf(" until dry ")).toEqual({ kind: "printed", value: "until dry", labelWords: "until dry" });
  });

  test.each(['until dry "Keep off until dry."', "until dry \u201CKeep off until dry.\u201D"])("words in quotation marks are the label's: %s", (text) => {
    expect(answerOf(text)).toEqual({ kind: "printed", value: "until dry", labelWords: "Keep off until dry." });
  });

  test("a quotation alone is both", () => {
    expect(answerOf('"until dry"')).toMatchObject({ kind: "printed", labelWords: '"until dry"' });
  });

  test.each([
    ["1\u00B9\u2044\u2082 hours", "1 1/2 hours"],
    ["1\u00B9\u2044\u2082 in within 24 hours", "1 1/2 in within 24 hours"],
    ["10\u00B2 hours", "10\u00B2 hours"],
  ])("a fraction in raised and lowered figures is one, a raised figure alone is left: %s", (text, value) => {
    expect(answerOf(text)).toMatchObject({ value, labelWords: text });
  });

  test("lines are kept, empty ones are not, and a point at the end says nothing", () => {
    expect(answerOf("one; 1 %\n\ntwo; 2 %.")).toMatchObject({ value: "one; 1 %\ntwo; 2 %" });
  });
});

test("a fact is on file as unknown, none, or what the reader makes of it", () => {
  const read = (value: string) => accept(value.length);
  expect(readOnFile("", read)).toEqual(accept("unknown"));
  expect(readOnFile("none", read)).toEqual(accept("none"));
  expect(readOnFile("four", read)).toEqual(accept(4));
  expect(readOnFile("four", () => refuse("no"))).toEqual(refuse("no"));
});

test("a word of a few is taken in any case, another is refused with the few", () => {
  expect(readWord(["dry", "moist"], "DRY")).toEqual(accept("dry"));
  expect(readWord(["dry", "moist"], "wet")).toEqual(refuse("Write one of: dry, moist."));
});

test("yes, no, a label that says nothing, and one that nobody read", () => {
  expect([readYesOrNo("yes"), readYesOrNo("No"), readYesOrNo("none"), readYesOrNo("")]).toEqual([accept(true), accept(false), accept(false), accept("unknown")]);
  expect(readYesOrNo("perhaps").ok).toBe(false);
});

test("a list is split at commas and lines", () => expect(partsOf("a, b\nc,,")).toEqual(["a", "b", "c"]));

test("all answers make one, or every complaint is told at once", () => {
  expect(gather({ one: accept(1), two: accept("b") })).toEqual(accept({ one: 1, two: "b" }));
  expect(gather({ one: refuse("no"), two: accept(2), three: refuse("neither") })).toEqual(refuse({ one: "no", three: "neither" }));
});
