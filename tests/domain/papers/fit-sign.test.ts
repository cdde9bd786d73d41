import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type FittedSign, fitSign } from "#domain/papers/fit-sign";
import { type SignLaw } from "#domain/papers/posting-sign";
import { COMPANY, ILLINOIS_SIGN, INDIANA_SIGN } from "../../support/sample-papers";

// Letters of one width, half the size, with capitals of seven tenths: every figure below can be checked by hand.
// Umlauts reach a fifth of an em above a capital, commas a tenth below the line.
const letters = {
  capHeightEm: 0.7,
  widthEm: (text: string) => text.length * 0.5,
  riseEm: (text: string) => (/[ÄÖÜ]/.test(text) ? 0.2 : 0),
  dropEm: (text: string) => (text.includes(",") ? 0.1 : 0),
};
const room = { widthPoints: 583, heightPoints: 727 };

function fitted(law: SignLaw, name = COMPANY.name): FittedSign {
  const outcome = fitSign(law, { name, phone: COMPANY.phone }, letters, room);
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  return outcome.value;
}

function lawOf(text: string, changes: Partial<SignLaw> = {}): SignLaw {
  return { ...INDIANA_SIGN, phrases: [{ kind: "words", text }], ...changes };
}

describe("fitSign", () => {
  test("takes the tallest letters that fit on the width or the height", () => {
    // Four letters on 4 x 5 in lying: 342 pt of width hold letters of at most 171 pt, whose capitals are 119.7 pt high.
    const sign = fitted(lawOf("KEEP"));
    expect([sign.widthPoints, sign.heightPoints]).toEqual([360, 288]);
    expect(sign.letterHeightPoints).toBeGreaterThan(119.7 - 0.5);
    expect(sign.letterHeightPoints).toBeLessThanOrEqual(119.7);
    expect(sign.fontSizePoints * 0.7).toBeCloseTo(sign.letterHeightPoints, 9);
  });

  test("stands as the law gives it where the law leaves nothing open", () => {
    const sign = fitted(lawOf("KEEP", { orientation: "as-given" }));
    expect([sign.widthPoints, sign.heightPoints]).toEqual([288, 360]);
  });

  test("narrows letters before it grows, and never their height", () => {
    // At 27 pt, 15 letters are 289 pt wide: more than 270, less than that at 90 percent; the sign may only stand upright.
    const sign = fitted(lawOf("INFORMATIONLINE", { orientation: "as-given" }));
    expect(sign.letterWidthPercent).toBe(90);
    expect(sign.letterHeightPoints).toBeGreaterThanOrEqual(27);
    expect([sign.widthPoints, sign.heightPoints]).toEqual([288, 360]);
  });

  test("grows only where the law names the smallest size", () => {
    const word = "W".repeat(25);
    expect(fitted(lawOf(word)).widthPoints).toBeGreaterThan(360);
    expect(fitSign(lawOf(word, { sizeIs: "exactly" }), COMPANY, letters, room).ok).toBe(false);
  });

  test("refuses by the words that do not fit, with the law's figures", () => {
    const outcome = fitSign(ILLINOIS_SIGN, { name: "Unreasonably ".repeat(12), phone: "317-555-0142" }, letters, room);
    const sentence = outcome.ok ? "a sign" : outcome.refusal.sentence;
    expect(sentence).toContain("UNREASONABLY");
    expect(sentence).toContain("4 x 5 in");
    expect(sentence).toContain("0.375 in");
    expect(sentence).toContain("415 ILCS 65/3(a)");
  });

  test("does not begin a line with the dash that belongs to the line before", () => {
    expect(fitted(ILLINOIS_SIGN).lines.filter((line) => line.startsWith("-"))).toEqual([]);
  });

  test("leaves room for an accent below a tail", () => {
    const words = ["KEEPKEEPKE", "OFF,OFF,OF", "ÜBERÜBERÜB", "GRASSGRASS", "LAWNLAWNLA", "TODAYTODAY", "MARKERMARK"];
    const { gapsPoints, lines, fontSizePoints } = fitted(lawOf(words.join(" "), { orientation: "as-given" }));
    expect(lines).toEqual(words);
    const least = 0.3 * fontSizePoints;
    expect(gapsPoints[1]).toBeGreaterThan(least);
    // The others share what is left.
    for (const gap of [...gapsPoints.slice(0, 1), ...gapsPoints.slice(2)]) expect(gap).toBeCloseTo(gapsPoints[0] ?? 0, 9);
    expect(gapsPoints[0]).toBeLessThan(least);
  });

  test("breaks between phrases rather than inside one", () => {
    // "KEEP OFF THE" would fit on the second line as well; the letters are as tall as the long word lets them be.
    const law = { ...INDIANA_SIGN, phrases: ["APPLICATIONS", "KEEP OFF", "THE LAWN"].map((text) => ({ kind: "words" as const, text })) };
    expect(fitted(law).lines).toEqual(["APPLICATIONS", "KEEP OFF", "THE LAWN"]);
  });

  test("says the words in order in letters of the legal height inside the sign, or refuses", () => {
    const names = fc.array(fc.stringMatching(/^[A-Za-z]{1,14}$/), { minLength: 1, maxLength: 6 }).map((parts) => parts.join(" "));
    fc.assert(
      fc.property(names, fc.constantFrom(INDIANA_SIGN, ILLINOIS_SIGN), (name, law) => {
        const outcome = fitSign(law, { name, phone: COMPANY.phone }, letters, room);
        if (!outcome.ok) {
          expect(outcome.refusal.found).toContain(name.toUpperCase());
          return;
        }
        const { lines, letterHeightPoints, gapsPoints, letterWidthPercent, fontSizePoints, widthPoints, heightPoints } = outcome.value;
        const words = law.phrases.map((phrase) => (phrase.kind === "words" ? phrase.text : phrase.kind === "company-name" ? name : COMPANY.phone));
        expect(lines.join(" ")).toBe(words.join(" ").toUpperCase());
        expect(letterHeightPoints).toBeGreaterThanOrEqual(27);
        expect(letterWidthPercent).toBeGreaterThanOrEqual(80);
        expect(lines.length * letterHeightPoints + gapsPoints.reduce((sum, gap) => sum + gap, 0)).toBeLessThanOrEqual(heightPoints - 18 + 1e-6);
        for (const line of lines) expect((line.length * 0.5 * fontSizePoints * letterWidthPercent) / 100).toBeLessThanOrEqual(widthPoints - 18 + 1e-6);
      }),
    );
  });
});
