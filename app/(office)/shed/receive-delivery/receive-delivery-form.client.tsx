"use client";

import { receiveDeliverySchema } from "#application/stock/receive-delivery.schema";
import { CONTAINERS } from "#domain/stock/container-words";
import { Row } from "#ui/row";
import { type Choice, SelectField } from "#ui/select-field";
import { DateField, TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../action-form.client";
import { receiveDeliveryAction } from "./action";

interface Choices {
  readonly products: readonly Choice[];
  readonly places: readonly Choice[];
}

function Fields({ products, places }: Choices) {
  return (
    <>
      <SelectField label="Product" chooseWords="Choose a product" choices={products} {...useField("productId")} />
      <Row gap="plain" align="top">
        <TextField label="How many" hint="Whole containers." inputMode="numeric" autoComplete="off" width="short" {...useField("count")} />
        <SelectField label="Of what" hint="What it comes in." chooseWords="Choose" choices={CONTAINERS.map((word) => ({ value: word, word }))} width="medium" {...useField("container")} />
        <TextField label="One holds" hint="50 lb, or 2.5 gal." autoComplete="off" width="medium" {...useField("containerSize")} />
      </Row>
      <TextField label="Paid for one container" optional hint="In dollars: 42.50. Empty where you don’t know; 0 only where it came free." inputMode="decimal" autoComplete="off" width="short" {...useField("paidForOne")} />
      <TextField label="Lot number" hint="As printed on the container." autoComplete="off" width="medium" {...useField("lotNumber")} />
      <DateField label="Expires on" optional hint="Empty where the container names no date." {...useField("expiresOn")} />
      <DateField label="Came on" {...useField("receivedOn")} />
      <SelectField label="Put" choices={places} width="medium" {...useField("to")} />
      <TextField label="Note" optional autoComplete="off" {...useField("note")} />
    </>
  );
}

interface Props extends Choices {
  readonly requestId: string;
  readonly values: Readonly<Record<string, string>>;
}

export function ReceiveDeliveryForm({ requestId, values, products, places }: Props) {
  return (
    <ActionForm action={receiveDeliveryAction} schema={receiveDeliverySchema} fixed={{ requestId }} values={values} submit="Take it in" whilePending="Taking in">
      <Fields products={products} places={places} />
    </ActionForm>
  );
}
