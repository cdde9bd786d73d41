"use client";

import { addPropertySchema } from "#application/properties/add-property.schema";
import { ActionForm } from "../../../../action-form.client";
import { AddressFields } from "../../address-fields.client";
import { addPropertyAction } from "./action";

interface Props {
  readonly clientId: string;
  readonly values: Readonly<Record<string, string>>;
}

export function AddPropertyForm({ clientId, values }: Props) {
  return (
    <ActionForm action={addPropertyAction} schema={addPropertySchema} fixed={{ clientId }} values={values} submit="Add the property" whilePending="Adding">
      <AddressFields />
    </ActionForm>
  );
}
