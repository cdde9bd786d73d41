import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { FACES, type FaceName, SCRIPTS, fontFile } from "#adapters/pdf/typefaces";
import { unpackWoff } from "#adapters/pdf/unpack-woff";

const requireFrom = createRequire(import.meta.url);
interface Font {
  readonly postscriptName: string;
  readonly numGlyphs: number;
  readonly unitsPerEm: number;
  layout(text: string): { readonly advanceWidth: number };
}
// Fontkit comes with PDFKit and ships no types. It can read the packed files too, by code of its own.
const fontkit = createRequire(requireFrom.resolve("pdfkit"))("fontkit") as { create(bytes: Buffer): Font };

const files = (Object.keys(FACES) as FaceName[]).flatMap((face) => SCRIPTS.map((script) => ({ face, script })));

describe("an unpacked font", () => {
  test.each(files)("is the packed one: $face $script", ({ face, script }) => {
    const { family, weight } = FACES[face];
    const packed = fontkit.create(readFileSync(requireFrom.resolve(`@fontsource/${family}/files/${family}-${script}-${weight}-normal.woff`)));
    const unpacked = fontkit.create(fontFile(face, script));
    const facts = (font: Font) => [font.postscriptName, font.numGlyphs, font.unitsPerEm, font.layout("Łódź 1/2, fi").advanceWidth];
    expect(facts(unpacked)).toEqual(facts(packed));
    expect(unpacked.numGlyphs).toBeGreaterThan(20);
  });

  test("comes of a packed one only", () => {
    expect(() => unpackWoff(Buffer.from("wOF2 is packed in another way"))).toThrow("WOFF 1.0");
  });
});
