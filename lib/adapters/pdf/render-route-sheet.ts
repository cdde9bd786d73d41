import { type Outcome } from "#domain/foundation/outcome";
import { type RouteMix, type RouteSheet, type RouteStop, accessNoteOnPaper } from "#domain/papers/route-sheet";
import { type Block, STYLE, beside, line, span, stack, words } from "./block";
import { fieldRows } from "./field-grid";
import { type Flow, type FlowItem, block, gap, rows, together } from "./flow";
import { framedDrawing } from "./page-frame";
import { findingItems, loadingItems, section, titled } from "./paper-sections";
import { type PaperDrawing, type PaperSize, drawPaper } from "./sheet";
import { table } from "./table";
import { tickBoxes, tickBoxesWidth, writingCell, writingRule } from "./write-in";

/** What became of a lawn: the words of a visit's end. */
const OUTCOMES = ["Done", "Part", "Not"];
const PUT_DOWN = { face: "bold", sizePoints: 12, isTabular: true } as const;

/**
 * A truck's day as PDF, with columns to write in: the fallback record. Access notes that seem to hold a code are kept
 * off it. Refuses what can't be shown on paper.
 */
export function routeSheetDrawing(sheet: RouteSheet, size: PaperSize = "letter"): PaperDrawing {
  return framedDrawing(sheet.frame, size, (flow) => {
    const crew = [
      { label: "People", value: { kind: "said" as const, text: sheet.people.join(", ") } },
      { label: "Equipment", value: { kind: "said" as const, text: sheet.equipment.join(", ") } },
    ];
    const loading = loadingItems(sheet.loading);
    const items = [
      titled(`${sheet.truck}, ${sheet.frame.date}`),
      block(line(sheet.summary)),
      gap(8),
      ...fieldRows(crew, 2).map(block),
      ...findingItems(sheet.findings),
      ...(loading.length > 0 ? section("Take along", ...loading.slice(1)) : []),
      ...section("Stops", ...sheet.stops.flatMap((stop) => stopItems(flow, stop))),
    ];
    for (const item of items) flow.put(item);
  });
}

/** A route sheet as PDF. */
export function renderRouteSheet(sheet: RouteSheet, size: PaperSize = "letter"): Promise<Outcome<Buffer>> {
  return drawPaper(routeSheetDrawing(sheet, size));
}

function stopItems(flow: Flow, stop: RouteStop): FlowItem[] {
  const notes = stop.accessNotes.map(accessNoteOnPaper);
  const access = notes.length === 0 ? [] : [gap(3), block(words([span("Access. ", STYLE.strong), span(notes.join(" "), STYLE.text)]))];
  return [
    together(
      block(stopHead(stop)),
      ...access,
      ...findingItems(stop.findings),
      ...stop.mixes.flatMap((mix) => mixItems(flow, mix)),
      block(writeInRow()),
    ),
    gap(16),
  ];
}

function stopHead({ order, arrival, timeWindow, address, customer, phone }: RouteStop): Block {
  const who = phone === undefined ? customer : `${customer} · ${phone}`;
  const inner = beside([
    { width: { points: 30 }, block: line(order, STYLE.title) },
    { width: { share: 1 }, block: stack([line(address, STYLE.address, { type: "H3" }), line(who)]) },
    {
      width: { points: 132 },
      block: stack([
        line(arrival, STYLE.address, { align: "right" }),
        ...(timeWindow === undefined ? [] : [line(timeWindow, STYLE.small, { align: "right" })]),
      ]),
    },
  ]);
  return {
    ...inner,
    height: (sheet, width) => inner.height(sheet, width) + 6,
    draw: (sheet, place, parent) => {
      sheet.rule([place.x, place.y], [place.x + place.width, place.y], 2);
      inner.draw(sheet, { ...place, y: place.y + 5 }, parent);
    },
  };
}

function mixItems({ sheet }: Flow, mix: RouteMix): FlowItem[] {
  const name = [span(mix.name, STYLE.strong)];
  if (mix.ticketNumber !== undefined) name.push(span("  mix ticket ", STYLE.small), span(mix.ticketNumber, STYLE.code));
  const boxes = tickBoxesWidth((text) => sheet.lettering.widthOf(text, STYLE.small), OUTCOMES);
  const columns = [
    { head: "Lawn", width: { share: 3 } },
    { head: "Treated", width: { share: 2 }, align: "right" as const },
    { head: "Put down", width: { share: 3 }, align: "right" as const },
    { head: "Used, measured", width: { points: 96 } },
    { head: "", width: { points: boxes } },
  ];
  const cells = mix.amounts.map(({ lawn, treatedArea, amount }) => [
    lawn,
    treatedArea,
    line(amount, PUT_DOWN, { type: "TD", align: "right" }),
    writingCell(mix.usedUnit),
    tickBoxes(OUTCOMES),
  ]);
  return [gap(8), together(block(words(name)), rows(table(columns, cells, { stand: "middle" })))];
}

function writeInRow(): Block {
  const labels = ["Start", "End", "Wind speed, mph", "Wind from", "Temperature, °F", "Initials"];
  return beside(labels.map((label) => ({ width: { share: 1 }, block: writingRule(label) })), 12);
}
