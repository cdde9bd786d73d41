// Lays blocks down the pages. Rows are never torn, table heads repeat, and what belongs together stays together where
// a page has room for it.
import { type Block } from "./block";
import { type PageRoom, type Sheet, type Structure } from "./sheet";
import { UnprintablePaper } from "./unprintable-paper";

/** A table as the flow sees it: rows that stay whole, and a head that stands again at the top of each page. */
export interface RowSequence {
  readonly head: Block;
  readonly rows: readonly Block[];
}

export type FlowItem =
  | { readonly kind: "block"; readonly block: Block }
  | { readonly kind: "rows"; readonly rows: RowSequence }
  /** Kept on one page if it fits on one; otherwise its items flow, the first two at least together. */
  | { readonly kind: "together"; readonly items: readonly FlowItem[] }
  /** A heading over a table: kept whole while both are short, else the table begins below it where they stand. */
  | { readonly kind: "headed"; readonly heading: Block; readonly rows: RowSequence }
  | { readonly kind: "gap"; readonly heightPoints: number };

export const block = (each: Block): FlowItem => ({ kind: "block", block: each });
export const rows = (each: RowSequence): FlowItem => ({ kind: "rows", rows: each });
export const together = (...items: readonly FlowItem[]): FlowItem => ({ kind: "together", items });
export const headed = (heading: Block, each: RowSequence): FlowItem => ({ kind: "headed", heading, rows: each });
export const gap = (heightPoints: number): FlowItem => ({ kind: "gap", heightPoints });

/** Between a heading and its table. */
const BELOW_HEADING_POINTS = 2;

export class Flow {
  #y: number;

  constructor(
    readonly sheet: Sheet,
    readonly room: PageRoom,
  ) {
    sheet.document.addPage();
    this.#y = room.top;
  }

  /** Puts an item below what is there already, on a new page when it must. */
  put(item: FlowItem, parent: Structure = this.sheet.root): void {
    switch (item.kind) {
      case "gap":
        // A gap at the top of a page separates nothing.
        if (this.#y > this.room.top) this.#y += item.heightPoints;
        return;
      case "block":
        this.#putBlock(item.block, parent);
        return;
      case "rows":
        this.#putRows(item.rows, parent);
        return;
      case "together":
        this.#putTogether(item.items, parent);
        return;
      case "headed":
        this.#putHeaded(item.heading, item.rows, parent);
        return;
    }
  }

  #heightOf(item: FlowItem): number {
    switch (item.kind) {
      case "gap":
        return item.heightPoints;
      case "block":
        return item.block.height(this.sheet, this.room.width);
      case "rows":
        return [item.rows.head, ...item.rows.rows].reduce((sum, row) => sum + row.height(this.sheet, this.room.width), 0);
      case "together":
        return item.items.reduce((sum, each) => sum + this.#heightOf(each), 0);
      case "headed":
        return this.#heightOf(block(item.heading)) + BELOW_HEADING_POINTS + this.#heightOf(rows(item.rows));
    }
  }

  #fits(heightPoints: number): boolean {
    // A hundredth of a point is the rounding of sums.
    return this.#y + heightPoints <= this.room.bottom + 0.01;
  }

  #newPage(): void {
    this.sheet.document.addPage();
    this.#y = this.room.top;
  }

  #putBlock(each: Block, parent: Structure): void {
    const height = each.height(this.sheet, this.room.width);
    if (height > this.room.bottom - this.room.top) throw UnprintablePaper.ofHeight(each.beginning);
    if (!this.#fits(height)) this.#newPage();
    each.draw(this.sheet, { x: this.room.left, y: this.#y, width: this.room.width }, parent);
    this.#y += height;
  }

  #putRows({ head, rows: all }: RowSequence, parent: Structure): void {
    const { width, top, bottom } = this.room;
    const table = this.sheet.group(parent, "Table");
    const headHeight = head.height(this.sheet, width);
    let needsHead = true;
    let isFirstHead = true;
    for (const row of all) {
      const height = row.height(this.sheet, width);
      if (headHeight + height > bottom - top) throw UnprintablePaper.ofHeight(row.beginning);
      if (!this.#fits(height + (needsHead ? headHeight : 0))) {
        this.#newPage();
        needsHead = true;
      }
      if (needsHead) {
        this.#putBlock(head, isFirstHead ? table : "passed-over");
        isFirstHead = false;
      }
      needsHead = false;
      this.#putBlock(row, table);
    }
  }

  #putTogether(items: readonly FlowItem[], parent: Structure): void {
    this.#makeRoomFor(items.reduce((sum, each) => sum + this.#heightOf(each), 0), this.#pageHeight);
    for (const each of items) this.put(each, parent);
  }

  #putHeaded(heading: Block, table: RowSequence, parent: Structure): void {
    this.#makeRoomFor(this.#heightOf(headed(heading, table)), this.#pageHeight / 3);
    // A heading never stands alone at the foot of a page, however tall the first row is.
    const beginning = this.#heightOf(headed(heading, { head: table.head, rows: table.rows.slice(0, 1) }));
    if (!this.#fits(beginning)) this.#newPage();
    this.#putBlock(heading, parent);
    this.put(gap(BELOW_HEADING_POINTS), parent);
    this.#putRows(table, parent);
  }

  /** What is longer than what is kept whole begins where it stands if a third of the page is left for it. */
  #makeRoomFor(heightPoints: number, longestKeptWholePoints: number): void {
    if (this.#fits(heightPoints)) return;
    if (heightPoints <= longestKeptWholePoints || !this.#fits(this.#pageHeight / 3)) this.#newPage();
  }

  get #pageHeight(): number {
    return this.room.bottom - this.room.top;
  }
}
