"use client";

import { recordCleanOutSchema } from "#application/fills/record-clean-out.schema";
import { RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { type Choice, SelectField } from "#ui/select-field";
import { DateField, TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../action-form.client";
import { recordCleanOutAction } from "./action";

interface Choices {
  readonly sprayers: readonly Choice[];
  readonly people: readonly Choice[];
  readonly visits: readonly Choice[];
}

function WhereItWent({ visits }: Pick<Choices, "visits">) {
  return (
    <>
      <RadioRows
        label="The rinsate went"
        {...useChoice("rinsateWent")}
        choices={[
          { value: "labeled-site", word: "Onto a labeled site", hint: "A lawn that the labels of the mix name, within their rates." },
          { value: "shop-tank", word: "Into the shop's rinsate tank" },
          { value: "elsewhere", word: "Elsewhere", hint: "Write below where." },
        ]}
      />
      <SelectField
        label="Visit whose lawn took it"
        optional
        hint="Only for a labeled site. The visits that were sprayed from these tanks."
        chooseWords="None of these"
        choices={visits}
        {...useField("rinsateVisitId")}
      />
      <TextField label="Site or place, in words" optional hint="For a labeled site that is no visit above, or for elsewhere." autoComplete="off" {...useField("rinsateWhere")} />
    </>
  );
}

function Fields({ sprayers, people, visits }: Choices) {
  return (
    <>
      <SelectField label="Sprayer" chooseWords="Choose a sprayer" choices={sprayers} {...useField("equipmentId")} />
      <Columns split="two">
        <DateField label="Day" {...useField("cleanedOn")} />
        <TextField label="Cleaned out at" type="time" width="short" {...useField("cleanedAt")} />
      </Columns>
      <SelectField label="Done by" chooseWords="Choose who did it" choices={people} width="medium" {...useField("doneById")} />
      <TextField label="How it was done" hint="Such as: three times with 10 gal of water through pump, hose and tip." autoComplete="off" {...useField("how")} />
      <WhereItWent visits={visits} />
    </>
  );
}

interface Props extends Choices {
  readonly fixed: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, string>>;
}

/** A sprayer cleaned out: read back first, then written. */
export function RecordCleanOutForm({ fixed, values, ...choices }: Props) {
  return (
    <ActionForm
      action={recordCleanOutAction}
      schema={recordCleanOutSchema}
      fixed={fixed}
      values={values}
      submit="Read it back"
      whilePending="Reading it back"
      write={{ submit: "Record the clean-out", whilePending: "Recording" }}
    >
      <Fields {...choices} />
    </ActionForm>
  );
}
