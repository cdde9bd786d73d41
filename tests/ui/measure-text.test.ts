import { describe, expect, test } from "vitest";
import {
  type DrawnWeight,
  characterWidthEm,
  knownCharacters,
  measureText,
  wrapText,
} from "../../app/ui/drawings/measure-text";
import { openLatinFont } from "./font-files";

const weights: readonly DrawnWeight[] = [400, 600, 700];

describe("measureText", () => {
  test.each(weights)("knows every width of weight %d as the font file has it", (weight) => {
    const font = openLatinFont("atkinson-hyperlegible-next", weight);
    expect(knownCharacters.length).toBeGreaterThan(180);
    for (const character of knownCharacters) {
      const width = font.layout(character, ["tnum"]).glyphs.reduce((sum, glyph) => sum + glyph.advanceWidth, 0);
      expect(characterWidthEm(character, weight) * 1000, character).toBeCloseTo(width, 6);
    }
  });

  test("a character that the face does not have counts as its widest one", () => {
    const widest = Math.max(...knownCharacters.map((character) => characterWidthEm(character, 400)));
    expect(characterWidthEm("\u4e2d", 400)).toBe(widest);
  });

  test("a line as the face sets it, kerning included, is never wider than what is measured", () => {
    for (const weight of weights) {
      const font = openLatinFont("atkinson-hyperlegible-next", weight);
      for (const line of ["closed: 80 °F and over", "Wind 12 mph, gusts to 19 mph", "AVAVA To Ty We", "lb N per 1,000 sq ft"]) {
        const set = font.layout(line, ["tnum", "kern"]).glyphs.reduce((sum, glyph) => sum + glyph.advanceWidth, 0);
        expect(measureText(line, 1000, weight)).toBeGreaterThanOrEqual(set);
      }
    }
  });
});

describe("wrapText", () => {
  test("keeps every word and no line is wider than asked", () => {
    const text = "Wind over ten miles an hour from the southwest until the front has passed";
    const lines = wrapText(text, 150, 14);
    expect(lines.join(" ")).toBe(text);
    for (const line of lines) expect(measureText(line, 14)).toBeLessThanOrEqual(150);
  });

  test("breaks a word that no line can hold, with a hyphen, and loses no letter of it", () => {
    const word = "Rasenpflegegerätehersteller";
    const lines = wrapText(word, 80, 14);
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.map((line) => line.replace(/-$/, "")).join("")).toBe(word);
    for (const line of lines) expect(measureText(line, 14)).toBeLessThanOrEqual(80);
  });

  test("no text gives no line", () => {
    expect(wrapText("", 100, 14)).toEqual([]);
  });
});
