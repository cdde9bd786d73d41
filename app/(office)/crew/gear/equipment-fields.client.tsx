"use client";

import { DEFLECTOR_ANSWERS } from "#application/equipment/equipment-fields.schema";
import { EQUIPMENT_KIND_WORDS, SPRAYER_KINDS, SPREADER_KINDS } from "#domain/equipment/equipment-kind";
import { RadioRows } from "#ui/choice-rows";
import { Disclosure } from "#ui/disclosure";
import { type Choice, SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { TextField } from "#ui/text-field";
import { useChoice, useField } from "../../../action-form.client";

const DEFLECTOR_WORDS: Readonly<Record<(typeof DEFLECTOR_ANSWERS)[number], string>> = {
  yes: "Yes",
  no: "No",
  "nobody-looked": "Nobody looked",
};

interface RowsOfFieldProps {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly choices: readonly Choice[];
}

/** Radio rows that take part in their form. */
function RowsOfField({ name: field, label, hint, choices }: RowsOfFieldProps) {
  return (
    <RadioRows
      label={label}
      hint={hint}
      {...useChoice(field)}
      choices={choices}
    />
  );
}

function AmountLine({ name, label, hint, optional = false }: { readonly name: string; readonly label: string; readonly hint: string; readonly optional?: boolean }) {
  return <TextField label={label} hint={hint} optional={optional} autoComplete="off" width="medium" {...useField(name)} />;
}

interface EquipmentFieldsProps {
  readonly what: "sprayer" | "spreader";
  /** False where the kind stands fast. */
  readonly asksKind: boolean;
  readonly trucks: readonly Choice[];
}

/** What every piece of gear has, and what only sprayers or spreaders have. */
export function EquipmentFields({ what, asksKind, trucks }: EquipmentFieldsProps) {
  const kinds = what === "sprayer" ? SPRAYER_KINDS : SPREADER_KINDS;
  return (
    <>
      {asksKind && <RowsOfField name="kind" label="Kind" choices={kinds.map((kind) => ({ value: kind, word: EQUIPMENT_KIND_WORDS[kind] }))} />}
      <TextField label="Name" hint="What the crew calls it." autoComplete="off" {...useField("name")} />
      <SelectField label="Rides on" chooseWords="No truck: it stays at the shop" choices={trucks} {...useField("vehicleId")} />
      {what === "sprayer" ? (
        <AmountLine name="capacity" label="The tank holds" hint="With its unit: 100 gal." />
      ) : (
        <AmountLine name="capacity" label="The hopper holds" hint="By weight, with its unit: 50 lb." />
      )}
      <AmountLine name="swath" label="Swath" optional hint="The width that one pass covers: 10 ft." />
      {what === "sprayer" ? <HoldUpFields /> : <DeflectorRows />}
    </>
  );
}

function DeflectorRows() {
  return (
    <RowsOfField
      name="deflector"
      label="Has it a deflector?"
      hint="It keeps granules from flying to one side. Some laws let a spreader with one come nearer to water."
      choices={DEFLECTOR_ANSWERS.map((answer) => ({ value: answer, word: DEFLECTOR_WORDS[answer] }))}
    />
  );
}

function HoldUpFields() {
  return (
    <>
      <AmountLine
        name="holdUp"
        label="Pump and hose hold"
        optional
        hint="The next lawn gets this much of the last mix first. Measured: 3.5 gal. Not measured: open the next line, or leave it empty."
      />
      <Disclosure name="Work it out from the hose">
        <Stack gap={5}>
          <AmountLine name="hoseLength" label="Length of the hose" optional hint="300 ft" />
          <AmountLine name="hoseDiameter" label="Inner diameter of the hose" optional hint="As printed on it: 1/2 in" />
          <AmountLine name="pumpHolds" label="The pump holds" optional hint="Drained into a measure: 0.4 gal. Nothing is 0 gal." />
        </Stack>
      </Disclosure>
    </>
  );
}
