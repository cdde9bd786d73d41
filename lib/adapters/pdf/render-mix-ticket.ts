import { BrokenInvariant } from "#domain/foundation/invariant";
import { type Outcome } from "#domain/foundation/outcome";
import { type MixingStep, type MixTicketPaper, type TankLoad, lawnsWithoutEveryAmount } from "#domain/papers/mix-ticket-paper";
import { type PaperValue, wordsOf } from "#domain/papers/paper";
import { type Block, STYLE, beside, line, space, span, stack, words } from "./block";
import { fieldRows } from "./field-grid";
import { type FlowItem, block, gap, rows, together } from "./flow";
import { framedDrawing } from "./page-frame";
import { findingItems, section } from "./paper-sections";
import { type PaperDrawing, type PaperSize, drawPaper } from "./sheet";
import { type Column, cell, table } from "./table";

/** Steps are read at arm's length beside a tank. */
const STEP = { face: "sans", sizePoints: 11 } as const;
const STEP_STRONG = { face: "bold", sizePoints: 11 } as const;
const STEP_QUOTED = { face: "serif", sizePoints: 11 } as const;

/** A mix ticket as PDF: what to measure out, in which order, for which lawn. Refuses what can't be shown on paper. */
export function mixTicketDrawing(ticket: MixTicketPaper, size: PaperSize = "letter"): PaperDrawing {
  const short = lawnsWithoutEveryAmount(ticket);
  if (short.length > 0) throw new BrokenInvariant(`every lawn has one amount for each product, but not ${short.join(", ")}`);
  return framedDrawing(ticket.frame, size, (flow) => {
    const items = [
      block(line(ticket.address, STYLE.title, { type: "H1" })),
      block(line(ticket.customer)),
      gap(8),
      ...fieldRows(ticket.visit, 4).map(block),
      ...findingItems(ticket.findings.filter(({ level }) => level !== "note")),
      ...ticket.loads.flatMap(loadItems),
      gap(10),
      together(...section("In this order", ...mixingItems(ticket)).slice(1)),
      ...((ticket.atApplication ?? []).length > 0 ? section("Leaf, soil and rain", ...atApplicationItems(ticket)) : []),
      ...section("What goes on each lawn", rows(lawnTable(ticket))),
      ...section("Calibration used", ...fieldRows(ticket.calibration, ticket.calibration.length % 3 === 0 ? 3 : 4).map(block)),
      ...section("Products", rows(productTable(ticket))),
      ...findingItems(ticket.findings.filter(({ level }) => level === "note")),
      ...(ticket.nutrients.length > 0 ? section("Nutrients", rows(nutrientTable(ticket))) : []),
      ...(ticket.aftercare.length > 0 ? section("Afterward", rows(aftercareTable(ticket))) : []),
    ];
    for (const item of items) flow.put(item);
  });
}

/** A mix ticket as PDF. */
export function renderMixTicket(ticket: MixTicketPaper, size: PaperSize = "letter"): Promise<Outcome<Buffer>> {
  return drawPaper(mixTicketDrawing(ticket, size));
}

function loadItems(load: TankLoad): FlowItem[] {
  const columns: Column[] = [
    { head: "Product", width: { share: 4 } },
    { head: "Amount", width: { share: 3 } },
    { head: "Measured with", width: { share: 3 } },
  ];
  const cells = load.amounts.map(({ product, amount, unit, tool }) => [
    line(product, { face: "semibold", sizePoints: 12 }, { type: "TD" }),
    words([span(`${amount}\u00a0`, STYLE.amount), span(unit, STYLE.unit)], { type: "TD" }),
    line(tool, { face: "sans", sizePoints: 12 }, { type: "TD" }),
  ]);
  const head = words([span(load.title, STYLE.section), span(`  ${load.size}`, { face: "sans", sizePoints: 12 })], { type: "H2" });
  return [gap(14), together(block(head), gap(2), rows(table(columns, cells, { stand: "middle" })))];
}

function mixingItems({ mixing }: MixTicketPaper): FlowItem[] {
  return mixing.map((step, index) => {
    const parts: { readonly width: { points: number } | { share: number }; readonly block: Block }[] = [
      { width: { points: 18 }, block: line(`${index + 1}.`, STEP_STRONG, { align: "right" }) },
      { width: { share: 1 }, block: stepWords(step) },
    ];
    return block(stack([beside(parts, 6), space(2)]));
  });
}

function atApplicationItems({ atApplication = [] }: MixTicketPaper): FlowItem[] {
  return atApplication.flatMap((one) => [block(stepWords(one)), gap(2)]);
}

/** What to do, with the words of the label that it rests on, if there are any. */
function stepWords({ words: said, labelWords = "" }: MixingStep): Block {
  return words([span(said, STEP), ...(labelWords === "" ? [] : [span(` “${labelWords}”`, STEP_QUOTED)])]);
}

function lawnTable({ products, lawns }: MixTicketPaper) {
  const columns: Column[] = [
    { head: "Lawn", width: { share: 3 } },
    { head: "Treated", width: { share: 2 }, align: "right" },
    { head: "Mix", width: { share: 2 }, align: "right" },
    ...products.map(({ name }) => ({ head: name, width: { share: 2 }, align: "right" as const })),
  ];
  return table(columns, lawns.map(({ name, treatedArea, mix, amounts }) => [
    name,
    treatedArea,
    line(mix, STYLE.strongFigure, { type: "TD", align: "right" }),
    ...amounts.map((amount) => line(amount, STYLE.strongFigure, { type: "TD", align: "right" })),
  ]));
}

function productTable({ products }: MixTicketPaper) {
  const columns: Column[] = [
    { head: "Product, registration and lot", width: { share: 4 } },
    { head: "Rate", width: { share: 3 }, align: "right" },
    { head: "Total", width: { share: 2 }, align: "right" },
  ];
  return table(columns, products.map(({ name, registration, lot, rate, total }) => [
    cell(stack([
      line(name, { face: "serif", sizePoints: 11 }),
      words([...registrationSpans(registration), span("  lot ", STYLE.small), span(lot, STYLE.code)]),
    ])),
    rate,
    line(total, STYLE.strongFigure, { type: "TD", align: "right" }),
  ]));
}

function registrationSpans(registration: PaperValue) {
  if (registration.kind === "does-not-apply") return [span(registration.because, STYLE.small)];
  const number = registration.kind === "said" ? span(registration.text, STYLE.code) : span(wordsOf(registration), STYLE.small);
  return [span("EPA Reg. No. ", STYLE.small), number];
}

function nutrientTable({ nutrients }: MixTicketPaper) {
  const hasYear = nutrients.some(({ thisYear }) => thisYear !== undefined);
  const year: Column[] = hasYear ? [{ head: "This year with it", width: { share: 3 }, align: "right" }] : [];
  const columns: Column[] = [
    { head: "Lawn", width: { share: 2 } },
    { head: "Nutrient", width: { share: 2 } },
    { head: "This visit", width: { share: 3 }, align: "right" },
    ...year,
    { head: "Limit", width: { share: 4 } },
  ];
  return table(columns, nutrients.map(({ lawn, nutrient, delivered, thisYear, limit }) => [lawn, nutrient, delivered, ...(hasYear ? [thisYear ?? "not on file"] : []), limit]));
}

function aftercareTable({ aftercare }: MixTicketPaper) {
  const columns: Column[] = [
    { head: "When", width: { share: 4 } },
    { head: "What", width: { share: 5 } },
    { head: "Because of", width: { share: 3 } },
  ];
  return table(columns, aftercare.map(({ when, what, because }) => [line(when, STYLE.strong, { type: "TD" }), what, because]));
}
