import { type ReactNode } from "react";
import styles from "./page-frame.module.css";

export interface PageFrameProps {
  /** The top bar. */
  readonly bar: ReactNode;
  /** A line across the page below the bar: the notice of the demonstration, a word about the network. */
  readonly notice?: ReactNode;
  readonly children: ReactNode;
}

/** The frame of every page in the office: a link past the bar, the bar, and the main part. */
export function PageFrame({ bar, notice, children }: PageFrameProps) {
  return (
    <>
      <a className={styles.skip} href="#main">
        Skip to the page
      </a>
      {bar}
      {notice}
      <main className={styles.main} id="main" tabIndex={-1}>
        {children}
      </main>
    </>
  );
}
