"use client";

import { changeCompanySchema } from "#application/companies/change-company.schema";
import { DateField, TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../action-form.client";
import { PlaceOfBusinessFields } from "../../../place-of-business-fields.client";
import { changeCompanyAction } from "./action";

function Fields() {
  return (
    <>
      <TextField label="Name" autoComplete="organization" {...useField("name")} />
      <PlaceOfBusinessFields />
      <TextField label="Phone" optional hint="Stands on notices and signs." type="tel" width="medium" {...useField("phone")} />
      <TextField label="Address" optional autoComplete="street-address" {...useField("address")} />
      <TextField label="Number of the business license" optional width="medium" {...useField("businessLicenseNumber")} />
      <DateField label="Business license expires on" optional {...useField("businessLicenseExpiresOn")} />
      <DateField label="Insurance expires on" optional {...useField("insuranceExpiresOn")} />
    </>
  );
}

export function ChangeCompanyForm({ version, values }: { readonly version: string; readonly values: Readonly<Record<string, string>> }) {
  return (
    <ActionForm action={changeCompanyAction} schema={changeCompanySchema} fixed={{ version }} values={values} submit="Save" whilePending="Saving">
      <Fields />
    </ActionForm>
  );
}
