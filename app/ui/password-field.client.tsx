"use client";

import { useState } from "react";
import { Button } from "#ui/button";
import { Field, describeField } from "#ui/field";
import { type TextFieldProps } from "#ui/text-field";
import fieldStyles from "./field.module.css";
import styles from "./password-field.module.css";

/**
 * A password that can be shown. Pasting and password managers work; say with `autoComplete` whether it is a new one
 * or the current one. Without scripts it stays hidden and the button is not there.
 */
export function PasswordField({
  label,
  hint,
  error,
  optional,
  name,
  id = name,
  width: _width,
  ...input
}: Omit<TextFieldProps, "type">) {
  const [shown, setShown] = useState(false);
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional ?? false}>
      <div className={fieldStyles.joined}>
        <input
          {...input}
          {...describeField(id, { hint, error })}
          className={`${fieldStyles.control} ${styles.password}`}
          type={shown ? "text" : "password"}
          autoCapitalize="none"
          spellCheck={false}
          id={id}
          name={name}
        />
        <span className={styles.show}>
          <Button aria-pressed={shown} aria-controls={id} onClick={() => setShown((before) => !before)}>
            {shown ? "Hide" : "Show"}
          </Button>
        </span>
      </div>
    </Field>
  );
}
