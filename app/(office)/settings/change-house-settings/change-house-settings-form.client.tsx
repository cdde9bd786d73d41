"use client";

import { changeHouseSettingsSchema } from "#application/companies/change-house-settings.schema";
import { GRANULAR_PASSES, LINES_AT_THE_END, TANK_LOADS } from "#domain/company/house-settings";
import { GRANULAR_PASSES_WORDS, LINE_AT_THE_END_WORDS, TANK_LOADS_WORDS } from "#domain/company/settings-in-words";
import { type WholeSetting } from "#domain/company/typed-settings";
import { RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../action-form.client";
import { choiceHint, type ChosenSetting, wholeHint, WHOLE_SETTING_NAMES } from "../ways-words";
import { changeHouseSettingsAction } from "./action";

function WholeField({ name }: { readonly name: WholeSetting }) {
  return <TextField label={WHOLE_SETTING_NAMES[name]} hint={wholeHint(name)} inputMode="numeric" autoComplete="off" width="short" {...useField(name)} />;
}

interface ChoiceFieldProps {
  readonly name: ChosenSetting;
  readonly label: string;
  readonly choices: readonly { readonly value: string; readonly word: string }[];
}

function ChoiceField({ name, label, choices }: ChoiceFieldProps) {
  return <RadioRows label={label} hint={choiceHint(name)} choices={choices} {...useChoice(name)} />;
}

function MarkField() {
  return (
    <TextField
      label="Mark of the tank’s gauge or meter"
      hint="Water goes into a tank to this mark, and fills are rounded to it. From 1 fl oz to 10 gal. The default is 0.1 gal."
      autoComplete="off"
      width="short"
      {...useField("tankMark")}
    />
  );
}

function Fields() {
  return (
    <>
      <Columns split="two">
        <WholeField name="calibrationValidDays" />
        <WholeField name="samePressureWithinPsi" />
      </Columns>
      <ChoiceField name="granularPasses" label="Granular product goes down" choices={GRANULAR_PASSES.map((value) => ({ value, word: GRANULAR_PASSES_WORDS[value] }))} />
      <ChoiceField name="tankLoads" label="Tank loads" choices={TANK_LOADS.map((value) => ({ value, word: TANK_LOADS_WORDS[value] }))} />
      <MarkField />
      <ChoiceField name="lineAtTheEnd" label="Mix in pump and hose, at a change of mix and at the day’s end" choices={LINES_AT_THE_END.map((value) => ({ value, word: LINE_AT_THE_END_WORDS[value] }))} />
      <WholeField name="heatCautionFromF" />
      <WholeField name="heatCautionWarmFromF" />
      <Columns split="two">
        <WholeField name="minutesPerStop" />
        <WholeField name="minutesPerThousandSquareFeet" />
      </Columns>
    </>
  );
}

export function ChangeHouseSettingsForm({ version, values }: { readonly version: string; readonly values: Readonly<Record<string, string>> }) {
  return (
    <ActionForm action={changeHouseSettingsAction} schema={changeHouseSettingsSchema} fixed={{ version }} values={values} submit="Save" whilePending="Saving">
      <Fields />
    </ActionForm>
  );
}
