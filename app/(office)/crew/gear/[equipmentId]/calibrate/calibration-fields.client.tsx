"use client";

import { nozzleSizes } from "#domain/equipment/nozzle";
import { type Choice, SelectField } from "#ui/select-field";
import { TextAreaField } from "#ui/text-area-field";
import { DateField, TextField } from "#ui/text-field";
import { useField } from "../../../../../action-form.client";

export interface LineProps {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly optional?: boolean;
}

/** A measure or a time on one line. */
export function MeasureLine({ name, label, hint, optional = false }: LineProps) {
  return <TextField label={label} hint={hint} optional={optional} autoComplete="off" width="medium" {...useField(name)} />;
}

/** Several repeats, one to a line. */
export function MeasureLines({ name, label, hint }: LineProps) {
  return <TextAreaField label={label} hint={hint} rows={3} autoComplete="off" {...useField(name)} />;
}

/** The standard size of a sprayer's tip, where it has one. */
export function TipSizeField({ hint, chooseWords }: { readonly hint: string; readonly chooseWords: string }) {
  return (
    <SelectField
      label="Size of the tip"
      optional
      hint={hint}
      chooseWords={chooseWords}
      choices={Object.keys(nozzleSizes).map((size) => ({ value: size, word: size }))}
      width="medium"
      {...useField("tipSize")}
    />
  );
}

/** Who measured, and when. Whoever may enter only their own is not asked. */
export function WhoAndWhen({ operators }: { readonly operators: readonly Choice[] | undefined }) {
  return (
    <>
      {operators !== undefined && <OperatorField operators={operators} />}
      <DateField label="Measured on" {...useField("madeOn")} />
    </>
  );
}

function OperatorField({ operators }: { readonly operators: readonly Choice[] }) {
  return (
    <SelectField
      label="Who measured"
      hint="The rate is of this person's pace, and holds for nobody else."
      chooseWords="Choose a person"
      choices={operators}
      width="medium"
      {...useField("operatorId")}
    />
  );
}
