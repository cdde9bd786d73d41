"use client";

import { changePropertySchema } from "#application/properties/change-property.schema";
import { MOWER_WORDS, MOWERS } from "#domain/properties/client-standing";
import { NO_FIXED_DAY } from "#domain/properties/mowing-day";
import { TANK_WATER_ANSWERS, TANK_WATER_WORDS } from "#domain/properties/tank-water";
import { WEEKDAY_NAMES, WEEKDAYS } from "#domain/properties/weekday";
import { Columns } from "#ui/columns";
import { SelectField } from "#ui/select-field";
import { TextAreaField } from "#ui/text-area-field";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { AddressFields } from "../../address-fields.client";
import { changePropertyAction } from "./action";
import { WateringFields } from "./watering-fields.client";

function AccessFields() {
  return (
    <>
      <TextField label="Dog" optional hint="Its name, and whether it is let out." autoComplete="off" {...useField("dogNote")} />
      <TextField label="Gate code" optional hint="Shown to the crew and the office, behind one press." autoComplete="off" width="short" {...useField("gateCode")} />
      <TextField label="Narrowest gate" optional hint="A number alone is inches. It says which machine fits." autoComplete="off" width="short" {...useField("narrowestGate")} />
      <TextField label="Getting in" optional hint="Where to park, which side, what sticks." autoComplete="off" {...useField("accessNote")} />
      <SelectField
        label="Water for the tank"
        optional
        hint="Whether a tank can be filled here. Where it can’t, or nobody has said, the plan sends the truck back to the shop."
        chooseWords={TANK_WATER_WORDS.unknown}
        choices={TANK_WATER_ANSWERS.map((answer) => ({ value: answer, word: TANK_WATER_WORDS[answer] }))}
        width="medium"
        {...useField("tankWater")}
      />
    </>
  );
}

function MowingFields() {
  return (
    <Columns>
      <SelectField
        label="Mowing day"
        optional
        chooseWords="Not on file"
        choices={[...WEEKDAYS.map((weekday) => ({ value: String(weekday), word: WEEKDAY_NAMES[weekday] })), { value: NO_FIXED_DAY, word: "No fixed day" }]}
        {...useField("mowingDay")}
      />
      <SelectField
        label="Who mows"
        optional
        chooseWords="Not on file"
        choices={MOWERS.map((mower) => ({ value: mower, word: MOWER_WORDS[mower] }))}
        {...useField("mowedBy")}
      />
    </Columns>
  );
}

function OtherFields() {
  return (
    <>
      <TextField
        label="Position"
        optional
        hint="Latitude and longitude as maps write them, 41.4021, -87.3254. Left empty, the middle of the ZIP code stands for it."
        autoComplete="off"
        width="medium"
        {...useField("position")}
      />
      <TextField label="Lot" optional hint="As someone told it; never counted as lawn. A number alone is square feet." autoComplete="off" width="medium" {...useField("lotArea")} />
      <TextAreaField label="Notes" optional rows={4} {...useField("note")} />
    </>
  );
}

interface Props {
  readonly propertyId: string;
  readonly version: string;
  readonly values: Readonly<Record<string, string>>;
}

export function ChangePropertyForm({ propertyId, version, values }: Props) {
  return (
    <ActionForm action={changePropertyAction} schema={changePropertySchema} fixed={{ propertyId, version }} values={values} submit="Save" whilePending="Saving">
      <AccessFields />
      <MowingFields />
      <AddressFields />
      <OtherFields />
      <WateringFields />
    </ActionForm>
  );
}
