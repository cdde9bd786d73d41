"use client";

import { SelectField } from "#ui/select-field";
import { TextField } from "#ui/text-field";
import { useField } from "../../action-form.client";
import { STATE_CHOICES } from "../../license-fields.client";

/** Where a property lies, as the post writes it. */
export function AddressFields() {
  return (
    <>
      <TextField label="Street" hint="House number first, for example: 18 Quarry Road." autoComplete="off" {...useField("street")} />
      <TextField label="Town" autoComplete="off" width="medium" {...useField("city")} />
      <SelectField label="State" hint="Its law holds there." chooseWords="Choose a state" choices={STATE_CHOICES} width="medium" {...useField("state")} />
      <TextField label="ZIP code" inputMode="numeric" autoComplete="off" width="short" {...useField("zip")} />
    </>
  );
}

/** Who the customer is and how they are reached. */
export function ClientFields() {
  return (
    <>
      <TextField label="Customer" hint="Who pays, by the name that you call them." autoComplete="off" {...useField("name")} />
      <TextField label="Phone" optional type="tel" autoComplete="off" width="medium" {...useField("phone")} />
      <TextField label="Email address" optional type="email" autoComplete="off" {...useField("email")} />
    </>
  );
}
