import { accept, refuse } from "#domain/foundation/outcome";
import { type Measure } from "#domain/quantities/exact-quantity";
import { parseLength } from "#domain/quantities/parse-length";
import { type ConstraintOf, type DueReach, type WateringDepth } from "#domain/label/aftercare-constraint";
import { type ReadAnswer } from "#domain/label/label-answer";
import { readReach } from "#domain/label/label-time";

const DEPTH = /(?:(at least|up to|at most) )?(\d[\d./ -]*?|\.\d+)(?: ?(?:in|inch|inches|mm|cm))?(?: to (\d[\d./ -]*?|\.\d+))? ?(inches|inch|in|mm|cm)\b/iu;
const FROM = String.raw`(?:(?:start|end|completion)(?: of (?:the )?(?:application|treatment))?|posting|application|treatment|applying)`;
const AFTER_IT = String.raw`(?: (?:after|following) (?:the )?(?:application|treatment|applying))?`;
const DAY_AFTER = String.raw`(?:day following|following day|next day)`;
const RAIN = /\brain (counts|does not count|doesn't count)\b/iu;
const FILLERS = /\b(?:yes|water(?:ed)?[- ]in|with|of|water|by|and)\b|[,;]/giu;

/** Reads a depth of water, exactly. Refused: what is no length with its unit. */
export function readDepth(value: string): ReadAnswer<Measure<"length">> {
  const read = parseLength(value, { field: "depth" });
  return read.ok ? accept(read.value.exact) : refuse(`${read.refusal.sentence} Write a depth as in 0.25 in.`);
}

function readRange(match: RegExpExecArray): ReadAnswer<WateringDepth> {
  const [, bound, first = "", second, unit = ""] = match;
  if (bound !== undefined && /^(?:up to|at most)$/iu.test(bound)) {
    return refuse("A most alone does not say how much water works it in. Write the least, or from least to most: 0.25 to 0.5 in.");
  }
  const least = readDepth(`${first} ${unit}`);
  if (!least.ok) return least;
  if (second === undefined) return accept({ least: least.value, most: "none" });
  const most = readDepth(`${second} ${unit}`);
  return most.ok ? accept({ least: least.value, most: most.value }) : most;
}

function readWithin(time: string): ReadAnswer<DueReach> {
  const reach = readReach(time);
  if (!reach.ok) return reach;
  if (reach.value.anchor === "calendar-month") return refuse("Watering in is due within hours or days.");
  // No day at all is the day of the application itself; by the hours it would be over before it began.
  if (reach.value.anchor === "days" && reach.value.days === 0) return accept({ anchor: "calendar-day", days: 0 });
  return accept(reach.value);
}

/** The ways in which a label says by when; the same day and the day following are days of the calendar, due by their end. */
const DUE: readonly (readonly [RegExp, (time: string) => ReadAnswer<DueReach>])[] = [
  [new RegExp(String.raw`\bwithin ([\d./ -]+ ?[a-z]+(?: (?:after|from|of|following) (?:the )?${FROM})?)`, "iu"), readWithin],
  [new RegExp(String.raw`\b(?:immediately|at once|right away)${AFTER_IT}`, "iu"), () => accept({ anchor: "at-once" })],
  [/\b(?:on )?the same day\b(?: as the application)?/iu, () => accept({ anchor: "calendar-day", days: 0 })],
  [new RegExp(String.raw`\bby the end of the ${DAY_AFTER}\b`, "iu"), () => accept({ anchor: "calendar-day", days: 1 })],
];

function readDue(value: string): { readonly due: ReadAnswer<DueReach | "not-stated">; readonly rest: string } {
  for (const [pattern, read] of DUE) {
    const found = pattern.exec(value);
    if (found !== null) return { due: read(found[1] ?? ""), rest: value.replace(found[0], " ") };
  }
  return { due: accept("not-stated"), rest: value };
}

/**
 * Reads "0.25 in within 2 days, rain counts", and "immediately, 0.5 to 1 in". What is not written stays "not-stated";
 * words that mean nothing here, a most without a least, and months are refused.
 */
export function readWateringIn(value: string): ReadAnswer<Omit<ConstraintOf<"watering-in">, "labelWords">> {
  const { due, rest } = readDue(value);
  const rain = RAIN.exec(value);
  const withoutTimes = rest.replace(RAIN, " ");
  const depth = DEPTH.exec(withoutTimes);
  const left = withoutTimes.replace(DEPTH, " ").replace(FILLERS, " ").trim();
  if (left !== "") return refuse(`"${left}" can't be read here. Write as in 0.25 in within 2 days, rain counts.`);
  if (!due.ok) return due;
  const range = depth === null ? accept("not-stated" as const) : readRange(depth);
  if (!range.ok) return range;
  const rainWords = rain?.[1]?.toLowerCase();
  return accept({
    kind: "watering-in",
    by: due.value,
    depth: range.value,
    rain: rainWords === undefined ? "not-stated" : rainWords === "counts" ? "counts" : "does-not-count",
  });
}

/**
 * Reads "any rain within 12 hours", "0.25 in within 24 hours", or a time alone, which means any rain. Refused: no time,
 * and an amount that is no depth.
 */
export function readRainThatSpoils(value: string): ReadAnswer<Omit<ConstraintOf<"rain-that-spoils">, "labelWords">> {
  const [, before = "", time = value] = /^(.*?)\s*\bwithin (.+)$/iu.exec(value) ?? [];
  const within = readReach(time);
  if (!within.ok) return within;
  const amount = before.replace(/\b(?:of )?rain\b/giu, "").trim();
  if (amount === "" || /^any$/iu.test(amount)) return accept({ kind: "rain-that-spoils", within: within.value, from: "any" });
  const from = readDepth(amount.replace(/^more than |^over /iu, ""));
  return from.ok ? accept({ kind: "rain-that-spoils", within: within.value, from: from.value }) : from;
}
