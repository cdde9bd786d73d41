import { createRequire } from "node:module";
import { describe, expect, test } from "vitest";
import { renderPostingSign } from "#adapters/pdf/render-posting-sign";
import { type SignLaw } from "#domain/papers/posting-sign";
import { type ReadPage, type ReadText, collisionsIn, readPaper, wordsIn } from "../../support/read-paper";
import { COMPANY, ILLINOIS_SIGN, INDIANA_SIGN, signOf } from "../../support/sample-papers";

const requireFrom = createRequire(import.meta.url);
interface OutlineFont {
  readonly unitsPerEm: number;
  readonly capHeight: number;
  glyphForCodePoint(codePoint: number): { readonly bbox: { readonly minY: number; readonly maxY: number } };
}
// Fontkit comes with PDFKit and ships no types.
const fontkit = createRequire(requireFrom.resolve("pdfkit"))("fontkit") as { openSync(path: string): OutlineFont };
const bold = fontkit.openSync(requireFrom.resolve("@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff"));

async function signPage(law: SignLaw, name = COMPANY.name): Promise<ReadPage> {
  const rendered = await renderPostingSign(signOf(law, name));
  if (!rendered.ok) throw new Error(rendered.refusal.sentence);
  const { pages } = await readPaper(rendered.value);
  const [page, ...others] = pages;
  if (page === undefined || others.length > 0) throw new Error(`one sheet was expected, not ${pages.length}`);
  return page;
}

/** The places of cut lines, each once, from left to right and from the foot up. */
function cutLines({ strokes }: ReadPage) {
  const dashed = strokes.filter(({ isDashed }) => isDashed);
  const once = (values: number[]) => [...new Set(values.map((value) => Math.round(value * 100) / 100))].sort((a, b) => a - b);
  return {
    xs: once(dashed.filter(({ from, to }) => Math.abs(from[0] - to[0]) < 0.01).map(({ from }) => from[0])),
    ys: once(dashed.filter(({ from, to }) => Math.abs(from[1] - to[1]) < 0.01).map(({ from }) => from[1])),
  };
}

function textsInside({ texts }: ReadPage, [left = 0, right = 0]: number[], [foot = 0, top = 0]: number[]): ReadText[] {
  return texts.filter(({ x, baseline }) => x >= left && x < right && baseline >= foot && baseline < top);
}

const laws = [
  { law: INDIANA_SIGN, required: "LAWN CARE APPLICATION KEEP OFF THE GRASS" },
  {
    law: ILLINOIS_SIGN,
    required: `LAWN CARE APPLICATION - STAY OFF GRASS UNTIL DRY - FOR MORE INFORMATION CONTACT: ${COMPANY.name.toUpperCase()} ${COMPANY.phone}`,
  },
];

describe.each(laws)("a sign of $law.jurisdiction", ({ law, required }) => {
  test("measures 4 by 5 in between its cut lines", async () => {
    const { xs, ys } = cutLines(await signPage(law));
    expect(xs.length).toBeGreaterThan(1);
    const steps = (places: number[]) => places.slice(1).map((place, index) => Math.round((place - (places[index] ?? 0)) * 100) / 100);
    const [across, up] = [new Set(steps(xs)), new Set(steps(ys))];
    expect([...across, ...up].sort()).toEqual([4 * 72, 5 * 72]);
    expect((xs.length - 1) * (ys.length - 1)).toBe(4);
  });

  test("has letters of the legal height on each line, by the font's table and by the outline of H", async () => {
    const page = await signPage(law);
    const { xs, ys } = cutLines(page);
    const lines = textsInside(page, xs.slice(0, 2), ys.slice(0, 2));
    expect(lines.length).toBeGreaterThan(3);
    const outline = bold.glyphForCodePoint("H".codePointAt(0) ?? 0).bbox;
    for (const { emHeight, text } of lines) {
      expect((emHeight * bold.capHeight) / bold.unitsPerEm, text).toBeGreaterThanOrEqual(0.375 * 72 - 0.005);
      expect((emHeight * (outline.maxY - outline.minY)) / bold.unitsPerEm, text).toBeGreaterThanOrEqual(0.375 * 72 - 0.005);
      // No letter or figure of the line is lower than its capitals; dashes and points are no letters.
      for (const letter of text.replaceAll(/[^A-Z0-9]/g, "")) {
        expect(bold.glyphForCodePoint(letter.codePointAt(0) ?? 0).bbox.maxY, letter).toBeGreaterThanOrEqual(outline.maxY);
      }
    }
  });

  test("says the required words in order, and nothing else inside the cut lines", async () => {
    const page = await signPage(law);
    const { xs, ys } = cutLines(page);
    for (const column of [0, 1]) {
      for (const row of [0, 1]) {
        expect(wordsIn(textsInside(page, xs.slice(column, column + 2), ys.slice(row, row + 2)))).toBe(required);
      }
    }
  });

  test("keeps its letters clear of the cut lines and of each other", async () => {
    const page = await signPage(law);
    const { xs, ys } = cutLines(page);
    const lines = textsInside(page, xs.slice(0, 2), ys.slice(0, 2));
    const capitals = (text: ReadText) => (text.emHeight * bold.capHeight) / bold.unitsPerEm;
    for (const line of lines) {
      expect(line.x - (xs[0] ?? 0), line.text).toBeGreaterThanOrEqual(8.9);
      expect((xs[1] ?? 0) - line.x - line.width, line.text).toBeGreaterThanOrEqual(8.9);
      expect(line.baseline - (ys[0] ?? 0), line.text).toBeGreaterThanOrEqual(8.9);
      expect((ys[1] ?? 0) - line.baseline - capitals(line), line.text).toBeGreaterThanOrEqual(8.9);
    }
    const gaps = lines.slice(1).map((line, index) => (lines[index]?.baseline ?? 0) - line.baseline - capitals(line));
    for (const gap of gaps) expect(gap).toBeGreaterThan(4);
  });

  test("has a bar of exactly 1 in and the mark of a demonstration outside the cut lines", async () => {
    const page = await signPage(law);
    const { xs, ys } = cutLines(page);
    const isInside = (x: number, y: number) => x > (xs[0] ?? 0) && x < (xs.at(-1) ?? 0) && y > (ys[0] ?? 0) && y < (ys.at(-1) ?? 0);
    const bars = page.strokes.filter(({ from, to, isDashed }) => !isDashed && Math.abs(Math.hypot(to[0] - from[0], to[1] - from[1]) - 72) < 0.01);
    expect(bars).toHaveLength(1);
    expect(bars.some(({ from, to }) => isInside((from[0] + to[0]) / 2, (from[1] + to[1]) / 2))).toBe(false);
    const marks = page.texts.filter(({ text }) => text.includes("DEMONSTRATION"));
    expect(marks).toHaveLength(1);
    expect(marks.some(({ x, baseline }) => isInside(x, baseline))).toBe(false);
  });
});

describe("what stands outside the cut lines", () => {
  const size = (law: SignLaw, paper: "letter" | "a4") => renderPostingSign(signOf({ ...law, colorWords: `${law.colorWords}, as the law’s own text has it` }), paper);

  test.each(["letter", "a4"] as const)("does not touch on %s paper, and begins where printers reach", async (paper) => {
    for (const law of [INDIANA_SIGN, ILLINOIS_SIGN]) {
      const rendered = await size(law, paper);
      if (!rendered.ok) throw new Error(rendered.refusal.sentence);
      const read = await readPaper(rendered.value);
      // The letters of the signs themselves are measured above, by their outlines.
      const strips = { ...read, pages: read.pages.map((page) => ({ ...page, texts: page.texts.filter(({ emHeight }) => emHeight < 12) })) };
      expect(collisionsIn(strips, 14)).toEqual([]);
      const turned = read.pages.flatMap(({ texts }) => texts.filter(({ isTurned }) => isTurned));
      const ends = turned.map(({ baseline, width }) => [baseline, baseline + width]);
      for (const [start = 0, end = 0] of ends) expect([start >= 17.5, end <= (read.pages[0]?.height ?? 0) - 17.5]).toEqual([true, true]);
    }
  });
});

test("an accent does not run into the line above it", async () => {
  const page = await signPage(ILLINOIS_SIGN, "Müller Lawn & Landscape LLC");
  const { xs, ys } = cutLines(page);
  const lines = textsInside(page, xs.slice(0, 2), ys.slice(0, 2));
  const accented = lines.findIndex(({ text }) => text.includes("Ü"));
  const line = lines[accented];
  const above = lines[accented - 1];
  if (line === undefined || above === undefined) throw new Error("the name stands below the words of the law");
  const top = line.baseline + (line.emHeight * bold.glyphForCodePoint("Ü".codePointAt(0) ?? 0).bbox.maxY) / bold.unitsPerEm;
  expect(above.baseline - top).toBeGreaterThan(1);
});

describe("a sign that can't be made", () => {
  test("is refused by the words that do not fit", async () => {
    const name = "Saint Bartholomew Neighborhood Lawn and Landscape Stewardship Cooperative of Greater Millbrook";
    const rendered = await renderPostingSign(signOf(ILLINOIS_SIGN, name));
    expect(rendered.ok ? "a sign" : rendered.refusal.sentence).toContain(name.toUpperCase());
  });

  test("is refused by the character that no font has", async () => {
    const rendered = await renderPostingSign(signOf(ILLINOIS_SIGN, "草坪"));
    expect(rendered.ok ? "a sign" : rendered.refusal.sentence).toContain("U+8349");
  });
});

test("a paper that is no demonstration says nothing of one", async () => {
  const sign = signOf(INDIANA_SIGN);
  const rendered = await renderPostingSign({ ...sign, frame: { ...sign.frame, isDemonstration: false } });
  if (!rendered.ok) throw new Error(rendered.refusal.sentence);
  const { pages } = await readPaper(rendered.value);
  expect(wordsIn(pages[0]?.texts ?? [])).not.toContain("DEMONSTRATION");
});
