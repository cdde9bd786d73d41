// The head and foot of every page, and the room between them.
import { type PaperFrame } from "#domain/papers/paper";
import { type Block, STYLE, beside, line, space, span, stack, words } from "./block";
import { Flow } from "./flow";
import { type PageRoom, type PaperDrawing, type PaperSize, POINTS_AN_INCH, type Sheet, sheetPoints } from "./sheet";

const MARGIN = 0.5 * POINTS_AN_INCH;
const BELOW_HEAD = 12;
const ABOVE_FOOT = 8;

/** The word by which nobody takes a paper of the demonstration for a real one. */
export const DEMONSTRATION = "DEMONSTRATION";

function headBlock({ company, title, number, date }: PaperFrame, page: string): Block {
  const license = company.licenseNumber === undefined ? "License number not on file" : `License ${company.licenseNumber}`;
  const left = stack([line(company.name, { face: "bold", sizePoints: 11 }), line(company.address, STYLE.small), line(`${company.phone} · ${license}`, STYLE.small)]);
  const numbered = number === undefined ? [] : [span(number, STYLE.code), span(" · ", STYLE.small)];
  const right = stack([
    line(title, { face: "bold", sizePoints: 11 }, { align: "right" }),
    words([...numbered, span(`${date} · ${page}`, STYLE.small)], { align: "right" }),
  ]);
  return stack([beside([{ width: { share: 11 }, block: left }, { width: { share: 9 }, block: right }], 16), space(4)]);
}

function footBlock({ ruleVersion, source, isDemonstration }: PaperFrame): Block {
  const left = line(`${ruleVersion} · ${source}`, STYLE.small);
  if (!isDemonstration) return left;
  const mark = line(DEMONSTRATION, { face: "bold", sizePoints: 10 }, { align: "right" });
  return beside([{ width: { share: 1 }, block: left }, { width: { points: 96 }, block: mark }], 16);
}

/** The widest that "page n of N" gets, so that the head has its height before the pages are counted. */
const WIDEST_PAGE = "page 888 of 888";

function roomBetween(sheet: Sheet, frame: PaperFrame): PageRoom {
  const width = sheet.widthPoints - 2 * MARGIN;
  const top = MARGIN + headBlock(frame, WIDEST_PAGE).height(sheet, width) + BELOW_HEAD;
  const bottom = sheet.heightPoints - MARGIN - footBlock(frame).height(sheet, width) - 4 - ABOVE_FOOT;
  return { left: MARGIN, top, width, bottom };
}

function drawFrames(sheet: Sheet, frame: PaperFrame, { left, width }: PageRoom, first: number): void {
  const end = endOfPages(sheet);
  for (let index = first; index < end; index += 1) {
    sheet.document.switchToPage(index);
    const head = headBlock(frame, `page ${index - first + 1} of ${end - first}`);
    const headHeight = head.height(sheet, width);
    head.draw(sheet, { x: left, y: MARGIN, width }, "passed-over");
    sheet.rule([left, MARGIN + headHeight], [left + width, MARGIN + headHeight], 1.5);
    const foot = footBlock(frame);
    const footTop = sheet.heightPoints - MARGIN - foot.height(sheet, width);
    sheet.rule([left, footTop - 4], [left + width, footTop - 4], 0.5);
    foot.draw(sheet, { x: left, y: footTop, width }, "passed-over");
  }
}

/** The index of the page that would come next: the first of a paper that is drawn now. */
function endOfPages(sheet: Sheet): number {
  const { start, count } = sheet.document.bufferedPageRange();
  return start + count;
}

/** A paper with the house's head and foot on every page; `compose` says what stands between them. */
export function framedDrawing(frame: PaperFrame, size: PaperSize, compose: (flow: Flow) => void): PaperDrawing {
  return {
    frame,
    sheetSize: sheetPoints(size),
    draw: (sheet) => {
      const room = roomBetween(sheet, frame);
      const first = endOfPages(sheet);
      compose(new Flow(sheet, room));
      drawFrames(sheet, frame, room, first);
    },
  };
}
