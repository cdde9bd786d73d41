import { type ReactNode } from "react";
import styles from "./visit-mark.module.css";

/** Where a visit stands. */
export type VisitState =
  | "waiting"
  | "open"
  | "on-a-day"
  | "promised"
  | "done"
  | "part-done"
  | "not-done"
  | "past-its-window";

/** The words for where a visit stands. */
export const visitWords: Readonly<Record<VisitState, string>> = {
  waiting: "waiting",
  open: "open",
  "on-a-day": "on a day",
  promised: "promised",
  done: "done",
  "part-done": "part done",
  "not-done": "not done",
  "past-its-window": "past its window",
};

const shapes: Readonly<Record<VisitState, ReactNode>> = {
  waiting: <circle className={styles.dots} cx="12" cy="12" r="9" />,
  open: <circle className={styles.line} cx="12" cy="12" r="9" />,
  "on-a-day": <path className={styles.fill} d="M2 16.5a10 10 0 0 1 20 0z" />,
  promised: (
    <>
      <path className={styles.fill} d="M2 14a10 10 0 0 1 20 0z" />
      <path className={styles.fill} d="M2 17.5h20v3.5H2z" />
    </>
  ),
  done: <circle className={styles.done} cx="12" cy="12" r="10" />,
  "part-done": (
    <>
      <circle className={styles.doneLine} cx="12" cy="12" r="9" />
      <path className={styles.done} d="M12 12V2a10 10 0 1 1-10 10z" />
    </>
  ),
  "not-done": (
    <>
      <circle className={styles.line} cx="12" cy="12" r="9" />
      <path className={styles.fill} d="M6.5 10.5h11v3h-11z" />
    </>
  ),
  "past-its-window": <path className={styles.square} d="M3.5 3.5h17v17h-17z" />,
};

export interface VisitMarkProps {
  readonly state: VisitState;
  readonly size?: 16 | 24;
  /** The word stands beside the mark in every list; where the row says it already, it is only spoken. */
  readonly word?: "beside" | "spoken";
}

/** Where a visit stands, as a shape and a word. */
export function VisitMark({ state, size = 16, word = "beside" }: VisitMarkProps) {
  const name = word === "beside" ? { "aria-hidden": true } : { role: "img", "aria-label": visitWords[state] };
  const mark = (
    <svg className={styles.mark} width={size} height={size} viewBox="0 0 24 24" data-state={state} {...name}>
      {shapes[state]}
    </svg>
  );
  if (word === "spoken") return mark;
  return (
    <span className={styles.pair}>
      {mark}
      {visitWords[state]}
    </span>
  );
}
