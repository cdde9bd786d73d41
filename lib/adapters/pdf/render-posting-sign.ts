import { type Outcome } from "#domain/foundation/outcome";
import { type FittedSign, fitSign } from "#domain/papers/fit-sign";
import { type PostingSign } from "#domain/papers/posting-sign";
import { STYLE, span } from "./block";
import { breakSpans } from "./line-breaking";
import { DEMONSTRATION } from "./page-frame";
import { POINTS_AN_INCH, type PaperDrawing, type PaperSize, type Sheet, drawPaper, sheetPoints } from "./sheet";
import { type SignSheet, arrangeSigns, roomForOneSign } from "./sign-sheet";
import { UnprintablePaper } from "./unprintable-paper";

const FACE = "bold";
/** Where the words of a strip begin and end: as far from the sheet's edge as any printer reaches. */
const STRIP_INSET = 0.25 * POINTS_AN_INCH;

/**
 * As many sheets of lawn markers as are needed, at their exact size, to be cut along dashed lines. Inside the cut lines stand only
 * the words that the law asks for; outside, a bar of exactly one inch shows whether the printer has changed the size.
 * Refuses by name when the words do not fit in letters of the legal height.
 */
export function postingSignDrawing(sign: PostingSign, size: PaperSize = "letter"): PaperDrawing {
  const paper = sheetPoints(size);
  const draw = (sheet: Sheet): void => {
    const fitted = fitSign(sign.law, sign.frame.company, sheet.lettering.measureOf(FACE), roomForOneSign(paper));
    if (!fitted.ok) throw new UnprintablePaper(fitted.refusal);
    const arranged = arrangeSigns(fitted.value, paper);
    if (arranged === undefined) throw UnprintablePaper.ofHeight(fitted.value.lines.join(" "));
    const sheets = Math.ceil(sign.signs / (arranged.rows * arranged.columns));
    for (let page = 0; page < sheets; page += 1) drawSignSheet(sheet, sign, fitted.value, arranged);
  };
  return { frame: sign.frame, sheetSize: paper, draw };
}

/** Sheets of lawn markers as PDF. */
export function renderPostingSign(sign: PostingSign, size: PaperSize = "letter"): Promise<Outcome<Buffer>> {
  return drawPaper(postingSignDrawing(sign, size));
}

function drawSignSheet(sheet: Sheet, sign: PostingSign, fitted: FittedSign, arranged: SignSheet): void {
  sheet.document.addPage({ size: [arranged.widthPoints, arranged.heightPoints], margin: 0 });
  drawCutLines(sheet, fitted, arranged);
  for (let row = 0; row < arranged.rows; row += 1) {
    for (let column = 0; column < arranged.columns; column += 1) {
      drawSign(sheet, fitted, arranged.left + column * fitted.widthPoints, arranged.top + row * fitted.heightPoints);
    }
  }
  drawStrips(sheet, sign, fitted, arranged);
}

function drawCutLines(sheet: Sheet, sign: FittedSign, { left, top, columns, rows }: SignSheet): void {
  const right = left + columns * sign.widthPoints;
  const bottom = top + rows * sign.heightPoints;
  sheet.artifact(() => {
    sheet.document.lineWidth(0.5).strokeColor("black").dash(4, { space: 3 });
    for (let column = 0; column <= columns; column += 1) {
      const x = left + column * sign.widthPoints;
      sheet.document.moveTo(x, top).lineTo(x, bottom).stroke();
    }
    for (let row = 0; row <= rows; row += 1) {
      const y = top + row * sign.heightPoints;
      sheet.document.moveTo(left, y).lineTo(right, y).stroke();
    }
  });
}

/** The words stand flush left; the block of them stands in the middle of the sign. */
function drawSign(sheet: Sheet, sign: FittedSign, x: number, y: number): void {
  const { lines, letterHeightPoints, gapsPoints, fontSizePoints, letterWidthPercent } = sign;
  const style = { face: FACE, sizePoints: fontSizePoints } as const;
  const stretch = letterWidthPercent / 100;
  const widest = Math.max(...lines.map((line) => sheet.lettering.widthOf(line, style))) * stretch;
  const high = lines.length * letterHeightPoints + gapsPoints.reduce((sum, gap) => sum + gap, 0);
  const left = x + (sign.widthPoints - widest) / 2;
  let baseline = y + (sign.heightPoints - high) / 2 + letterHeightPoints;
  sheet.tag(sheet.root, "P", () => {
    for (const [index, line] of lines.entries()) {
      sheet.document.save().translate(left, baseline).scale(stretch, 1);
      sheet.lettering.draw(line, style, { x: 0, baseline: 0 });
      sheet.document.restore();
      baseline += letterHeightPoints + (gapsPoints[index] ?? 0);
    }
  });
}

function inches(points: number): string {
  return `${(points / POINTS_AN_INCH).toFixed(3).replace(/0+$/, "").replace(/\.$/, "")} in`;
}

function drawStrips(sheet: Sheet, { law, frame }: PostingSign, sign: FittedSign, arranged: SignSheet): void {
  const length = arranged.strips === "beside" ? arranged.heightPoints : arranged.widthPoints;
  const end = length - STRIP_INSET;
  const about = `${law.jurisdiction}, ${law.citation}. ${law.colorWords}. Capitals ${inches(sign.letterHeightPoints)}; the law’s least is ${law.leastLetterHeightInches} in.`;
  const lines = breakSpans(sheet.lettering, [span(about, STYLE.small)], end - STRIP_INSET).map(({ pieces }) => pieces.map(({ text }) => text).join(""));
  if (lines.length > 2) throw UnprintablePaper.ofHeight(about);
  onStrip(sheet, sign, arranged, "first", () => {
    for (const [index, line] of lines.entries()) {
      sheet.lettering.draw(line, STYLE.small, { x: STRIP_INSET, baseline: -7 - 11 * (lines.length - 1 - index) });
    }
  });
  onStrip(sheet, sign, arranged, "last", () => drawCheckBar(sheet, STRIP_INSET, end, frame.isDemonstration));
}

/** Draws along a strip: x runs along it, and y = 0 is the cut line, negative before the signs and positive after them. */
function onStrip(sheet: Sheet, sign: FittedSign, arranged: SignSheet, which: "first" | "last", draw: () => void): void {
  const { document } = sheet;
  sheet.artifact(() => {
    if (arranged.strips === "beside") {
      const x = arranged.left + (which === "first" ? 0 : arranged.columns * sign.widthPoints);
      // A quarter turn: along the strip is up the sheet.
      document.transform(0, -1, 1, 0, x, arranged.heightPoints);
    } else {
      document.translate(0, arranged.top + (which === "first" ? 0 : arranged.rows * sign.heightPoints));
    }
    draw();
  });
}

function drawCheckBar(sheet: Sheet, start: number, end: number, isDemonstration: boolean): void {
  const { document, lettering } = sheet;
  const y = 10;
  const barEnd = start + POINTS_AN_INCH;
  document.lineWidth(1).strokeColor("black");
  document.moveTo(start, y).lineTo(barEnd, y).stroke();
  document.lineWidth(0.5);
  for (const x of [start, barEnd]) document.moveTo(x, y - 5).lineTo(x, y + 5).stroke();
  const words = "This bar is 1 in long. If not, print again at 100 percent. Use weather-resistant stock.";
  lettering.draw(words, STYLE.small, { x: barEnd + 10, baseline: y + 3 });
  if (!isDemonstration) return;
  const style = { face: FACE, sizePoints: 10 } as const;
  lettering.draw(DEMONSTRATION, style, { x: end - lettering.widthOf(DEMONSTRATION, style), baseline: y + 3 });
}
