// The forms of a published check: what is printed, how near the answer must be, where it is printed and how it was
// read there.
import { expect } from "vitest";

/** One published answer. */
interface PublishedAnswer {
  readonly expected: number;
  /** How far the answer may be from the printed one, which was rounded or cut off. */
  readonly tolerance: number;
  readonly source: string;
  /**
   * `seen`: the number was read at the place named. `seen-2nd`: it was read in a text that quotes the publication.
   * `memory`: it was not read; it stands for common practice. `calc`: it was worked out from the stated formula and is
   * a self-check, not a published answer.
   */
  readonly status: "seen" | "seen-2nd" | "memory" | "calc";
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
