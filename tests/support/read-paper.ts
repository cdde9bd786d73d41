// Reads a PDF back with a reader that knows nothing of how it was drawn: texts with their places, paths, structure.
import { OPS, getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

export interface ReadText {
  readonly text: string;
  /** The left end on the baseline, in points from the lower left corner. */
  readonly x: number;
  readonly baseline: number;
  readonly width: number;
  /** The height of the em, and its width where letters were narrowed. */
  readonly emHeight: number;
  readonly emWidth: number;
  readonly isTurned: boolean;
  readonly page: number;
}

/** A straight stroke from one end to the other. */
export interface ReadStroke {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly isDashed: boolean;
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly ReadText[];
  readonly strokes: readonly ReadStroke[];
  /** The structure as an outline: "Document P P Table TR TH". */
  readonly roles: readonly string[];
}

export interface ReadPaper {
  readonly pages: readonly ReadPage[];
  readonly title: unknown;
  readonly language: unknown;
  readonly isTagged: boolean;
}

type Matrix = readonly [number, number, number, number, number, number];

/** What stands in a PDF. */
export async function readPaper(bytes: Uint8Array): Promise<ReadPaper> {
  const loading = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const document = await loading.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item) => ("str" in item && item.str.trim() !== "" ? [textOf(item.str, item.width, item.transform as number[], number)] : []));
    const list = await page.getOperatorList();
    const tree: unknown = await page.getStructTree();
    pages.push({ width, height, texts, strokes: strokesOf(list.fnArray, list.argsArray), roles: rolesOf(tree) });
  }
  const { info } = (await document.getMetadata()) as unknown as { info: Record<string, unknown> };
  const marked = await document.getMarkInfo();
  await loading.destroy();
  return { pages, title: info["Title"], language: info["Language"], isTagged: marked?.["Marked"] === true };
}

function textOf(text: string, width: number, [a = 0, b = 0, c = 0, d = 0, x = 0, baseline = 0]: number[], page: number): ReadText {
  return { text, x, baseline, width, emHeight: Math.hypot(c, d), emWidth: Math.hypot(a, b), isTurned: Math.abs(b) > 0.001, page };
}

function rolesOf(node: unknown): string[] {
  if (typeof node !== "object" || node === null) return [];
  const { role, children } = node as { role?: string; children?: unknown[] };
  // The reader hands out the whole structure with each page; what has nothing on this page is another page's.
  if (!hasContent(node)) return [];
  return [...(role === undefined || role === "Root" ? [] : [role]), ...(children ?? []).flatMap(rolesOf)];
}

function hasContent(node: unknown): boolean {
  if (typeof node !== "object" || node === null) return false;
  const { type, children } = node as { type?: string; children?: unknown[] };
  return type === "content" || (children ?? []).some(hasContent);
}

function times([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

// The reader's own codes inside a path: move, line, curve, quadratic, close; each with so many numbers after it.
const NUMBERS_AFTER = [2, 2, 6, 4, 0];

function strokesOf(codes: readonly number[], allArguments: readonly unknown[]): ReadStroke[] {
  const strokes: ReadStroke[] = [];
  const kept: { matrix: Matrix; isDashed: boolean }[] = [];
  let state: { matrix: Matrix; isDashed: boolean } = { matrix: [1, 0, 0, 1, 0, 0], isDashed: false };
  for (const [index, code] of codes.entries()) {
    const args = allArguments[index] as unknown[];
    if (code === OPS.save) kept.push(state);
    else if (code === OPS.restore) state = kept.pop() ?? state;
    else if (code === OPS.transform) state = { ...state, matrix: times(state.matrix, args as unknown as Matrix) };
    else if (code === OPS.setDash) state = { ...state, isDashed: (args[0] as number[]).length > 0 };
    else if (code === OPS.constructPath && args[0] === OPS.stroke) {
      const [path] = args[1] as [ArrayLike<number>];
      strokes.push(...linesOf(path).map((line) => ({ from: at(state.matrix, line.from), to: at(state.matrix, line.to), isDashed: state.isDashed })));
    }
  }
  return strokes;
}

type Point = readonly [number, number];

function at([a, b, c, d, e, f]: Matrix, [x, y]: Point): Point {
  return [a * x + c * y + e, b * x + d * y + f];
}

function linesOf(path: ArrayLike<number>): { from: Point; to: Point }[] {
  const lines: { from: Point; to: Point }[] = [];
  let here: Point = [0, 0];
  for (let index = 0; index < path.length; ) {
    const code = path[index] ?? 0;
    const count = NUMBERS_AFTER[code] ?? 0;
    if (count > 0) {
      const to: Point = [path[index + count - 1] ?? 0, path[index + count] ?? 0];
      if (code === 1) lines.push({ from: here, to });
      here = to;
    }
    index += 1 + count;
  }
  return lines;
}

/** The texts of a page or a paper as one string, line by line as they were drawn. */
export function wordsIn(texts: readonly ReadText[]): string {
  const parts = texts.map(({ text, x, baseline }, index) => {
    const before = texts[index - 1];
    // A letter from a second font file goes on where the first ended.
    const goesOn = before?.baseline === baseline && Math.abs(before.x + before.width - x) < 0.1;
    return goesOn ? text : ` ${text}`;
  });
  return parts.join("").replaceAll(/\s+/g, " ").trim();
}

/** Texts that leave the page's margin, or touch another text: what a cell that is too small would cause. */
export function collisionsIn(paper: ReadPaper, marginPoints: number): string[] {
  return paper.pages.flatMap(({ texts, width, height }) => {
    const upright = texts.filter(({ isTurned }) => !isTurned).map((each) => ({ ...each, top: each.baseline + 0.68 * each.emHeight, foot: each.baseline - 0.2 * each.emHeight }));
    // Half a point is what a letter may reach beyond its own width.
    const outside = upright.filter(({ x, width: wide, foot, top }) => x < marginPoints - 0.5 || x + wide > width - marginPoints + 0.5 || foot < marginPoints - 3 || top > height - marginPoints);
    const touching = upright.flatMap((one, index) =>
      upright.slice(index + 1).filter((other) => one.x + one.width > other.x + 0.5 && other.x + other.width > one.x + 0.5 && one.foot < other.top - 0.5 && other.foot < one.top - 0.5)
        .map((other) => `“${one.text}” touches “${other.text}”`),
    );
    return [...outside.map(({ text }) => `“${text}” leaves the margin`), ...touching];
  });
}
