"use client";

import { addClientSchema } from "#application/properties/add-client.schema";
import { ActionForm } from "../../../action-form.client";
import { AddressFields, ClientFields } from "../address-fields.client";
import { addClientAction } from "./action";

export function AddClientForm({ state }: { readonly state: string }) {
  return (
    <ActionForm action={addClientAction} schema={addClientSchema} values={{ state }} submit="Add the customer" whilePending="Adding">
      <ClientFields />
      <AddressFields />
    </ActionForm>
  );
}
