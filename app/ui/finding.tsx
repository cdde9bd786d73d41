import { type ReactNode } from "react";
import { type FindingLevel, FindingMark, findingWords } from "#ui/finding-mark";
import styles from "./finding.module.css";

/** Who answered a hold, when, and why. Can't be hidden, and prints. */
export interface FindingAnswer {
  readonly by: string;
  readonly license: string;
  readonly at: string;
  readonly reason: ReactNode;
}

interface FindingWords {
  /** What is the matter, in a few words, with the full stop. */
  readonly what: ReactNode;
  /** The figure against its limit, as a sentence. */
  readonly figure?: ReactNode;
  /** What to do, as a sentence. */
  readonly toDo?: ReactNode;
  /** Whose rule it is: label, law, weather, stock, house. */
  readonly source: ReactNode;
  readonly actions?: ReactNode;
}

export type FindingProps =
  | (FindingWords & { readonly level: "hold" | "take-care" | "note" })
  | (FindingWords & { readonly level: "answered"; readonly answer: FindingAnswer });

/**
 * One finding, in a fixed order of words: level, what, the figure against its limit, what to do, source. A hold has
 * a full frame, take-care a broken bar, a note a rule above: the three differ without color.
 */
export function Finding(props: FindingProps) {
  const { level, what, figure, toDo, source, actions } = props;
  return (
    <FindingBlock level={level} actions={actions}>
      <p>
        <strong>{findingWords[level]}.</strong> <strong className={styles.what}>{what}</strong>
      </p>
      {(figure !== undefined || toDo !== undefined) && (
        <p>
          {figure} {toDo} <span className={styles.source}>{source}</span>
        </p>
      )}
      {figure === undefined && toDo === undefined && <p className={styles.source}>{source}</p>}
      {props.level === "answered" && <Answer {...props.answer} />}
    </FindingBlock>
  );
}

function Answer({ by, license, at, reason }: FindingAnswer) {
  return (
    <p className={styles.answer}>
      <strong>{by}</strong>, {license}, {at}: {reason}
    </p>
  );
}

interface FindingBlockProps {
  readonly level: FindingLevel;
  readonly actions?: ReactNode;
  /** What stands below the actions. */
  readonly more?: ReactNode;
  readonly children: ReactNode;
}

/** The frame of a finding with its mark; FindingGroup uses it too. */
export function FindingBlock({ level, actions, more, children }: FindingBlockProps) {
  return (
    <div className={styles.block} data-level={level}>
      <FindingMark level={level} wordBeside />
      <div className={styles.words}>
        {children}
        {actions !== undefined && <div className={styles.actions}>{actions}</div>}
        {more}
      </div>
    </div>
  );
}
