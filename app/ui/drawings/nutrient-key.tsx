import { type PatternIds, fillBy } from "#ui/drawings/patterns";
import { type NutrientMark, type NutrientYear, kindTotal, nutrientKinds, nutrientWords } from "./nutrient-bar-layout";
import styles from "./drawing.module.css";

export interface NutrientKeyProps {
  readonly marks: readonly NutrientMark[];
  readonly year: NutrientYear;
  /** The fills of the drawing that the key stands below. */
  readonly ids: PatternIds;
  /** True where the drawing has the stepped line of growth. */
  readonly withGrowth?: boolean;
}

/** The words and figures of a nutrient drawing, each beside a piece of its fill. */
export function NutrientKey({ marks, year, ids, withGrowth = false }: NutrientKeyProps) {
  const { range, limit, decimals, hasRelease = true } = year;
  const kinds = nutrientKinds.filter((kind) => marks.some((mark) => mark.kind === kind));
  return (
    <ul className={styles.key} aria-hidden="true">
      {kinds.map((kind) => (
        <li key={kind}>
          <Swatch kind={kind} ids={ids} />
          <span>{keyWords(kind, hasRelease)}</span>
          <span className={styles.keyFigure}>{kindTotal(marks, kind).toFixed(decimals)}</span>
        </li>
      ))}
      {withGrowth && (
        <li>
          <svg width="40" height="20">
            <path className={styles.growthStep} d="M2 16h12V6h12v6h12" />
          </svg>
          <span>growth potential, no line where too few days are on file</span>
        </li>
      )}
      {range !== undefined && (
        <li>
          <svg width="40" height="20">
            <path className={styles.bracket} d="M2 4v8h36V4" />
          </svg>
          <span>{range.name}</span>
          <span className={styles.keyFigure}>{`${range.low.toFixed(decimals)} to ${range.high.toFixed(decimals)}`}</span>
        </li>
      )}
      {limit !== undefined && (
        <li>
          <svg width="40" height="20">
            <path className={styles.lawLine} d="M17 0v20M22 0v20" />
          </svg>
          <span>{`${limit.source}, at most`}</span>
          <span className={styles.keyFigure}>{limit.amount.toFixed(decimals)}</span>
        </li>
      )}
    </ul>
  );
}

function keyWords(kind: NutrientMark["kind"], hasRelease: boolean): string {
  if (kind === "this-visit" || kind === "planned") return nutrientWords[kind];
  return hasRelease ? `put down, ${nutrientWords[kind]}` : "put down";
}

function Swatch({ kind, ids }: { readonly kind: NutrientMark["kind"]; readonly ids: PatternIds }) {
  const box = { x: 2, y: 2, width: 36, height: 16 };
  return (
    <svg width="40" height="20">
      {kind === "quick" && <rect {...box} className={styles.solid} />}
      {kind === "slow" && <rect {...box} fill={fillBy(ids.stripes)} />}
      {kind === "not-stated" && <rect {...box} fill={fillBy(ids.levels)} />}
      {(kind === "slow" || kind === "not-stated") && <rect {...box} className={styles.frame} />}
      {kind === "this-visit" && <rect {...box} className={styles.visit} />}
      {kind === "planned" && <rect {...box} className={styles.planned} />}
    </svg>
  );
}
