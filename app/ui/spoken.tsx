import { type ReactNode } from "react";
import styles from "./spoken.module.css";

/** Words for those who listen, where the eye has a mark or a place to go by. */
export function Spoken({ children }: { readonly children: ReactNode }) {
  return <span className={styles.spoken}>{children}</span>;
}
