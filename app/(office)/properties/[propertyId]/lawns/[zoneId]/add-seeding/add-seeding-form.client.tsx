"use client";

import { addSeedingSchema } from "#application/properties/add-seeding.schema";
import { ActionForm } from "../../../../../../action-form.client";
import { SeedingFields } from "../../../seeding-fields.client";
import { addSeedingAction } from "./action";

export function AddSeedingForm({ zoneId }: { readonly zoneId: string }) {
  return (
    <ActionForm action={addSeedingAction} schema={addSeedingSchema} fixed={{ zoneId }} submit="Add it" whilePending="Adding">
      <SeedingFields />
    </ActionForm>
  );
}
