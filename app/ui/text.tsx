import { type ReactNode } from "react";
import styles from "./text.module.css";

/** The sizes of running text; amounts, codes and read-back sentences have components of their own. */
export type TextSize = "title" | "head" | "body" | "small" | "axis";

export interface TextProps {
  readonly size?: TextSize;
  /** Label: the weight of a field's name. Second: sources and hints; never an amount, an order or a finding. */
  readonly tone?: "plain" | "label" | "second";
  readonly as?: "p" | "span" | "div";
  readonly id?: string;
  readonly children: ReactNode;
}

/** Words in one size of the type scale. */
export function Text({ size = "body", tone = "plain", as: Element = "p", id, children }: TextProps) {
  return (
    <Element className={styles.text} data-size={size} data-tone={tone} id={id}>
      {children}
    </Element>
  );
}
