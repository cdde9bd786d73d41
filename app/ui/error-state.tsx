import { type ReactNode } from "react";
import { Code } from "#ui/code";
import { FindingMark } from "#ui/finding-mark";
import styles from "./state.module.css";

export interface ErrorStateProps {
  /** What failed, as a sentence. */
  readonly failed: ReactNode;
  /** What is safe in spite of it, as a sentence. */
  readonly safe: ReactNode;
  /** What to press. */
  readonly actions?: ReactNode;
  /** The number under which the log has it. */
  readonly incident?: string;
}

/** Something failed: what, what is safe, what to press. */
export function ErrorState({ failed, safe, actions, incident }: ErrorStateProps) {
  return (
    <div className={styles.state} data-failed="true" role="alert">
      <div className={styles.failedHead}>
        <FindingMark level="hold" wordBeside />
        <div>
          <p>
            <strong>{failed}</strong>
          </p>
          <p>{safe}</p>
        </div>
      </div>
      {actions !== undefined && <div className={styles.actions}>{actions}</div>}
      {incident !== undefined && (
        <p className={styles.number}>
          If you report it, give this number: <Code>{incident}</Code>
        </p>
      )}
    </div>
  );
}
