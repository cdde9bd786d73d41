// The forms of a published check: what is printed, how near the answer must be, where it is printed and how it was
// read there.
import { expect } from "vitest";

/** Where a check comes from. */
interface PublishedPlace {
  /** The published rows that it holds, by their ids in tests/published/rows. */
  readonly row: string | readonly string[];
  readonly source: string;
  /**
   * `seen`: the number was read at the place named. `seen-2nd`: it was read in a text that quotes the publication.
   * `memory`: it was not read; it stands for common practice. `calc`: it was worked out from the stated formula and is
   * a self-check, not a published answer.
   */
  readonly status: "seen" | "seen-2nd" | "memory" | "calc";
}

/** One published answer. */
interface PublishedAnswer extends PublishedPlace {
  readonly expected: number;
  /** How far the answer may be from the printed one, which was rounded or cut off. */
  readonly tolerance: number;
  /** What the product computes. */
  readonly computed: () => number;
}

/** An answer with a name of its own. */
export interface PublishedCheck extends PublishedAnswer {
  readonly name: string;
}

/** An answer to stated inputs that plain arithmetic can give too. */
export interface PublishedRow extends PublishedAnswer {
  readonly inputs: string;
  /** A second way to the same number, in plain arithmetic that uses nothing of the product. */
  readonly second: number;
}

/** What a publication says in words, or in more numbers than one, and how it is held. */
export interface PublishedStatement extends PublishedPlace {
  readonly says: string;
  readonly holds: () => void;
}

export type PublishedEntry = PublishedCheck | PublishedRow | PublishedStatement;

/** Half a unit of the last digit printed, with a hair for numbers that lie just on it. */
export function printedTo(decimals: number): number {
  return 0.5000001 * 10 ** -decimals;
}

/** Holds what is computed against what is printed. */
export function checkPublished({ computed, expected, tolerance }: PublishedAnswer): void {
  const answer = computed();
  expect(Number.isFinite(answer)).toBe(true);
  expect(Math.abs(answer - expected), `computed ${answer}, printed ${expected}`).toBeLessThanOrEqual(tolerance);
}

/** The same, and against the second way, of which only the arithmetic of binary fractions may keep it apart. */
export function checkBothWays(row: PublishedRow): void {
  checkPublished(row);
  expect(Math.abs(row.computed() - row.second)).toBeLessThanOrEqual(1e-9 * Math.abs(row.second));
}

function titleOf(entry: PublishedEntry): string {
  if ("says" in entry) return entry.says;
  return `${"inputs" in entry ? entry.inputs : entry.name} = ${entry.expected}`;
}

function runOf(entry: PublishedEntry): () => void {
  if ("says" in entry) return entry.holds;
  return "inputs" in entry ? () => checkBothWays(entry) : () => checkPublished(entry);
}

/** Checks as a table for `test.each`: a title that tells status and source, and what to run. */
export function published(entries: readonly PublishedEntry[]): readonly { readonly title: string; readonly run: () => void }[] {
  return entries.map((entry) => ({ title: `${titleOf(entry)} (${entry.status}; ${entry.source})`, run: runOf(entry) }));
}

/** The rows that a check names. */
export function rowsNamedBy({ row }: PublishedPlace): readonly string[] {
  return typeof row === "string" ? [row] : row;
}
