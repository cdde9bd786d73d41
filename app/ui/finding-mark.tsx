import { type ReactNode } from "react";
import styles from "./finding-mark.module.css";

/** How much a finding weighs, and the hold that a license holder has answered. */
export type FindingLevel = "hold" | "take-care" | "note" | "answered";

/** The words that stand before a finding, and for its mark where it stands alone. */
export const findingWords: Readonly<Record<FindingLevel, string>> = {
  hold: "Hold",
  "take-care": "Take care",
  note: "Note",
  answered: "Hold, answered",
};

const octagon = "M7.4 1h9.2L23 7.4v9.2L16.6 23H7.4L1 16.6V7.4z";

const shapes: Readonly<Record<FindingLevel, ReactNode>> = {
  hold: (
    <>
      <path className={styles.holdFill} d={octagon} />
      <path className={styles.onFill} d="M6 10.2h12v3.6H6z" />
    </>
  ),
  "take-care": (
    <>
      <path className={styles.careFill} d="M12 2.6 22.6 21.4H1.4z" />
      <path className={styles.careStroke} d="M12 8.8v6" />
      <path className={styles.careDot} d="M10.7 16.8h2.6v2.6h-2.6z" />
    </>
  ),
  note: (
    <>
      <path className={styles.line} d="M4.5 2.5h10l5 5v14h-15z" />
      <path className={styles.line} d="M14.5 2.5v5h5" />
      <path className={styles.line} d="M8 12.5h8M8 17h5" />
    </>
  ),
  answered: (
    <>
      <path className={styles.holdLine} d="M7.9 2.2h8.2l5.7 5.7v8.2l-5.7 5.7H7.9l-5.7-5.7V7.9z" />
      <path
        className={styles.signature}
        d="M5.8 15.2c1.6-.6 3.6-6.7 4.8-6.2 1.3.6-1.4 5.6-.3 6 1.2.4 2-3.6 3.1-3.3.9.3-.3 2.6.7 2.9.9.3 1.6-1.3 4.2-1.5"
      />
    </>
  ),
};

export interface FindingMarkProps {
  readonly level: FindingLevel;
  /** 16 in tables, 24 elsewhere. */
  readonly size?: 16 | 24;
  /** True where the word stands beside the mark anyway. */
  readonly wordBeside?: boolean;
}

/** The mark of a finding: an octagon, a triangle, a folded sheet, a signed octagon. Shape and word, never color alone. */
export function FindingMark({ level, size = 24, wordBeside = false }: FindingMarkProps) {
  const name = wordBeside ? { "aria-hidden": true } : { role: "img", "aria-label": findingWords[level] };
  return (
    <svg className={styles.mark} width={size} height={size} viewBox="0 0 24 24" data-level={level} {...name}>
      {shapes[level]}
    </svg>
  );
}
