import { type ReactNode } from "react";
import { FindingMark } from "#ui/finding-mark";
import styles from "./field.module.css";

/** The words around a control. */
export interface FieldWords {
  readonly label: string;
  /** What is wanted, before it is asked: form, unit, where to find it. */
  readonly hint?: ReactNode;
  /** What is wrong with the answer, and what would be right. */
  readonly error?: string | undefined;
  /** Says "(optional)" after the label; everything else is needed. */
  readonly optional?: boolean;
}

/** How wide a control is: as wide as its answer, where that is known. */
export type FieldWidth = "short" | "medium" | "full";

/** The attributes that tie a control to its hint and its error. */
export function describeField(id: string, words: Pick<FieldWords, "hint" | "error">) {
  const parts = [
    words.hint === undefined ? undefined : `${id}-hint`,
    words.error === undefined ? undefined : `${id}-error`,
  ].filter((part) => part !== undefined);
  return {
    "aria-describedby": parts.length === 0 ? undefined : parts.join(" "),
    "aria-invalid": words.error === undefined ? undefined : true,
  };
}

export interface FieldProps extends FieldWords {
  /** The id of the control. */
  readonly id: string;
  readonly children: ReactNode;
}

/** One control with its label above, its hint below the label and its error right above the control. */
export function Field({ id, label, hint, error, optional = false, children }: FieldProps) {
  return (
    <div className={styles.field} data-error={error === undefined ? undefined : true}>
      <label className={styles.label} htmlFor={id}>
        {label}
        {optional && <span className={styles.optional}> (optional)</span>}
      </label>
      <FieldNotes id={id} hint={hint} error={error} />
      {children}
    </div>
  );
}

export interface FieldGroupProps extends FieldWords {
  readonly id: string;
  readonly children: ReactNode;
}

/** Several controls that answer one question, under one legend. */
export function FieldGroup({ id, label, hint, error, optional = false, children }: FieldGroupProps) {
  const described = describeField(id, { hint, error })["aria-describedby"];
  return (
    <fieldset
      className={styles.field}
      data-error={error === undefined ? undefined : true}
      aria-describedby={described}
    >
      <legend className={styles.label}>
        {label}
        {optional && <span className={styles.optional}> (optional)</span>}
      </legend>
      <FieldNotes id={id} hint={hint} error={error} />
      {children}
    </fieldset>
  );
}

function FieldNotes({ id, hint, error }: { readonly id: string } & Pick<FieldWords, "hint" | "error">) {
  return (
    <>
      {hint !== undefined && (
        <p className={styles.hint} id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {error !== undefined && (
        <p className={styles.error} id={`${id}-error`}>
          <FindingMark level="hold" size={16} wordBeside />
          <span>{error}</span>
        </p>
      )}
    </>
  );
}
