"use client";

import { addSoilTestSchema } from "#application/properties/add-soil-test.schema";
import { PHOSPHORUS_FINDINGS, PHOSPHORUS_WORDS } from "#domain/properties/soil-test";
import { RadioRows } from "#ui/choice-rows";
import { DateField, TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../../../../action-form.client";
import { addSoilTestAction } from "./action";

function Fields() {
  return (
    <>
      <DateField label="Sample taken on" {...useField("sampledOn")} />
      <TextField label="Laboratory" autoComplete="off" width="medium" {...useField("laboratory")} />
      <TextField label="Phosphorus, in its words" hint="As the report has it, for example: Very low, or 12 ppm, deficient." autoComplete="off" {...useField("phosphorusWord")} />
      <RadioRows
        label="That is"
        {...useChoice("phosphorus")}
        choices={PHOSPHORUS_FINDINGS.map((finding) => ({ value: finding, word: PHOSPHORUS_WORDS[finding] }))}
      />
    </>
  );
}

export function AddSoilTestForm({ zoneId }: { readonly zoneId: string }) {
  return (
    <ActionForm action={addSoilTestAction} schema={addSoilTestSchema} fixed={{ zoneId }} submit="Add the soil test" whilePending="Adding">
      <Fields />
    </ActionForm>
  );
}
