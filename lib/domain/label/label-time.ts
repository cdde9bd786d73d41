import { accept, refuse } from "#domain/foundation/outcome";
import { parseNumber } from "#domain/quantities/parse-number";
import { reduce } from "#domain/quantities/rational";
import { type AwaitedState, type Reach, type ReachAnchor, type ReachBack, type Until } from "#domain/label/aftercare-constraint";
import { type ReadAnswer } from "#domain/label/label-answer";

const LENGTH = /^(?:for |within |after |at least )?([\d./ -]+?) ?(minutes?|min|hours?|hrs?|h|days?|weeks?|months?|years?)(?: (?:after|from|of|following) (?:the )?(.+))?$/iu;

/** What a time is said to count from. "After application" says neither its start nor its end. */
const FROM: readonly (readonly [RegExp, CountedFrom])[] = [
  [/^(?:start|beginning)(?: of (?:the )?(?:application|treatment))?$|^(?:application|treatment) (?:starts|begins)$/iu, "start"],
  [/^(?:end|completion)(?: of (?:the )?(?:application|treatment))?$|^(?:application|treatment) (?:ends|is (?:complete|done))$/iu, "end"],
  [/^posting$|^sign is up$/iu, "posting"],
  [/^(?:application|treatment|applying)$/iu, "not-said"],
];

/** What each word of a time comes to: minutes, days or months (by definition). */
const MINUTES: Readonly<Record<string, bigint>> = { m: 1n, h: 60n };
const IN_DAYS: Readonly<Record<string, bigint>> = { d: 1n, w: 7n };
const IN_MONTHS: Readonly<Record<string, bigint>> = { mo: 1n, y: 12n };

const ASK_FOR_A_TIME = "Write a time as in 12 hours, 2 days or 3 months.";

type CountedFrom = "start" | "end" | "posting" | "not-said";

/** A time as a whole number of minutes, days or months; hours are never days, and months are never days. */
export interface LabelTime {
  readonly unit: "minutes" | "days" | "months";
  readonly count: number;
  readonly from: CountedFrom;
}

/**
 * Reads "12 hours", "90 min", "2 days", "3 months", "12 hours after start", "1 day after application". Refuses parts of
 * a minute, day or month, and months from anything but the application.
 */
export function readTime(value: string): ReadAnswer<LabelTime> {
  const [, number = "", word = "", fromWords] = LENGTH.exec(value.trim()) ?? [];
  const from = fromWords === undefined ? "not-said" : FROM.find(([pattern]) => pattern.test(fromWords))?.[1];
  if (number === "" || from === undefined) return refuse(`"${value}" is not a time that can be read. ${ASK_FOR_A_TIME}`);
  const read = parseNumber("time", number);
  if (!read.ok) return refuse(read.refusal.sentence);
  const key = /^mo/iu.test(word) ? "mo" : word.charAt(0).toLowerCase();
  const factor = MINUTES[key] ?? IN_DAYS[key] ?? IN_MONTHS[key];
  if (factor === undefined) return refuse(ASK_FOR_A_TIME);
  const { numerator, denominator } = reduce({ numerator: read.value.numerator * factor, denominator: read.value.denominator });
  if (denominator !== 1n) return refuse(`"${value}" is no whole number of ${key in MINUTES ? "minutes" : key in IN_DAYS ? "days" : "months"}.`);
  const count = Number(numerator);
  if (key in MINUTES || key in IN_DAYS) return accept({ unit: key in MINUTES ? "minutes" : "days", count, from });
  if (from !== "not-said") return refuse("Months count from the day of the application. Leave the rest out, or write hours or days.");
  return accept({ unit: "months", count, from });
}

const ANCHORS: Readonly<Record<CountedFrom, ReachAnchor | "not-said">> = {
  start: "application-start",
  end: "application-end",
  posting: "posting",
  "not-said": "not-said",
};

/** The day after the application as a day of the calendar, which begins at midnight whenever the work was done. */
const DAY_FOLLOWING = /^(?:the )?(?:day following|following day|next day)$/iu;

/**
 * Reads a time as a reach: hours from the end of the application unless the words say otherwise, days by both their
 * readings, months by the calendar, and "the day following" as that day of the calendar. Refused as readTime refuses.
 */
export function readReach(value: string): ReadAnswer<Reach> {
  if (DAY_FOLLOWING.test(value.trim())) return accept({ anchor: "calendar-day", days: 1 });
  const time = readTime(value);
  if (!time.ok) return time;
  const { unit, count } = time.value;
  const from = ANCHORS[time.value.from];
  switch (unit) {
    case "minutes":
      return accept({ anchor: from === "not-said" ? "application-end" : from, durationMinutes: count });
    case "days":
      return accept({ anchor: "days", from, days: count });
    case "months":
      return accept({ anchor: "calendar-month", months: count });
  }
}

const BEFORE_WORDS = /^(.+?) (?:before (?:the )?(?:application|treatment|applying)|(?:after|of|from) (?:the )?seeding)$/iu;

/**
 * Reads a time before the application: "2 days", "2 days before application", "60 days after seeding". Refused as
 * readTime refuses, and months: how many days they are depends on which.
 */
export function readReachBack(value: string): ReadAnswer<ReachBack> {
  const time = readTime(BEFORE_WORDS.exec(value.trim())?.[1] ?? value);
  if (!time.ok) return time;
  if (time.value.unit === "months") return refuse("Write the time before an application in days or hours.");
  return accept(
    time.value.unit === "minutes"
      ? { anchor: "application-start", durationMinutes: time.value.count }
      : { anchor: "days", from: "application-start", days: time.value.count },
  );
}

const STATES: readonly (readonly [RegExp, AwaitedState])[] = [
  [/^watered[- ]in and (?:dry|dried)$/iu, "watered-in-and-dry"],
  [/^watered[- ]in$/iu, "watered-in"],
  [/^(?:it (?:is|has) )?(?:dry|dried)$|^(?:the )?sprays? (?:dry|dries|(?:is|are) dry|(?:has|have) dried)$/iu, "dry"],
  [/^(?:the )?dusts? (?:settles?|(?:has|have) settled)$/iu, "dust-settled"],
];

/** Reads a state of the lawn: "sprays have dried", "watered in". Undefined where the words are no state. */
export function readState(value: string): AwaitedState | undefined {
  return STATES.find(([pattern]) => pattern.test(value))?.[1];
}

/** What several ends are joined by: a comma, or "and" before another end. "Watered in and dry" is one end. */
const NEXT_END = /\s*[,;]\s*(?:and |or )?|\s+(?:and|or)\s+(?=until\b|\d)/iu;
const WHICHEVER_LATER = /,? ?whichever (?:is|comes) (?:the )?(?:later|longer|last)$/iu;

/** One of two ends without a word on which: "or" before an end, or after the comma that parts two. */
const OR_WHICH = /\bor\s+(?=until\b|\d)|[,;]\s*or\s/iu;

/**
 * Watered in and dry is one state however a label parts the words: the lawn is dry again after that water, and each
 * counted alone from the application would be over before.
 */
function joinStates(untils: readonly Until[]): readonly Until[] {
  const stands = (state: AwaitedState) => untils.some((until) => until.anchor === "state" && until.state === state);
  if (!stands("watered-in") || !stands("dry")) return untils;
  const others = untils.filter((until) => until.anchor !== "state" || (until.state !== "watered-in" && until.state !== "dry"));
  return [{ anchor: "state", state: "watered-in-and-dry" }, ...others];
}

/**
 * Reads until when something holds: "until dry", "12 hours", "12 hours and until dry" (the later of them). "Until watered
 * in, and until dry" is dry again after the watering. Refused: "or" without "whichever is later", and an end that is
 * neither a state nor a time.
 */
export function readUntils(value: string): ReadAnswer<readonly Until[]> {
  const isLater = WHICHEVER_LATER.test(value);
  const plain = value.replace(WHICHEVER_LATER, "");
  if (!isLater && OR_WHICH.test(plain)) {
    return refuse(`"${value}" does not say which of the two. Add "whichever is later" if that is meant.`);
  }
  const untils: Until[] = [];
  for (const part of plain.split(NEXT_END)) {
    const words = part.replace(/^(?:until after|until|after) /iu, "").trim();
    const state = readState(words);
    if (state !== undefined) {
      untils.push({ anchor: "state", state });
      continue;
    }
    const reach = readReach(words);
    if (!reach.ok) return refuse(`"${part.trim()}" can't be read. Write until dry, until dust has settled, until watered in and dry, or a time such as 12 hours.`);
    untils.push(reach.value);
  }
  return accept(joinStates(untils));
}
