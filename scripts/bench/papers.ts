// The packet of a truck's day with ten stops, against the PDF library alone writing the same. Prints rows as JSON.
// Part of npm run bench.
import { renderPacket } from "#adapters/pdf/render-issued-paper";
import { type IssuedPaperData } from "#domain/papers/issued-paper-data";
import { frameOf, INDIANA_SIGN, LOADING_LIST, NOTICE_BEFORE, ROUTE_SHEET, signOf, stopOf } from "../../tests/support/sample-papers";
import { MIX_TICKET } from "../../tests/support/sample-visit-papers";
import { noteWritten, writeBare } from "./bare-papers";
import { rowOf, rowsOfRounds } from "./report.mjs";

const STOPS = 10;
const ROUNDS = 5;
const stops = Array.from({ length: STOPS }, (_, index) => index + 1);

/** A route sheet, a loading list, and for each stop a mix ticket, a notice and a sheet of signs. */
const PACKET: readonly IssuedPaperData[] = [
  { kind: "route-sheet", paper: { ...ROUTE_SHEET, stops: stops.map((order) => stopOf(order)) } },
  { kind: "loading-list", paper: LOADING_LIST },
  ...stops.flatMap((stop): readonly IssuedPaperData[] => [
    { kind: "mix-ticket", paper: { ...MIX_TICKET, frame: frameOf("Mix ticket", `MT-0414-${String(stop)}`) } },
    { kind: "customer-notice", paper: { ...NOTICE_BEFORE, frame: frameOf("Notice of lawn care application", `CN-0414-${String(stop)}`) } },
    { kind: "posting-sign", paper: signOf(INDIANA_SIGN) },
  ]),
];

async function drawPacket(): Promise<Buffer> {
  const drawn = await renderPacket(ROUTE_SHEET.frame, PACKET);
  if (!drawn.ok) throw new Error(drawn.refusal.sentence);
  return drawn.value;
}

async function secondsOf(work: () => Promise<unknown>): Promise<number> {
  const begin = performance.now();
  await work();
  return (performance.now() - begin) / 1000;
}

const [written, ...others] = await noteWritten(drawPacket);
if (written === undefined || others.length > 0) throw new Error("A packet is one file.");
const { pages, pieces } = written;
const tags = pieces.filter(({ type }) => type !== null).length;
const texts = pieces.reduce((sum, piece) => sum + piece.texts.length, 0);
const BARE = `the PDF library alone: ${String(pages)} pages, ${String(texts)} texts, ${String(tags)} tags`;
const OURS = `packet of a day with ${String(STOPS)} stops: the same`;
const bareSize = rowOf("its size by the PDF library alone", (await writeBare(written)).length / 1_000_000, "MB");
const size = rowOf("its size", (await drawPacket()).length / 1_000_000, "MB", bareSize);
const rounds: Record<string, number>[] = [];
for (let round = 0; round < ROUNDS; round += 1) rounds.push({ [BARE]: await secondsOf(() => writeBare(written)), [OURS]: await secondsOf(drawPacket) });
process.stdout.write(JSON.stringify([...rowsOfRounds("s", BARE, rounds), bareSize, size]));
