// Tables: a head in small semibold, a hair between rows, figures to the right, room to write where a column is empty.
import { type Block, type Width, STYLE, line, widthsOf } from "./block";
import { type RowSequence } from "./flow";
import { type Sheet, type Structure } from "./sheet";

export interface Column {
  readonly head: string;
  readonly width: Width;
  readonly align?: "left" | "right";
}

const CELL_GAP = 12;
const ABOVE = 3;
const BELOW = 3;

/** How much of the room that a cell leaves stands above it. */
const STANDS = { top: 0, middle: 0.5, foot: 1 } as const;

interface RowStyle {
  readonly ruleBelowPoints: number;
  readonly leastHeightPoints: number;
  /** Where cells stand that are lower than their row. */
  readonly stand: "top" | "middle" | "foot";
}

/** A row of cells; each cell says its own place in the structure. */
function rowOf(columns: readonly Column[], cells: readonly Block[], style: RowStyle): Block {
  const widths = (total: number) => widthsOf(columns.map(({ width }) => width), total, CELL_GAP);
  const contentHeight = (sheet: Sheet, total: number) => {
    const each = widths(total);
    return Math.max(style.leastHeightPoints, ...cells.map((cell, index) => cell.height(sheet, each[index] ?? 0)));
  };
  return {
    beginning: cells.map(({ beginning }) => beginning).join(" ").trim(),
    height: (sheet, total) => contentHeight(sheet, total) + ABOVE + BELOW,
    draw: (sheet, { x, y, width: total }, parent) => {
      const row = sheet.group(parent, "TR");
      const high = contentHeight(sheet, total);
      let left = x;
      for (const [index, cell] of cells.entries()) {
        const width = widths(total)[index] ?? 0;
        const drop = (high - cell.height(sheet, width)) * STANDS[style.stand];
        cell.draw(sheet, { x: left, y: y + ABOVE + drop, width }, row);
        left += width + CELL_GAP;
      }
      const foot = y + ABOVE + high + BELOW;
      sheet.rule([x, foot], [x + total, foot], style.ruleBelowPoints);
    },
  };
}

function textCell(text: string, column: Column | undefined): Block {
  return column?.align === "right" ? line(text, STYLE.figure, { type: "TD", align: "right" }) : line(text, STYLE.text, { type: "TD" });
}

export interface TableOptions {
  /** Rows that are written in by hand need more room than their print. */
  readonly leastRowPoints?: number;
  /** Rows of unequal cells, such as boxes beside words, stand in the middle. */
  readonly stand?: "middle";
}

/** A table as rows for the flow. A cell is a text or any block; texts take the column's side. */
export function table(columns: readonly Column[], cells: readonly (readonly (string | Block)[])[], options: TableOptions = {}): RowSequence {
  const head = columns.map((column) => line(column.head, STYLE.label, { type: "TH", align: column.align ?? "left" }));
  return {
    head: rowOf(columns, head, { ruleBelowPoints: 1.25, leastHeightPoints: 0, stand: "foot" }),
    rows: cells.map((row) => {
      const blocks = row.map((cell, index) =>
        typeof cell === "string" ? textCell(cell, columns[index]) : cell,
      );
      return rowOf(columns, blocks, { ruleBelowPoints: 0.4, leastHeightPoints: options.leastRowPoints ?? 0, stand: options.stand ?? "top" });
    }),
  };
}

/** A cell of several blocks below each other. */
export function cell(inner: Block): Block {
  return {
    beginning: inner.beginning,
    height: (sheet, width) => inner.height(sheet, width),
    draw: (sheet, place, parent: Structure) => inner.draw(sheet, place, sheet.group(parent, "TD")),
  };
}
