import { type CalendarDate, formatShortDate } from "#domain/foundation/calendar-date";
import { clockWords } from "#domain/foundation/clock-words";
import { ended } from "#domain/foundation/full-stop";

/** What somebody says of a lawn: whether weeds, clover, the grass or anything else on it blooms. */
export const BLOOM_SEEN = ["yes", "no", "not-looked"] as const;
export type BloomSeen = (typeof BLOOM_SEEN)[number];

/** What was seen, in the word of a table's cell. */
export const BLOOM_SEEN_WORDS: Readonly<Record<BloomSeen, string>> = { yes: "In bloom", no: "Nothing blooms", "not-looked": "Not looked at" };

/** One look at a lawn, as far as what it decides asks. */
export interface LawnLook {
  /** The local day on which it was seen. */
  readonly seenOn: CalendarDate;
  readonly seenAtEpochMilliseconds: number;
  /** When it was written down: of two looks of the same minute the one written later counts. */
  readonly enteredAtEpochMilliseconds: number;
  readonly blooms: BloomSeen;
}

/** Whether a lawn blooms on a day, with the latest look that says yes or no until then; null where there is none. */
export interface BloomOnDay<Look extends LawnLook> {
  readonly inBloom: "yes" | "no" | "unknown";
  readonly look: Look | null;
}

/**
 * What the looks at a lawn say of a day. A "yes" stands until a later look says no, because nobody knows when flowers are
 * gone without looking, and the label keeps bees from what blooms. A "no" stands for the day it was seen only: flowers
 * open within days, and after mowing too (common practice). Otherwise it is not known. Looks of later days say nothing of
 * the day asked for, and one that did not look says nothing at all. A day counts whole: a crew that looks, sprays and
 * writes it down after has looked.
 */
export function bloomOnDay<Look extends LawnLook>(looks: readonly Look[], day: CalendarDate): BloomOnDay<Look> {
  const said = looks.filter(({ blooms, seenOn }) => blooms !== "not-looked" && seenOn <= day);
  const look = said.toSorted(
    (one, other) => other.seenAtEpochMilliseconds - one.seenAtEpochMilliseconds || other.enteredAtEpochMilliseconds - one.enteredAtEpochMilliseconds,
  )[0];
  if (look === undefined) return { inBloom: "unknown", look: null };
  if (look.blooms === "yes") return { inBloom: "yes", look };
  return { inBloom: look.seenOn === day ? "no" : "unknown", look };
}

/** A look with what its words need. */
export interface LookToSay {
  readonly seenOn: CalendarDate;
  readonly minuteOfDay: number;
  readonly seenBy: string;
  readonly blooms: BloomSeen;
  readonly said: string | null;
}

const SAW: Readonly<Record<BloomSeen, string>> = { yes: "Seen in bloom", no: "Seen without flowers", "not-looked": "Not looked at" };

/** A look in one sentence: "Seen in bloom on Apr 14, 2026, 9:12 am, by Rowan Ash: clover along the walk." */
export function lookWords({ seenOn, minuteOfDay, seenBy, blooms, said }: LookToSay): string {
  const ending = said === null ? "." : `: ${ended(said)}`;
  return `${SAW[blooms]} on ${formatShortDate(seenOn)}, ${clockWords(minuteOfDay)}, by ${seenBy}${ending}`;
}
