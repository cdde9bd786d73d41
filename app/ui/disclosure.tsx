import { type ReactNode } from "react";
import styles from "./disclosure.module.css";

export interface DisclosureProps {
  /** What opens, as words to press. */
  readonly name: ReactNode;
  readonly open?: boolean;
  /** On paper everything is open, unless it is left as the reader left it; what is closed is then not printed at all. */
  readonly onPaper?: "open" | "as-left";
  readonly children: ReactNode;
}

/** Words that open what lies behind them. Works without scripts. */
export function Disclosure({ name, open = false, onPaper = "open", children }: DisclosureProps) {
  return (
    <details className={styles.details} open={open} data-on-paper={onPaper}>
      <summary className={styles.summary}>
        <svg className={styles.arrow} width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
          <path d="M3 1.5 9 6 3 10.5z" />
        </svg>
        <span>{name}</span>
      </summary>
      <div className={styles.body}>{children}</div>
    </details>
  );
}
