// What the PDF library alone takes for papers: what a paper writes is noted once while it is drawn, and is then written
// again by a script that knows no blocks, tables or lines: as many pages, the same strings in the same fonts at the same
// places, and as many elements of structure.
import PDFDocument from "pdfkit";
import { FACES, type FaceName, fontFile, type Script, SCRIPTS } from "#adapters/pdf/typefaces";

interface WrittenText {
  readonly words: string;
  readonly x: number;
  readonly y: number;
  readonly font: string;
  readonly sizePoints: number;
}

/** An element of structure, or what stands outside of it, with the texts in it. */
interface WrittenPiece {
  /** Null: a reading aid passes over it. */
  readonly type: string | null;
  readonly page: number;
  readonly texts: WrittenText[];
}

/** Everything that was written into one file. */
export interface WrittenPaper {
  pages: number;
  readonly pieces: WrittenPiece[];
}

type Method = (this: unknown, ...given: unknown[]) => unknown;

/** What is noted of each document while it is drawn. */
interface Notes extends WrittenPaper {
  page: number;
  font: string;
  sizePoints: number;
  open: WrittenPiece | undefined;
}

const notesOf = new Map<unknown, Notes>();

function notes(document: unknown): Notes {
  const held = notesOf.get(document) ?? { pages: 0, pieces: [], page: 0, font: "", sizePoints: 0, open: undefined };
  notesOf.set(document, held);
  return held;
}

function noteText(document: unknown, [words, x, y]: readonly unknown[]): void {
  const own = notes(document);
  const text = { words: String(words), x: Number(x), y: Number(y), font: own.font, sizePoints: own.sizePoints };
  if (own.open === undefined) own.pieces.push({ type: null, page: own.page, texts: [text] });
  else own.open.texts.push(text);
}

/** An element's own drawing, with a note of what it draws. */
function noted(document: unknown, type: string, draw: () => void): () => void {
  return () => {
    const own = notes(document);
    own.open = { type, page: own.page, texts: [] };
    own.pieces.push(own.open);
    draw();
    own.open = undefined;
  };
}

function noteStructure(document: unknown, given: readonly unknown[]): readonly unknown[] {
  const [type, options, children] = given;
  if (typeof type !== "string") return given;
  if (Array.isArray(children)) {
    return [type, options, children.map((child: unknown) => (typeof child === "function" ? noted(document, type, child as () => void) : child))];
  }
  const own = notes(document);
  own.pieces.push({ type, page: own.page, texts: [] });
  return given;
}

const NOTERS: Readonly<Record<string, (document: unknown, given: readonly unknown[]) => readonly unknown[]>> = {
  addPage: (document, given) => {
    const own = notes(document);
    own.page = own.pages;
    own.pages += 1;
    return given;
  },
  switchToPage: (document, given) => {
    notes(document).page = Number(given[0]);
    return given;
  },
  font: (document, given) => {
    notes(document).font = String(given[0]);
    return given;
  },
  fontSize: (document, given) => {
    notes(document).sizePoints = Number(given[0]);
    return given;
  },
  text: (document, given) => {
    noteText(document, given);
    return given;
  },
  struct: noteStructure,
};

/** Draws papers once and tells what was written into each file, in the order in which they were begun. */
export async function noteWritten(draw: () => Promise<unknown>): Promise<readonly WrittenPaper[]> {
  const methods = PDFDocument.prototype as unknown as Record<string, Method>;
  const before = Object.entries(NOTERS).map(([name, noter]) => {
    const own = methods[name];
    if (own === undefined) throw new Error(`The PDF library has no method ${name}.`);
    methods[name] = function noting(...given) {
      return own.apply(this, [...noter(this, given)]);
    };
    return [name, own] as const;
  });
  notesOf.clear();
  try {
    await draw();
  } finally {
    for (const [name, own] of before) methods[name] = own;
  }
  return [...notesOf.values()].map(({ pages, pieces }) => ({ pages, pieces }));
}

function writePiece(document: PDFKit.PDFDocument, root: PDFKit.PDFStructureElement, { type, texts }: WrittenPiece): void {
  const write = () => {
    for (const { words, x, y, font, sizePoints } of texts) document.font(font).fontSize(sizePoints).text(words, x, y, { lineBreak: false, baseline: "alphabetic" });
  };
  if (type !== null) {
    root.add(texts.length === 0 ? document.struct(type) : document.struct(type, {}, [write]));
    return;
  }
  document.markContent("Artifact", { type: "Layout" });
  write();
  document.endMarkedContent();
}

/** Writes a paper again with the PDF library alone. */
export async function writeBare({ pages, pieces }: WrittenPaper): Promise<Buffer> {
  const document = new PDFDocument({ size: "LETTER", margin: 0, autoFirstPage: false, bufferPages: true, pdfVersion: "1.7", tagged: true, lang: "en-US" });
  const chunks: Buffer[] = [];
  const ended = new Promise<void>((resolve, reject) => {
    document.on("data", (chunk: Buffer) => chunks.push(chunk));
    document.on("end", resolve);
    document.on("error", reject);
  });
  for (const face of Object.keys(FACES) as FaceName[]) {
    for (const script of SCRIPTS as readonly Script[]) document.registerFont(`${face} ${script}`, fontFile(face, script));
  }
  const root = document.struct("Document");
  document.addStructure(root);
  for (let page = 0; page < pages; page += 1) {
    document.addPage();
    for (const piece of pieces) if (piece.page === page) writePiece(document, root, piece);
  }
  document.end();
  await ended;
  return Buffer.concat(chunks);
}
