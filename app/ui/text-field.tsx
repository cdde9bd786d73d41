import { type ComponentProps } from "react";
import { Field, type FieldWidth, type FieldWords, describeField } from "#ui/field";
import styles from "./field.module.css";

export interface TextFieldProps
  extends FieldWords,
    Omit<ComponentProps<"input">, "className" | "style" | "name" | "id" | "width"> {
  readonly name: string;
  /** Where an error leads to; the name, unless a page has the same name twice. */
  readonly id?: string;
  readonly width?: FieldWidth;
}

/** A line of text, or a date, an address, a number without a unit: whatever `type` says. */
export function TextField({ label, hint, error, optional, name, id = name, width = "full", ...input }: TextFieldProps) {
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional ?? false}>
      <input
        type="text"
        {...input}
        {...describeField(id, { hint, error })}
        className={styles.control}
        data-width={width}
        id={id}
        name={name}
      />
    </Field>
  );
}

/** A calendar date, by the browser's own date control. Its value is written 2026-04-14. */
export function DateField(props: Omit<TextFieldProps, "type" | "width">) {
  return <TextField {...props} type="date" width="medium" />;
}
