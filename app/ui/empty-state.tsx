import { type ReactNode } from "react";
import styles from "./state.module.css";

export interface EmptyStateProps {
  /** What is not there yet, as a sentence. */
  readonly sentence: ReactNode;
  /** What can be done about it: one button, or several of equal weight. */
  readonly actions?: ReactNode;
}

/** A place with nothing in it: says so, and what to do next. */
export function EmptyState({ sentence, actions }: EmptyStateProps) {
  return (
    <div className={styles.state}>
      <p>{sentence}</p>
      {actions !== undefined && <div className={styles.actions}>{actions}</div>}
    </div>
  );
}
