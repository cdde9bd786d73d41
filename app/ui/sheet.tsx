import { type ReactNode } from "react";
import styles from "./sheet.module.css";

export interface SheetProps {
  readonly as?: "div" | "section" | "article" | "form";
  /** Without padding: for a table or rows that run from edge to edge. */
  readonly flush?: boolean;
  /** The id of the heading that names a section or an article. */
  readonly labelledBy?: string;
  readonly children: ReactNode;
}

/** A white sheet with one thin edge, on the pale ground. No shadow, no round corner. */
export function Sheet({ as: Element = "div", flush = false, labelledBy, children }: SheetProps) {
  return (
    <Element className={styles.sheet} data-flush={flush || undefined} aria-labelledby={labelledBy}>
      {children}
    </Element>
  );
}
