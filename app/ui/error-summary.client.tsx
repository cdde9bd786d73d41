"use client";

import { useEffect, useRef } from "react";
import { FindingMark } from "#ui/finding-mark";
import styles from "./error-summary.module.css";

/** One answer that was not accepted: the id of its control, and what is wrong as a sentence. */
export interface FieldError {
  readonly fieldId: string;
  readonly sentence: string;
}

export interface ErrorSummaryProps {
  readonly errors: readonly FieldError[];
  /** Differs after each time that the form was sent: react-hook-form's `submitCount`, or a count in the action's state. */
  readonly attempt: number | string;
}

/**
 * Calls back when the page is loaded and drawn. Where its address names a part of it, the browser takes the focus away as
 * it first draws it, which may be after the scripts have run.
 * @returns how to call it off
 */
function onceDrawn(then: () => void): () => void {
  let frame = 0;
  const afterTwoFrames = () => {
    frame = requestAnimationFrame(() => {
      frame = requestAnimationFrame(then);
    });
  };
  if (document.readyState === "complete") afterTwoFrames();
  else window.addEventListener("load", afterTwoFrames, { once: true });
  return () => {
    window.removeEventListener("load", afterTwoFrames);
    cancelAnimationFrame(frame);
  };
}

/**
 * What is wrong with a form, in the order of its fields, each a link to its field. It takes the focus each time that
 * the form was sent in vain, never while someone types. With no error it is not there. With react-hook-form set
 * `shouldFocusError` to false, or the first field takes the focus after it.
 */
export function ErrorSummary({ errors, attempt }: ErrorSummaryProps) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.focus();
    return onceDrawn(() => {
      if (document.activeElement === document.body) box.current?.focus();
    });
  }, [attempt]);
  if (errors.length === 0) return null;
  return (
    <div className={styles.summary} ref={box} tabIndex={-1} role="group" aria-labelledby="error-summary-head">
      <FindingMark level="hold" wordBeside />
      <div>
        <h2 className={styles.head} id="error-summary-head">
          {errors.length === 1 ? "One answer needs another look" : `${errors.length} answers need another look`}
        </h2>
        <ul>
          {errors.map((error) => (
            <li key={error.fieldId}>
              <a href={`#${error.fieldId}`}>{error.sentence}</a>
            </li>
          ))}
        </ul>
      </div>
    </div>
  );
}
