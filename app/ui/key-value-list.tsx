import { type ReactNode } from "react";
import styles from "./key-value-list.module.css";

export interface KeyValueListProps {
  readonly pairs: readonly { readonly key: string; readonly value: ReactNode }[];
}

/** Facts under their names, row by row: the size, how and when measured, the license. */
export function KeyValueList({ pairs }: KeyValueListProps) {
  return (
    <dl className={styles.list}>
      {pairs.map((pair) => (
        <div className={styles.pair} key={pair.key}>
          <dt>{pair.key}</dt>
          <dd>{pair.value}</dd>
        </div>
      ))}
    </dl>
  );
}
