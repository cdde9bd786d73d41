import { type Outcome } from "#domain/foundation/outcome";
import { type IssuedPaperData } from "#domain/papers/issued-paper-data";
import { type PaperFrame } from "#domain/papers/paper";
import { applicationRecordDrawing } from "./render-application-record";
import { customerNoticeDrawing } from "./render-customer-notice";
import { loadingListDrawing } from "./render-loading-list";
import { mixTicketDrawing } from "./render-mix-ticket";
import { postingSignDrawing } from "./render-posting-sign";
import { routeSheetDrawing } from "./render-route-sheet";
import { type PaperDrawing, drawPaper, drawPapers, sheetPoints } from "./sheet";

function drawingOf(data: IssuedPaperData): PaperDrawing {
  switch (data.kind) {
    case "route-sheet":
      return routeSheetDrawing(data.paper);
    case "loading-list":
      return loadingListDrawing(data.paper);
    case "mix-ticket":
      return mixTicketDrawing(data.paper);
    case "application-record":
      return applicationRecordDrawing(data.paper);
    case "customer-notice":
      return customerNoticeDrawing(data.paper);
    case "posting-sign":
      return postingSignDrawing(data.paper);
  }
}

/** A paper from the data it was issued with. Refuses by name what can't be shown on paper. */
export function renderIssuedPaper(data: IssuedPaperData): Promise<Outcome<Buffer>> {
  return drawPaper(drawingOf(data));
}

/** Several papers as one file to be printed in one go; the first names it. Each keeps its own count of pages. */
export function renderPacket(first: PaperFrame, papers: readonly IssuedPaperData[]): Promise<Outcome<Buffer>> {
  return drawPapers({ ...first, title: "Packet" }, sheetPoints("letter"), papers.map(drawingOf));
}
