import { type ReactNode } from "react";
import styles from "./page-head.module.css";

export interface PageHeadProps {
  /** The date, the address, the step: what the page is of. */
  readonly title: ReactNode;
  /** One sentence that says how things stand; the part that matters in bold. */
  readonly sentence?: ReactNode;
  /** One link above the title, to where this page belongs. */
  readonly above?: ReactNode;
  /** Buttons at the right end; at most one of them filled. */
  readonly actions?: ReactNode;
}

/** The head of a page: its title, how things stand in one sentence, and what can be done. */
export function PageHead({ title, sentence, above, actions }: PageHeadProps) {
  return (
    <div className={styles.head}>
      <div className={styles.words}>
        {above !== undefined && <p className={styles.above}>{above}</p>}
        <h1>{title}</h1>
        {sentence !== undefined && <p>{sentence}</p>}
      </div>
      {actions !== undefined && <div className={styles.actions}>{actions}</div>}
    </div>
  );
}
