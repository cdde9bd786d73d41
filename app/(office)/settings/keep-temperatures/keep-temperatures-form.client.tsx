"use client";

import { keepTemperaturesSchema } from "#application/temperatures/keep-temperatures.schema";
import { RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { TextAreaField } from "#ui/text-area-field";
import { TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../action-form.client";
import { keepTemperaturesAction } from "./action";

function ScaleRows() {
  return (
    <RadioRows
      label="Scale"
      {...useChoice("scale")}
      layout="keys"
      choices={[
        { value: "fahrenheit", word: "°F" },
        { value: "celsius", word: "°C" },
      ]}
    />
  );
}

function Fields() {
  return (
    <>
      <Columns split="two">
        <TextField label="Source" hint="An airport, a campus, the yard." autoComplete="off" {...useField("source")} />
        <TextField label="Where its figures are from" hint="Its monthly page, read by hand." autoComplete="off" {...useField("figuresFrom")} />
      </Columns>
      <ScaleRows />
      <TextAreaField
        label="Days"
        hint="One day to a line: date, high, low, such as 2026-03-01, 65, 40. A first line that names the columns is passed over. Leave a day out where high or low is not known. At most 400 days at once."
        rows={12}
        autoComplete="off"
        spellCheck={false}
        {...useField("days")}
      />
    </>
  );
}

interface Props {
  readonly fixed: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, string>>;
}

/** Daily temperatures: read back first, then kept. */
export function KeepTemperaturesForm({ fixed, values }: Props) {
  return (
    <ActionForm
      action={keepTemperaturesAction}
      schema={keepTemperaturesSchema}
      fixed={fixed}
      values={values}
      submit="Read it back"
      whilePending="Reading it back"
      write={{ submit: "Keep these days", whilePending: "Keeping" }}
    >
      <Fields />
    </ActionForm>
  );
}
