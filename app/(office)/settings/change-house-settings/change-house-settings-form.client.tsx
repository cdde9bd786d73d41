"use client";

import { changeHouseSettingsSchema } from "#application/companies/change-house-settings.schema";
import { GRANULAR_PASSES, LINES_AT_THE_END, TANK_LOADS } from "#domain/company/house-settings";
import { GRANULAR_PASSES_WORDS, LINE_AT_THE_END_WORDS, TANK_LOADS_WORDS } from "#domain/company/settings-in-words";
import { type WholeSetting } from "#domain/company/typed-settings";
import { RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../action-form.client";
import { choiceHint, CHOSEN_SETTING_NAMES, type ChosenSetting, TANK_MARK_NAME, wholeHint, WHOLE_SETTING_NAMES } from "../ways-words";
import { changeHouseSettingsAction } from "./action";

function WholeField({ name }: { readonly name: WholeSetting }) {
  return <TextField label={WHOLE_SETTING_NAMES[name]} hint={wholeHint(name)} inputMode="numeric" autoComplete="off" width="short" {...useField(name)} />;
}

interface ChoiceFieldProps {
  readonly name: ChosenSetting;
  readonly choices: readonly { readonly value: string; readonly word: string }[];
}

function ChoiceField({ name, choices }: ChoiceFieldProps) {
  return <RadioRows label={CHOSEN_SETTING_NAMES[name]} hint={choiceHint(name)} choices={choices} {...useChoice(name)} />;
}

function MarkField() {
  return (
    <TextField
      label={TANK_MARK_NAME}
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
      <ChoiceField name="granularPasses" choices={GRANULAR_PASSES.map((value) => ({ value, word: GRANULAR_PASSES_WORDS[value] }))} />
      <ChoiceField name="tankLoads" choices={TANK_LOADS.map((value) => ({ value, word: TANK_LOADS_WORDS[value] }))} />
      <MarkField />
      <ChoiceField name="lineAtTheEnd" choices={LINES_AT_THE_END.map((value) => ({ value, word: LINE_AT_THE_END_WORDS[value] }))} />
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
