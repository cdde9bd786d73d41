import { type ReactNode } from "react";
import styles from "./quote.module.css";

export interface QuoteProps {
  /** Whose words: "label, section 2", "the statute, subsection (b)". */
  readonly source: ReactNode;
  readonly children: ReactNode;
}

/** Someone else's words, exactly: the label's or the law's. The serif says that they are not ours. */
export function Quote({ source, children }: QuoteProps) {
  return (
    <figure className={styles.quote}>
      <blockquote>{children}</blockquote>
      <figcaption>{source}</figcaption>
    </figure>
  );
}

/** A few quoted words within a sentence of ours. */
export function QuotedWords({ children }: { readonly children: ReactNode }) {
  return <q className={styles.words}>{children}</q>;
}
