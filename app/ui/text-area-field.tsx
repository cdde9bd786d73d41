import { type ComponentProps } from "react";
import { Field, type FieldWords, describeField } from "#ui/field";
import styles from "./field.module.css";

export interface TextAreaFieldProps
  extends FieldWords,
    Omit<ComponentProps<"textarea">, "className" | "style" | "name" | "id"> {
  readonly name: string;
  readonly id?: string;
}

/** Several lines of text. */
export function TextAreaField({ label, hint, error, optional, name, id = name, ...area }: TextAreaFieldProps) {
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional ?? false}>
      <textarea
        rows={4}
        {...area}
        {...describeField(id, { hint, error })}
        className={styles.control}
        id={id}
        name={name}
      />
    </Field>
  );
}
