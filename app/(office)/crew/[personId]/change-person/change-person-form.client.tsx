"use client";

import { changePersonSchema } from "#application/people/change-person.schema";
import { DateField, TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { changePersonAction } from "./action";

function Fields() {
  return (
    <>
      <TextField label="Name" autoComplete="off" {...useField("name")} />
      <TextField label="Phone" optional type="tel" autoComplete="off" width="medium" {...useField("phone")} />
      <DateField
        label="Left on"
        optional
        hint="A person who left stays in the books for the records. End their access first, under Access."
        {...useField("leftOn")}
      />
    </>
  );
}

interface Props {
  readonly personId: string;
  readonly version: string;
  readonly values: Readonly<Record<string, string>>;
}

export function ChangePersonForm({ personId, version, values }: Props) {
  return (
    <ActionForm
      action={changePersonAction}
      schema={changePersonSchema}
      fixed={{ personId, version }}
      values={values}
      submit="Save"
      whilePending="Saving"
    >
      <Fields />
    </ActionForm>
  );
}
