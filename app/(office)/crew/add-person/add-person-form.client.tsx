"use client";

import { addPersonSchema } from "#application/people/add-person.schema";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../action-form.client";
import { addPersonAction } from "./action";

function Fields() {
  return (
    <>
      <TextField label="Name" autoComplete="off" {...useField("name")} />
      <TextField label="Phone" optional type="tel" autoComplete="off" width="medium" {...useField("phone")} />
    </>
  );
}

export function AddPersonForm() {
  return (
    <ActionForm action={addPersonAction} schema={addPersonSchema} submit="Add the person" whilePending="Adding">
      <Fields />
    </ActionForm>
  );
}
