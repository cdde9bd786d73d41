"use client";

import { addProductSchema } from "#application/products/add-product.schema";
import { RadioRows } from "#ui/choice-rows";
import { TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../action-form.client";
import { addProductAction } from "./action";

function Fields() {
  return (
    <>
      <TextField label="Name" hint="As it stands on the container." autoComplete="off" {...useField("name")} />
      <RadioRows
        label="Goes out"
        {...useChoice("form")}
        choices={[
          { value: "granular", word: "Spread dry", hint: "Granules from a spreader." },
          { value: "liquid", word: "Sprayed", hint: "Liquids, and powders and granules for the tank." },
        ]}
      />
      <RadioRows
        label="Stock is counted by"
        hint="It can't be changed later."
        {...useChoice("countedBy")}
        choices={[
          { value: "mass", word: "Weight", hint: "Bags and boxes: lb." },
          { value: "volume", word: "Volume", hint: "Jugs, bottles and drums: gal and fl oz." },
        ]}
      />
    </>
  );
}

export function AddProductForm() {
  return (
    <ActionForm action={addProductAction} schema={addProductSchema} submit="Add the product" whilePending="Adding">
      <Fields />
    </ActionForm>
  );
}
