import { type ReactNode } from "react";
import styles from "./row.module.css";

export interface RowProps {
  /** 8, 12, 16 or 24 px between. */
  readonly gap?: "narrow" | "touch" | "plain" | "wide";
  /** Baseline suits words of two sizes, top suits boxes. */
  readonly align?: "baseline" | "center" | "top";
  /** Puts what remains of the line between the first and the last. */
  readonly spread?: boolean;
  /** On a phone each child takes the whole line, so that a button is as wide as the hand expects. */
  readonly fillOnPhone?: boolean;
  readonly children: ReactNode;
}

/** Side by side, breaking into lines where there is no room. */
export function Row({ gap = "touch", align = "center", spread = false, fillOnPhone = false, children }: RowProps) {
  return (
    <div
      className={styles.row}
      data-gap={gap}
      data-align={align}
      data-spread={spread || undefined}
      data-fill={fillOnPhone || undefined}
    >
      {children}
    </div>
  );
}
