// One paper while it is drawn: PDFKit's document, the room on its pages, and the structure that reading aids follow.
import PDFDocument from "pdfkit";
import { type Outcome, accept, refuse } from "#domain/foundation/outcome";
import { type PaperFrame } from "#domain/papers/paper";
import { Lettering } from "./lettering";
import { UnprintablePaper } from "./unprintable-paper";

export const POINTS_AN_INCH = 72;
export const POINTS_A_MILLIMETER = POINTS_AN_INCH / 25.4;

export type PaperSize = "letter" | "a4";

/** ISO 216 for A4; a Letter sheet is 8.5 x 11 in. */
const SIZES: Readonly<Record<PaperSize, readonly [number, number]>> = {
  letter: [8.5 * POINTS_AN_INCH, 11 * POINTS_AN_INCH],
  a4: [210 * POINTS_A_MILLIMETER, 297 * POINTS_A_MILLIMETER],
};

/** Width and height of a sheet in points, upright. */
export function sheetPoints(size: PaperSize): readonly [number, number] {
  return SIZES[size];
}

/** An element of what is read; or the mark of what a reading aid passes over, as the second head of a table. */
export type Structure = PDFKit.PDFStructureElement | "passed-over";

/** Where on every page there is room for what the paper says. */
export interface PageRoom {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly bottom: number;
}

export class Sheet {
  readonly document: PDFKit.PDFDocument;
  readonly lettering: Lettering;
  readonly widthPoints: number;
  readonly heightPoints: number;
  /** The element below which everything that is read stands. */
  readonly root: PDFKit.PDFStructureElement;

  constructor(frame: PaperFrame, [widthPoints, heightPoints]: readonly [number, number]) {
    const title = [frame.title, frame.number, frame.date].filter((part) => part !== undefined).join(", ");
    this.widthPoints = widthPoints;
    this.heightPoints = heightPoints;
    this.document = new PDFDocument({
      size: [widthPoints, heightPoints],
      margin: 0,
      autoFirstPage: false,
      bufferPages: true,
      pdfVersion: "1.7",
      tagged: true,
      lang: "en-US",
      displayTitle: true,
      info: { Title: title, Author: frame.company.name, CreationDate: new Date(frame.createdEpochMilliseconds) },
    });
    this.lettering = new Lettering(this.document);
    this.root = this.document.struct("Document");
    this.document.addStructure(this.root);
  }

  /** Draws something that is read: a heading, a paragraph, a cell. */
  tag(parent: Structure, type: string, draw: () => void): void {
    if (parent === "passed-over") this.artifact(draw, "Pagination");
    else parent.add(this.document.struct(type, {}, [draw]));
  }

  /** An element that holds others: a table, a row. */
  group(parent: Structure, type: string): Structure {
    if (parent === "passed-over") return parent;
    const element = this.document.struct(type);
    parent.add(element);
    return element;
  }

  /** Draws something that a reading aid passes over: a rule, a box, the head and foot that repeat. */
  artifact(draw: () => void, type: "Layout" | "Pagination" = "Layout"): void {
    this.document.markContent("Artifact", { type });
    this.document.save();
    draw();
    this.document.restore();
    this.document.endMarkedContent();
  }

  /** A black line. */
  rule(from: readonly [number, number], to: readonly [number, number], widthPoints = 0.5): void {
    this.artifact(() => this.document.moveTo(...from).lineTo(...to).lineWidth(widthPoints).strokeColor("black").stroke());
  }
}

/** A paper that can be drawn alone or with others in one file. */
export interface PaperDrawing {
  readonly frame: PaperFrame;
  readonly sheetSize: readonly [number, number];
  readonly draw: (sheet: Sheet) => void;
}

/** Draws one paper: see {@link drawPapers}. */
export function drawPaper(drawing: PaperDrawing): Promise<Outcome<Buffer>> {
  return drawPapers(drawing.frame, drawing.sheetSize, [drawing]);
}

/**
 * Draws papers one after the other and answers with the file, or with a refusal when something can't be shown on them.
 * The same data gives the same bytes: the time in the file is the frame's own, and its identifier is made of what it
 * says. The frame names the file as a whole; each paper has its own head, foot and count of pages.
 */
export async function drawPapers(frame: PaperFrame, sheetSize: readonly [number, number], drawings: readonly PaperDrawing[]): Promise<Outcome<Buffer>> {
  const sheet = new Sheet(frame, sheetSize);
  const chunks: Buffer[] = [];
  const ended = new Promise<void>((resolve, reject) => {
    sheet.document.on("data", (chunk: Buffer) => chunks.push(chunk));
    sheet.document.on("end", resolve);
    sheet.document.on("error", reject);
  });
  try {
    for (const { draw } of drawings) draw(sheet);
  } catch (thrown) {
    if (thrown instanceof UnprintablePaper) return refuse(thrown.refusal);
    throw thrown;
  }
  sheet.document.end();
  await ended;
  return accept(Buffer.concat(chunks));
}
