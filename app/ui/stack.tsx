import { type ReactNode } from "react";
import styles from "./stack.module.css";

/** A step of space: 1 to 8 are 4, 8, 12, 16, 24, 32, 48 and 64 px; 0 is none. */
export type SpaceStep = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

export interface StackProps {
  readonly gap?: SpaceStep;
  readonly as?: "div" | "ul" | "ol";
  readonly children: ReactNode;
}

/** One below the other, with one step of space between. As a list its children are `li` elements. */
export function Stack({ gap = 4, as: Element = "div", children }: StackProps) {
  return (
    <Element className={styles.stack} data-gap={gap}>
      {children}
    </Element>
  );
}
