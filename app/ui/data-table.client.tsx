"use client";

import {
  columnFilteringFeature,
  createFilteredRowModel,
  createSortedRowModel,
  globalFilteringFeature,
  rowSortingFeature,
  tableFeatures,
  useTable,
} from "@tanstack/react-table";
import { type KeyboardEvent, type ReactNode, useMemo } from "react";
import { Button } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { SelectField } from "#ui/select-field";
import { type TableColumn, TableBodyRow } from "#ui/table";
import { TextField } from "#ui/text-field";
import { type SortValue, compareSortValues, matchesFilter } from "./data-table-order";
import styles from "./table.module.css";

/** What a cell says, how it sorts, and how it shows. A plain string is all three. */
export type DataCell = string | { readonly text: string; readonly sortBy?: SortValue; readonly show?: ReactNode };

export interface DataColumn extends TableColumn {
  /** False for a column whose order says nothing: notes, actions. */
  readonly sortable?: boolean;
}

export interface DataRow {
  readonly id: string;
  /** Where the whole row leads. */
  readonly href?: string;
  /** One cell for each column, by the column's id; a column without a cell is empty there and sorts last. */
  readonly cells: Readonly<Record<string, DataCell>>;
}

export interface DataTableProps {
  /** Unique on its page. */
  readonly id: string;
  readonly caption: string;
  readonly captionSpoken?: boolean;
  readonly columns: readonly [DataColumn, ...DataColumn[]];
  readonly rows: readonly DataRow[];
  /** The noun of the rows, one and many: ["property", "properties"]. */
  readonly noun: readonly [one: string, many: string];
  /** What can be looked for, as the filter's label: "Find by name or street". Without it there is no filter. */
  readonly filterLabel?: string;
  readonly sortedBy?: { readonly id: string; readonly descending?: boolean };
  readonly dense?: boolean;
  /** What stands there when there is no row at all. */
  readonly empty: ReactNode;
}

const features = tableFeatures({
  columnFilteringFeature,
  globalFilteringFeature,
  rowSortingFeature,
  filteredRowModel: createFilteredRowModel(),
  sortedRowModel: createSortedRowModel(),
});

/** A table that can be sorted by its heads and narrowed by a text. Its rows come whole and as plain data. */
export function DataTable(props: DataTableProps) {
  const { id, caption, captionSpoken = false, columns, rows, noun, filterLabel, sortedBy, dense = false, empty } = props;
  const table = useTable({
    features,
    columns: useMemo(() => columns.map(toTanstackColumn), [columns]),
    data: rows,
    getRowId: (row) => row.id,
    initialState: {
      sorting: sortedBy === undefined ? [] : [{ id: sortedBy.id, desc: sortedBy.descending ?? false }],
      globalFilter: "",
    },
    enableSortingRemoval: false,
    enableMultiSort: false,
    sortDescFirst: false,
    getColumnCanGlobalFilter: () => true,
    // The words may stand in different cells of the row, so the whole row is looked through, whichever column asks.
    globalFilterFn: (row, _columnId, wanted: string) => matchesFilter(rowText(row.original), wanted),
  });
  if (rows.length === 0) return <>{empty}</>;

  const shown = table.getRowModel().rows;
  const wanted = String(table.state.globalFilter ?? "");
  const sorted = table.state.sorting[0];
  return (
    <div className={styles.frame}>
      {!captionSpoken && (
        <p className={styles.name} aria-hidden="true">
          {caption}
        </p>
      )}
      <div className={styles.tools}>
        {filterLabel !== undefined && (
          <TextField
            label={filterLabel}
            name={`${id}-filter`}
            type="search"
            value={wanted}
            onChange={(event) => table.setGlobalFilter(event.target.value)}
          />
        )}
        <div className={styles.sortBy}>
          <SelectField
            label="Sort by"
            name={`${id}-sort`}
            value={sorted === undefined ? "" : sortKey(sorted)}
            choices={columns.filter(isSortable).flatMap(sortChoices)}
            {...(sorted === undefined ? { chooseWords: "As it comes" } : {})}
            onChange={(event) => table.setSorting(readSortKey(event.target.value))}
          />
        </div>
        <p className={styles.count} role="status">
          {shown.length === rows.length ? countWords(rows.length, noun) : `${shown.length} of ${countWords(rows.length, noun)}`}
        </p>
      </div>
      <table className={styles.table} data-dense={dense || undefined} role="table">
        <caption className={styles.caption} data-spoken="true">
          {caption}
        </caption>
        <thead role="rowgroup">
          <tr role="row">
            {columns.map((column) => (
              <ColumnHead
                key={column.id}
                column={column}
                sorted={sorted?.id === column.id ? (sorted.desc ? "descending" : "ascending") : undefined}
                toggle={() => table.getColumn(column.id)?.toggleSorting()}
              />
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup" onKeyDown={moveBetweenRows}>
          {shown.map((row) => (
            <TableBodyRow key={row.id} columns={columns} row={{ ...row.original, cells: shownCells(row.original.cells) }} />
          ))}
        </tbody>
      </table>
      {shown.length === 0 && (
        <EmptyState
          sentence={`No ${noun[0]} has “${wanted}” in it.`}
          actions={<Button onClick={() => table.setGlobalFilter("")}>{`Show all ${rows.length}`}</Button>}
        />
      )}
    </div>
  );
}

interface ColumnHeadProps {
  readonly column: DataColumn;
  readonly sorted: "ascending" | "descending" | undefined;
  readonly toggle: () => void;
}

function ColumnHead({ column, sorted, toggle }: ColumnHeadProps) {
  return (
    <th scope="col" role="columnheader" data-align={column.align ?? "word"} aria-sort={sorted}>
      {isSortable(column) ? (
        <button type="button" className={styles.sort} onClick={toggle}>
          <span>{column.head}</span>
          <svg className={styles.sortMark} width="10" height="16" viewBox="0 0 10 16" aria-hidden="true">
            <path className={styles.up} d="M1 6.5h8L5 1.5z" />
            <path className={styles.down} d="M1 9.5h8l-4 5z" />
          </svg>
        </button>
      ) : (
        column.head
      )}
    </th>
  );
}

function toTanstackColumn(column: DataColumn) {
  return {
    id: column.id,
    accessorFn: (row: DataRow) => cellSortValue(row.cells[column.id]),
    enableSorting: isSortable(column),
    sortUndefined: "last" as const,
    sortFn: (
      one: { getValue: (columnId: string) => unknown },
      other: { getValue: (columnId: string) => unknown },
      columnId: string,
    ) => compareSortValues(one.getValue(columnId) as SortValue, other.getValue(columnId) as SortValue),
  };
}

function isSortable(column: DataColumn): boolean {
  return column.sortable ?? true;
}

function rowText(row: DataRow): string {
  return Object.values(row.cells)
    .map((cell) => (typeof cell === "string" ? cell : cell.text))
    .join(" ");
}

function cellSortValue(cell: DataCell | undefined): SortValue | undefined {
  if (cell === undefined || typeof cell === "string") return cell;
  return cell.sortBy ?? cell.text;
}

function shownCells(cells: DataRow["cells"]): Record<string, ReactNode> {
  return Object.fromEntries(
    Object.entries(cells).map(([columnId, cell]) => [columnId, typeof cell === "string" ? cell : (cell.show ?? cell.text)]),
  );
}

function countWords(count: number, noun: DataTableProps["noun"]): string {
  return `${count} ${count === 1 ? noun[0] : noun[1]}`;
}

function sortKey(sort: { readonly id: string; readonly desc: boolean }): string {
  return `${sort.desc ? "down" : "up"} ${sort.id}`;
}

function readSortKey(key: string): { id: string; desc: boolean }[] {
  const [direction, ...rest] = key.split(" ");
  return rest.length === 0 ? [] : [{ id: rest.join(" "), desc: direction === "down" }];
}

function sortChoices(column: DataColumn) {
  const [up, down] = column.align === "figure" ? ["smallest first", "largest first"] : ["from A", "from Z"];
  return [
    { value: sortKey({ id: column.id, desc: false }), word: `${column.head}, ${up}` },
    { value: sortKey({ id: column.id, desc: true }), word: `${column.head}, ${down}` },
  ];
}

/** Up, Down, Home and End go from row to row, where rows lead somewhere. Tab does too. */
function moveBetweenRows(event: KeyboardEvent<HTMLTableSectionElement>) {
  const links = [...event.currentTarget.querySelectorAll<HTMLAnchorElement>("th[scope=row] > a")];
  const at = links.findIndex((link) => link === document.activeElement);
  if (at === -1) return;
  const goals: Readonly<Record<string, number>> = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: links.length - 1 };
  const goal = goals[event.key];
  const link = goal === undefined ? undefined : links[goal];
  if (link === undefined) return;
  event.preventDefault();
  link.focus();
}
