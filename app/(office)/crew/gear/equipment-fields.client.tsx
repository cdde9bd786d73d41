"use client";

import { DEFLECTOR_ANSWERS } from "#application/equipment/equipment-fields.schema";
import { EQUIPMENT_KIND_WORDS, type EquipmentKind, SPRAYER_KINDS, SPREADER_KINDS } from "#domain/equipment/equipment-kind";
import { RadioRows } from "#ui/choice-rows";
import { Disclosure } from "#ui/disclosure";
import { type Choice, SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { TextAreaField } from "#ui/text-area-field";
import { TextField } from "#ui/text-field";
import { useChoice, useField } from "../../../action-form.client";
import { MeasureLine, TipSizeField } from "./[equipmentId]/calibrate/calibration-fields.client";

const DEFLECTOR_WORDS: Readonly<Record<(typeof DEFLECTOR_ANSWERS)[number], string>> = {
  yes: "Yes",
  no: "No",
  "nobody-looked": "Nobody looked",
};

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
      {asksKind && <KindRows kinds={kinds} />}
      <TextField label="Name" hint="What the crew calls it." autoComplete="off" {...useField("name")} />
      <SelectField label="Rides on" chooseWords="No truck: it stays at the shop" choices={trucks} {...useField("vehicleId")} />
      {what === "sprayer" ? (
        <MeasureLine name="capacity" label="The tank holds" hint="With its unit: 100 gal." />
      ) : (
        <MeasureLine name="capacity" label="The hopper holds" hint="By weight, with its unit: 50 lb." />
      )}
      <MeasureLine name="swath" label="Swath" optional hint="The width that one pass covers: 10 ft." />
      {what === "sprayer" ? <SprayerFields /> : <SpreaderFields />}
    </>
  );
}

function SpreaderFields() {
  return (
    <>
      <DeflectorRows />
      <TextAreaField
        label="Settings by the bags"
        optional
        hint="They stand in where nobody has calibrated it with a product. One to a line: product; setting; rate. Meadow 24-0-6; M; 3 lb per 1,000 sq ft."
        rows={3}
        {...useField("bagSettings")}
      />
    </>
  );
}

function SprayerFields() {
  return (
    <>
      <HoldUpFields />
      <TextAreaField
        label="Droplet classes of its tips"
        optional
        hint="From the makers’ charts, for labels that want a class. One to a line: tip, as at its calibration; pressure; class. Flat fan, red; 40 psi; medium."
        rows={3}
        {...useField("tipDroplets")}
      />
      <NominalFields />
    </>
  );
}

/** What stands in where nobody has calibrated the sprayer. */
function NominalFields() {
  return (
    <Disclosure name="Nominal figures, for as long as nobody has calibrated it">
      <Stack gap={5}>
        <TextField label="Tip" optional hint="As it is written on it." autoComplete="off" {...useField("tip")} />
        <TipSizeField hint="By ISO 10625. A tip without a size: give its maker’s flow instead." chooseWords="No standard size" />
        <MeasureLine name="tipFlow" label="Its maker’s flow in a minute" optional hint="With its unit: 1.5 gal." />
        <MeasureLine name="tipFlowPsi" label="Pressure of that flow" optional hint="In psi, as its maker states it." />
        <MeasureLine name="pressurePsi" label="Pressure in use" optional hint="At the tip, in psi." />
        <MeasureLine name="nozzleSpacing" label="Spacing of the nozzles" optional hint="Booms only: 20 in." />
        <MeasureLine name="speedMph" label="Speed" optional hint="In mph. Guns and backpacks take the swath above with it." />
        <MeasureLine name="minutesPerThousand" label="Or minutes for 1,000 sq ft" optional hint="Guns and backpacks, instead of a speed." />
      </Stack>
    </Disclosure>
  );
}

/** Asked only where the kind does not stand fast yet. */
function KindRows({ kinds }: { readonly kinds: readonly EquipmentKind[] }) {
  return <RadioRows label="Kind" choices={kinds.map((kind) => ({ value: kind, word: EQUIPMENT_KIND_WORDS[kind] }))} {...useChoice("kind")} />;
}

function DeflectorRows() {
  return (
    <RadioRows
      label="Has it a deflector?"
      hint="It keeps granules from flying to one side. Some laws let a spreader with one come nearer to water."
      choices={DEFLECTOR_ANSWERS.map((answer) => ({ value: answer, word: DEFLECTOR_WORDS[answer] }))}
      {...useChoice("deflector")}
    />
  );
}

function HoldUpFields() {
  return (
    <>
      <MeasureLine
        name="holdUp"
        label="Pump and hose hold"
        optional
        hint="The next lawn gets this much of the last mix first. Measured: 3.5 gal. Not measured: open the next line, or leave it empty."
      />
      <Disclosure name="Work it out from the hose">
        <Stack gap={5}>
          <MeasureLine name="hoseLength" label="Length of the hose" optional hint="300 ft" />
          <MeasureLine name="hoseDiameter" label="Inner diameter of the hose" optional hint="As printed on it: 1/2 in" />
          <MeasureLine name="pumpHolds" label="The pump holds" optional hint="Drained into a measure: 0.4 gal. Nothing is 0 gal." />
        </Stack>
      </Disclosure>
    </>
  );
}
