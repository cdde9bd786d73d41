import { describe, expect, test } from "vitest";
import { hold, takeCare } from "#domain/foundation/finding";
import { NOT_RECORDED, NOT_TAKEN, TO_WRITE, answeredLine, findingLine, levelWord, said, wordsOf } from "#domain/papers/paper";

describe("wordsOf", () => {
  test.each([
    [said("8.1 lb"), "8.1 lb"],
    [NOT_TAKEN, "not taken"],
    [NOT_RECORDED, "not recorded"],
    [TO_WRITE, ""],
    [{ kind: "does-not-apply", because: "no dilution" } as const, "no dilution"],
  ])("%o reads %j", (value, words) => {
    expect(wordsOf(value)).toBe(words);
  });
});

const words = {
  rule: "label-rate-above-highest",
  source: "label" as const,
  what: "The rate is above the label’s highest.",
  figure: "1.4 of at most 1.1 fl oz per 1,000 sq ft.",
  toDo: "Choose a lower rate.",
  citation: "Directions for use",
  about: ["Clovergone 3D"],
};

describe("a finding on paper", () => {
  test("is read in order: what, figure, what to do; its source apart", () => {
    expect(findingLine(hold("nobody", words))).toEqual({
      level: "hold",
      words: "The rate is above the label’s highest. 1.4 of at most 1.1 fl oz per 1,000 sq ft. Choose a lower rate.",
      source: "Label, Directions for use",
    });
  });

  test("leaves out what a finding does not have", () => {
    const finding = takeCare({ rule: "wind-near-limit", source: "common-practice", what: "Wind is near its limit.", about: [] });
    expect(findingLine(finding)).toEqual({ level: "take-care", words: "Wind is near its limit.", source: "Common practice" });
  });

  test("stays on the paper with its answer when it is answered", () => {
    const line = answeredLine(hold("license-holder", words), "Answered by Dana Quill.");
    expect(line.level).toBe("answered");
    expect(line.words).toContain("Choose a lower rate. Answered by Dana Quill.");
  });

  test("has a word for each level, each its own", () => {
    const all = (["hold", "take-care", "note", "answered"] as const).map(levelWord);
    expect(all).toEqual(["Hold.", "Take care.", "Note.", "Hold, answered."]);
  });
});
