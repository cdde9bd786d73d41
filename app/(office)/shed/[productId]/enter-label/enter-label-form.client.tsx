"use client";

import { enterLabelSchema } from "#application/products/enter-label.schema";
import { FORMULATIONS, SERVICE_TYPES, SIGNAL_WORDS } from "#domain/label/label-facts";
import { GENERAL_FIELD_NAMES, GENERAL_FIELDS, type GeneralField, type LabelField, USE_FIELD_NAMES, USE_FIELDS, type UseField } from "#domain/label/label-fields";
import { type Choice, SelectField } from "#ui/select-field";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { TextAreaField } from "#ui/text-area-field";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { LabelConvention } from "./label-convention";
import { enterLabelAction } from "./action";

type FieldName = GeneralField | UseField;
type Form = "granular" | "liquid";

const FIELDS: Readonly<Record<FieldName, LabelField>> = { ...GENERAL_FIELDS, ...USE_FIELDS };
const NAMES: readonly FieldName[] = [...GENERAL_FIELD_NAMES, ...USE_FIELD_NAMES];
const GROUPS = [...new Set(NAMES.map((name) => FIELDS[name].group))];

const NONE: Choice = { value: "none", word: "none: the label says nothing" };
const YES_OR_NO: readonly Choice[] = [{ value: "yes", word: "yes" }, { value: "no", word: "no" }, NONE];
const DRY_OR_MOIST: readonly Choice[] = [{ value: "dry", word: "dry" }, { value: "moist", word: "moist" }, NONE];

function sameWord(word: string): Choice {
  return { value: word, word };
}

/** Facts that are one of a few words are chosen; every other is written as it is printed. */
const CHOICES: Partial<Record<FieldName, readonly Choice[]>> = {
  restrictedUse: YES_OR_NO,
  stainsHardSurfaces: YES_OR_NO,
  signalWord: [...SIGNAL_WORDS.map(sameWord), NONE],
  serviceType: SERVICE_TYPES.map(sameWord),
  leafAtApplication: DRY_OR_MOIST,
  soilAtApplication: DRY_OR_MOIST,
};

const LISTS: ReadonlySet<FieldName> = new Set(["activeIngredients", "seasonLimits", "keptApart"]);
const NEEDED: ReadonlySet<FieldName> = new Set(["formulation", "serviceType"]);

function LabelFieldOf({ name, form }: { readonly name: FieldName; readonly form: Form }) {
  const { words, hint } = FIELDS[name];
  const field = useField(name);
  const choices = name === "formulation" ? FORMULATIONS.filter((one) => (one === "dry granule") === (form === "granular")).map(sameWord) : CHOICES[name];
  if (choices !== undefined) {
    return <SelectField label={words} hint={hint} choices={choices} chooseWords={NEEDED.has(name) ? "Choose" : "not read yet"} width="medium" {...field} />;
  }
  if (LISTS.has(name)) return <TextAreaField label={words} hint={hint} rows={3} {...field} />;
  return <TextField label={words} hint={hint} autoComplete="off" {...field} />;
}

interface Props {
  readonly productId: string;
  readonly form: Form;
  readonly basedOnNumber: string;
  readonly useIndex: string;
  readonly values: Readonly<Record<string, string>>;
}

export function EnterLabelForm({ productId, form, basedOnNumber, useIndex, values }: Props) {
  return (
    <ActionForm
      action={enterLabelAction}
      schema={enterLabelSchema}
      fixed={{ productId, form, basedOnNumber, useIndex }}
      values={values}
      submit="Keep this and read it back"
      whilePending="Keeping"
    >
      <LabelConvention />
      {GROUPS.map((group) => (
        <Section key={group} id={`part-${group.toLowerCase().replaceAll(" ", "-")}`} name={group}>
          <Stack gap={5}>
            {NAMES.filter((name) => FIELDS[name].group === group).map((name) => (
              <LabelFieldOf key={name} name={name} form={form} />
            ))}
          </Stack>
        </Section>
      ))}
    </ActionForm>
  );
}
