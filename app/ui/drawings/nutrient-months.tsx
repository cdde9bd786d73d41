import { Fragment, useId } from "react";
import { DrawingFigure } from "#ui/drawings/drawing-figure";
import { NutrientKey } from "#ui/drawings/nutrient-key";
import { type PatternIds, Patterns, fillBy, patternIds } from "#ui/drawings/patterns";
import { axisTicks, nutrientMarks, partTotal } from "./nutrient-bar-layout";
import { GrowthAxis, GrowthAxisAcross, LyingGrowth, UprightGrowth } from "./growth-line";
import { type MonthColumn, type MonthGrowth, type MonthPart, type MonthsLayout, layOutMonths, monthNames } from "./nutrient-months-layout";
import { percent } from "./percent";
import { type TableColumn, type TableRow } from "#ui/table";
import styles from "./drawing.module.css";

export type { MonthGrowth, MonthPart } from "./nutrient-months-layout";

export interface NutrientMonthsProps {
  readonly title: string;
  readonly conclusion: string;
  readonly unit: string;
  /** In order of time. */
  readonly parts: readonly MonthPart[];
  /** Twelve months, January first: how the grass could grow. Left out where no curve can be drawn. */
  readonly growth?: readonly MonthGrowth[];
  readonly decimals: number;
}

const chartPixels = 120;
const topPixels = 8;
const rowPixels = 30;
const namesPixels = 48;

/** What goes down in which month, with the fills of the bar, beside how the grass could grow (the stepped line). */
export function NutrientMonths(props: NutrientMonthsProps) {
  const { title, conclusion, parts, growth, decimals, unit } = props;
  const id = useId();
  const layout = layOutMonths(parts, growth);
  const wideIds = patternIds(`${id}w`);
  const narrowIds = patternIds(`${id}n`);
  const key = { marks: nutrientMarks(parts), year: { parts, decimals }, withGrowth: growth !== undefined };
  return (
    <DrawingFigure
      title={title}
      conclusion={conclusion}
      wide={
        <>
          <UnitLine unit={growth === undefined ? unit : `${unit}; at the right, growth potential`} />
          <UprightMonths layout={layout} ids={wideIds} withGrowth={growth !== undefined} />
          <NutrientKey {...key} ids={wideIds} />
        </>
      }
      narrow={
        <>
          <UnitLine unit={growth === undefined ? unit : `${unit}; above, growth potential`} />
          <LyingMonths layout={layout} ids={narrowIds} withGrowth={growth !== undefined} />
          <NutrientKey {...key} ids={narrowIds} />
        </>
      }
      table={monthsTable(props)}
    />
  );
}

function UnitLine({ unit }: { readonly unit: string }) {
  return (
    <p className={styles.unitLine} aria-hidden="true">
      {unit}
    </p>
  );
}

const GROWTH_COLUMNS = [
  { id: "mean", head: "Mean air temperature", align: "figure" },
  { id: "growth", head: "Growth potential", align: "figure" },
] as const;

function growthCells(growth: MonthGrowth | undefined) {
  if (growth === undefined) return {};
  return "none" in growth ? { mean: growth.none, growth: "no figure" } : { mean: growth.mean, growth: `${String(Math.round(growth.share * 100))} %` };
}

function monthsTable({ parts, growth, decimals, unit }: NutrientMonthsProps) {
  const isStated = parts.every(({ notStated = 0 }) => notStated === 0);
  let running = 0;
  const rows = monthNames.flatMap((month, index): TableRow[] => {
    const own = parts.filter((part) => part.month === index + 1);
    const grows = growthCells(growth?.[index]);
    if (own.length === 0) return [{ id: month, cells: { month, ...grows } }];
    return own.map((part) => {
      running += partTotal(part);
      const [quick, slow, notStated, total] = [part.quick, part.slow, part.notStated ?? 0, running].map((amount) => amount.toFixed(decimals));
      return { id: part.id, cells: { month, product: part.product, quick, slow, notStated, total, ...grows } };
    });
  });
  return {
    columns: [
      { id: "month", head: "Month" },
      { id: "product", head: "Product" },
      { id: "quick", head: "Quick", align: "figure" },
      { id: "slow", head: "Slow", align: "figure" },
      ...(isStated ? [] : [{ id: "notStated", head: "Not stated", align: "figure" } as const]),
      { id: "total", head: `Running total, ${unit}`, align: "figure" },
      ...(growth === undefined ? [] : GROWTH_COLUMNS),
    ] satisfies [TableColumn, ...TableColumn[]],
    rows,
  };
}

interface MonthsDrawingProps {
  readonly layout: MonthsLayout;
  readonly ids: PatternIds;
  readonly withGrowth: boolean;
}

function UprightMonths({ layout, ids, withGrowth }: MonthsDrawingProps) {
  const bottom = topPixels + chartPixels;
  const left = (index: number) => index / 12;
  return (
    <div className={styles.months} data-growth={withGrowth || undefined}>
      <svg width="36" height={bottom + 22} aria-hidden="true">
        {axisTicks(layout.axisEnd).map((tick) => (
          <text key={tick} x="28" y={bottom - (tick / layout.axisEnd) * chartPixels + 4} textAnchor="end">
            {tick}
          </text>
        ))}
      </svg>
      <svg className={styles.fluid} width="100%" height={bottom + 22} aria-hidden="true">
        <Patterns ids={ids} />
        {axisTicks(layout.axisEnd).map((tick) => {
          const y = bottom - (tick / layout.axisEnd) * chartPixels;
          return <line key={tick} className={tick === 0 ? styles.axis : styles.hair} x1="0" x2="100%" y1={y} y2={y} />;
        })}
        {layout.columns.map((column, index) => (
          <Fragment key={column.name}>
            {column.marks.map((mark) => (
              <MonthMark
                key={`${mark.partId} ${mark.kind}`}
                mark={mark}
                ids={ids}
                box={{
                  x: percent(left(index) + 0.016),
                  width: percent(1 / 12 - 0.032),
                  y: bottom - (mark.fromShare + mark.share) * chartPixels,
                  height: mark.share * chartPixels,
                }}
              />
            ))}
            <text x={percent(left(index) + 1 / 24)} y={bottom + 18} textAnchor="middle">
              {column.name}
            </text>
          </Fragment>
        ))}
        {withGrowth && <UprightGrowth columns={layout.columns} bottom={bottom} chartPixels={chartPixels} />}
      </svg>
      {withGrowth && <GrowthAxis bottom={bottom} chartPixels={chartPixels} />}
    </div>
  );
}

function LyingMonths({ layout, ids, withGrowth }: MonthsDrawingProps) {
  const height = 12 * rowPixels + 2;
  return (
    <div className={styles.lyingMonths}>
      {withGrowth && (
        <>
          <span />
          <GrowthAxisAcross />
        </>
      )}
      <svg width={namesPixels} height={height} aria-hidden="true">
        {layout.columns.map((column, index) => (
          <text key={column.name} x="0" y={index * rowPixels + 20}>
            {column.name}
          </text>
        ))}
      </svg>
      <svg className={styles.fluid} width="100%" height={height} aria-hidden="true">
        <Patterns ids={ids} />
        <line className={styles.axis} x1="0" x2="0" y1="0" y2={height} />
        {layout.columns.map((column, index) => (
          <LyingMonth key={column.name} column={column} y={index * rowPixels + 1} ids={ids} />
        ))}
        {withGrowth && <LyingGrowth columns={layout.columns} rowPixels={rowPixels} />}
      </svg>
    </div>
  );
}

interface LyingMonthProps {
  readonly column: MonthColumn;
  readonly y: number;
  readonly ids: PatternIds;
}

function LyingMonth({ column, y, ids }: LyingMonthProps) {
  return column.marks.map((mark) => (
    <MonthMark
      key={`${mark.partId} ${mark.kind}`}
      mark={mark}
      ids={ids}
      box={{ x: percent(mark.fromShare), width: percent(mark.share), y: y + 5, height: rowPixels - 10 }}
    />
  ));
}

interface MonthMarkProps {
  readonly mark: MonthColumn["marks"][number];
  readonly box: { readonly x: string; readonly y: number; readonly width: string; readonly height: number };
  readonly ids: PatternIds;
}

function MonthMark({ mark, box, ids }: MonthMarkProps) {
  const data = { "data-mark": mark.kind, "data-part": mark.partId, "data-amount": mark.amount };
  switch (mark.kind) {
    case "quick":
      return <rect {...box} {...data} className={styles.solid} />;
    case "slow":
    case "not-stated":
      return (
        <g {...data}>
          <rect {...box} className={styles.plate} />
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
