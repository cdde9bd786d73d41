"use client";

import { addProgramSchema } from "#application/programs/add-program.schema";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../action-form.client";
import { addProgramAction } from "./action";

function Fields() {
  return (
    <>
      <TextField label="Name" hint="By the lawns it is for, such as Cool-season lawns." autoComplete="off" {...useField("name")} />
      <TextField label="Season" hint="The year in which it begins." inputMode="numeric" autoComplete="off" width="short" {...useField("season")} />
    </>
  );
}

export function AddProgramForm({ season }: { readonly season: string }) {
  return (
    <ActionForm action={addProgramAction} schema={addProgramSchema} values={{ season }} submit="Add the program" whilePending="Adding">
      <Fields />
    </ActionForm>
  );
}
