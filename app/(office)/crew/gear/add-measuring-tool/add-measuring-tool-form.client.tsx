"use client";

import { addMeasuringToolSchema } from "#application/equipment/add-measuring-tool.schema";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { addMeasuringToolAction } from "./action";

function Fields() {
  return (
    <>
      <TextField label="Name" hint="What the crew calls it: Half-ounce cup." autoComplete="off" {...useField("name")} />
      <TextField
        label="One mark"
        hint="From one mark to the next, with its unit: 0.5 fl oz, 0.25 lb. Say fl oz or oz wt, never a bare ounce."
        autoComplete="off"
        width="medium"
        {...useField("mark")}
      />
    </>
  );
}

export function AddMeasuringToolForm() {
  return (
    <ActionForm action={addMeasuringToolAction} schema={addMeasuringToolSchema} submit="Add the tool" whilePending="Adding">
      <Fields />
    </ActionForm>
  );
}
