import { clockWords, durationWords } from "#domain/foundation/clock-words";
import { type DrawingNote } from "./drawing-figure";
import { measureText, wrapText } from "./measure-text";
import { type HungLabel, hangLabel, spreadApart } from "./place-in-line";

/** A stretch of the day: may one spray, and why or why not. Minutes count from midnight. */
export interface HourSpan {
  readonly fromMinute: number;
  readonly toMinute: number;
  readonly word: "open" | "closed" | "take-care";
  /** Why: "80 °F and over". An open stretch may have none. */
  readonly reason?: string;
  /** What is expected, and the limit that it is held against, each with its unit. */
  readonly figure?: string;
  readonly limit?: string;
  /** Whose rule: label, law, weather, house. */
  readonly source?: string;
}

/** The part of the day that is drawn. */
export interface DayFrame {
  readonly startMinute: number;
  readonly endMinute: number;
}

/** The words that stand for a stretch. */
export function spanWords(span: HourSpan): string {
  if (span.word === "open") return `open, ${durationWords(span.toMinute - span.fromMinute)}`;
  const level = span.word === "closed" ? "closed" : "take care";
  return span.reason === undefined ? level : `${level}: ${span.reason}`;
}

/** The words within a stretch, the longest that fits first: hatch, dots and rails say by themselves what they are. */
function wordsWithin(span: HourSpan): readonly string[] {
  const whole = spanWords(span);
  if (span.word === "open") return [whole, durationWords(span.toMinute - span.fromMinute)];
  return span.reason === undefined ? [whole] : [whole, span.reason];
}

/** The least width at which the wide form is shown, in pixels; at any larger width there is only more room. */
export const wideLeastPixels = 640;

const wideTextPixels = 13;
const insetPixels = 8;
const discPixels = 20;

/** A stretch as drawn: its ends as shares of the strip, and its label inside or its note's number below. */
export interface HourMark {
  readonly span: HourSpan;
  readonly fromShare: number;
  readonly toShare: number;
  /** The label begins this far right of `share`. */
  readonly label?: { readonly share: number; readonly insetPixels: number; readonly words: string; readonly widthPixels: number };
  readonly note?: { readonly number: number; readonly share: number };
}

/** The wide form of the strip, laid out for its least width. */
export interface HourStripLayout {
  readonly marks: readonly HourMark[];
  readonly notes: readonly DrawingNote[];
  readonly now?: HungLabel & { readonly lineShare: number; readonly words: string };
}

function shareOf(minute: number, frame: DayFrame): number {
  return (minute - frame.startMinute) / (frame.endMinute - frame.startMinute);
}

/** Lays the strip out: a label inside its stretch where it fits beside the line of now, else a number and a note. */
export function layOutHourStrip(spans: readonly HourSpan[], frame: DayFrame, nowMinute?: number): HourStripLayout {
  const nowShare = nowMinute === undefined ? undefined : shareOf(nowMinute, frame);
  const fitted = spans.map((span) => fitLabel(span, frame, nowShare));
  const noteless = fitted.filter((mark) => mark.label === undefined);
  const middles = spreadApart(
    noteless.map((mark) => ((mark.fromShare + mark.toShare) / 2) * wideLeastPixels),
    discPixels,
    wideLeastPixels,
  );
  const marks = fitted.map((mark) => {
    const index = noteless.indexOf(mark);
    if (index === -1) return mark;
    return { ...mark, note: { number: index + 1, share: (middles[index] ?? 0) / wideLeastPixels } };
  });
  return {
    marks,
    notes: noteless.map((mark, index) => noteOf(mark.span, index + 1)),
    ...(nowMinute === undefined || nowShare === undefined ? {} : { now: hangNow(nowMinute, nowShare) }),
  };
}

function noteOf(span: HourSpan, number: number): DrawingNote {
  return { number, words: `${clockWords(span.fromMinute)} to ${clockWords(span.toMinute)}, ${spanWords(span)}` };
}

function hangNow(nowMinute: number, share: number) {
  const words = `now ${clockWords(nowMinute)}`;
  const widthPixels = measureText(words, wideTextPixels, 600);
  return { lineShare: share, words, ...hangLabel({ widthPixels, middlePixels: share * wideLeastPixels }, wideLeastPixels) };
}

function fitLabel(span: HourSpan, frame: DayFrame, nowShare: number | undefined): HourMark {
  const fromShare = shareOf(span.fromMinute, frame);
  const toShare = shareOf(span.toMinute, frame);
  const nowWithin = nowShare !== undefined && nowShare > fromShare && nowShare < toShare ? nowShare : undefined;
  // The line of now parts its stretch in two; the words stand in one of them, whole.
  const rooms = nowWithin === undefined ? [[fromShare, toShare] as const] : [[fromShare, nowWithin] as const, [nowWithin, toShare] as const];
  for (const words of wordsWithin(span)) {
    const widthPixels = measureText(words, wideTextPixels, 600);
    for (const [share, end] of rooms) {
      if (widthPixels + 2 * insetPixels <= (end - share) * wideLeastPixels) {
        return { span, fromShare, toShare, label: { share, insetPixels, words, widthPixels } };
      }
    }
  }
  return { span, fromShare, toShare };
}

/** The sizes of the narrow form, in pixels. */
export const narrowStrip = {
  widthPixels: 288,
  hourPixels: 24,
  axisPixels: 56,
  stripPixels: 40,
  textPixels: 16,
  linePixels: 20,
  topPixels: 12,
} as const;

const narrowNotesStart = narrowStrip.axisPixels + narrowStrip.stripPixels + 14;
const narrowNotesPixels = 24;

/** A stretch in the narrow form: from and to downward, its words beside it in lines, or its note's number. */
export interface NarrowHourMark {
  readonly span: HourSpan;
  readonly fromPixels: number;
  readonly toPixels: number;
  readonly lines: readonly string[];
  readonly note?: { readonly number: number; readonly middlePixels: number };
}

/** The narrow form of the strip: the hours run down, the words stand beside them. */
export interface NarrowHourStripLayout {
  readonly marks: readonly NarrowHourMark[];
  readonly notes: readonly DrawingNote[];
  readonly heightPixels: number;
  /** Where the discs of the notes stand, and right of them the words. */
  readonly notesStartPixels: number;
  readonly wordsStartPixels: number;
}

/** The place of a minute in the narrow form, in pixels from its top. */
export function narrowPixels(minute: number, frame: DayFrame): number {
  return narrowStrip.topPixels + ((minute - frame.startMinute) / 60) * narrowStrip.hourPixels;
}

/** Lays the narrow form out: words that need more lines than their stretch is high become a numbered note. */
export function layOutNarrowHourStrip(spans: readonly HourSpan[], frame: DayFrame): NarrowHourStripLayout {
  const { topPixels } = narrowStrip;
  const withoutNotes = fitNarrow(spans, frame, narrowNotesStart);
  const anyNote = withoutNotes.some((mark) => mark.lines.length === 0);
  const wordsStartPixels = narrowNotesStart + (anyNote ? narrowNotesPixels : 0);
  const fitted = anyNote ? fitNarrow(spans, frame, wordsStartPixels) : withoutNotes;
  const noteless = fitted.filter((mark) => mark.lines.length === 0);
  const bottom = narrowPixels(frame.endMinute, frame);
  const middles = spreadApart(
    noteless.map((mark) => (mark.fromPixels + mark.toPixels) / 2),
    discPixels,
    bottom + topPixels,
  );
  const marks = fitted.map((mark) => {
    const index = noteless.indexOf(mark);
    return index === -1 ? mark : { ...mark, note: { number: index + 1, middlePixels: middles[index] ?? 0 } };
  });
  return {
    marks,
    notes: noteless.map((mark, index) => noteOf(mark.span, index + 1)),
    heightPixels: bottom + topPixels,
    notesStartPixels: narrowNotesStart,
    wordsStartPixels,
  };
}

function fitNarrow(spans: readonly HourSpan[], frame: DayFrame, wordsStartPixels: number): readonly NarrowHourMark[] {
  const { widthPixels, textPixels, linePixels } = narrowStrip;
  return spans.map((span) => {
    const fromPixels = narrowPixels(span.fromMinute, frame);
    const toPixels = narrowPixels(span.toMinute, frame);
    const lines = wrapText(spanWords(span), widthPixels - wordsStartPixels, textPixels, 600);
    return { span, fromPixels, toPixels, lines: lines.length * linePixels <= toPixels - fromPixels ? lines : [] };
  });
}
