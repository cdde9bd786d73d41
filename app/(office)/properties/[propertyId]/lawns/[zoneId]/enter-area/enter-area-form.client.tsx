"use client";

import { measureZoneSchema } from "#application/properties/measure-zone.schema";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../../../action-form.client";
import { measurePieceAction } from "../measure-piece/action";

function AreaField() {
  return <TextField label="Size" hint="Of the grass alone, not the lot. A number alone is square feet." autoComplete="off" width="medium" {...useField("change.area")} />;
}

export function EnterAreaForm({ zoneId, version }: { readonly zoneId: string; readonly version: string }) {
  return (
    <ActionForm
      action={measurePieceAction}
      schema={measureZoneSchema}
      fixed={{ zoneId, version, "change.kind": "enter-area" }}
      submit="Keep this size"
      whilePending="Saving"
    >
      <AreaField />
    </ActionForm>
  );
}
