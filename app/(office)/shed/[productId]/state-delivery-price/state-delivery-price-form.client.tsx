"use client";

import { stateDeliveryPriceSchema } from "#application/stock/state-delivery-price.schema";
import { type Choice, SelectField } from "#ui/select-field";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { stateDeliveryPriceAction } from "./action";

function Fields({ deliveries }: { readonly deliveries: readonly Choice[] }) {
  return (
    <>
      <SelectField label="Delivery" chooseWords="Choose the delivery" choices={deliveries} {...useField("delivery")} />
      <TextField
        label="Paid for one container"
        hint="In dollars: 42.50. 0 only where it came free; none where nobody knows after all."
        inputMode="decimal"
        autoComplete="off"
        width="short"
        {...useField("paidForOne")}
      />
      <TextField label="Known from" optional hint="Such as: invoice 1182 of the supplier." autoComplete="off" {...useField("said")} />
    </>
  );
}

interface Props {
  readonly fixed: Readonly<Record<"requestId" | "productId", string>>;
  readonly values: Readonly<Record<string, string>>;
  readonly deliveries: readonly Choice[];
}

/** What was paid for a delivery, said after it came. */
export function StateDeliveryPriceForm({ fixed, values, deliveries }: Props) {
  return (
    <ActionForm action={stateDeliveryPriceAction} schema={stateDeliveryPriceSchema} fixed={fixed} values={values} submit="Write it down" whilePending="Writing it down">
      <Fields deliveries={deliveries} />
    </ActionForm>
  );
}
