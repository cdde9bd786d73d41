"use client";

import { BIND_ADDRESS_CHOICES, createCompanySchema } from "#application/companies/create-company.schema";
import { RadioRows } from "#ui/choice-rows";
import { PasswordField } from "#ui/password-field.client";
import { TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../action-form.client";
import { LicenseFields } from "../../../license-fields.client";
import { PlaceOfBusinessFields } from "../../../place-of-business-fields.client";
import { createCompanyAction } from "./action";

const REACH: Readonly<Record<(typeof BIND_ADDRESS_CHOICES)[number], { readonly word: string; readonly hint: string }>> = {
  "127.0.0.1": { word: "This computer only", hint: "The server listens on 127.0.0.1." },
  "0.0.0.0": {
    word: "Every computer and phone on this network",
    hint: "The server listens on every address of this computer. Put a proxy with TLS before it where the network is not your own.",
  },
};

function CompanyFields() {
  return (
    <>
      <h2>The company</h2>
      <TextField label="Name of the company" autoComplete="organization" {...useField("companyName")} />
      <PlaceOfBusinessFields />
      <RadioRows
        label="Who may reach this installation"
        hint="Holds from the next start."
        {...useChoice("bindAddress")}
        choices={BIND_ADDRESS_CHOICES.map((value) => ({ value, ...REACH[value] }))}
      />
    </>
  );
}

function OwnerFields() {
  return (
    <>
      <h2>You, its owner</h2>
      <TextField label="Your name" autoComplete="name" {...useField("ownerName")} />
      <TextField label="Email address" type="email" autoComplete="username" {...useField("email")} />
      <PasswordField
        label="Password"
        hint="At least 15 characters. Several words in a row are good."
        autoComplete="new-password"
        {...useField("password")}
      />
      <h2>Your license</h2>
    </>
  );
}

export function CreateCompanyForm({ secret }: { readonly secret: string }) {
  return (
    <ActionForm
      action={createCompanyAction}
      schema={createCompanySchema}
      fixed={{ secret }}
      values={{ bindAddress: "127.0.0.1" }}
      submit="Create the company"
      whilePending="Creating"
    >
      <CompanyFields />
      <OwnerFields />
      <LicenseFields prefix="license." />
    </ActionForm>
  );
}
