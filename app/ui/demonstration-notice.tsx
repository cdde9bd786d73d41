import { type ReactNode } from "react";
import styles from "./demonstration-notice.module.css";

export interface DemonstrationNoticeProps {
  /** What is invented and since when, as a sentence, and the way to begin anew. */
  readonly children: ReactNode;
}

/** One line on every screen of the demonstration: nothing here is real. It can't be dismissed, and it prints. */
export function DemonstrationNotice({ children }: DemonstrationNoticeProps) {
  return (
    <aside className={styles.notice} aria-label="Demonstration">
      <strong className={styles.word}>Demonstration</strong>
      <span>{children}</span>
    </aside>
  );
}
