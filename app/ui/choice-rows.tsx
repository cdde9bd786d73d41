import { type ComponentProps, type ReactNode } from "react";
import { FieldGroup, type FieldWords } from "#ui/field";
import { type Choice } from "#ui/select-field";
import styles from "./choice-rows.module.css";

type InputAttributes = Omit<ComponentProps<"input">, "className" | "style" | "type" | "id" | "value">;

export interface ChoiceRowProps extends InputAttributes {
  readonly type: "radio" | "checkbox";
  readonly value?: string;
  readonly id: string;
  /** The line below the words; for an answer that can't be given now it says why. */
  readonly hint?: ReactNode;
  readonly children: ReactNode;
}

/** One answer as a row to press anywhere. Alone, as a checkbox, it is a yes or no. */
export function ChoiceRow({ type, id, hint, children, ...input }: ChoiceRowProps) {
  const hintId = `${id}-row-hint`;
  return (
    <label className={styles.row} htmlFor={id}>
      <input
        {...input}
        className={styles.box}
        type={type}
        id={id}
        aria-describedby={hint === undefined ? undefined : hintId}
      />
      <span className={styles.words}>
        <span className={styles.word}>{children}</span>
        {hint !== undefined && (
          <span className={styles.hint} id={hintId}>
            {hint}
          </span>
        )}
      </span>
    </label>
  );
}

/** An answer in rows: its value and word, and what explains it. */
export interface RowChoice extends Choice {
  readonly hint?: ReactNode;
  readonly disabled?: boolean;
}

interface RowsProps extends FieldWords {
  readonly name: string;
  readonly id?: string;
  readonly choices: readonly RowChoice[];
  /** What react-hook-form's `register` returns, save the name. */
  readonly registered?: Omit<InputAttributes, "name" | "defaultValue">;
  /** Rows one below the other; keys side by side for few and short words (Done, Part, Not; the winds). */
  readonly layout?: "rows" | "keys";
}

export interface RadioRowsProps extends RowsProps {
  readonly defaultValue?: string;
}

/** One of a few. The first row carries the group's id, so that an error leads to it. */
export function RadioRows({ defaultValue, ...rows }: RadioRowsProps) {
  return <Rows {...rows} type="radio" chosen={defaultValue === undefined ? [] : [defaultValue]} />;
}

export interface CheckboxRowsProps extends RowsProps {
  readonly defaultValues?: readonly string[];
}

/** Any number of a few. */
export function CheckboxRows({ defaultValues = [], ...rows }: CheckboxRowsProps) {
  return <Rows {...rows} type="checkbox" chosen={defaultValues} />;
}

interface AllRowsProps extends RowsProps {
  readonly type: "radio" | "checkbox";
  readonly chosen: readonly string[];
}

function Rows({ type, name, id = name, choices, chosen, registered, layout = "rows", ...words }: AllRowsProps) {
  // Uncontrolled unless something is chosen beforehand: react-hook-form then sets what it knows by itself.
  const defaults = (value: string) => (chosen.length === 0 ? {} : { defaultChecked: chosen.includes(value) });
  return (
    <FieldGroup {...words} id={id}>
      <div className={styles.rows} data-layout={layout} data-count={choices.length}>
        {choices.map((choice, index) => (
          <ChoiceRow
            key={choice.value}
            {...registered}
            {...defaults(choice.value)}
            type={type}
            name={name}
            value={choice.value}
            id={index === 0 ? id : `${id}-${choice.value}`}
            hint={choice.hint}
            disabled={choice.disabled}
          >
            {choice.word}
          </ChoiceRow>
        ))}
      </div>
    </FieldGroup>
  );
}
