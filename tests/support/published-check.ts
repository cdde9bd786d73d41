// The form of a published check in this folder's tables: what goes in, what is printed, how near the answer must
// be, where it is printed and how it was read there.
import { expect } from "vitest";

export interface PublishedCheck {
  readonly name: string;
  readonly expected: number;
  /** The largest difference that the printed rounding allows. */
  readonly tolerance: number;
  readonly computed: () => number;
  readonly source: string;
  /**
   * `seen`: the number was read there. `seen-2nd`: read in a text that quotes the publication. `memory`: not read.
   * `calc`: not published, computed from the published formula by hand.
   */
  readonly status: "seen" | "seen-2nd" | "memory" | "calc";
}

/** Holds one row's answer against what is printed. */
export function checkPublished({ computed, expected, tolerance }: PublishedCheck): void {
  const answer = computed();
  expect(Number.isFinite(answer)).toBe(true);
  expect(Math.abs(answer - expected), `computed ${answer}, printed ${expected}`).toBeLessThanOrEqual(tolerance);
}
