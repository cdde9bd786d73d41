import { type Outcome } from "#domain/foundation/outcome";
import { type LoadingList } from "#domain/papers/loading-list";
import { STYLE, beside, line } from "./block";
import { block, gap } from "./flow";
import { framedDrawing } from "./page-frame";
import { findingItems, loadingItems, titled } from "./paper-sections";
import { type PaperDrawing, type PaperSize, drawPaper } from "./sheet";
import { writingRule } from "./write-in";

/** A loading list as PDF: what to take along, with boxes to tick. Refuses what can't be shown on paper. */
export function loadingListDrawing(list: LoadingList, size: PaperSize = "letter"): PaperDrawing {
  return framedDrawing(list.frame, size, (flow) => {
    const items = [
      titled(`${list.truck}: take along`),
      block(line(list.people.join(", "), STYLE.text)),
      ...findingItems(list.findings),
      ...loadingItems(list.groups),
      gap(12),
      block(beside([{ width: { share: 3 }, block: writingRule("Loaded by") }, { width: { share: 1 }, block: writingRule("Time") }])),
    ];
    for (const item of items) flow.put(item);
  });
}

/** A loading list as PDF. */
export function renderLoadingList(list: LoadingList, size: PaperSize = "letter"): Promise<Outcome<Buffer>> {
  return drawPaper(loadingListDrawing(list, size));
}
