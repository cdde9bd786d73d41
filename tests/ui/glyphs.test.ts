import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { openLatinFont } from "./font-files";

const folder = fileURLToPath(new URL("../../app/ui/", import.meta.url));

const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => /\.tsx?$/.test(name));

/** Every text that a source file could show: strings, templates, and the text between tags. */
function textsOf(path: string): string[] {
  const source = ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const texts: string[] = [];
  function visit(node: ts.Node) {
    if (ts.isStringLiteralLike(node) || ts.isJsxText(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) {
      texts.push(node.text);
    }
    ts.forEachChild(node, visit);
  }
  visit(source);
  return texts;
}

const characters = new Set(files.flatMap((name) => [...textsOf(folder + name).join("")]).filter((character) => !/[\n\t]/.test(character)));

const faces = [
  ["atkinson-hyperlegible-next", 400],
  ["atkinson-hyperlegible-next", 600],
  ["atkinson-hyperlegible-next", 700],
  ["source-serif-4", 400],
  ["source-serif-4", 600],
  ["atkinson-hyperlegible-mono", 600],
] as const;

describe("glyphs", () => {
  test("the texts of the design system were read, its special characters among them", () => {
    expect(files.length).toBeGreaterThan(50);
    for (const character of ["½", "“", "’", "…", "−", "ß", "\u00a0", "\u2044", "°"]) expect([...characters]).toContain(character);
  });

  test.each(faces)("%s %d has every one of them in its latin file", (face, weight) => {
    const font = openLatinFont(face, weight);
    const missing = [...characters].filter((character) => !font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0));
    expect(missing).toEqual([]);
  });

  test("what the sans does not have is known, so that nobody writes it", () => {
    const font = openLatinFont("atkinson-hyperlegible-next", 400);
    for (const character of "≤≥→▲●✓⅓⅛₂µ′″\u202f") {
      expect(font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0), character).toBe(false);
      expect(characters.has(character), character).toBe(false);
    }
  });

  test("the sans sets no fraction by itself, which is why Amount does", () => {
    const font = openLatinFont("atkinson-hyperlegible-next", 700);
    const widths = (features: readonly string[]) => font.layout("1/3", features).glyphs.map((glyph) => glyph.advanceWidth);
    expect(widths(["frac"])).toEqual(widths([]));
  });
});
