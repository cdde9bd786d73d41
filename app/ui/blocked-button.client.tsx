"use client";

import { type MouseEvent, type ReactNode, useId } from "react";
import { ButtonWords } from "#ui/button";
import styles from "./button.module.css";

export interface BlockedButtonProps {
  /** The same words as the button that stands here when nothing is missing. */
  readonly children: ReactNode;
  /** What is missing, as the second line: "Wind is missing". */
  readonly missing: string;
  /** The id of the thing that is missing; the press moves there. */
  readonly missingId: string;
  readonly foot?: boolean;
}

/**
 * A button that can't act yet. It keeps its place, says what is missing, and goes there when pressed. Inside a form
 * and without scripts it sends the form, and the server says the same.
 */
export function BlockedButton({ children, missing, missingId, foot = false }: BlockedButtonProps) {
  const reasonId = useId();
  function goToMissing(event: MouseEvent<HTMLButtonElement>) {
    const target = document.getElementById(missingId);
    if (target === null) return;
    event.preventDefault();
    target.closest("details")?.setAttribute("open", "");
    target.focus();
    target.scrollIntoView({ block: "center" });
  }
  return (
    <button
      type="submit"
      className={styles.button}
      data-blocked="true"
      data-foot={foot || undefined}
      aria-disabled="true"
      aria-describedby={reasonId}
      onClick={goToMissing}
    >
      <ButtonWords second={<span id={reasonId}>{missing}</span>}>{children}</ButtonWords>
    </button>
  );
}
