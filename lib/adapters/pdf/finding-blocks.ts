// Findings in black and white: mark, frame or bar, and word, so that a gray copy of a copy still tells them apart.
import { type PaperFinding, levelWord } from "#domain/papers/paper";
import { type Block, STYLE, span, words } from "./block";
import { type Sheet } from "./sheet";

const MARK = 14;
const INDENT = MARK + 8;
const PADDING = { hold: 7, "take-care": 4, note: 4, answered: 6 } as const;
const SIDE = 8;
const BAR_WIDTH = 4;

/** One finding: a hold in a full frame, take care behind a broken bar, a note under a rule. */
export function findingBlock(finding: PaperFinding): Block {
  const source = finding.source === undefined ? [] : [span(` (${finding.source})`, STYLE.small)];
  const text = words([span(`${levelWord(finding.level)} `, STYLE.strong), span(finding.words, STYLE.text), ...source]);
  const padding = PADDING[finding.level];
  const roomOf = (width: number) => width - 2 * SIDE - INDENT;
  return {
    beginning: finding.words,
    height: (sheet, width) => Math.max(MARK, text.height(sheet, roomOf(width))) + 2 * padding + 4,
    draw: (sheet, { x, y, width }, parent) => {
      const height = Math.max(MARK, text.height(sheet, roomOf(width))) + 2 * padding;
      sheet.artifact(() => {
        drawSurround(sheet, finding.level, { x, y, width, height });
        drawMark(sheet, finding.level, x + SIDE, y + padding - 0.5);
      });
      text.draw(sheet, { x: x + SIDE + INDENT, y: y + padding, width: roomOf(width) }, parent);
    },
  };
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function drawSurround({ document }: Sheet, level: PaperFinding["level"], { x, y, width, height }: Box): void {
  document.strokeColor("black").fillColor("black");
  switch (level) {
    case "hold":
      document.rect(x + 1, y + 1, width - 2, height - 2).lineWidth(2).stroke();
      return;
    case "answered":
      document.rect(x + 0.5, y + 0.5, width - 1, height - 1).lineWidth(0.75).stroke();
      return;
    case "take-care":
      for (let top = y; top < y + height - 1; top += 7) document.rect(x, top, BAR_WIDTH, Math.min(4, y + height - top)).fill();
      return;
    case "note":
      document.moveTo(x, y).lineTo(x + width, y).lineWidth(0.75).stroke();
      return;
  }
}

function drawMark({ document }: Sheet, level: PaperFinding["level"], x: number, y: number): void {
  document.strokeColor("black").fillColor("black").lineWidth(1.25).lineJoin("round");
  switch (level) {
    case "hold":
      octagon(document, x, y).fill();
      return;
    case "answered":
      octagon(document, x, y).stroke();
      // The stroke of a signature: someone has answered.
      document.moveTo(x + 3, y + 9).bezierCurveTo(x + 5, y + 3, x + 6, y + 12, x + 8, y + 7).lineTo(x + 11.5, y + 5.5).stroke();
      return;
    case "take-care":
      document.polygon([x + MARK / 2, y + 1], [x + MARK - 0.5, y + MARK - 1], [x + 0.5, y + MARK - 1]).stroke();
      document.rect(x + MARK / 2 - 0.75, y + 5, 1.5, 4).fill();
      document.rect(x + MARK / 2 - 0.75, y + 10.2, 1.5, 1.5).fill();
      return;
    case "note":
      document.moveTo(x + 2, y + 1).lineTo(x + 8.5, y + 1).lineTo(x + 12, y + 4.5).lineTo(x + 12, y + 13).lineTo(x + 2, y + 13).closePath().stroke();
      document.moveTo(x + 8.5, y + 1).lineTo(x + 8.5, y + 4.5).lineTo(x + 12, y + 4.5).stroke();
      return;
  }
}

function octagon(document: PDFKit.PDFDocument, x: number, y: number): PDFKit.PDFDocument {
  const corner = MARK * (1 - Math.SQRT1_2);
  const far = MARK - corner;
  const points: [number, number][] = [
    [x + corner, y], [x + far, y], [x + MARK, y + corner], [x + MARK, y + far],
    [x + far, y + MARK], [x + corner, y + MARK], [x, y + far], [x, y + corner],
  ];
  return document.polygon(...points);
}
