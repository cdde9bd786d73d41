"use client";

import { COMPANY_TIME_ZONES } from "#domain/company/us-state";
import { SelectField } from "#ui/select-field";
import { useField } from "./action-form.client";
import { STATE_CHOICES } from "./license-fields.client";

const TIME_ZONE_CHOICES = COMPANY_TIME_ZONES.map((zone) => ({ value: zone, word: zone.replaceAll("_", " ").replaceAll("/", ", ") }));

/** Where a company does business: its state and the clock it keeps. */
export function PlaceOfBusinessFields() {
  return (
    <>
      <SelectField
        label="State"
        hint="Where the business is. Properties may lie in other states; each follows its own state's rules."
        chooseWords="Choose a state"
        choices={STATE_CHOICES}
        width="medium"
        {...useField("state")}
      />
      <SelectField label="Time zone" chooseWords="Choose a time zone" choices={TIME_ZONE_CHOICES} width="medium" {...useField("timeZone")} />
    </>
  );
}
