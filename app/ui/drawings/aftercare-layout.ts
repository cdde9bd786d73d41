import { namedClockWords, clockWords } from "#domain/foundation/clock-words";
import { type DrawingNote } from "./drawing-figure";
import { measureText, wrapText } from "./measure-text";

/** One thing that must not or must be done after a visit. Minutes count from the end of the visit. */
export interface AftercareSpan {
  readonly id: string;
  readonly kind: "may-not" | "must" | "water";
  readonly fromMinutes: number;
  readonly toMinutes: number;
  /** True where the end is an estimate ("until dry"): the mark ends in a ragged edge. */
  readonly estimate?: boolean;
  /** What to do or leave, short: "keep off until dry, about 2 h". */
  readonly words: string;
  /** From when and until when, as they are said: "now", "about 5 pm, an estimate". */
  readonly fromWords: string;
  readonly untilWords: string;
  /** True where nothing sets an end: then the words in place of one follow the start after a comma. */
  readonly hasNoEnd?: boolean;
  readonly why: string;
  readonly product: string;
}

/** What concerns one kind of use: people and pets, watering, mowing, seeding, the sign. */
export interface AftercareRow {
  readonly id: string;
  readonly name: string;
  /** In order of time, without overlap. */
  readonly spans: readonly AftercareSpan[];
}

/** When the visit ended: the day of the week, 0 for Sunday, and the minute of the day. */
export interface DoneAt {
  readonly weekday: number;
  readonly minute: number;
}

/** The least width of the wide form and of its names, in pixels. */
export const aftercareLeast = { widthPixels: 640, namesPixels: 128 } as const;

const plotPixels = aftercareLeast.widthPixels - aftercareLeast.namesPixels;
const dayMinutes = 24 * 60;
const textPixels = 13;
const weekdays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"] as const;

/** A tick of the axis at its share; an hour's name stands at its tick, a day's in the middle of what is drawn of it. */
export interface AftercareTick {
  readonly share: number;
  readonly words: string | undefined;
  readonly wordsShare: number;
}

/** A span as drawn: its ends as shares of the plot, and where its words went. */
export interface AftercareMark {
  readonly span: AftercareSpan;
  readonly fromShare: number;
  readonly toShare: number;
  readonly wordsPlace: "inside" | "after" | "note";
  readonly widthPixels: number;
  readonly noteNumber?: number;
}

/** The wide form, laid out for its least width. */
export interface AftercareLayout {
  readonly ticks: readonly AftercareTick[];
  /** Where hours become days; undefined where everything ends within a day. */
  readonly breakShare: number | undefined;
  readonly rows: readonly {
    readonly row: AftercareRow;
    readonly nameLines: readonly string[];
    readonly marks: readonly AftercareMark[];
  }[];
  readonly notes: readonly DrawingNote[];
}

/** Lays the timeline out: the first day takes two thirds, the days after it the rest. */
export function layOutAftercare(rows: readonly AftercareRow[], doneAt: DoneAt): AftercareLayout {
  const last = Math.max(...rows.flatMap((row) => row.spans.map((span) => span.toMinutes)), 0);
  const days = Math.max(1, Math.ceil(last / dayMinutes));
  const shareOf = (minutes: number) => {
    if (days === 1) return minutes / dayMinutes;
    if (minutes <= dayMinutes) return (minutes / dayMinutes) * (2 / 3);
    return 2 / 3 + ((minutes - dayMinutes) / ((days - 1) * dayMinutes)) / 3;
  };
  const notes: DrawingNote[] = [];
  const drawn = rows.map((row) => ({
    row,
    nameLines: wrapText(row.name, aftercareLeast.namesPixels - 12, textPixels, 600),
    marks: row.spans.map((span, index) => {
      const mark = placeWords(span, row.spans[index + 1], shareOf);
      if (mark.wordsPlace !== "note") return mark;
      const number = notes.length + 1;
      notes.push({ number, words: `${row.name}: ${span.words}` });
      return { ...mark, noteNumber: number };
    }),
  }));
  return {
    ticks: [...hourTicks(doneAt, shareOf), ...dayTicks(doneAt, days, shareOf)],
    breakShare: days === 1 ? undefined : shareOf(dayMinutes),
    rows: drawn,
    notes,
  };
}

type ShareOf = (minutes: number) => number;

function placeWords(span: AftercareSpan, next: AftercareSpan | undefined, shareOf: ShareOf): AftercareMark {
  const fromShare = shareOf(span.fromMinutes);
  const toShare = shareOf(span.toMinutes);
  const inside = span.kind === "may-not";
  const widthPixels = measureText(span.words, textPixels, inside ? 600 : 400);
  const fitsInside = inside && widthPixels + 24 <= (toShare - fromShare) * plotPixels;
  const room = ((next === undefined ? 1 : shareOf(next.fromMinutes)) - toShare) * plotPixels;
  const wordsPlace = fitsInside ? "inside" : measureText(span.words, textPixels, 600) + 16 <= room ? "after" : "note";
  return { span, fromShare, toShare, wordsPlace, widthPixels };
}

function hourTicks(doneAt: DoneAt, shareOf: ShareOf): AftercareTick[] {
  const doneWords = `done ${clockWords(doneAt.minute)}`;
  const ticks: AftercareTick[] = [{ share: 0, words: doneWords, wordsShare: 0 }];
  let taken = measureText(doneWords, textPixels) + 10;
  const first = Math.ceil((doneAt.minute + 1) / 360) * 360;
  for (let clock = first; clock - doneAt.minute < dayMinutes; clock += 360) {
    const share = shareOf(clock - doneAt.minute);
    const words = namedClockWords(clock);
    const half = measureText(words, textPixels) / 2;
    const free = share * plotPixels - half >= taken && share * plotPixels + half <= shareOf(dayMinutes) * plotPixels - 12;
    ticks.push({ share, words: free ? words : undefined, wordsShare: share });
    if (free) taken = share * plotPixels + half + 10;
  }
  return ticks;
}

function dayTicks(doneAt: DoneAt, days: number, shareOf: ShareOf): AftercareTick[] {
  const ticks: AftercareTick[] = [];
  let taken = shareOf(dayMinutes) * plotPixels + 10;
  for (let day = 2; day <= days; day += 1) {
    const share = shareOf(day * dayMinutes - doneAt.minute);
    const end = shareOf(Math.min((day + 1) * dayMinutes - doneAt.minute, days * dayMinutes));
    const wordsShare = (share + end) / 2;
    const words = weekdays[(doneAt.weekday + day) % 7];
    const half = measureText(words ?? "", textPixels) / 2;
    const free = wordsShare * plotPixels - half >= taken && half <= ((end - share) / 2) * plotPixels;
    ticks.push({ share, words: free ? words : undefined, wordsShare });
    if (free) taken = wordsShare * plotPixels + half + 8;
  }
  return ticks;
}
