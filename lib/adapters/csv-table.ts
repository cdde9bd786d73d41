import { CsvError, parse } from "csv-parse/sync";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";

/** A line of a list with the number that it has in a spreadsheet, the first being 1. */
export interface TableLine {
  readonly number: number;
  readonly cells: readonly string[];
}

const DELIMITERS = [",", ";", "\t"] as const;

/** The sign between cells: of those that lists use, the one that the first line has most of. */
function delimiterOf(text: string): string {
  const [firstLine = ""] = text.split(/\r?\n/u, 1);
  const counts = DELIMITERS.map((delimiter) => firstLine.split(delimiter).length);
  return DELIMITERS[counts.indexOf(Math.max(...counts))] ?? ",";
}

/**
 * Reads a table from text: cells between commas, semicolons or tabs, cells with such signs in double quotes (RFC 4180).
 * Lines without anything are left out; the others keep their numbers. Refused: a quotation that does not end.
 */
export function readCsvTable(field: string, text: string): Outcome<readonly TableLine[]> {
  try {
    const lines: string[][] = parse(text, { bom: true, delimiter: delimiterOf(text), relax_column_count: true, relax_quotes: true });
    return accept(
      lines
        .map((cells, index) => ({ number: index + 1, cells: cells.map((cell) => cell.trim()) }))
        .filter(({ cells }) => cells.some((cell) => cell !== "")),
    );
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const where = typeof error["lines"] === "number" ? ` near line ${String(error["lines"])}` : "";
    return badInput(field, "a quotation without its end", "a table with commas between its cells", `A quotation mark${where} opens and is never closed.`);
  }
}
