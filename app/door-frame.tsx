import { type ReactNode } from "react";
import { Text } from "#ui/text";
import styles from "./door-frame.module.css";

/** The frame of the pages before the door: sign-in, first run, invitations. One narrow column. */
export function DoorFrame({ children }: { readonly children: ReactNode }) {
  return (
    <div className={styles.door}>
      <header>
        <p className={styles.brand}>Halfpass</p>
        <Text tone="second">The back office of a lawn care crew</Text>
      </header>
      <main className={styles.main} id="main" tabIndex={-1}>
        {children}
      </main>
    </div>
  );
}
