import { useId } from "react";
import { DrawingFigure, NoteDisc } from "#ui/drawings/drawing-figure";
import { type PatternIds, Patterns, fillBy, patternIds } from "#ui/drawings/patterns";
import {
  type AftercareLayout,
  type AftercareMark,
  type AftercareRow,
  type DoneAt,
  aftercareLeast,
  layOutAftercare,
} from "./aftercare-layout";
import { percent } from "./percent";
import styles from "./drawing.module.css";

export type { AftercareRow, AftercareSpan, DoneAt } from "./aftercare-layout";

export interface AftercareTimelineProps {
  readonly title: string;
  readonly conclusion: string;
  /** What holds now, in one line: "Now: keep off the lawn." Leads the list of the narrow form. */
  readonly now?: string;
  readonly doneAt: DoneAt;
  readonly rows: readonly AftercareRow[];
}

const axisPixels = 26;
const rowPixels = 44;
const barPixels = 30;
const mustPixels = 10;

/** What to do and leave after a visit, and until when: hatched means may not, solid means must. */
export function AftercareTimeline({ title, conclusion, now, doneAt, rows }: AftercareTimelineProps) {
  const ids = patternIds(`${useId()}w`);
  const layout = layOutAftercare(rows, doneAt);
  return (
    <DrawingFigure
      title={title}
      conclusion={conclusion}
      wide={<WideTimeline layout={layout} ids={ids} />}
      narrow={<AftercareSteps {...(now === undefined ? {} : { now })} rows={rows} />}
      wideNotes={layout.notes}
      table={aftercareTable(rows)}
    />
  );
}

function aftercareTable(rows: readonly AftercareRow[]) {
  return {
    columns: [
      { id: "what", head: "What" },
      { id: "do", head: "To do or leave" },
      { id: "from", head: "From" },
      { id: "until", head: "Until" },
      { id: "why", head: "Why" },
      { id: "product", head: "Product" },
    ] as const,
    rows: rows.flatMap((row) =>
      row.spans.map((span) => ({
        id: span.id,
        cells: {
          what: row.name,
          do: span.words,
          from: span.fromWords,
          until: span.untilWords,
          why: span.why,
          product: span.product,
        },
      })),
    ),
  };
}

export interface AftercareStepsProps {
  readonly now?: string;
  readonly rows: readonly AftercareRow[];
}

/** The same as an ordered list by time: the narrow form, and the first thing on the customer's page. */
export function AftercareSteps({ now, rows }: AftercareStepsProps) {
  const steps = rows
    .flatMap((row) => row.spans.map((span) => ({ row, span })))
    .toSorted((one, other) => one.span.fromMinutes - other.span.fromMinutes);
  return (
    <>
      {now !== undefined && <p className={styles.nowSentence}>{now}</p>}
      <ol className={styles.steps}>
        {steps.map(({ row, span }) => (
          <li key={span.id}>
            <span className={styles.stepWords}>
              <strong>{`${row.name}: ${span.words}`}</strong>
              <span>{`From ${span.fromWords}${span.hasNoEnd === true ? "," : " until"} ${span.untilWords}. ${span.why}.`}</span>
            </span>
          </li>
        ))}
      </ol>
    </>
  );
}

interface WideTimelineProps {
  readonly layout: AftercareLayout;
  readonly ids: PatternIds;
}

function WideTimeline({ layout, ids }: WideTimelineProps) {
  const height = axisPixels + layout.rows.length * rowPixels + 2;
  return (
    <div className={styles.timeline}>
      <svg width={aftercareLeast.namesPixels} height={height} aria-hidden="true">
        {layout.rows.map(({ row, nameLines }, index) =>
          nameLines.map((line, at) => (
            <text key={`${row.id} ${line}`} className={styles.strong} x="0" y={nameBaseline(index, nameLines.length) + at * 16}>
              {line}
            </text>
          )),
        )}
      </svg>
      <svg className={styles.fluid} width="100%" height={height} aria-hidden="true">
        <Patterns ids={ids} />
        <TimelineAxis layout={layout} height={height} />
        {layout.rows.map(({ row, marks }, index) => (
          <g key={row.id}>
            <line className={styles.axis} x1="0" x2="100%" y1={rowBottom(index)} y2={rowBottom(index)} />
            {marks.map((mark) => (
              <TimelineMark key={mark.span.id} mark={mark} bottom={rowBottom(index)} ids={ids} />
            ))}
          </g>
        ))}
      </svg>
    </div>
  );
}

function rowBottom(index: number): number {
  return axisPixels + (index + 1) * rowPixels;
}

function nameBaseline(index: number, lineCount: number): number {
  return rowBottom(index) - barPixels / 2 + 5 - (lineCount - 1) * 8;
}

function TimelineAxis({ layout, height }: { readonly layout: AftercareLayout; readonly height: number }) {
  return (
    <>
      <line className={styles.axis} x1="0" x2="100%" y1={axisPixels} y2={axisPixels} />
      {layout.ticks.map((tick, index) => (
        <g key={tick.share}>
          <line className={styles.hair} x1={percent(tick.share)} x2={percent(tick.share)} y1={axisPixels} y2={height - 2} />
          <line className={styles.tick} x1={percent(tick.share)} x2={percent(tick.share)} y1={axisPixels - 5} y2={axisPixels} />
          {tick.words !== undefined && (
            <text x={percent(tick.wordsShare)} y="13" textAnchor={index === 0 ? "start" : "middle"}>
              {tick.words}
            </text>
          )}
        </g>
      ))}
      {layout.breakShare !== undefined && (
        <svg x={percent(layout.breakShare)} y={axisPixels} overflow="visible">
          <path className={styles.slash} d="M-6 7 0 -7H5L-1 7z" />
          <path className={styles.plateLine} d="M-5 7.8H-1.6M0.6 -7.8H4.4" />
        </svg>
      )}
    </>
  );
}

interface TimelineMarkProps {
  readonly mark: AftercareMark;
  readonly bottom: number;
  readonly ids: PatternIds;
}

function TimelineMark({ mark, bottom, ids }: TimelineMarkProps) {
  const { span, fromShare, toShare, wordsPlace, noteNumber } = mark;
  const box = { x: percent(fromShare), width: percent(toShare - fromShare) };
  const top = bottom - barPixels;
  return (
    <g data-mark={span.kind} data-minutes={span.toMinutes - span.fromMinutes}>
      {span.kind === "may-not" && (
        <>
          <rect {...box} y={top} height={barPixels} fill={fillBy(ids.hatch)} />
          <rect {...box} className={styles.frame} y={top} height={barPixels} />
        </>
      )}
      {span.kind === "water" && <rect {...box} className={styles.water} y={top} height={barPixels} />}
      {span.kind === "must" && (
        <rect {...box} className={styles.solid} y={bottom - barPixels / 2 - mustPixels / 2} height={mustPixels} />
      )}
      {span.estimate === true && <RaggedEnd share={toShare} top={top} />}
      {wordsPlace === "inside" && (
        <svg x={percent(fromShare)} y={top} overflow="visible">
          <rect className={styles.plate} x="6" y="5" width={mark.widthPixels + 8} height="20" />
          <text className={styles.strong} x="10" y="19.5">
            {span.words}
          </text>
        </svg>
      )}
      {wordsPlace === "after" && (
        <svg x={percent(toShare)} y={top} overflow="visible">
          <rect className={styles.plate} x="5" y="5" width={mark.widthPixels + 6} height="20" />
          <text x="8" y="19.5">
            {span.words}
          </text>
        </svg>
      )}
      {noteNumber !== undefined && (
        <NoteDisc number={noteNumber} x={percent((fromShare + toShare) / 2)} y={bottom - barPixels / 2} />
      )}
    </g>
  );
}

/** An end that nobody knows exactly: the mark is torn off. */
function RaggedEnd({ share, top }: { readonly share: number; readonly top: number }) {
  const teeth = "M-5 0L2 5L-5 10L2 15L-5 20L2 25L-5 30";
  return (
    <svg x={percent(share)} y={top} overflow="visible">
      <path className={styles.ragged} d={`${teeth}H4V0z`} />
      <path className={styles.raggedLine} d={teeth} />
    </svg>
  );
}
