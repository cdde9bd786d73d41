import { type ReactNode } from "react";
import styles from "./progress.module.css";

export interface ProgressProps {
  readonly id: string;
  /** What is being done: "Fitting Tuesday". */
  readonly name: string;
  /** How it stands, in words: "14 s, best so far 6 h 12 min of driving". */
  readonly standing: ReactNode;
  /** How much of how much; left out where nobody can know. */
  readonly done?: { readonly count: number; readonly of: number };
  /** Use this, keep looking, stop: at least a way to stop. */
  readonly actions: ReactNode;
}

/** Long work: what it does, how it stands, how to stop it. */
export function Progress({ id, name, standing, done, actions }: ProgressProps) {
  return (
    <div className={styles.progress}>
      <p className={styles.name} id={`${id}-name`}>
        {name}
      </p>
      <progress
        className={styles.bar}
        aria-labelledby={`${id}-name`}
        {...(done === undefined ? {} : { value: done.count, max: done.of })}
      />
      <p role="status">{standing}</p>
      <div className={styles.actions}>{actions}</div>
    </div>
  );
}
