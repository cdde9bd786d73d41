import { type Outcome } from "#domain/foundation/outcome";
import { type ApplicationRecordPaper, amountWords, productFields, recordFieldGroups } from "#domain/papers/application-record-paper";
import { type PaperField, type PaperValue } from "#domain/papers/paper";
import { type Block, STYLE, beside, line, span, stack, words } from "./block";
import { fieldRows } from "./field-grid";
import { type FlowItem, block, gap, together } from "./flow";
import { framedDrawing } from "./page-frame";
import { findingItems, section } from "./paper-sections";
import { type PaperDrawing, type PaperSize, drawPaper } from "./sheet";
import { writingRule } from "./write-in";

/** An application record as PDF: every element that a record rule asks for, known or not. Refuses what can't be shown. */
export function applicationRecordDrawing(record: ApplicationRecordPaper, size: PaperSize = "letter"): PaperDrawing {
  return framedDrawing(record.frame, size, (flow) => {
    const items = [
      block(line(record.siteAddress, STYLE.title, { type: "H1" })),
      gap(2),
      block(line(record.readBack, { face: "sans", sizePoints: 11 })),
      ...findingItems(record.findings),
      ...section("Lawns", block(line(record.lawns.join(" · ")))),
      ...record.products.flatMap((product) =>
        section(`${product.brand}: ${amountWords(product.amount)}`, fieldGroup(productFields(product).slice(1))),
      ),
      ...recordFieldGroups(record.elements).flatMap(({ title, fields }) => section(title, fieldGroup(fields))),
      ...amendmentItems(record),
      gap(10),
      together(block(signatureBlock(record.signature)), gap(10), block(hashes(record))),
    ];
    for (const item of items) flow.put(item);
  });
}

/** An application record as PDF. */
export function renderApplicationRecord(record: ApplicationRecordPaper, size: PaperSize = "letter"): Promise<Outcome<Buffer>> {
  return drawPaper(applicationRecordDrawing(record, size));
}

function fieldGroup(fields: readonly PaperField[]): FlowItem {
  return together(...fieldRows(fields).map(block));
}

function amendmentItems({ amendments }: ApplicationRecordPaper): FlowItem[] {
  if (amendments.length === 0) return [];
  const blocks = amendments.map(({ when, who, words: text, hash }) =>
    block(stack([
      words([span(`${when}, ${who}. `, STYLE.strong), span(text, STYLE.text)]),
      words([span("Hash ", STYLE.small), span(hash, STYLE.code)]),
    ])),
  );
  return section("Amendments", ...blocks);
}

function signatureBlock(signature: PaperValue): Block {
  if (signature.kind === "said") return words([span("Signed. ", STYLE.strong), span(signature.text, STYLE.text)]);
  if (signature.kind !== "to-write") return words([span("Signature: ", STYLE.strong), span("not recorded", STYLE.text)]);
  return beside([
    { width: { share: 3 }, block: writingRule("Signature of the applicator") },
    { width: { share: 1 }, block: writingRule("Date") },
  ]);
}

function hashes({ hash, previousHash }: ApplicationRecordPaper): Block {
  const row = (label: string, value: string) =>
    beside([
      { width: { points: 96 }, block: line(label, STYLE.label) },
      { width: { share: 1 }, block: line(value, STYLE.code) },
    ]);
  return stack([row("Hash of this record", hash), row("Hash before it", previousHash)]);
}
