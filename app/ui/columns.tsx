import { type ReactNode } from "react";
import styles from "./columns.module.css";

export interface ColumnsProps {
  /**
   * `even`: as many columns of at least 300 px as fit. `two`: two of a width. `plan`: 5 to 7, and the left one stays
   * in view while the right one scrolls.
   */
  readonly split?: "even" | "two" | "plan";
  readonly children: ReactNode;
}

/** Columns that become one below the other where they would be too narrow to read. */
export function Columns({ split = "even", children }: ColumnsProps) {
  return (
    <div className={styles.columns} data-split={split}>
      {children}
    </div>
  );
}
