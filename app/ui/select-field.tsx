import { type ComponentProps } from "react";
import { Field, type FieldWidth, type FieldWords, describeField } from "#ui/field";
import styles from "./field.module.css";

/** One answer to choose. */
export interface Choice {
  readonly value: string;
  readonly word: string;
}

type SelectAttributes = Omit<ComponentProps<"select">, "className" | "style">;

export interface SelectBoxProps extends SelectAttributes {
  readonly choices: readonly Choice[];
  /** The words of the empty answer that stands there first, for instance "Choose a lawn". */
  readonly chooseWords?: string;
  readonly width?: FieldWidth;
}

/** The select control alone, with the arrow that says so. */
export function SelectBox({ choices, chooseWords, width = "full", ...select }: SelectBoxProps) {
  return (
    <div className={styles.selectBox} data-width={width}>
      <select {...select} className={styles.control}>
        {chooseWords !== undefined && <option value="">{chooseWords}</option>}
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.word}
          </option>
        ))}
      </select>
      <svg className={styles.selectArrow} width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
        <path d="M1 3.5h10L6 9.5z" />
      </svg>
    </div>
  );
}

export interface SelectFieldProps extends FieldWords, Omit<SelectBoxProps, "name" | "id"> {
  readonly name: string;
  readonly id?: string;
}

/** One of a list too long for rows. Up to six answers are better as radio rows. */
export function SelectField({ label, hint, error, optional, name, id = name, ...select }: SelectFieldProps) {
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional ?? false}>
      <SelectBox {...select} {...describeField(id, { hint, error })} id={id} name={name} />
    </Field>
  );
}
