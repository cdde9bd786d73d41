import { type CustomerListRow } from "#application/properties/customer-list.schema";
import { type ColumnPlaces } from "#domain/properties/customer-columns";
import { type CellComplaint } from "#domain/properties/customer-row";

/** A row that can be imported, in the words of what was understood. */
export interface UnderstoodRow {
  readonly number: number;
  readonly customer: string;
  readonly address: string;
  readonly lawn: string;
  readonly access: string;
}

/** A row with cells that need another look. */
export interface FaultyRow {
  readonly number: number;
  readonly complaints: readonly CellComplaint[];
}

/**
 * How far an import has come. The list travels with the form and nothing is stored before the last press, so a page
 * that is left leaves nothing behind.
 */
export type ImportState = { readonly answer: string; readonly sentence?: string } & (
  | { readonly step: "text"; readonly text: string }
  | {
      readonly step: "columns";
      readonly listId: string;
      readonly heads: readonly string[];
      readonly lines: readonly { readonly number: number; readonly cells: readonly string[] }[];
      readonly places: ColumnPlaces;
      readonly missing: readonly string[];
    }
  | {
      readonly step: "rows";
      readonly listId: string;
      readonly rows: readonly CustomerListRow[];
      readonly faulty: readonly FaultyRow[];
      readonly understood: readonly UnderstoodRow[];
    }
);

export const FIRST_STEP: ImportState = { answer: "0", step: "text", text: "" };

/** The name of a cell's field: "cell.14.zip". */
export function cellField(number: number, column: string): string {
  return `cell.${String(number)}.${column}`;
}

/** The name of the question what a row's size is of: "meaning.14". */
export function meaningField(number: number): string {
  return `meaning.${String(number)}`;
}
