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
  /**
   * Where the page's address may name a part of it, that name: the browser gives the focus to what is named so, and else
   * takes it away as it first draws the page.
   */
  readonly id?: string;
}

/**
 * What is wrong with a form, in the order of its fields, each a link to its field. It takes the focus each time that
 * the form was sent in vain, never while someone types. With no error it is not there. With react-hook-form set
 * `shouldFocusError` to false, or the first field takes the focus after it.
 */
export function ErrorSummary({ errors, attempt, id }: ErrorSummaryProps) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.focus();
  }, [attempt]);
  if (errors.length === 0) return null;
  return (
    <div className={styles.summary} id={id} ref={box} tabIndex={-1} role="group" aria-labelledby="error-summary-head">
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
