import { type ReactNode } from "react";
import { type FindingLevel, FindingMark } from "#ui/finding-mark";
import styles from "./marked-words.module.css";

export interface MarkedWordsProps {
  readonly level: FindingLevel;
  readonly children: ReactNode;
}

/** A few words with the mark of a finding before them, for a cell of a table. The mark never parts from its first word. */
export function MarkedWords({ level, children }: MarkedWordsProps) {
  return (
    <span className={styles.marked}>
      <span className={styles.mark}>
        <FindingMark level={level} size={16} />
      </span>
      <strong>{children}</strong>
    </span>
  );
}
