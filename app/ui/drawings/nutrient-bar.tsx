import { useId } from "react";
import { DrawingFigure } from "#ui/drawings/drawing-figure";
import { NutrientKey } from "#ui/drawings/nutrient-key";
import { type TableColumn } from "#ui/table";
import { type PatternIds, Patterns, fillBy, patternIds } from "#ui/drawings/patterns";
import {
  type NutrientBarLayout,
  type NutrientLabel,
  type NutrientLimit,
  type NutrientMark,
  type NutrientRange,
  type NutrientYear,
  layOutNutrientBar,
  partTotal,
} from "./nutrient-bar-layout";
import styles from "./drawing.module.css";

export type { NutrientLimit, NutrientPart, NutrientRange } from "./nutrient-bar-layout";

export interface NutrientBarProps extends NutrientYear {
  /** "Nitrogen, lawn A, 2026". */
  readonly title: string;
  /** "1.6 of at most 4.0 lb N per 1,000 sq ft; 2.4 after this visit." */
  readonly conclusion: string;
  /** "lb N per 1,000 sq ft". */
  readonly unit: string;
}

const rowPixels = 18;
const barPixels = 24;

/** One nutrient on one lawn over a year: what is down, what this visit adds, what is planned, need and limit. */
export function NutrientBar(props: NutrientBarProps) {
  const { title, conclusion, unit } = props;
  const id = useId();
  const layout = layOutNutrientBar(props);
  const wideIds = patternIds(`${id}w`);
  const narrowIds = patternIds(`${id}n`);
  return (
    <DrawingFigure
      title={title}
      conclusion={conclusion}
      wide={<BarDrawing layout={layout} ids={wideIds} year={props} unit={unit} labeled />}
      narrow={
        <>
          <BarDrawing layout={layout} ids={narrowIds} year={props} unit={unit} labeled={false} />
          <NutrientKey marks={layout.marks} year={props} ids={narrowIds} />
        </>
      }
      table={nutrientTable(props, unit)}
    />
  );
}

function nutrientTable(year: NutrientYear, unit: string) {
  const { parts, limit, decimals, hasRelease = true } = year;
  const standing = { "put-down": "put down", "this-visit": "this visit", planned: "planned" } as const;
  const isStated = parts.every(({ notStated = 0 }) => notStated === 0);
  let running = 0;
  return {
    columns: [
      { id: "when", head: "When" },
      { id: "product", head: "Product" },
      { id: "standing", head: "Standing" },
      { id: "quick", head: hasRelease ? "Quick" : "Amount", align: "figure" },
      ...(hasRelease ? [{ id: "slow", head: "Slow", align: "figure" } as const] : []),
      ...(isStated ? [] : [{ id: "notStated", head: "Not stated", align: "figure" } as const]),
      { id: "running", head: `Running total, ${unit}`, align: "figure" },
      { id: "limit", head: "Limit", align: "figure" },
    ] satisfies [TableColumn, ...TableColumn[]],
    rows: parts.map((part) => {
      running += partTotal(part);
      return {
        id: part.id,
        cells: {
          when: part.when,
          product: part.product,
          standing: standing[part.standing],
          quick: part.quick.toFixed(decimals),
          slow: part.slow.toFixed(decimals),
          notStated: (part.notStated ?? 0).toFixed(decimals),
          running: running.toFixed(decimals),
          limit: limit?.amount.toFixed(decimals),
        },
      };
    }),
  };
}

interface BarDrawingProps {
  readonly layout: NutrientBarLayout;
  readonly ids: PatternIds;
  readonly year: NutrientYear;
  readonly unit: string;
  /** False in the narrow form, whose words stand in a list. */
  readonly labeled: boolean;
}

function BarDrawing({ layout, ids, year, unit, labeled }: BarDrawingProps) {
  const { range, limit } = year;
  const percent = (amount: number) => `${((amount / layout.axisEnd) * 100).toFixed(3)}%`;
  const top = labeled ? layout.labelRows * rowPixels + 8 : 14;
  const bottom = top + barPixels;
  const bracketRow = range === undefined ? 0 : labeled ? 34 : 16;
  const axisTop = bottom + bracketRow + 4;
  const lastLine = labeled ? 13 : 16;
  return (
    <svg className={styles.fluid} width="100%" height={axisTop + 2 * lastLine + 16} aria-hidden="true">
      <Patterns ids={ids} />
      <line className={styles.axis} x1="0" x2="100%" y1={bottom} y2={bottom} />
      {layout.marks.map((mark) => (
        <BarMark key={`${mark.partId} ${mark.kind}`} mark={mark} ids={ids} top={top} percent={percent} />
      ))}
      {limit !== undefined && <LimitLine limit={limit} total={layout.total} top={top} percent={percent} />}
      {labeled && layout.labels.map((label) => <BarLabel key={label.kind} label={label} top={top} />)}
      {range !== undefined && <RangeBracket range={range} layout={layout} labeled={labeled} y={bottom + 5} percent={percent} />}
      <BarAxis ticks={layout.ticks} top={axisTop} letterPixels={lastLine} percent={percent} />
      <text className={styles.second} x="100%" y={axisTop + 2 * lastLine + 12} textAnchor="end">
        {unit}
      </text>
    </svg>
  );
}

type Percent = (amount: number) => string;

interface BarMarkProps {
  readonly mark: NutrientMark;
  readonly ids: PatternIds;
  readonly top: number;
  readonly percent: Percent;
}

function BarMark({ mark, ids, top, percent }: BarMarkProps) {
  const box = { x: percent(mark.from), y: top, width: percent(mark.amount), height: barPixels };
  const data = { "data-mark": mark.kind, "data-part": mark.partId, "data-amount": mark.amount };
  switch (mark.kind) {
    case "quick":
      return <rect {...box} {...data} className={`${styles.solid} ${styles.parted}`} />;
    case "slow":
    case "not-stated":
      return (
        <g {...data}>
          <rect {...box} fill={fillBy(mark.kind === "slow" ? ids.stripes : ids.levels)} />
          <rect {...box} className={styles.frame} />
        </g>
      );
    case "this-visit":
      return <rect {...box} {...data} className={styles.visit} />;
    case "planned":
      return <rect {...box} {...data} className={styles.planned} />;
  }
}

function BarLabel({ label, top }: { readonly label: NutrientLabel; readonly top: number }) {
  if (label.row === undefined) return null;
  const look = label.kind === "limit" ? styles.law : label.kind === "this-visit" ? styles.now : undefined;
  return (
    <text className={look} x={`${label.hung.share * 100}%`} y={top - 8 - label.row * rowPixels} textAnchor={label.hung.anchor}>
      {label.words}
    </text>
  );
}

interface LimitLineProps {
  readonly limit: NutrientLimit;
  readonly total: number;
  readonly top: number;
  readonly percent: Percent;
}

function LimitLine({ limit, total, top, percent }: LimitLineProps) {
  return (
    <>
      <svg x={percent(limit.amount)} overflow="visible">
        <path className={styles.plateLine} d={`M0 ${top - 5}v${barPixels + 9}`} />
        <path className={styles.lawLine} d={`M-2.5 ${top - 5}v${barPixels + 9}M2.5 ${top - 5}v${barPixels + 9}`} />
      </svg>
      {total > limit.amount && (
        <svg x={percent(total)} y={top + barPixels / 2 - 9} overflow="visible">
          <svg x="6" width="18" height="18" viewBox="0 0 24 24">
            <path className={styles.holdMark} d="M7.4 1h9.2L23 7.4v9.2L16.6 23H7.4L1 16.6V7.4z" />
            <path className={styles.holdBar} d="M6 10.2h12v3.6H6z" />
          </svg>
        </svg>
      )}
    </>
  );
}

interface RangeBracketProps {
  readonly range: NutrientRange;
  readonly layout: NutrientBarLayout;
  readonly labeled: boolean;
  readonly y: number;
  readonly percent: Percent;
}

function RangeBracket({ range, layout, labeled, y, percent }: RangeBracketProps) {
  const ends = [percent(range.low), percent(range.high)] as const;
  const { rangeLabel } = layout;
  return (
    <>
      <line className={styles.bracket} x1={ends[0]} x2={ends[1]} y1={y + 6} y2={y + 6} />
      {ends.map((x) => (
        <line key={x} className={styles.bracket} x1={x} x2={x} y1={y} y2={y + 7} />
      ))}
      {labeled && rangeLabel !== undefined && (
        <text x={`${rangeLabel.hung.share * 100}%`} y={y + 22} textAnchor={rangeLabel.hung.anchor}>
          {rangeLabel.words}
        </text>
      )}
    </>
  );
}

interface BarAxisProps {
  readonly ticks: readonly number[];
  readonly top: number;
  readonly letterPixels: number;
  readonly percent: Percent;
}

function BarAxis({ ticks, top, letterPixels, percent }: BarAxisProps) {
  return (
    <>
      <line className={styles.axis} x1="0" x2="100%" y1={top} y2={top} />
      {ticks.map((tick) => (
        <svg key={tick} x={percent(tick)} y={top} overflow="visible">
          <path className={styles.tick} d="M0 0v5" />
          <text y={letterPixels + 5} textAnchor={tick === 0 ? "start" : "middle"}>
            {tick}
          </text>
        </svg>
      ))}
    </>
  );
}
