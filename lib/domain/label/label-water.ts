import { accept, refuse } from "#domain/foundation/outcome";
import { type Measure } from "#domain/quantities/exact-quantity";
import { parseLength } from "#domain/quantities/parse-length";
import { type ConstraintOf, type WateringDepth } from "#domain/label/aftercare-constraint";
import { type ReadAnswer } from "#domain/label/label-answer";
import { readReach } from "#domain/label/label-time";

const DEPTH = /(?:(at least|up to|at most) )?(\d[\d./ ]*?|\.\d+)(?: ?(?:in|inch|inches|mm|cm))?(?: to (\d[\d./ ]*?|\.\d+))? ?(inches|inch|in|mm|cm)\b/iu;
const BY = /\bwithin ([\d./ ]+ ?[a-z]+(?: (?:after|from) (?:the )?(?:start|end|posting))?)/iu;
const RAIN = /\brain (counts|does not count|doesn't count)\b/iu;
const FILLERS = /\b(?:yes|water(?:ed)?[- ]in|with|of|water|by|and)\b|[,;]/giu;

/** Reads a depth of water. */
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

/** Reads "0.25 in within 2 days, rain counts". What is not written stays "not-stated"; words that mean nothing here are refused. */
export function readWateringIn(value: string): ReadAnswer<Omit<ConstraintOf<"watering-in">, "labelWords">> {
  const by = BY.exec(value);
  const rain = RAIN.exec(value);
  const withoutTimes = value.replace(BY, " ").replace(RAIN, " ");
  const depth = DEPTH.exec(withoutTimes);
  const left = withoutTimes.replace(DEPTH, " ").replace(FILLERS, " ").trim();
  if (left !== "") return refuse(`"${left}" can't be read here. Write as in 0.25 in within 2 days, rain counts.`);
  const readBy = by === null ? accept("not-stated" as const) : readReach(by[1] ?? "");
  if (!readBy.ok) return readBy;
  if (readBy.value !== "not-stated" && readBy.value.anchor === "calendar-month") return refuse("Watering in is due within hours or days.");
  const range = depth === null ? accept("not-stated" as const) : readRange(depth);
  if (!range.ok) return range;
  const rainWords = rain?.[1]?.toLowerCase();
  return accept({
    kind: "watering-in",
    by: readBy.value,
    depth: range.value,
    rain: rainWords === undefined ? "not-stated" : rainWords === "counts" ? "counts" : "does-not-count",
  });
}

/** Reads "any rain within 12 hours", "0.25 in within 24 hours", or a time alone, which means any rain. */
export function readRainThatSpoils(value: string): ReadAnswer<Omit<ConstraintOf<"rain-that-spoils">, "labelWords">> {
  const [, before = "", time = value] = /^(.*?)\s*\bwithin (.+)$/iu.exec(value) ?? [];
  const within = readReach(time);
  if (!within.ok) return within;
  const amount = before.replace(/\b(?:of )?rain\b/giu, "").trim();
  if (amount === "" || /^any$/iu.test(amount)) return accept({ kind: "rain-that-spoils", within: within.value, from: "any" });
  const from = readDepth(amount.replace(/^more than |^over /iu, ""));
  return from.ok ? accept({ kind: "rain-that-spoils", within: within.value, from: from.value }) : from;
}
