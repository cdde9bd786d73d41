import { withoutFullStop } from "#domain/foundation/full-stop";
import { type AftercareTimeline } from "#domain/mixing/aftercare";
import { AFTERCARE_ROWS, type AftercareRowName, type AftercareStep } from "#domain/mixing/aftercare-step";
import { weekdayOf } from "#domain/mixing/clock-periods";
import { localTimeAt } from "#domain/weather/local-hours";
import { type AftercareRow, type AftercareSpan, type DoneAt } from "#ui/drawings/aftercare-timeline";

const ROW_WORDS: Readonly<Record<AftercareRowName, string>> = {
  "people-and-pets": "People and pets",
  watering: "Watering",
  mowing: "Mowing",
  seeding: "Seeding",
  sign: "Sign",
};

const ONE_MINUTE_MILLISECONDS = 60_000;
const ONE_DAY_MINUTES = 24 * 60;

/** The end of a visit as day of the week and minute, where the drawing begins. */
export function doneAtOf({ visitEndsAtEpochMilliseconds, timeZone }: AftercareTimeline): DoneAt {
  const { date, localTime } = localTimeAt(visitEndsAtEpochMilliseconds, timeZone);
  const [hours = 0, minutes = 0] = localTime.split(":").map(Number);
  return { weekday: weekdayOf(date), minute: hours * 60 + minutes };
}

function spanOf(step: AftercareStep, id: string, endOfVisit: number, lastMinute: number): AftercareSpan {
  const minutesFrom = (instant: number) => (instant - endOfVisit) / ONE_MINUTE_MILLISECONDS;
  const { endsAtEpochMilliseconds: end, reasons, row, kind, isEstimate } = step;
  const said = [...new Set(reasons.map(({ labelWords }) => withoutFullStop(labelWords)).filter((words) => words !== ""))];
  return {
    id,
    kind: kind === "must" && row === "watering" ? "water" : kind,
    fromMinutes: minutesFrom(step.startsAtEpochMilliseconds),
    // An end that nobody can give is drawn as far as the drawing goes, and torn off.
    toMinutes: end === null ? lastMinute : minutesFrom(end),
    estimate: isEstimate || end === null,
    words: withoutFullStop(step.words),
    fromWords: step.startsAtWords,
    untilWords: step.endsAtWords,
    hasNoEnd: end === null && kind === "must",
    why: said.length === 0 ? "No words of the label are on file" : said.join("; "),
    product: [...new Set(reasons.map(({ productName }) => productName))].join(" and "),
  };
}

/** As far as a drawing goes: the last end that is known, half a day of what has none, and a day at least. */
function lastMinuteOf({ steps, visitEndsAtEpochMilliseconds }: AftercareTimeline): number {
  const minutesTo = (instant: number) => (instant - visitEndsAtEpochMilliseconds) / ONE_MINUTE_MILLISECONDS;
  const ends = steps.map(({ startsAtEpochMilliseconds: start, endsAtEpochMilliseconds: end }) => (end === null ? minutesTo(start) + ONE_DAY_MINUTES / 2 : minutesTo(end)));
  return Math.max(ONE_DAY_MINUTES, ...ends);
}

/** Every step of an aftercare under its row, in order of time, those included that have no length or are over. */
export function aftercareRows(timeline: AftercareTimeline): readonly AftercareRow[] {
  const lastMinute = lastMinuteOf(timeline);
  return AFTERCARE_ROWS.flatMap((row) => {
    const steps = timeline.steps.filter((step) => step.row === row);
    const spans = steps.map((step, index) => spanOf(step, `${row}-${String(index)}`, timeline.visitEndsAtEpochMilliseconds, lastMinute));
    return spans.length === 0 ? [] : [{ id: row, name: ROW_WORDS[row], spans }];
  });
}

/**
 * The rows as they can be drawn: from the end of the visit on, without what is over by then or has no length, and what
 * must be done in a row of its own where it overlaps what may not.
 */
export function drawnRows(rows: readonly AftercareRow[]): readonly AftercareRow[] {
  return rows.flatMap(({ id, name, spans }) => {
    const drawn = spans
      .map((span) => ({ ...span, fromMinutes: Math.max(0, span.fromMinutes) }))
      .filter(({ fromMinutes, toMinutes }) => toMinutes > fromMinutes);
    if (drawn.length === 0) return [];
    if (!overlap(drawn)) return [{ id, name, spans: drawn }];
    const mayNot = drawn.filter(({ kind }) => kind === "may-not");
    const must = drawn.filter(({ kind }) => kind !== "may-not");
    return [
      ...(mayNot.length === 0 ? [] : [{ id, name, spans: mayNot }]),
      ...must.map((span, index) => ({ id: `${id}-must-${String(index)}`, name: `${name}: do`, spans: [span] })),
    ];
  });
}

function overlap(spans: readonly AftercareSpan[]): boolean {
  return spans.some((span, index) => spans.slice(index + 1).some((later) => later.fromMinutes < span.toMinutes && span.fromMinutes < later.toMinutes));
}

const CONCLUSION_WORDS: Readonly<Record<string, string>> = {
  "people-and-pets": "Off the lawn",
  watering: "No watering",
  mowing: "No mowing",
  seeding: "No seed",
  sign: "The sign stays up",
};

/** What follows from it all, as one sentence for each row: until when what is left. */
export function aftercareConclusion(rows: readonly AftercareRow[]): string {
  const sentences = rows.flatMap(({ id, spans }) => {
    const last = spans.findLast(({ kind }) => kind === "may-not");
    return last === undefined ? [] : [`${CONCLUSION_WORDS[id] ?? ""} until ${last.untilWords}.`];
  });
  return sentences.length === 0 ? "Nothing is to be left afterwards." : sentences.join(" ");
}
