// A block knows its height for a width before it is drawn, so that nothing is torn apart by the end of a page.
import { breakSpans, type Line, type Span } from "./line-breaking";
import { type TextStyle } from "./lettering";
import { type Sheet, type Structure } from "./sheet";

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export interface Block {
  height(sheet: Sheet, widthPoints: number): number;
  /** Draws with the upper left corner at the place; what is read goes below the parent. */
  draw(sheet: Sheet, place: Place, parent: Structure): void;
  /** The text it begins with, to name it by. */
  readonly beginning: string;
}

/** The styles of papers: text 10 pt, legal lines 9 pt at least, amounts 20 pt, addresses 14 pt. */
export const STYLE = {
  text: { face: "sans", sizePoints: 10 },
  figure: { face: "sans", sizePoints: 10, isTabular: true },
  strongFigure: { face: "bold", sizePoints: 10, isTabular: true },
  strong: { face: "bold", sizePoints: 10 },
  label: { face: "semibold", sizePoints: 9 },
  small: { face: "sans", sizePoints: 9 },
  code: { face: "mono", sizePoints: 9 },
  section: { face: "bold", sizePoints: 12 },
  address: { face: "bold", sizePoints: 14 },
  title: { face: "bold", sizePoints: 20 },
  amount: { face: "bold", sizePoints: 20 },
  unit: { face: "semibold", sizePoints: 12 },
} as const satisfies Readonly<Record<string, TextStyle>>;

export function span(text: string, style: TextStyle): Span {
  return { text, ...style };
}

const LINE_HEIGHT = 1.3;
// A capital's height in parts of the size, for standing a line's capitals in its middle.
const CAPITAL = 0.668;

export interface WordsOptions {
  /** Its place in the structure: P, H1, H2, TH, TD, Lbl, LBody. */
  readonly type?: string;
  readonly align?: "left" | "right";
}

/** Text in one or several styles, broken into lines. */
export function words(spans: readonly Span[], { type = "P", align = "left" }: WordsOptions = {}): Block {
  // A block is measured several times before it is drawn, always in the same room.
  let broken: { readonly sheet: Sheet; readonly widthPoints: number; readonly lines: readonly Line[] } | undefined;
  const linesFor = (sheet: Sheet, widthPoints: number) => {
    if (broken?.sheet !== sheet || broken.widthPoints !== widthPoints) {
      broken = { sheet, widthPoints, lines: breakSpans(sheet.lettering, spans, widthPoints) };
    }
    return broken.lines;
  };
  return {
    beginning: spans.map(({ text }) => text).join(""),
    height: (sheet, widthPoints) => linesFor(sheet, widthPoints).reduce((sum, { sizePoints }) => sum + sizePoints * LINE_HEIGHT, 0),
    draw: (sheet, { x, y, width }, parent) => {
      const lines = linesFor(sheet, width);
      sheet.tag(parent, type, () => {
        let top = y;
        for (const line of lines) {
          drawLine(sheet, line, { x: align === "right" ? x + width - line.widthPoints : x, y: top });
          top += line.sizePoints * LINE_HEIGHT;
        }
      });
    },
  };
}

function drawLine(sheet: Sheet, { pieces, sizePoints }: Line, at: { readonly x: number; readonly y: number }): void {
  const baseline = at.y + (sizePoints * (LINE_HEIGHT + CAPITAL)) / 2;
  let { x } = at;
  for (const piece of pieces) {
    sheet.lettering.draw(piece.text, piece, { x, baseline });
    x += piece.widthPoints;
  }
}

/** A single style is the common case. */
export function line(text: string, style: TextStyle = STYLE.text, options: WordsOptions = {}): Block {
  return words([span(text, style)], options);
}

/** Empty room. */
export function space(heightPoints: number): Block {
  return { beginning: "", height: () => heightPoints, draw: () => undefined };
}

/** Blocks below each other. */
export function stack(blocks: readonly Block[], gapPoints = 0): Block {
  return {
    beginning: blocks[0]?.beginning ?? "",
    height: (sheet, width) => blocks.reduce((sum, block) => sum + block.height(sheet, width), 0) + gapPoints * Math.max(0, blocks.length - 1),
    draw: (sheet, { x, y, width }, parent) => {
      let top = y;
      for (const block of blocks) {
        block.draw(sheet, { x, y: top, width }, parent);
        top += block.height(sheet, width) + gapPoints;
      }
    },
  };
}

/** One part of a row: so many points wide, or a share of what the others leave. */
export type Width = { readonly points: number } | { readonly share: number };

export function widthsOf(widths: readonly Width[], totalPoints: number, gapPoints: number): readonly number[] {
  const fixed = widths.reduce((sum, width) => sum + ("points" in width ? width.points : 0), 0);
  const shares = widths.reduce((sum, width) => sum + ("share" in width ? width.share : 0), 0);
  const left = totalPoints - fixed - gapPoints * Math.max(0, widths.length - 1);
  return widths.map((width) => ("points" in width ? width.points : (left * width.share) / shares));
}

/** Blocks beside each other, all from the same top. */
export function beside(parts: readonly { readonly width: Width; readonly block: Block }[], gapPoints = 12): Block {
  const layout = (total: number) => widthsOf(parts.map(({ width }) => width), total, gapPoints);
  return {
    beginning: parts.map(({ block }) => block.beginning).join(" "),
    height: (sheet, total) => {
      const widths = layout(total);
      return Math.max(0, ...parts.map(({ block }, index) => block.height(sheet, widths[index] ?? 0)));
    },
    draw: (sheet, place, parent) => {
      const widths = layout(place.width);
      let { x } = place;
      for (const [index, { block }] of parts.entries()) {
        const width = widths[index] ?? 0;
        block.draw(sheet, { x, y: place.y, width }, parent);
        x += width + gapPoints;
      }
    },
  };
}
