"use client";

import { addLicenseSchema } from "#application/people/add-license.schema";
import { DateField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { LicenseFields } from "../../../../license-fields.client";
import { addLicenseAction } from "./action";

function IssuedOn() {
  return <DateField label="Issued on" optional {...useField("issuedOn")} />;
}

export function AddLicenseForm({ personId, state }: { readonly personId: string; readonly state: string }) {
  return (
    <ActionForm
      action={addLicenseAction}
      schema={addLicenseSchema}
      fixed={{ personId }}
      values={{ state }}
      submit="Add the license"
      whilePending="Adding"
    >
      <LicenseFields prefix="" />
      <IssuedOn />
    </ActionForm>
  );
}
