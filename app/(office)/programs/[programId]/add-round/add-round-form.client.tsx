"use client";

import { addRoundSchema } from "#application/programs/add-round.schema";
import { ActionForm } from "../../../../action-form.client";
import { RoundWindowFields, SecondLookField, TreatmentFields } from "../../round-fields.client";
import { type ProductChoice } from "../../treatment-row.client";
import { addRoundAction } from "./action";

interface Props {
  readonly programId: string;
  readonly products: readonly ProductChoice[];
}

export function AddRoundForm({ programId, products }: Props) {
  return (
    <ActionForm action={addRoundAction} schema={addRoundSchema} fixed={{ programId }} submit="Add the round" whilePending="Adding">
      <RoundWindowFields />
      <TreatmentFields products={products} />
      <SecondLookField />
    </ActionForm>
  );
}
