"use client";

import { recordTankReadingSchema } from "#application/fills/record-tank-reading.schema";
import { RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { type Choice, SelectField } from "#ui/select-field";
import { DateField, TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../action-form.client";
import { recordTankReadingAction } from "./action";

interface Choices {
  readonly sprayers: readonly Choice[];
  readonly people: readonly Choice[];
}

function WhereMissingWent() {
  return (
    <RadioRows
      label="Where it is less than the books have, the rest went"
      optional
      {...useChoice("missingWent")}
      choices={[
        { value: "loss", word: "Spilled or dumped", hint: "Posted to loss." },
        { value: "rinsate", word: "Into the rinsate tank", hint: "Posted to rinsate." },
        { value: "count-difference", word: "Nobody knows", hint: "Posted to count difference." },
      ]}
    />
  );
}

function Fields({ sprayers, people }: Choices) {
  return (
    <>
      <SelectField label="Sprayer" chooseWords="Choose a sprayer" choices={sprayers} {...useField("equipmentId")} />
      <TextField
        label="Found in it"
        width="short"
        hint="In gallons, 0 where it is empty. In tank and lines together, as the books count: where pump and hose are full of it, add what they hold."
        autoComplete="off"
        inputMode="decimal"
        {...useField("volume")}
      />
      <Columns split="two">
        <DateField label="Day" {...useField("readOn")} />
        <TextField label="Measured at" type="time" width="short" {...useField("readAt")} />
      </Columns>
      <SelectField label="Measured by" chooseWords="Choose who measured it" choices={people} width="medium" {...useField("readById")} />
      <TextField label="With what" hint="Such as: dipstick, truck level in the yard." autoComplete="off" {...useField("how")} />
      <WhereMissingWent />
      <TextField label="What happened, in words" optional autoComplete="off" {...useField("note")} />
    </>
  );
}

interface Props extends Choices {
  readonly fixed: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, string>>;
}

/** What a tank holds: held against the books and read back first, then written. */
export function RecordTankReadingForm({ fixed, values, ...choices }: Props) {
  return (
    <ActionForm
      action={recordTankReadingAction}
      schema={recordTankReadingSchema}
      fixed={fixed}
      values={values}
      submit="Hold it against the books"
      whilePending="Looking it up"
      write={{ submit: "Write it down", whilePending: "Writing" }}
    >
      <Fields {...choices} />
    </ActionForm>
  );
}
