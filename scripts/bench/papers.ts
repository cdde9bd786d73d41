// The papers of a truck's day with ten stops, against the PDF library alone writing the same. Prints rows as JSON.
// Part of npm run bench.
import { renderCustomerNotice } from "#adapters/pdf/render-customer-notice";
import { renderLoadingList } from "#adapters/pdf/render-loading-list";
import { renderMixTicket } from "#adapters/pdf/render-mix-ticket";
import { renderPostingSign } from "#adapters/pdf/render-posting-sign";
import { renderRouteSheet } from "#adapters/pdf/render-route-sheet";
import { type Outcome } from "#domain/foundation/outcome";
import { frameOf, INDIANA_SIGN, LOADING_LIST, NOTICE_BEFORE, ROUTE_SHEET, signOf, stopOf } from "../../tests/support/sample-papers";
import { MIX_TICKET } from "../../tests/support/sample-visit-papers";
import { noteWritten, writeBare } from "./bare-papers";
import { rowOf, rowsOfRounds } from "./report.mjs";

const STOPS = 10;
const ROUNDS = 5;
const stops = Array.from({ length: STOPS }, (_, index) => index + 1);

async function must(rendering: Promise<Outcome<Buffer>>): Promise<Buffer> {
  const rendered = await rendering;
  if (!rendered.ok) throw new Error(rendered.refusal.sentence);
  return rendered.value;
}

/** A route sheet, a loading list, and for each stop a mix ticket, a notice and a sheet of signs. */
async function drawDay(): Promise<number> {
  let bytes = (await must(renderRouteSheet({ ...ROUTE_SHEET, stops: stops.map((order) => stopOf(order)) }))).length;
  bytes += (await must(renderLoadingList(LOADING_LIST))).length;
  for (const stop of stops) {
    const number = `0414-${String(stop)}`;
    bytes += (await must(renderMixTicket({ ...MIX_TICKET, frame: frameOf("Mix ticket", `MT-${number}`) }))).length;
    bytes += (await must(renderCustomerNotice({ ...NOTICE_BEFORE, frame: frameOf("Notice of lawn care application", `CN-${number}`) }))).length;
    bytes += (await must(renderPostingSign(signOf(INDIANA_SIGN)))).length;
  }
  return bytes;
}

async function secondsOf(work: () => Promise<unknown>): Promise<number> {
  const begin = performance.now();
  await work();
  return (performance.now() - begin) / 1000;
}

const written = await noteWritten(drawDay);
const pages = written.reduce((sum, paper) => sum + paper.pages, 0);
const tags = written.reduce((sum, { pieces }) => sum + pieces.filter(({ type }) => type !== null).length, 0);
const texts = written.reduce((sum, { pieces }) => sum + pieces.reduce((own, piece) => own + piece.texts.length, 0), 0);
async function writeAllBare(): Promise<number> {
  let bytes = 0;
  for (const paper of written) bytes += (await writeBare(paper)).length;
  return bytes;
}

const what = `${String(written.length)} papers, ${String(pages)} pages, ${String(texts)} texts, ${String(tags)} tags`;
const BARE = `the PDF library alone: ${what}`;
const OURS = `papers of a day with ${String(STOPS)} stops: the same`;
const bareSize = rowOf("their size by the PDF library alone", (await writeAllBare()) / 1_000_000, "MB");
const size = rowOf("their size", (await drawDay()) / 1_000_000, "MB", bareSize);
const rounds: Record<string, number>[] = [];
for (let round = 0; round < ROUNDS; round += 1) rounds.push({ [BARE]: await secondsOf(writeAllBare), [OURS]: await secondsOf(drawDay) });
process.stdout.write(JSON.stringify([...rowsOfRounds("s", BARE, rounds), bareSize, size]));
