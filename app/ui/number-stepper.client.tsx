"use client";

import { type ComponentProps } from "react";
import { Button } from "#ui/button";
import { Field, type FieldWords, describeField } from "#ui/field";
import fieldStyles from "./field.module.css";
import styles from "./number-stepper.module.css";

export interface NumberStepperProps
  extends FieldWords,
    Omit<ComponentProps<"input">, "className" | "style" | "type" | "name" | "id"> {
  readonly name: string;
  readonly id?: string;
  readonly unit: string;
  /** How much one press changes. */
  readonly step?: number;
  readonly min: number;
  readonly max: number;
}

/** A whole number by two large keys, or typed, or pasted. A press changes it by one step and stays within its bounds. */
export function NumberStepper({ unit, step = 1, min, max, name, id = name, ...rest }: NumberStepperProps) {
  const { label, hint, error, optional, ...input } = rest;
  function change(steps: 1 | -1) {
    // By its id, so that the field's own ref stays free for react-hook-form.
    const box = document.getElementById(id);
    if (!(box instanceof HTMLInputElement)) return;
    if (steps === 1) box.stepUp();
    else box.stepDown();
    // The browser's own steps tell nobody; React and react-hook-form listen for this event.
    box.dispatchEvent(new Event("input", { bubbles: true }));
  }
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional ?? false}>
      <div className={styles.stepper}>
        <span className={styles.key}>
          <Button aria-label={`${label}: less`} onClick={() => change(-1)}>
            −
          </Button>
        </span>
        <input
          {...input}
          {...describeField(id, { hint, error })}
          className={`${fieldStyles.control} ${styles.figure}`}
          type="number"
          inputMode="numeric"
          step={step}
          min={min}
          max={max}
          id={id}
          name={name}
        />
        <span className={styles.unit}>{unit}</span>
        <span className={styles.key}>
          <Button aria-label={`${label}: more`} onClick={() => change(1)}>
            +
          </Button>
        </span>
      </div>
    </Field>
  );
}
