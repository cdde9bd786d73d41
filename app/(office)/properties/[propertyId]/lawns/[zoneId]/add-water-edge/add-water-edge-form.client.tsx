"use client";

import { addWaterEdgeSchema } from "#application/properties/add-water-edge.schema";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../../../action-form.client";
import { addWaterEdgeAction } from "./action";

function Fields() {
  return (
    <>
      <TextField label="What water it is" hint="Such as Pond, Ditch along the road." autoComplete="off" width="medium" {...useField("name")} />
      <TextField label="Length along the lawn" optional hint="As walked along the water. A number alone is feet." autoComplete="off" width="short" {...useField("length")} />
      <TextField
        label="Kept clear"
        optional
        hint="How far from the water nothing is put down in any case. A rule or a label may ask for more."
        autoComplete="off"
        width="short"
        {...useField("width")}
      />
    </>
  );
}

export function AddWaterEdgeForm({ zoneId }: { readonly zoneId: string }) {
  return (
    <ActionForm action={addWaterEdgeAction} schema={addWaterEdgeSchema} fixed={{ zoneId }} submit="Add the water" whilePending="Adding">
      <Fields />
    </ActionForm>
  );
}
