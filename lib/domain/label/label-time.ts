import { accept, refuse } from "#domain/foundation/outcome";
import { parseNumber } from "#domain/quantities/parse-number";
import { reduce } from "#domain/quantities/rational";
import { type AwaitedState, type Reach, type ReachBack, type Until } from "#domain/label/aftercare-constraint";
import { type ReadAnswer } from "#domain/label/label-answer";

const LENGTH = /^(?:for |within |after |at least )?([\d./ ]+?) ?(minutes?|min|hours?|hrs?|h|days?|weeks?|months?|years?)(?: (?:after|from) (?:the )?(start|end|posting))?$/iu;

const MINUTES: Readonly<Record<string, bigint>> = { m: 1n, h: 60n };
const IN_DAYS: Readonly<Record<string, bigint>> = { d: 1n, w: 7n };
const IN_MONTHS: Readonly<Record<string, bigint>> = { mo: 1n, y: 12n };

const ASK_FOR_A_TIME = "Write a time as in 12 hours, 2 days or 3 months.";

/** A time as a whole number of minutes, days or months; hours are never days, and months are never days. */
export type LabelTime =
  | { readonly unit: "minutes"; readonly count: number; readonly from: "start" | "end" | "posting" | "not-said" }
  | { readonly unit: "days" | "months"; readonly count: number };

/** Reads "12 hours", "90 min", "2 days", "3 months", and "12 hours after start". Refuses parts of a minute, day or month. */
export function readTime(value: string): ReadAnswer<LabelTime> {
  const [, number = "", word = "", from] = LENGTH.exec(value.trim()) ?? [];
  if (number === "") return refuse(`"${value}" is not a time that can be read. ${ASK_FOR_A_TIME}`);
  const read = parseNumber("time", number);
  if (!read.ok) return refuse(read.refusal.sentence);
  const key = /^mo/iu.test(word) ? "mo" : word.charAt(0).toLowerCase();
  const factor = MINUTES[key] ?? IN_DAYS[key] ?? IN_MONTHS[key];
  if (factor === undefined) return refuse(ASK_FOR_A_TIME);
  const { numerator, denominator } = reduce({ numerator: read.value.numerator * factor, denominator: read.value.denominator });
  if (denominator !== 1n) return refuse(`"${value}" is no whole number of ${key in MINUTES ? "minutes" : key in IN_DAYS ? "days" : "months"}.`);
  const count = Number(numerator);
  if (key in MINUTES) return accept({ unit: "minutes", count, from: (from?.toLowerCase() ?? "not-said") as "start" | "end" | "posting" | "not-said" });
  if (from !== undefined) return refuse("Days and months count from the day of the application. Leave the rest out, or write hours.");
  return accept({ unit: key in IN_DAYS ? "days" : "months", count });
}

/** Reads a time as a reach: hours from the end of the application unless the words say otherwise, days and months by the calendar. */
export function readReach(value: string): ReadAnswer<Reach> {
  const time = readTime(value);
  if (!time.ok) return time;
  switch (time.value.unit) {
    case "minutes": {
      const { from, count } = time.value;
      const anchor = from === "start" ? "application-start" : from === "posting" ? "posting" : "application-end";
      return accept({ anchor, durationMinutes: count });
    }
    case "days":
      return accept({ anchor: "calendar-day", days: time.value.count });
    case "months":
      return accept({ anchor: "calendar-month", months: time.value.count });
  }
}

/** Reads a time before the application. Months are refused: how many days they are depends on which. */
export function readReachBack(value: string): ReadAnswer<ReachBack> {
  const time = readTime(value);
  if (!time.ok) return time;
  if (time.value.unit === "months") return refuse("Write the time before an application in days or hours.");
  return accept(
    time.value.unit === "minutes"
      ? { anchor: "application-start", durationMinutes: time.value.count }
      : { anchor: "calendar-day", days: time.value.count },
  );
}

const STATES: readonly (readonly [RegExp, AwaitedState])[] = [
  [/^watered[- ]in and (?:dry|dried)$/iu, "watered-in-and-dry"],
  [/^watered[- ]in$/iu, "watered-in"],
  [/^(?:dry|dried|sprays? (?:has|have) dried)$/iu, "dry"],
  [/^(?:the )?dusts? (?:has|have) settled$/iu, "dust-settled"],
];

/** What several ends are joined by: a comma, or "and" before another end. "Watered in and dry" is one end. */
const NEXT_END = /\s*[,;]\s*(?:and |or )?|\s+(?:and|or)\s+(?=until\b|\d)/iu;
const WHICHEVER_LATER = /,? ?whichever (?:is|comes) (?:the )?(?:later|longer|last)$/iu;

/** Reads until when something holds: "until dry", "12 hours", "12 hours and until dry" (the later of them). */
export function readUntils(value: string): ReadAnswer<readonly Until[]> {
  const isLater = WHICHEVER_LATER.test(value);
  const plain = value.replace(WHICHEVER_LATER, "");
  if (!isLater && /\bor\s+(?=until\b|\d)/iu.test(plain)) {
    return refuse(`"${value}" does not say which of the two. Add "whichever is later" if that is meant.`);
  }
  const untils: Until[] = [];
  for (const part of plain.split(NEXT_END)) {
    const words = part.replace(/^until /iu, "").trim();
    const state = STATES.find(([pattern]) => pattern.test(words))?.[1];
    if (state !== undefined) {
      untils.push({ anchor: "state", state });
      continue;
    }
    const reach = readReach(words);
    if (!reach.ok) return refuse(`"${part.trim()}" can't be read. Write until dry, until dust has settled, until watered in and dry, or a time such as 12 hours.`);
    untils.push(reach.value);
  }
  return accept(untils);
}
