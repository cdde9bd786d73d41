import { type Outcome, badInput } from "#domain/foundation/outcome";
import { type CustomerNotice, missingParts, noticeFields, type NoticePrecaution, unquotedPrecautions } from "#domain/papers/customer-notice";
import { type AftercareOnNotice, type NoticeAftercare, type NoticeReason } from "#domain/papers/notice-aftercare";
import { type PaperValue, wordsOf } from "#domain/papers/paper";
import { type Block, STYLE, beside, line, space, span, stack, words } from "./block";
import { fieldRows } from "./field-grid";
import { findingBlock } from "./finding-blocks";
import { type FlowItem, block, gap, rows, together } from "./flow";
import { framedDrawing } from "./page-frame";
import { section } from "./paper-sections";
import { type PaperDrawing, type PaperSize, drawPaper } from "./sheet";
import { type Column, cell, table } from "./table";
import { UnprintablePaper } from "./unprintable-paper";
import { writingRule } from "./write-in";

const PLAIN = { face: "sans", sizePoints: 12 } as const;
const PLAIN_STRONG = { face: "bold", sizePoints: 12 } as const;
const QUOTED_SMALL = { face: "serif", sizePoints: 9 } as const;
const QUOTED = { face: "serif", sizePoints: 12 } as const;

/**
 * A customer notice as PDF. Refuses a notice that lacks a part which its law asks for; where the law's text is not on
 * file the paper is for the office alone and says so at its top.
 */
export function customerNoticeDrawing(notice: CustomerNotice, size: PaperSize = "letter"): PaperDrawing {
  return framedDrawing(notice.frame, size, (flow) => {
    const missing = missingParts(notice);
    if (notice.law.kind === "on-file" && missing.length > 0) {
      const parts = missing.join("; ");
      const { refusal } = badInput("notice", `a notice without: ${parts}`, `all parts of ${notice.law.citation}`, `The notice lacks what ${notice.law.citation} asks for: ${parts}.`);
      throw new UnprintablePaper(refusal);
    }
    for (const item of [...headItems(notice), ...bodyItems(notice)]) flow.put(item);
  });
}

/** A customer notice as PDF. */
export function renderCustomerNotice(notice: CustomerNotice, size: PaperSize = "letter"): Promise<Outcome<Buffer>> {
  return drawPaper(customerNoticeDrawing(notice, size));
}

function headItems({ law, frame, address, customer }: CustomerNotice): FlowItem[] {
  const title = block(line(frame.title, STYLE.title, { type: "H1" }));
  const who = [gap(4), block(line(address, STYLE.address)), block(line(customer, PLAIN))];
  if (law.kind === "on-file") return [title, ...who];
  const office = `Not for the customer. ${law.missing} (${law.jurisdiction}, ${law.citation})`;
  return [block(line("For the office only", STYLE.title, { type: "H1" })), gap(4), block(findingBlock({ level: "hold", words: office })), ...who];
}

function bodyItems(notice: CustomerNotice): FlowItem[] {
  const { law, frame, aftercare, moreInformationPhone, signature } = notice;
  const removal = law.kind === "on-file" ? section("The lawn marker", block(line(law.markerRemoval, PLAIN))) : [];
  const cautions = unquotedPrecautions(notice).flatMap(({ product, labelWords }) => [
    block(words([span(`${product}: `, PLAIN_STRONG), precautionSpan(labelWords)])),
    gap(4),
  ]);
  return [
    gap(10),
    ...fieldRows(noticeFields(notice)).map(block),
    ...(aftercare === undefined ? [] : aftercareItems(aftercare)),
    ...section("What was done", rows(serviceTable(notice))),
    ...(cautions.length > 0 ? section("What the labels ask of you", ...cautions) : []),
    ...removal,
    gap(14),
    // Kept in one, so that no page is only a line to sign on.
    block(stack([closing(signature, frame.company.name, moreInformationPhone), space(8), line(`${law.jurisdiction}: ${law.citation}`, STYLE.small)])),
  ];
}

/** What to do and leave comes first: it is what a customer looks for. */
function aftercareItems({ countedFrom, groups }: AftercareOnNotice): FlowItem[] {
  const head = section("What to do and leave, and until when", block(line(countedFrom, STYLE.text)));
  if (groups.every(({ steps }) => steps.length === 0)) return [...head, gap(4), block(line("Nothing is to be done or left afterwards.", PLAIN))];
  return [...head, ...groups.flatMap((group) => groupItems(group, groups.length > 1))];
}

function groupItems({ lawns, steps }: NoticeAftercare, areSeveral: boolean): FlowItem[] {
  const name = block(line(lawns, PLAIN_STRONG));
  if (steps.length === 0) return [gap(6), name, block(line("Nothing is to be done or left here afterwards.", STYLE.text))];
  const columns: Column[] = [
    { head: "When", width: { share: 4 } },
    { head: "What", width: { share: 5 } },
    { head: "Who asks for it, in which words", width: { share: 4 } },
  ];
  const cells = steps.map(({ when, what, why }) => [line(when, STYLE.strong, { type: "TD" }), what, cell(stack(why.map(reasonLine)))]);
  const listed = rows(table(columns, cells));
  return areSeveral ? [gap(6), together(name, gap(2), listed)] : [gap(4), listed];
}

function reasonLine({ asks, words: quoted }: NoticeReason): Block {
  const lead = span(asks, STYLE.small);
  return words(quoted.length === 0 ? [lead] : [lead, span(`: ${quoted.map((each) => `“${each}”`).join(" ")}`, QUOTED_SMALL)]);
}

function precautionSpan(labelWords: NoticePrecaution["labelWords"]) {
  return labelWords === "states-none" ? span("the label states none.", PLAIN) : span(labelWords.map((each) => `“${each}”`).join(" "), QUOTED);
}

function serviceTable({ services }: CustomerNotice) {
  const columns: Column[] = [
    { head: "Service", width: { share: 2 } },
    { head: "Products", width: { share: 3 } },
  ];
  // An empty cell is written in by hand, on the rule below it.
  const cells = services.map(({ service, brandNames }) => [line(service, PLAIN, { type: "TD" }), line(wordsOf(brandNames), QUOTED, { type: "TD" })]);
  return table(columns, cells, { leastRowPoints: 20 });
}

/** Who signed or is to sign, and beside it whom to ask. */
function closing(signature: PaperValue, company: string, phone: PaperValue): Block {
  const more = stack([line("More information", STYLE.section, { type: "H2" }), space(2), moreInformation(company, phone)]);
  return beside([{ width: { share: 3 }, block: signatureBlock(signature) }, { width: { share: 2 }, block: more }], 24);
}

function moreInformation(company: string, phone: PaperValue): Block {
  if (phone.kind === "to-write") return writingRule(`${company}, phone`);
  return words([span(`${company}, `, PLAIN), span(phone.kind === "said" ? phone.text : "phone not recorded", PLAIN_STRONG)]);
}

function signatureBlock(signature: PaperValue): Block {
  if (signature.kind === "said") return words([span("Signed. ", PLAIN_STRONG), span(signature.text, PLAIN)]);
  return stack([space(16), writingRule("Signature of the applicator")]);
}
