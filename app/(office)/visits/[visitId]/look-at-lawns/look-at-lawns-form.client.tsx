"use client";

import { lookAtLawnsSchema } from "#application/visits/look-at-lawns.schema";
import { RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { FieldGroup } from "#ui/field";
import { type Choice, SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { DateField, TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../../action-form.client";
import { TickRow } from "../../../properties/[propertyId]/tick-row.client";
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

const WATERED = [
  { value: "sprinklers", word: "Sprinklers" },
  { value: "rain", word: "Rain" },
] as const;

const WHOSE_WORD = [
  { value: "crew", word: "We saw it" },
  { value: "customer", word: "The customer told us" },
] as const;

/** That what lies on lawns was watered in: once for all lawns that are ticked. */
function Water({ lawns }: { readonly lawns: readonly LawnAsked[] }) {
  const { error } = useField("watered");
  return (
    <Stack gap={3}>
      <FieldGroup id="watered" label="Watered in" error={error} optional hint="Only where it was, since something was last put down.">
        <Stack gap={2}>
          {lawns.map(({ zoneId, words }) => (
            <TickRow key={zoneId} name={`watered.${zoneId}`}>
              {words}
            </TickRow>
          ))}
        </Stack>
      </FieldGroup>
      <Columns>
        <SelectField label="Watered by" optional chooseWords="Choose what watered it" choices={WATERED} {...useField("wateredBy")} />
        <SelectField label="Whose word" optional chooseWords="Choose whose word it is" choices={WHOSE_WORD} {...useField("waterToldBy")} />
      </Columns>
      <Columns>
        <DateField label="Day of the water" optional {...useField("wateredOn")} />
        <TextField label="Water done at" optional type="time" width="short" {...useField("wateredAt")} />
        <TextField label="How much" optional hint="A number alone is inches. Empty where nobody knows." autoComplete="off" width="short" {...useField("waterDepth")} />
      </Columns>
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

/** What blooms on the lawns of a visit and which were watered in: one press for each lawn and one to send it. Day, hour and name stand already. */
export function LookAtLawnsForm({ fixed, values, lawns, people }: Props) {
  return (
    <ActionForm action={lookAtLawnsAction} schema={lookAtLawnsSchema} fixed={fixed} values={values} submit="Write it down" whilePending="Writing it down">
      <Stack gap={5}>
        {lawns.map((lawn) => (
          <Lawn key={lawn.zoneId} {...lawn} />
        ))}
      </Stack>
      <When people={people} />
      <Water lawns={lawns} />
    </ActionForm>
  );
}
