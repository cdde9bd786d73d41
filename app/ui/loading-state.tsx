import styles from "./loading-state.module.css";

export interface LoadingStateProps {
  /** What is being read, counted where it can be: "Reading 3 runs". */
  readonly words: string;
  /** How many rows will stand here, so that nothing jumps when they come. */
  readonly rows?: number;
}

/** Rows in place of those to come. It shows only when reading takes longer than 400 ms; nothing moves. */
export function LoadingState({ words, rows = 3 }: LoadingStateProps) {
  return (
    <div className={styles.loading} role="status">
      <p>{words}&hellip;</p>
      <div aria-hidden="true">
        {Array.from({ length: rows }, (_, index) => (
          <div className={styles.row} key={index}>
            <span className={styles.short} />
            <span className={styles.long} />
          </div>
        ))}
      </div>
    </div>
  );
}
