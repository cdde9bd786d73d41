"use client";

import { changeVisitTaskSchema } from "#application/visits/change-visit-task.schema";
import { type LabelRates } from "#domain/label/label-facts";
import { FieldGroup } from "#ui/field";
import { type Choice, SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../../action-form.client";
import { spotShareWords } from "../../../../programs/treatment-row.client";
import { TickRow } from "../../../../properties/[propertyId]/tick-row.client";
import { changeTaskAction } from "./action";

interface Props {
  readonly fixed: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, string>>;
  /** The label's range, or undefined for a look, which has no rate. */
  readonly rateHint: string | undefined;
  /** The label's rates; null for a look, and where its label has no such use. */
  readonly labelRates: LabelRates | null;
  readonly lawns: readonly { readonly zoneId: string; readonly words: string }[];
  readonly gear: readonly Choice[];
}

function Fields({ rateHint, labelRates, lawns, gear }: Omit<Props, "fixed" | "values">) {
  const { error } = useField("lawns");
  const rate = useField("rate");
  const spotShare = useField("spotShare");
  const equipment = useField("equipmentId");
  return (
    <>
      {rateHint !== undefined && (
        <>
          <TextField label="Rate" hint={rateHint} autoComplete="off" {...rate} />
          <TextField {...spotShareWords(labelRates)} autoComplete="off" width="short" {...spotShare} />
        </>
      )}
      <FieldGroup id="lawns" label="Lawns" error={error}>
        <Stack gap={2}>
          {lawns.map(({ zoneId, words }) => (
            <TickRow key={zoneId} name={`lawns.${zoneId}`}>
              {words}
            </TickRow>
          ))}
        </Stack>
      </FieldGroup>
      {rateHint !== undefined && <SelectField label="Put down with" choices={gear} chooseWords="What the truck has" optional {...equipment} />}
    </>
  );
}

/** Changes the rate, the share, the lawns and the gear of one task of a planned visit. */
export function ChangeTaskForm({ fixed, values, rateHint, labelRates, lawns, gear }: Props) {
  const hidden = rateHint === undefined ? { ...fixed, rate: "", spotShare: "", equipmentId: "" } : fixed;
  return (
    <ActionForm action={changeTaskAction} schema={changeVisitTaskSchema} fixed={hidden} values={values} submit="Change it" whilePending="Changing">
      <Fields rateHint={rateHint} labelRates={labelRates} lawns={lawns} gear={gear} />
    </ActionForm>
  );
}
