"use client";

import { lookAtLawnsSchema } from "#application/visits/look-at-lawns.schema";
import { RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { type Choice, SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { DateField, TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../../action-form.client";
import { lookAtLawnsAction } from "./action";

const BLOOMS = [
  { value: "yes", word: "Yes" },
  { value: "no", word: "No" },
  { value: "not-looked", word: "Not looked" },
] as const;

/** A lawn of the visit by its id, with its letter and name. */
export interface LawnAsked {
  readonly zoneId: string;
  readonly words: string;
}

function Lawn({ zoneId, words }: LawnAsked) {
  return (
    <Stack gap={3}>
      <RadioRows label={`Does anything bloom on ${words}?`} layout="keys" choices={BLOOMS} {...useChoice(`lawns.${zoneId}`)} />
      <TextField label={`Of ${words}, in a sentence`} optional autoComplete="off" {...useField(`said.${zoneId}`)} />
    </Stack>
  );
}

function When({ people }: { readonly people: readonly Choice[] }) {
  return (
    <Columns>
      <DateField label="Day" {...useField("seenOn")} />
      <TextField label="Seen at" type="time" width="short" {...useField("seenAt")} />
      <SelectField label="Seen by" chooseWords="Choose who saw it" choices={people} {...useField("seenById")} />
    </Columns>
  );
}

interface Props {
  readonly fixed: Readonly<Record<"requestId" | "visitId", string>>;
  readonly values: Readonly<Record<string, string>>;
  readonly lawns: readonly LawnAsked[];
  readonly people: readonly Choice[];
}

/** What blooms on the lawns of a visit: one press for each lawn and one to send it. Day, hour and name stand already. */
export function LookAtLawnsForm({ fixed, values, lawns, people }: Props) {
  return (
    <ActionForm action={lookAtLawnsAction} schema={lookAtLawnsSchema} fixed={fixed} values={values} submit="Write it down" whilePending="Writing it down">
      <Stack gap={5}>
        {lawns.map((lawn) => (
          <Lawn key={lawn.zoneId} {...lawn} />
        ))}
      </Stack>
      <When people={people} />
    </ActionForm>
  );
}
