import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";

interface Font {
  hasGlyphForCodePoint(codePoint: number): boolean;
  layout(text: string, features: readonly string[]): { readonly glyphs: readonly { readonly advanceWidth: number }[] };
}

interface Fontkit {
  openSync(path: string): Font;
}

const requireFrom = createRequire(import.meta.url);
// Fontkit comes with PDFKit and ships no types.
const fontkit = createRequire(requireFrom.resolve("pdfkit"))("fontkit") as Fontkit;

/** Opens one latin file of an installed @fontsource face, the same that a browser is given first. */
export function openLatinFont(face: string, weight: number): Font {
  const path = fileURLToPath(
    new URL(`../../node_modules/@fontsource/${face}/files/${face}-latin-${weight}-normal.woff`, import.meta.url),
  );
  return fontkit.openSync(path);
}
