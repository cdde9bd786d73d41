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
        hint="With its unit, such as 1,850 lb: the door sticker’s figure for people and load together."
        autoComplete="off"
        width="medium"
        {...useField("payload")}
      />
      <TextField
        label="Rides along every day"
        optional
        hint="With its unit, such as 620 lb: people, the empty tank, pump, reel and tools. It comes off what the truck may carry of products and water."
        autoComplete="off"
        width="medium"
        {...useField("staysAboard")}
      />
    </>
  );
}
