import { type ReactNode } from "react";
import styles from "./code.module.css";

export interface CodeProps {
  /** Large for a code that is read at arm's length and typed elsewhere: a gate code. */
  readonly large?: boolean;
  readonly children: ReactNode;
}

/** A gate code, registration number, lot or hash: letter by letter, each of one width. */
export function Code({ large = false, children }: CodeProps) {
  return (
    <code className={styles.code} data-large={large || undefined}>
      {children}
    </code>
  );
}
