import { type TemperaturesToWrite } from "#application/temperatures/temperatures-to-write";
import { formatShortDate, monthWords } from "#domain/foundation/calendar-date";
import { daysWords } from "#domain/foundation/days-words";
import { withoutFullStop } from "#domain/foundation/full-stop";
import { groupedBy } from "#domain/foundation/grouping";
import { listWords } from "#domain/foundation/list-words";
import { type DatePeriod, stretchesOf } from "#domain/turf/daily-series";
import { type DayTemperatures, tenthsWords } from "#domain/turf/day-temperatures";
import { MOST_MISSING_DAYS } from "#domain/turf/month-temperature";
import { fahrenheitFromCelsius, temperatureSign } from "#domain/turf/temperature-scale";
import { type CareOfForm, type ReadBackWords } from "../../form-state";

/** "Mar 4, 2026", or "Mar 4, 2026 to Mar 6, 2026". */
export function spanWords({ from, through }: DatePeriod): string {
  return from === through ? formatShortDate(from) : `${formatShortDate(from)} to ${formatShortDate(through)}`;
}

/** "41.2 °F", a mean as the office reads it. */
export function meanWords(meanTemperatureC: number): string {
  return `${fahrenheitFromCelsius(meanTemperatureC).toFixed(1)} ${temperatureSign("fahrenheit")}`;
}

/** Stretches of days by their dates, all of them. */
export function spansWords(spans: readonly DatePeriod[]): string {
  return listWords(spans.map(spanWords));
}

const range = (tenths: readonly number[], { scale }: DayTemperatures) => {
  const [low, high] = [Math.min(...tenths), Math.max(...tenths)];
  return low === high ? tenthsWords(low, scale) : `${String(low / 10)} to ${tenthsWords(high, scale)}`;
};

/** One month of what was understood: "March 2026, 31 days, highs 41 to 75 °F, lows 20 to 48 °F". */
function monthParts(days: readonly [DayTemperatures, ...DayTemperatures[]]): readonly ReadBackWords[] {
  const [first] = days;
  return [
    { fact: `${monthWords(Number(first.date.slice(5, 7)))} ${first.date.slice(0, 4)}` },
    ", ",
    { fact: daysWords(days.length) },
    ", highs ",
    { fact: range(days.map(({ highTenths }) => highTenths), first) },
    ", lows ",
    { fact: range(days.map(({ lowTenths }) => lowTenths), first) },
  ];
}

/** What was understood of pasted days, as one sentence, month by month: what is read back before it is kept. */
export function understoodSentence({ source, figuresFrom, given }: TemperaturesToWrite): readonly ReadBackWords[] {
  const months = [...groupedBy(given, ({ date }) => date.slice(0, 7)).values()].flatMap(([first, ...rest]) => (first === undefined ? [] : [[first, ...rest] as const]));
  return [
    { fact: daysWords(given.length) },
    " of ",
    { fact: source },
    ", from ",
    { fact: withoutFullStop(figuresFrom) },
    ": ",
    ...months.flatMap((days, index) => [...(index === 0 ? [] : ["; "]), ...monthParts(days)]),
    ".",
  ];
}

function figures({ highTenths, lowTenths, scale }: DayTemperatures): string {
  return `${String(highTenths / 10)} and ${tenthsWords(lowTenths, scale)}`;
}

/** All replaced days are named; of this many the figures before and after too. */
const MOST_CHANGES = 6;

function changesWords(replaced: TemperaturesToWrite["replaced"]): string {
  const changes = replaced.slice(0, MOST_CHANGES).map(({ before, after }) => `${formatShortDate(after.date)}: ${figures(before)}, now ${figures(after)}`);
  const more = replaced.length - changes.length;
  return `${spansWords(stretchesOf(replaced.map(({ after }) => after)))}. High and low of ${changes.join("; ")}${more === 0 ? "" : `; and ${String(more)} more`}.`;
}

/** What wants care in pasted days: those they replace, those kept already, those missing between them, another source. */
export function caresOfDays({ source, inUse, replaced, same, gaps }: TemperaturesToWrite): readonly CareOfForm[] {
  const cares: CareOfForm[] = [];
  if (replaced.length > 0) {
    cares.push({ level: "take-care", what: `${daysWords(replaced.length)} kept before ${replaced.length === 1 ? "is" : "are"} replaced.`, figure: changesWords(replaced), toDo: "The earlier entries stay in the books; the latest counts.", source: "House" });
  }
  if (inUse !== null && inUse !== source) {
    cares.push({ level: "take-care", what: `Growth is drawn by another source, ${inUse}.`, toDo: `These days are kept beside it. Choose ${source} afterwards if growth shall be drawn by it.`, source: "House" });
  }
  if (same.length > 0) cares.push({ level: "note", what: `${daysWords(same.length)} kept already with the same figures.`, figure: `${spansWords(stretchesOf(same))}: nothing is written for ${same.length === 1 ? "it" : "them"}.`, source: "House" });
  if (gaps.length > 0) cares.push({ level: "note", what: "Days between the first and the last are missing.", figure: `${spansWords(gaps)}.`, toDo: `A month has its mean while no more than ${String(MOST_MISSING_DAYS.inAll)} days are missing, and no more than ${String(MOST_MISSING_DAYS.inARow)} in a row.`, source: "World Meteorological Organization, by the Utah Climate Center" });
  return cares;
}
