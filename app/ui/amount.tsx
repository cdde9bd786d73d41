import styles from "./amount.module.css";

/** A fraction other than ½, ¼ and ¾, which the face has as letters of their own. In running text write 5/8. */
export interface Fraction {
  readonly over: number;
  readonly under: number;
}

export interface AmountProps {
  /** The figure as written; its whole part, where a fraction follows. */
  readonly figure: string;
  readonly fraction?: Fraction;
  /** The whole unit: "fl oz", "oz wt", "lb". */
  readonly unit: string;
  /** With what to measure it: "½-oz cup, 9 marks". */
  readonly tool?: string;
  /** What goes down or in. */
  readonly of?: string;
}

/** What to measure out, at the size of amounts: figure, unit, tool. The unit never parts from its figure. */
export function Amount({ figure, fraction, unit, tool, of: product }: AmountProps) {
  return (
    <div className={styles.amount}>
      <p className={styles.figure}>
        {figure}
        {fraction !== undefined && <FractionFigure {...fraction} />}
        {"\u00a0"}
        <span className={styles.unit}>{unit.replaceAll(" ", "\u00a0")}</span>
      </p>
      {product !== undefined && <p className={styles.product}>{product}</p>}
      {tool !== undefined && <p>{tool}</p>}
    </div>
  );
}

/**
 * A fraction at the size of amounts, raised and lowered around the fraction slash. It is set here because the latin
 * files of the face name the feature "frac" but hold no glyphs for it.
 */
function FractionFigure({ over, under }: Fraction) {
  return (
    <span className={styles.fraction}>
      <span className={styles.over}>{over}</span>
      {"\u2044"}
      <span className={styles.under}>{under}</span>
    </span>
  );
}
