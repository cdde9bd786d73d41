"use client";

import { TextField } from "#ui/text-field";
import { useField } from "../../../action-form.client";

/** What every truck has. */
export function VehicleFields() {
  return (
    <>
      <TextField label="Number" hint="Trucks are told apart by it, on every paper." inputMode="numeric" autoComplete="off" width="short" {...useField("number")} />
      <TextField label="Name" hint="What the crew calls it." autoComplete="off" {...useField("name")} />
      <TextField
        label="May carry"
        optional
        hint="With its unit, such as 1,850 lb: people, water and product on it weigh no more. The door sticker says it."
        autoComplete="off"
        width="medium"
        {...useField("payload")}
      />
    </>
  );
}
