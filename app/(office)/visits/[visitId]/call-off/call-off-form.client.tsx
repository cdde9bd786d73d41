"use client";

import { callOffVisitSchema } from "#application/visits/call-off-visit.schema";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { callOffAction } from "./action";

function Reason() {
  return <TextField label="Why" hint="It stays with the visit, with your name." autoComplete="off" {...useField("reason")} />;
}

/** Calls a planned visit off, with the reason. */
export function CallOffForm({ visitId, version }: { readonly visitId: string; readonly version: number }) {
  return (
    <ActionForm action={callOffAction} schema={callOffVisitSchema} fixed={{ visitId, version: String(version) }} submit="Call the visit off" whilePending="Calling it off">
      <Reason />
    </ActionForm>
  );
}
