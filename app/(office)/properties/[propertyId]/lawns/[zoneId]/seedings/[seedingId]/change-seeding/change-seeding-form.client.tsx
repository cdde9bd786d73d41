"use client";

import { changeSeedingSchema } from "#application/properties/change-seeding.schema";
import { ActionForm } from "../../../../../../../../action-form.client";
import { SeedingFields } from "../../../../../seeding-fields.client";
import { changeSeedingAction } from "./action";

interface Props {
  readonly seedingId: string;
  readonly version: string;
  readonly values: Readonly<Record<string, string>>;
}

export function ChangeSeedingForm({ seedingId, version, values }: Props) {
  return (
    <ActionForm action={changeSeedingAction} schema={changeSeedingSchema} fixed={{ seedingId, version }} values={values} submit="Save" whilePending="Saving">
      <SeedingFields />
    </ActionForm>
  );
}
