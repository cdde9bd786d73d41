"use client";

import { answerHoldSchema } from "#application/visits/answer-hold.schema";
import { type Choice, SelectField } from "#ui/select-field";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { answerHoldAction } from "./action";

interface Props {
  readonly visitId: string;
  /** The hold as it stands above the form, as one text. */
  readonly hold: string;
  readonly licenses: readonly Choice[];
}

function Fields({ licenses }: { readonly licenses: readonly Choice[] }) {
  return (
    <>
      <SelectField label="Under which license" choices={licenses} {...useField("licenseId")} />
      <TextField
        label="Why it does not apply here"
        hint="It is for the hold above alone, as it stands there and on that day. It stands on the mix ticket and the record with your name and license, and is not taken back."
        autoComplete="off"
        {...useField("reason")}
      />
    </>
  );
}

/** The answer of a license holder to a hold of law. */
export function AnswerHoldForm({ visitId, hold, licenses }: Props) {
  const values = { licenseId: licenses[0]?.value ?? "" };
  return (
    <ActionForm action={answerHoldAction} schema={answerHoldSchema} fixed={{ visitId, hold }} values={values} submit="Answer this hold" whilePending="Writing the answer">
      <Fields licenses={licenses} />
    </ActionForm>
  );
}
