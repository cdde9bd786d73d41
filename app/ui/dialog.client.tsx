"use client";

import { type ReactNode, useId, useRef } from "react";
import { Button, type ButtonKind } from "#ui/button";
import styles from "./dialog.module.css";

export interface DialogProps {
  /** The words of the button that opens it. */
  readonly open: string;
  readonly openKind?: ButtonKind;
  /** What is asked, as a question or a heading. */
  readonly title: string;
  /** The words of the button that closes it and changes nothing. */
  readonly close: string;
  /** What it says, and the form that does it, if any. */
  readonly children: ReactNode;
}

/** A question over the page: the browser's own modal dialog. Esc and the close button leave everything as it was. */
export function Dialog({ open, openKind = "plain", title, close, children }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  return (
    <>
      <Button kind={openKind} aria-haspopup="dialog" onClick={() => dialog.current?.showModal()}>
        {open}
      </Button>
      <dialog className={styles.dialog} ref={dialog} aria-labelledby={titleId}>
        <h2 id={titleId}>{title}</h2>
        <div className={styles.body}>{children}</div>
        <form method="dialog" className={styles.close}>
          <Button type="submit">{close}</Button>
        </form>
      </dialog>
    </>
  );
}
