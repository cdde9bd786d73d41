// Breaks texts of several faces into lines that are never wider than their room.
import { type Lettering, type TextStyle } from "./lettering";

/** A stretch of text in one style. */
export interface Span extends TextStyle {
  readonly text: string;
}

interface Piece extends Span {
  readonly widthPoints: number;
}

export interface Line {
  readonly pieces: readonly Piece[];
  readonly widthPoints: number;
  /** The size of the largest letters in it. */
  readonly sizePoints: number;
}

/** Lines of at most `roomPoints`. Breaks at spaces and line feeds; a word wider than the room is broken inside. */
export function breakSpans(lettering: Lettering, spans: readonly Span[], roomPoints: number): readonly Line[] {
  const lines: Line[] = [];
  let pieces: Piece[] = [];
  let widthPoints = 0;
  const endLine = () => {
    lines.push(finishLine(lettering, pieces, spans));
    pieces = [];
    widthPoints = 0;
  };
  for (const word of wordsOf(spans)) {
    if (word === "\n") {
      endLine();
      continue;
    }
    const visible = measure(lettering, trimEnd(word));
    if (pieces.length > 0 && widthPoints + visible > roomPoints) endLine();
    for (const part of visible > roomPoints ? splitWord(lettering, word, roomPoints) : [word]) {
      if (pieces.length > 0 && widthPoints + measure(lettering, trimEnd(part)) > roomPoints) endLine();
      pieces.push(...part.map((span) => ({ ...span, widthPoints: lettering.widthOf(span.text, span) })));
      widthPoints += measure(lettering, part);
    }
  }
  endLine();
  return lines;
}

type Word = readonly Span[];

/** Words with the spaces after them; a word may go through several spans, as in **9:12**, */
function wordsOf(spans: readonly Span[]): (Word | "\n")[] {
  const words: (Word | "\n")[] = [];
  let open: Span[] = [];
  for (const span of spans) {
    for (const token of span.text.match(/\n|[^ \n]+ *| +/g) ?? []) {
      if (token === "\n") {
        if (open.length > 0) words.push(open);
        open = [];
        words.push("\n");
        continue;
      }
      open.push({ ...span, text: token });
      if (token.endsWith(" ")) {
        words.push(open);
        open = [];
      }
    }
  }
  if (open.length > 0) words.push(open);
  return words;
}

function measure(lettering: Lettering, word: Word): number {
  return word.reduce((sum, span) => sum + lettering.widthOf(span.text, span), 0);
}

function trimEnd(word: Word): Word {
  return word.map((span, index) => (index === word.length - 1 ? { ...span, text: span.text.trimEnd() } : span));
}

function splitWord(lettering: Lettering, word: Word, roomPoints: number): Word[] {
  const parts: Word[] = [];
  let part: Span[] = [];
  for (const span of word) {
    for (const character of span.text) {
      if (part.length > 0 && measure(lettering, [...part, { ...span, text: character }]) > roomPoints) {
        const [whole, rest] = splitAtHyphen(part);
        parts.push(whole);
        part = rest;
      }
      const last = part.at(-1);
      if (last !== undefined && isOneStyle(last, span)) part[part.length - 1] = { ...last, text: last.text + character };
      else part.push({ ...span, text: character });
    }
  }
  if (part.length > 0) parts.push(part);
  return parts;
}

/** A word that must be broken is broken after its last hyphen, if it has one. */
function splitAtHyphen(part: Span[]): [Span[], Span[]] {
  const last = part.at(-1);
  const hyphen = last?.text.lastIndexOf("-") ?? -1;
  if (last === undefined || hyphen < 1 || hyphen === last.text.length - 1) return [part, []];
  return [[...part.slice(0, -1), { ...last, text: last.text.slice(0, hyphen + 1) }], [{ ...last, text: last.text.slice(hyphen + 1) }]];
}

function isOneStyle(one: TextStyle, other: TextStyle): boolean {
  return one.face === other.face && one.sizePoints === other.sizePoints && one.isTabular === other.isTabular;
}

/** Joins neighbors of one style, so that a line is read as words and not as scraps. */
function finishLine(lettering: Lettering, pieces: readonly Piece[], spans: readonly Span[]): Line {
  const joined: Span[] = [];
  for (const piece of pieces) {
    const last = joined.at(-1);
    if (last !== undefined && isOneStyle(last, piece)) joined[joined.length - 1] = { ...last, text: last.text + piece.text };
    else joined.push(piece);
  }
  const measured = joined.map((span) => ({ ...span, widthPoints: lettering.widthOf(span.text, span) }));
  const sizes = (measured.length > 0 ? measured : spans).map(({ sizePoints }) => sizePoints);
  return { pieces: measured, widthPoints: measure(lettering, trimEnd(joined)), sizePoints: Math.max(0, ...sizes) };
}
