"use client";

import { changePropertySchema } from "#application/properties/change-property.schema";
import { MOWER_WORDS, MOWERS } from "#domain/properties/client-standing";
import { TANK_WATER_ANSWERS, TANK_WATER_WORDS } from "#domain/properties/tank-water";
import { WEEKDAY_NAMES, WEEKDAYS } from "#domain/properties/weekday";
import { RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { FieldGroup } from "#ui/field";
import { SelectField } from "#ui/select-field";
import { TextAreaField } from "#ui/text-area-field";
import { TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../../action-form.client";
import { AddressFields } from "../../address-fields.client";
import { TickRow } from "../tick-row.client";
import { changePropertyAction } from "./action";

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
        choices={WEEKDAYS.map((weekday) => ({ value: String(weekday), word: WEEKDAY_NAMES[weekday] }))}
        {...useField("mowingWeekday")}
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

function WateringFields() {
  return (
    <>
      <Columns>
        <TextField label="Water may run from" optional type="time" width="medium" {...useField("wateringFrom")} />
        <TextField label="Until" optional type="time" hint="Earlier than the first time: it runs past midnight." width="medium" {...useField("wateringUntil")} />
      </Columns>
      <RadioRows
        label="The days go by"
        hint="As the town's rules have it, or as the controller is set."
        {...useChoice("wateringBy")}
        choices={[
          { value: "weekdays", word: "Days of the week", hint: "Those that are ticked below." },
          { value: "odd", word: "Odd dates", hint: "The 1st, 3rd, 5th and so on." },
          { value: "even", word: "Even dates", hint: "The 2nd, 4th, 6th and so on." },
          { value: "house-number", word: "The house number", hint: "An odd number waters on odd dates, an even one on even dates." },
        ]}
      />
      <FieldGroup id="watering-days" label="Days on which water may run" optional hint="None ticked: the days are not on file.">
        <Columns>
          {WEEKDAYS.map((weekday) => (
            <TickRow key={weekday} name={`wateringOn.${String(weekday)}`}>
              {WEEKDAY_NAMES[weekday]}
            </TickRow>
          ))}
        </Columns>
      </FieldGroup>
    </>
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
      <WateringFields />
      <AddressFields />
      <OtherFields />
    </ActionForm>
  );
}
