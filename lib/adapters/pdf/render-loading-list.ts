import { type Outcome } from "#domain/foundation/outcome";
import { type LoadingList } from "#domain/papers/loading-list";
import { STYLE, line } from "./block";
import { block } from "./flow";
import { drawFramedPaper } from "./page-frame";
import { findingItems, loadingItems, titled } from "./paper-sections";
import { type PaperSize } from "./sheet";

/** A loading list as PDF: what to take along, with boxes to tick. Refuses what can't be shown on paper. */
export function renderLoadingList(list: LoadingList, size: PaperSize = "letter"): Promise<Outcome<Buffer>> {
  return drawFramedPaper(list.frame, size, (flow) => {
    const items = [
      titled(`${list.truck}: take along`),
      block(line(list.people.join(", "), STYLE.text)),
      ...findingItems(list.findings),
      ...loadingItems(list.groups),
    ];
    for (const item of items) flow.put(item);
  });
}
