import styles from "./amount.module.css";

/** A figure as it is set: the whole part as written, and a fraction of the tool's marks such as a third. */
export interface FigureProps {
  readonly figure: string;
  readonly fraction?: Fraction | undefined;
}

/** A fraction other than ½, ¼ and ¾, which the face has as letters of their own. */
export interface Fraction {
  readonly over: number;
  readonly under: number;
}

/**
 * A figure with its fraction, in the size of the text around it. The fraction is set here, raised and lowered around
 * the fraction slash: the latin files of the face name the feature "frac" but hold no glyphs for it.
 */
export function Figure({ figure, fraction }: FigureProps) {
  return (
    <>
      {figure}
      {fraction !== undefined && (
        <span className={styles.fraction}>
          <span className={styles.over}>{fraction.over}</span>
          {"\u2044"}
          <span className={styles.under}>{fraction.under}</span>
        </span>
      )}
    </>
  );
}

export interface AmountProps extends FigureProps {
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
        <Figure figure={figure} fraction={fraction} />
        {"\u00a0"}
        <span className={styles.unit}>{unit.replaceAll(" ", "\u00a0")}</span>
      </p>
      {product !== undefined && <p className={styles.product}>{product}</p>}
      {tool !== undefined && <p>{tool}</p>}
    </div>
  );
}
