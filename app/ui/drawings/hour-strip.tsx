import { Fragment, useId } from "react";
import { namedClockWords, clockWords } from "#domain/foundation/clock-words";
import { DrawingFigure, NoteDisc } from "#ui/drawings/drawing-figure";
import { type PatternIds, Patterns, fillBy, patternIds } from "#ui/drawings/patterns";
import {
  type DayFrame,
  type HourMark,
  type HourSpan,
  layOutHourStrip,
  layOutNarrowHourStrip,
  narrowPixels,
  narrowStrip,
} from "./hour-strip-layout";
import { percent } from "./percent";
import styles from "./drawing.module.css";

export type { HourSpan } from "./hour-strip-layout";

export interface HourStripProps {
  readonly title: string;
  /** "Spray before 1 pm: 6 hours are open." */
  readonly conclusion: string;
  /** In order of time, one after the other, without gap or overlap. */
  readonly spans: readonly HourSpan[];
  /** The minute of now, where the day is today and now is within it. */
  readonly nowMinute?: number;
  readonly startMinute?: number;
  readonly endMinute?: number;
}

const top = 22;
const height = 40;
const bottom = top + height;

/** The hours of one day in which one may spray, must not, or should take care, each with its reason. */
export function HourStrip(props: HourStripProps) {
  const { title, conclusion, spans, nowMinute, startMinute = 5 * 60, endMinute = 21 * 60 } = props;
  const id = useId();
  const frame = { startMinute, endMinute };
  const wide = layOutHourStrip(spans, frame, nowMinute);
  const narrow = layOutNarrowHourStrip(spans, frame);
  return (
    <DrawingFigure
      title={title}
      conclusion={conclusion}
      wide={<WideStrip ids={patternIds(`${id}w`)} layout={wide} frame={frame} />}
      narrow={<NarrowStrip ids={patternIds(`${id}n`)} layout={narrow} frame={frame} nowMinute={nowMinute} />}
      wideNotes={wide.notes}
      narrowNotes={narrow.notes}
      table={hourTable(spans)}
    />
  );
}

function hourTable(spans: readonly HourSpan[]) {
  const words = { open: "open", closed: "closed", "take-care": "take care" } as const;
  return {
    columns: [
      { id: "from", head: "From" },
      { id: "to", head: "To" },
      { id: "word", head: "Standing" },
      { id: "reason", head: "Reason" },
      { id: "figure", head: "Expected", align: "figure" },
      { id: "limit", head: "Limit", align: "figure" },
      { id: "source", head: "Source" },
    ] as const,
    rows: spans.map((span) => ({
      id: String(span.fromMinute),
      cells: {
        from: clockWords(span.fromMinute),
        to: clockWords(span.toMinute),
        word: words[span.word],
        reason: span.reason,
        figure: span.figure,
        limit: span.limit,
        source: span.source,
      },
    })),
  };
}

function hoursWithin(frame: DayFrame): number[] {
  const first = Math.ceil(frame.startMinute / 60);
  const last = Math.floor(frame.endMinute / 60);
  return Array.from({ length: last - first + 1 }, (_, index) => (first + index) * 60);
}

interface WideStripProps {
  readonly ids: PatternIds;
  readonly layout: ReturnType<typeof layOutHourStrip>;
  readonly frame: DayFrame;
}

function WideStrip({ ids, layout, frame }: WideStripProps) {
  const { marks, notes, now } = layout;
  const noteRow = notes.length === 0 ? 0 : 26;
  const nowBaseline = bottom + noteRow + 18;
  return (
    <svg className={styles.fluid} width="100%" height={bottom + noteRow + (now === undefined ? 2 : 24)} aria-hidden="true">
      <Patterns ids={ids} />
      <HourAxis frame={frame} />
      {marks.map((mark) => (
        <WideMark key={mark.span.fromMinute} mark={mark} ids={ids} />
      ))}
      {now !== undefined && (
        <>
          <line className={styles.nowLine} x1={percent(now.lineShare)} x2={percent(now.lineShare)} y1={top - 8} y2={bottom + noteRow + 4} />
          <text className={styles.now} x={percent(now.share)} y={nowBaseline} textAnchor={now.anchor}>
            {now.words}
          </text>
        </>
      )}
      {marks.map(
        (mark) =>
          mark.note !== undefined && (
            <NoteDisc key={mark.span.fromMinute} number={mark.note.number} x={percent(mark.note.share)} y={bottom + 14} />
          ),
      )}
    </svg>
  );
}

function HourAxis({ frame }: { readonly frame: DayFrame }) {
  return hoursWithin(frame).map((minute) => {
    const share = (minute - frame.startMinute) / (frame.endMinute - frame.startMinute);
    const named = (minute / 60) % 3 === 0;
    const anchor = share === 0 ? "start" : share === 1 ? "end" : "middle";
    return (
      <Fragment key={minute}>
        <line className={styles.tick} x1={percent(share)} x2={percent(share)} y1={named ? top - 7 : top - 4} y2={top} />
        {named && (
          <text x={percent(share)} y="11" textAnchor={anchor}>
            {namedClockWords(minute)}
          </text>
        )}
      </Fragment>
    );
  });
}

function WideMark({ mark, ids }: { readonly mark: HourMark; readonly ids: PatternIds }) {
  const { span, fromShare, toShare, label } = mark;
  const x = percent(fromShare);
  const end = percent(toShare);
  return (
    <g data-mark={span.word} data-minutes={span.toMinute - span.fromMinute}>
      {span.word === "open" ? (
        <>
          <line className={styles.rail} x1={x} x2={end} y1={top} y2={top} />
          <line className={styles.rail} x1={x} x2={end} y1={bottom} y2={bottom} />
        </>
      ) : (
        <>
          <rect x={x} y={top} width={percent(toShare - fromShare)} height={height} fill={fillBy(span.word === "closed" ? ids.hatch : ids.dots)} />
          <rect className={styles.frame} x={x} y={top} width={percent(toShare - fromShare)} height={height} />
        </>
      )}
      {label !== undefined && (
        <svg x={percent(label.share)} y={top} overflow="visible">
          {span.word !== "open" && (
            <rect className={styles.plate} x={label.insetPixels - 4} y="10" width={label.widthPixels + 8} height="20" />
          )}
          <text className={styles.strong} x={label.insetPixels} y="24.5">
            {label.words}
          </text>
        </svg>
      )}
    </g>
  );
}

interface NarrowStripProps {
  readonly ids: PatternIds;
  readonly layout: ReturnType<typeof layOutNarrowHourStrip>;
  readonly frame: DayFrame;
  readonly nowMinute: number | undefined;
}

function NarrowStrip({ ids, layout, frame, nowMinute }: NarrowStripProps) {
  const { axisPixels, stripPixels, widthPixels, linePixels } = narrowStrip;
  const right = axisPixels + stripPixels;
  const nowPixels = nowMinute === undefined ? undefined : narrowPixels(nowMinute, frame);
  return (
    <svg
      className={styles.fixed}
      width={widthPixels}
      height={layout.heightPixels}
      viewBox={`0 0 ${widthPixels} ${layout.heightPixels}`}
      aria-hidden="true"
    >
      <Patterns ids={ids} />
      {layout.marks.map((mark) => (
        <g key={mark.span.fromMinute} data-mark={mark.span.word} data-minutes={mark.span.toMinute - mark.span.fromMinute}>
          <NarrowBlock mark={mark} ids={ids} />
          {mark.lines.map((line, index) => (
            <text key={line} className={styles.strong} x={layout.wordsStartPixels} y={mark.fromPixels + 16 + index * linePixels}>
              {line}
            </text>
          ))}
          {mark.note !== undefined && (
            <NoteDisc number={mark.note.number} x={layout.notesStartPixels + 9} y={mark.note.middlePixels} />
          )}
        </g>
      ))}
      <NarrowAxis frame={frame} nowPixels={nowPixels} />
      {nowMinute !== undefined && nowPixels !== undefined && (
        <>
          <line className={styles.nowLine} x1={axisPixels - 4} x2={right + 6} y1={nowPixels} y2={nowPixels} />
          <text className={styles.now} x={axisPixels - 10} y={nowPixels + 5} textAnchor="end">
            {clockWords(nowMinute).replace(/ .*/, "")}
          </text>
        </>
      )}
    </svg>
  );
}

function NarrowBlock({ mark, ids }: { readonly mark: { readonly span: HourSpan; readonly fromPixels: number; readonly toPixels: number }; readonly ids: PatternIds }) {
  const { axisPixels, stripPixels } = narrowStrip;
  const box = { x: axisPixels, y: mark.fromPixels, width: stripPixels, height: mark.toPixels - mark.fromPixels };
  if (mark.span.word === "open") {
    return [axisPixels, axisPixels + stripPixels].map((x) => (
      <line key={x} className={styles.rail} x1={x} x2={x} y1={mark.fromPixels} y2={mark.toPixels} />
    ));
  }
  return (
    <>
      <rect {...box} fill={fillBy(mark.span.word === "closed" ? ids.hatch : ids.dots)} />
      <rect {...box} className={styles.frame} />
    </>
  );
}

function NarrowAxis({ frame, nowPixels }: { readonly frame: DayFrame; readonly nowPixels: number | undefined }) {
  return hoursWithin(frame).map((minute) => {
    const y = narrowPixels(minute, frame);
    const named = (minute / 60) % 3 === 0;
    // The time of now takes the place of an hour's name that it would cover.
    const covered = nowPixels !== undefined && Math.abs(nowPixels - y) < 18;
    return (
      <Fragment key={minute}>
        <line className={styles.tick} x1={narrowStrip.axisPixels - (named ? 7 : 4)} x2={narrowStrip.axisPixels} y1={y} y2={y} />
        {named && !covered && (
          <text x={narrowStrip.axisPixels - 10} y={y + 5} textAnchor="end">
            {minute % 1440 === 0 ? clockWords(minute) : namedClockWords(minute)}
          </text>
        )}
      </Fragment>
    );
  });
}
