import styles from "./amount.module.css";

/** A figure as it is set: whole, and a fraction of the tool's marks such as 1/3. */
export interface FigureProps {
  readonly figure: string;
  /** "1/3", set small and slanted by the face itself; the rest of the figure stays as it is. */
  readonly fraction?: string | undefined;
}

/** A figure with its fraction, in the size of the text around it. */
export function Figure({ figure, fraction }: FigureProps) {
  return (
    <>
      {figure}
      {fraction !== undefined && <span className={styles.fraction}>{fraction}</span>}
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
