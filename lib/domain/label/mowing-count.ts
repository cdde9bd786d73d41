import { accept, refuse } from "#domain/foundation/outcome";
import { type ReadAnswer } from "#domain/label/label-answer";

/**
 * So many mowings, for which a label makes seed wait, or seed's lawn wait for the product. A number of mowings is no
 * time: it never gives an instant, and nobody keeps count of it, so it is waited for as a state of the lawn is.
 */
export interface MowingCount {
  readonly anchor: "mowings";
  readonly count: number;
}

/** After a year a lawn is taken to have been mowed as often as any label asks. Common practice. */
export const SURELY_MOWED_AFTER_DAYS = 365;

const TIMES = ["never", "once", "twice"] as const;

/** "mowed twice", "mowed 3 times", as what is waited for. */
export function mowedTimes({ count }: MowingCount): string {
  return `mowed ${TIMES[count] ?? `${String(count)} times`}`;
}

/** Numbers as words (by definition); larger ones are written in digits. */
const COUNT_WORDS: Readonly<Record<string, number>> = {
  once: 1, one: 1, first: 1, twice: 2, two: 2, second: 2, three: 3, third: 3, four: 4, fourth: 4, five: 5, fifth: 5, six: 6, sixth: 6,
};

const COUNT = String.raw`(\d+|[a-z]+)`;
const PATTERNS: readonly RegExp[] = [
  new RegExp(`^${COUNT} mowings?$`, "iu"),
  new RegExp(`^(?:it (?:has|have) been |the lawn has been )?mow(?:ed|ing) ${COUNT}(?: times?)?$`, "iu"),
];

/** Whether words speak of mowings at all, so that what is wrong with them can be said of mowings. */
export function speaksOfMowings(value: string): boolean {
  return /\bmow/iu.test(value);
}

/** Reads "after 2 mowings", "until mowed twice", "until after the second mowing". Refused: anything else, and none. */
export function readMowingCount(value: string): ReadAnswer<MowingCount> {
  const words = value.trim().replace(/^(?:(?:until|after|for|at least|the) )+/iu, "");
  const found = PATTERNS.map((pattern) => pattern.exec(words)?.[1]).find((count) => count !== undefined)?.toLowerCase();
  const count = found === undefined ? undefined : (COUNT_WORDS[found] ?? Number(found));
  if (count === undefined || !Number.isInteger(count) || count < 1) return refuse(`"${value}" can't be read. Write mowings as in after 2 mowings.`);
  return accept({ anchor: "mowings", count });
}
