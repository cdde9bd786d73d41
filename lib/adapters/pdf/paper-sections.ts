// Parts that several papers have in common.
import { type LoadingGroup, groupsToLoad } from "#domain/papers/loading-list";
import { type PaperFinding } from "#domain/papers/paper";
import { STYLE, line } from "./block";
import { findingBlock } from "./finding-blocks";
import { type FlowItem, block, gap, headed, rows, together } from "./flow";
import { table } from "./table";
import { tickBoxes, BOX_POINTS } from "./write-in";

/** The subject of a paper, in its largest letters. */
export function titled(text: string): FlowItem {
  return block(line(text, STYLE.title, { type: "H1" }));
}

/** A heading that stays with what it heads. */
export function section(title: string, ...items: readonly FlowItem[]): FlowItem[] {
  const [first, ...others] = items;
  const head = line(title, STYLE.section, { type: "H2" });
  if (first?.kind === "rows") return [gap(10), headed(head, first.rows), ...others];
  return [gap(10), together(block(head), gap(4), ...(first === undefined ? [] : [first])), ...others];
}

/** Findings below each other, the gravest first as they come. */
export function findingItems(findings: readonly PaperFinding[]): FlowItem[] {
  return findings.flatMap((finding, index) => [gap(index === 0 ? 8 : 4), block(findingBlock(finding))]);
}

/** What to take along, with a box to tick before each line. A column that no line of a group fills is left out. */
export function loadingItems(groups: readonly LoadingGroup[]): FlowItem[] {
  return groupsToLoad(groups).flatMap(({ title, lines }) => {
    const [hasAmount, hasLot, hasPlace] = [lines.some(({ amount }) => amount !== ""), lines.some(({ lot }) => lot !== undefined), lines.some(({ location }) => location !== undefined)];
    const columns = [
      { head: "", width: { points: BOX_POINTS } },
      { head: hasAmount ? "Amount" : "", width: { points: 108 }, align: "right" as const },
      { head: title, width: { share: 5 } },
      ...(hasLot ? [{ head: "Lot", width: { share: 2 } }] : []),
      ...(hasPlace ? [{ head: "From", width: { share: 2 } }] : []),
    ];
    const cells = lines.map(({ what, amount, lot, location }) => [
      tickBoxes([""]),
      line(amount, STYLE.strongFigure, { type: "TD", align: "right" }),
      what,
      ...(hasLot ? [line(lot ?? "", STYLE.code, { type: "TD" })] : []),
      ...(hasPlace ? [location ?? ""] : []),
    ]);
    return [gap(8), rows(table(columns, cells, { stand: "middle" }))];
  });
}
