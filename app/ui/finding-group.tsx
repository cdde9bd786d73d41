import { type ReactNode } from "react";
import { Disclosure } from "#ui/disclosure";
import { FindingBlock } from "#ui/finding";
import { type FindingLevel, findingWords } from "#ui/finding-mark";
import styles from "./finding-group.module.css";

export interface FindingGroupProps {
  readonly level: FindingLevel;
  /** The cause that the findings share, without a full stop: "Too hot for iron after 1 pm". */
  readonly cause: ReactNode;
  /** What is counted, with the right number of the noun: "9 stops". */
  readonly count: string;
  /** The figure against its limit, and the source in a word. */
  readonly figure?: ReactNode;
  readonly source: ReactNode;
  /** The one act that deals with all of them. */
  readonly act?: ReactNode;
  /** Each thing concerned, by name and place. */
  readonly items: readonly { readonly id: string; readonly words: ReactNode }[];
}

/** Findings of one cause: the cause with its count, one act for all, and the list behind one press. */
export function FindingGroup({ level, cause, count, figure, source, act, items }: FindingGroupProps) {
  return (
    <FindingBlock
      level={level}
      actions={act}
      more={
        items.length > 0 && (
          <Disclosure name={`Show the ${count}`}>
            <ul className={styles.items}>
              {items.map((item) => (
                <li key={item.id}>{item.words}</li>
              ))}
            </ul>
          </Disclosure>
        )
      }
    >
      <p>
        <strong>
          {findingWords[level]}. {cause}: {count}.
        </strong>
      </p>
      <p>
        {figure} <span className={styles.source}>{source}</span>
      </p>
    </FindingBlock>
  );
}
