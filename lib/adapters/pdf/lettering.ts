import { type LetterMeasure } from "#domain/papers/fit-sign";
import { UnprintablePaper } from "./unprintable-paper";
import { FACES, SCRIPTS, type FaceName, fontFile } from "./typefaces";

export interface TextStyle {
  readonly face: FaceName;
  readonly sizePoints: number;
  /** Figures of one width, so that columns of them stand below each other. */
  readonly isTabular?: true;
}

/** What is used of PDFKit's font object; its own types stop before it. */
interface OpenFont {
  readonly font: {
    readonly unitsPerEm: number;
    readonly capHeight: number;
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): { readonly bbox: { readonly minY: number; readonly maxY: number } };
  };
}

/**
 * Features beyond those that a font applies by itself. None is said by leaving them out: the library keeps the words
 * that it has set in a font, and an empty list would make it set each of them anew, twice for measuring and drawing.
 */
function featuresOf({ isTabular }: TextStyle): { features?: PDFKit.Mixins.OpenTypeFeatures[] } {
  return isTabular === true ? { features: ["tnum"] } : {};
}

interface Run {
  readonly fontName: string;
  readonly text: string;
}

/** Sets text in one document: measures it, draws it, and refuses what no font can show. */
export class Lettering {
  readonly #document: PDFKit.PDFDocument;
  readonly #fonts = new Map<string, OpenFont>();
  readonly #widths = new Map<string, number>();

  constructor(document: PDFKit.PDFDocument) {
    this.#document = document;
    for (const face of Object.keys(FACES) as FaceName[]) {
      for (const script of SCRIPTS) document.registerFont(`${face} ${script}`, fontFile(face, script));
    }
  }

  /** The width of a text in points, as it will be drawn. */
  widthOf(text: string, style: TextStyle): number {
    const key = `${style.face} ${style.sizePoints} ${style.isTabular === true} ${text}`;
    const held = this.#widths.get(key);
    if (held !== undefined) return held;
    const width = this.#runsOf(text, style.face).reduce((sum, run) => sum + this.#runWidth(run, style), 0);
    this.#widths.set(key, width);
    return width;
  }

  /** Draws a text from a point on its baseline to the right. */
  draw(text: string, style: TextStyle, at: { readonly x: number; readonly baseline: number }): void {
    let { x } = at;
    for (const run of this.#runsOf(text, style.face)) {
      const width = this.#runWidth(run, style);
      this.#document.text(run.text, x, at.baseline, { lineBreak: false, baseline: "alphabetic", ...featuresOf(style) });
      x += width;
    }
  }

  /** The measures that a sign is fitted by, from the font's own tables and outlines. */
  measureOf(face: FaceName): LetterMeasure {
    const { font } = this.#open(`${face} latin`);
    const capHeightEm = font.capHeight / font.unitsPerEm;
    return {
      capHeightEm,
      widthEm: (text) => this.widthOf(text, { face, sizePoints: 1000 }) / 1000,
      // Round letters reach a hair beyond the flat ones in any font; that is neither accent nor tail.
      riseEm: (text) => Math.max(0, ...this.#outlinesOf(text, face).map(({ top }) => top - capHeightEm).filter((rise) => rise > capHeightEm * 0.05)),
      dropEm: (text) => Math.max(0, ...this.#outlinesOf(text, face).map(({ foot }) => -foot).filter((drop) => drop > capHeightEm * 0.05)),
    };
  }

  #outlinesOf(text: string, face: FaceName): { readonly top: number; readonly foot: number }[] {
    return this.#runsOf(text, face).flatMap((run) => {
      const { font } = this.#open(run.fontName);
      return [...run.text].filter((character) => character.trim() !== "").map((character) => {
        const { minY, maxY } = font.glyphForCodePoint(character.codePointAt(0) ?? 0).bbox;
        return { top: maxY / font.unitsPerEm, foot: minY / font.unitsPerEm };
      });
    });
  }

  #runWidth({ fontName, text }: Run, style: TextStyle): number {
    return this.#document.font(fontName).fontSize(style.sizePoints).widthOfString(text, featuresOf(style));
  }

  /** Parts of a text by the font file that has its characters. */
  #runsOf(text: string, face: FaceName): Run[] {
    const runs: { fontName: string; text: string }[] = [];
    for (const character of text) {
      const fontName = SCRIPTS.map((script) => `${face} ${script}`).find((name) => this.#has(name, character));
      if (fontName === undefined) throw UnprintablePaper.ofCharacter(character, text);
      const last = runs.at(-1);
      // Spaces and marks that both files have stay with the run before them.
      if (last !== undefined && (last.fontName === fontName || this.#has(last.fontName, character))) last.text += character;
      else runs.push({ fontName, text: character });
    }
    return runs;
  }

  #has(fontName: string, character: string): boolean {
    return this.#open(fontName).font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0);
  }

  #open(fontName: string): OpenFont {
    const held = this.#fonts.get(fontName);
    if (held !== undefined) return held;
    this.#document.font(fontName);
    const opened = Reflect.get(this.#document, "_font") as OpenFont;
    this.#fonts.set(fontName, opened);
    return opened;
  }
}
