"use client";

import { changeRoundSchema } from "#application/programs/change-round.schema";
import { ActionForm } from "../../../../../../action-form.client";
import { RoundWindowFields, SecondLookField, TreatmentFields } from "../../../../round-fields.client";
import { type ProductChoice } from "../../../../treatment-row.client";
import { changeRoundAction } from "./action";

interface Props {
  readonly roundId: string;
  readonly version: string;
  readonly values: Readonly<Record<string, string>>;
  /** What goes down may change while nobody is on the round: then the products to choose from, and how many stand there. */
  readonly treatments: { readonly products: readonly ProductChoice[]; readonly onFile: number } | null;
}

export function ChangeRoundForm({ roundId, version, values, treatments }: Props) {
  return (
    <ActionForm action={changeRoundAction} schema={changeRoundSchema} fixed={{ roundId, version }} values={values} submit="Save" whilePending="Saving">
      <RoundWindowFields />
      {treatments !== null && (
        <>
          <TreatmentFields {...treatments} />
          <SecondLookField />
        </>
      )}
    </ActionForm>
  );
}
