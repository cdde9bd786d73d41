import { GROWTH_SHARE, type MonthColumn } from "./nutrient-months-layout";
import { percent } from "./percent";
import styles from "./drawing.module.css";

interface Steps {
  readonly columns: readonly MonthColumn[];
}

interface UprightSteps extends Steps {
  /** Where the drawing's axis lies, and how high it is, in pixels. */
  readonly bottom: number;
  readonly chartPixels: number;
}

interface Step {
  readonly x1: string;
  readonly x2: string;
  readonly y1: number;
  readonly y2: number;
}

/** The figures of growth at the right end: they are of another kind than the amounts at the left. */
export function GrowthAxis({ bottom, chartPixels }: Pick<UprightSteps, "bottom" | "chartPixels">) {
  return (
    <svg width="44" height={bottom + 22} aria-hidden="true">
      {[0, 0.5, 1].map((share) => (
        <text key={share} x="44" y={bottom - share * GROWTH_SHARE * chartPixels + 4} textAnchor="end">
          {`${String(share * 100)} %`}
        </text>
      ))}
    </svg>
  );
}

/** The same figures across the top of months that lie below one another. */
export function GrowthAxisAcross() {
  return (
    <svg className={styles.fluid} width="100%" height="22" aria-hidden="true">
      {[0, 0.5, 1].map((share) => (
        <text key={share} x={percent(share * GROWTH_SHARE)} y="16" textAnchor={share === 0 ? "start" : "middle"}>
          {`${String(share * 100)} %`}
        </text>
      ))}
    </svg>
  );
}

/** The stepped line over upright months. A month without a figure has no line, and none leads to it. */
export function UprightGrowth({ columns, bottom, chartPixels }: UprightSteps) {
  const left = (index: number) => percent(index / 12);
  const heightOf = (column: MonthColumn | undefined) => (column?.growthShare === undefined ? undefined : bottom - column.growthShare * chartPixels);
  return (
    <GrowthLine
      steps={columns.flatMap((column, index): Step[] => {
        const [y, before] = [heightOf(column), heightOf(columns[index - 1])];
        if (y === undefined) return [];
        const rise = before === undefined ? [] : [{ x1: left(index), x2: left(index), y1: before, y2: y }];
        return [...rise, { x1: left(index), x2: left(index + 1), y1: y, y2: y }];
      })}
    />
  );
}

/** The same over months that lie below one another. */
export function LyingGrowth({ columns, rowPixels }: Steps & { readonly rowPixels: number }) {
  return (
    <GrowthLine
      steps={columns.flatMap((column, index): Step[] => {
        const before = columns[index - 1]?.growthShare;
        if (column.growthShare === undefined) return [];
        const [x, y] = [percent(column.growthShare), index * rowPixels + 1];
        const across = before === undefined ? [] : [{ x1: percent(before), x2: x, y1: y, y2: y }];
        return [...across, { x1: x, x2: x, y1: y, y2: y + rowPixels }];
      })}
    />
  );
}

/** Over a rim of sheet, so that the line is seen upon a solid mark too. */
function GrowthLine({ steps }: { readonly steps: readonly Step[] }) {
  return [styles.growthRim, styles.growth].map((look) => (
    <g key={look} data-line={look === styles.growth ? "growth" : undefined}>
      {steps.map((step) => (
        <line key={`${step.x1} ${String(step.y1)} ${step.x2} ${String(step.y2)}`} className={look} {...step} />
      ))}
    </g>
  ));
}
