/**
 * One published answer. `seen`: the number was read at the page named. `seen-2nd`: it was read in a text that quotes
 * the publication. `memory`: it was not read; it stands for common practice. `calc`: it was worked out from the stated
 * formula and is a self-check, not a published answer.
 */
export interface PublishedRow {
  readonly inputs: string;
  readonly expected: number;
  /** How far the answer may be from the printed one, which was rounded or cut off. */
  readonly tolerance: number;
  readonly source: string;
  readonly status: "seen" | "seen-2nd" | "memory" | "calc";
  /** What the product computes. */
  readonly computed: () => number;
  /** A second way to the same number, in plain arithmetic that uses nothing of the product. */
  readonly second: number;
}

/** Half a unit of the last digit printed, with a hair for numbers that lie just on it. */
export function printedTo(decimals: number): number {
  return 0.5000001 * 10 ** -decimals;
}
