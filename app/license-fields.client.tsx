"use client";

import { US_STATE_CODES, US_STATES } from "#domain/company/us-state";
import { LICENSE_KIND_WORDS, LICENSE_KINDS } from "#domain/crew/license";
import { RadioRows } from "#ui/choice-rows";
import { SelectField } from "#ui/select-field";
import { DateField, TextField } from "#ui/text-field";
import { useChoice, useField } from "./action-form.client";

export const STATE_CHOICES = US_STATE_CODES.map((code) => ({ value: code, word: US_STATES[code].name }));

/** What every license has, under names that begin with the prefix. */
export function LicenseFields({ prefix }: { readonly prefix: "" | "license." }) {
  return (
    <>
      <RadioRows
        label="Kind of license"
        {...useChoice(`${prefix}kind`)}
        choices={LICENSE_KINDS.map((kind) => ({ value: kind, word: LICENSE_KIND_WORDS[kind] }))}
      />
      <SelectField label="State that gave it" chooseWords="Choose a state" choices={STATE_CHOICES} width="medium" {...useField(`${prefix}state`)} />
      <TextField label="Number on the license" autoComplete="off" width="medium" {...useField(`${prefix}number`)} />
      <TextField
        label="Category"
        hint="As the state writes it, for example: Turf and ornamental."
        autoComplete="off"
        {...useField(`${prefix}category`)}
      />
      <DateField label="Expires on" hint="The last day it is good." {...useField(`${prefix}expiresOn`)} />
    </>
  );
}
