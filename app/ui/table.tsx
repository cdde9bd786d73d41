import Link from "next/link";
import { type ReactNode } from "react";
import styles from "./table.module.css";

/** A column: words stand at the left, figures at the right. */
export interface TableColumn {
  readonly id: string;
  readonly head: string;
  readonly align?: "word" | "figure";
}

export interface TableRow {
  readonly id: string;
  /** Where the whole row leads. */
  readonly href?: string;
  /** One cell for each column, by the column's id. */
  readonly cells: Readonly<Record<string, ReactNode>>;
}

export interface TableProps {
  /** What the table is of. */
  readonly caption: ReactNode;
  /** True where a heading beside the table says the same. */
  readonly captionSpoken?: boolean;
  readonly columns: readonly [TableColumn, ...TableColumn[]];
  readonly rows: readonly TableRow[];
  readonly dense?: boolean;
  /** Columns of one width, so that tables below one another stand in line. */
  readonly even?: boolean;
  /** What stands there when there is no row. */
  readonly empty?: ReactNode;
}

/**
 * A small table as it comes: no sorting, no filter, no scripts. The first column names the row. Where the table has
 * less than 640 px each row becomes a block of named facts; the roles are written out because a block has none.
 */
export function Table({ caption, captionSpoken = false, columns, rows, dense = false, even = false, empty }: TableProps) {
  return (
    <div className={styles.frame}>
      <table className={styles.table} data-dense={dense || undefined} data-even={even || undefined} role="table">
        <caption className={styles.caption} data-spoken={captionSpoken || undefined}>
          {caption}
        </caption>
        <thead role="rowgroup">
          <tr role="row">
            {columns.map((column) => (
              <th key={column.id} scope="col" role="columnheader" data-align={column.align ?? "word"}>
                {column.head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {rows.map((row) => (
            <TableBodyRow key={row.id} row={row} columns={columns} />
          ))}
        </tbody>
      </table>
      {rows.length === 0 && empty}
    </div>
  );
}

export interface TableBodyRowProps {
  readonly row: TableRow;
  readonly columns: readonly TableColumn[];
}

/** A row with its cells; each cell carries its column's head for the narrow form. DataTable uses it too. */
export function TableBodyRow({ row, columns }: TableBodyRowProps) {
  return (
    <tr role="row" data-linked={row.href === undefined ? undefined : true}>
      {columns.map((column, index) => {
        const content = row.cells[column.id];
        const head = (
          <span className={styles.blockHead} aria-hidden="true">
            {column.head}
          </span>
        );
        if (index > 0) {
          return (
            <td key={column.id} role="cell" data-align={column.align ?? "word"} data-empty={isBlank(content) || undefined}>
              {head}
              <span className={styles.cell}>{content}</span>
            </td>
          );
        }
        return (
          <th key={column.id} scope="row" role="rowheader" data-align={column.align ?? "word"}>
            {row.href === undefined ? content : <RowLink href={row.href}>{content}</RowLink>}
          </th>
        );
      })}
    </tr>
  );
}

function RowLink({ href, children }: { readonly href: string; readonly children: ReactNode }) {
  return (
    <Link className={styles.link} href={href} prefetch={false}>
      {children}
    </Link>
  );
}

function isBlank(content: ReactNode): boolean {
  return content === undefined || content === null || content === "";
}
